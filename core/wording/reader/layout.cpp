#include "core/wording/reader/layout.h"

#include <algorithm>
#include <map>
#include <queue>

namespace shawlwright {
namespace {

class Drafter {
public:
    explicit Drafter(const Catalogue& catalogue) : m_catalogue(catalogue) {}

    std::optional<RowDraft> draft(const Phrases& phrases)
    {
        sequence(phrases, false);
        std::stable_sort(m_draft.boxes.begin(), m_draft.boxes.end(),
                         [](const DraftBox& a, const DraftBox& b) {
                             return a.first != b.first ? a.first < b.first : a.last > b.last;
                         });
        if (m_tooWide || m_draft.width() > mostColumns)
            return std::nullopt;
        return std::move(m_draft);
    }

private:
    void cell(StitchId stitch, YarnId yarn)
    {
        if (m_draft.cells.size() > static_cast<std::size_t>(mostColumns)) {
            m_tooWide = true;
            return;
        }
        DraftCell cell;
        cell.cell.stitch = stitch;
        cell.cell.yarn = yarn;
        cell.width = stitch == noStitch ? 1 : m_catalogue.stitch(stitch).width();
        m_draft.cells.push_back(cell);
    }

    template <typename Inside>
    void box(const Quantity& times, const Reach& to, const Inside& inside)
    {
        const std::size_t first = m_draft.cells.size();
        const std::size_t at = m_draft.boxes.size();
        m_draft.boxes.push_back({});
        inside();
        if (m_draft.cells.size() == first) {
            m_draft.boxes.erase(m_draft.boxes.begin() + static_cast<std::ptrdiff_t>(at));
            return;
        }
        Box box;
        box.until = to.place;
        if (to.place == BoxUntil::Times)
            box.times = times;
        else
            box.leaving = to.leaving;
        if (to.place == BoxUntil::Marker)
            box.marker = to.marker;
        m_draft.boxes[at] = {first, m_draft.cells.size() - 1, box};
    }

    static bool isMove(const Phrase& phrase) { return std::holds_alternative<MarkerPhrase>(phrase.is); }

    void sequence(const Phrases& phrases, bool inBox)
    {
        for (std::size_t i = 0; i < phrases.size() && !m_tooWide; ++i) {
            const Phrase& phrase = phrases[i];
            if (const auto* run = std::get_if<Stretch>(&phrase.is)) {
                if (run->count == 0)
                    box(1, run->to, [&] { cell(run->stitch, run->yarn); });
                for (int n = 0; n < run->count && !m_tooWide; ++n)
                    cell(run->stitch, run->yarn);
            } else if (const auto* group = std::get_if<Group>(&phrase.is)) {
                const auto* only =
                    group->inside.size() == 1 ? std::get_if<Stretch>(&group->inside.front().is) : nullptr;
                const bool once = group->to.place == BoxUntil::Times && group->times.single();
                // "[k2tog] 4 times" is a run of cells.
                if (once && only && only->count > 0 && group->times.at(0) > 0 &&
                    group->times.at(0) * only->count <= 60)
                    for (int n = 0; n < group->times.at(0) * only->count; ++n)
                        cell(only->stitch, only->yarn);
                else if (once && group->times.at(0) == 1)
                    sequence(group->inside, inBox);
                else
                    box(group->times, group->to, [&] { sequence(group->inside, true); });
            } else if (const auto* marker = std::get_if<MarkerPhrase>(&phrase.is)) {
                // A column of its own keeps a marker inside of the repeat, off its edge.
                const bool first = inBox && i == 0;
                const bool last = inBox && std::all_of(phrases.begin() + static_cast<std::ptrdiff_t>(i),
                                                       phrases.end(), isMove);
                if (first)
                    cell(noStitch, {});
                const MoveKind kind = marker->act == MarkerPhrase::Act::Place    ? MoveKind::Place
                                      : marker->act == MarkerPhrase::Act::Remove ? MoveKind::Remove
                                                                                 : MoveKind::Shift;
                m_draft.moves.push_back({m_draft.cells.size(), marker->marker, kind});
                if (last && i + 1 == phrases.size())
                    cell(noStitch, {});
            }
        }
    }

    const Catalogue& m_catalogue;
    RowDraft m_draft;
    bool m_tooWide = false;
};

} // namespace

int RowDraft::width() const
{
    int width = 0;
    for (const DraftCell& cell : cells)
        width += cell.width;
    return width;
}

std::optional<RowDraft> draftOf(const Phrases& phrases, const Catalogue& catalogue)
{
    return Drafter(catalogue).draft(phrases);
}

PlacedRow placed(const RowDraft& draft, const Row& base, const std::vector<int>& u, int columns)
{
    PlacedRow result;
    result.row = base;
    result.row.cells.assign(static_cast<std::size_t>(columns), Cell{});
    const bool rs = base.side == Side::RS;
    const auto end = [&](std::size_t i) { return u[i] + draft.cells[i].width; };
    for (std::size_t i = 0; i < draft.cells.size(); ++i) {
        const DraftCell& cell = draft.cells[i];
        if (cell.cell.stitch == noStitch)
            continue;
        const int first = rs ? u[i] : columns - end(i);
        for (int part = 0; part < cell.width; ++part) {
            Cell here = cell.cell;
            here.part = static_cast<std::uint8_t>(part);
            result.row.cells[static_cast<std::size_t>(first + part)] = here;
        }
    }
    for (const DraftBox& one : draft.boxes) {
        Box box = one.box;
        box.firstColumn = rs ? u[one.first] + 1 : columns - end(one.last) + 1;
        box.lastColumn = rs ? end(one.last) : columns - u[one.first];
        result.boxes.push_back(box);
    }
    for (const DraftMove& one : draft.moves) {
        const int at = one.before > 0 ? end(one.before - 1) : draft.cells.empty() ? 0 : u[0];
        MarkerMove move;
        move.marker = one.marker;
        move.kind = one.kind;
        move.boundary = rs ? at : columns - at;
        result.row.moves.push_back(move);
    }
    return result;
}

std::vector<int> compact(const RowDraft& draft)
{
    std::vector<int> u;
    int at = 0;
    for (const DraftCell& cell : draft.cells) {
        u.push_back(at);
        at += cell.width;
    }
    return u;
}

std::vector<int> neverFalling(const std::vector<std::optional<WantedRange>>& wanted)
{
    std::vector<int> fitted(wanted.size(), 0);
    std::vector<bool> wished(wanted.size(), false);
    std::priority_queue<int> tops;
    std::vector<std::optional<int>> top(wanted.size());
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (!wanted[i])
            continue;
        // Twice the distance from a range is what both of its ends are away, less its length.
        for (const int end : {wanted[i]->from, wanted[i]->from, wanted[i]->to, wanted[i]->to})
            tops.push(end);
        tops.pop();
        tops.pop();
        top[i] = tops.top();
    }
    std::optional<int> next;
    for (std::size_t i = wanted.size(); i-- > 0;) {
        if (top[i])
            next = next ? std::min(*next, *top[i]) : *top[i];
        fitted[i] = next.value_or(0);
        wished[i] = next.has_value();
    }
    // What follows the last one with a wish stays beside it.
    for (std::size_t i = 1; i < fitted.size(); ++i)
        if (!wished[i])
            fitted[i] = fitted[i - 1];
    return fitted;
}

void spreadColumns(Needle& needle, int columns)
{
    const int count = needle.count();
    int before = 0;
    bool together = false;
    std::vector<std::optional<WantedRange>> wanted(needle.loops.size());
    for (int i = 0; i < count; ++i) {
        const int column = needle.loops[static_cast<std::size_t>(i)].column;
        if (column <= 0)
            continue;
        together = together || column <= before;
        before = column;
        wanted[static_cast<std::size_t>(i)] = WantedRange{column - i - 1, column - i - 1};
    }
    if (!together || count > columns)
        return;
    const std::vector<int> shift = neverFalling(wanted);
    for (int i = 0; i < count; ++i)
        needle.loops[static_cast<std::size_t>(i)].column =
            static_cast<std::int16_t>(i + 1 + std::clamp(shift[static_cast<std::size_t>(i)], 0, columns - count));
    const auto columnOf = [&](int loop) { return static_cast<int>(needle.loops[static_cast<std::size_t>(loop)].column); };
    for (MarkerAt& marker : needle.markers)
        if (marker.column >= 0)
            marker.column = std::clamp(marker.column, marker.position > 0 ? columnOf(marker.position - 1) : 0,
                                       marker.position < count ? columnOf(marker.position) - 1 : columns);
}

void beginColumns(Needle& needle, int columns)
{
    const int count = needle.count();
    const int right = (columns - count) / 2;
    for (int i = 0; i < count; ++i)
        needle.loops[static_cast<std::size_t>(i)].column =
            count <= columns ? static_cast<std::int16_t>(right + i + 1) : std::int16_t{0};
    for (MarkerAt& marker : needle.markers)
        marker.column = -1;
}

std::optional<WantedRange> reachOf(const Needle& before, const Trace& trace, Side side, int columns)
{
    int low = columns + 1, high = 0;
    for (const WorkedCell& cell : trace.cells)
        for (int loop = cell.firstLoop; loop < cell.firstLoop + cell.takesUp && loop < before.count(); ++loop) {
            const int column = loop < 0 ? 0 : before.loops[static_cast<std::size_t>(loop)].column;
            if (column <= 0)
                continue;
            low = std::min(low, column);
            high = std::max(high, column);
        }
    if (high == 0)
        return std::nullopt;
    return side == Side::RS ? WantedRange{low - 1, high} : WantedRange{columns - high, columns - low + 1};
}

// Idea: with the widths of the cells before it taken off, a cell's place may only grow along the row. So
// wanted places w1, w2, ... are to be fitted by x1 <= x2 <= ...: where they fall, neighbours share the middle
// of what they want. Wanted 4 2 5 gives 2 2 5 or 4 4 5, both 2 away in all.
std::vector<int> overParents(const RowDraft& draft, const Row& compactRow, const Needle& before,
                             const Trace& trace, int columns)
{
    const int width = draft.width();
    const int room = columns - width;
    std::vector<int> u = compact(draft);
    if (room <= 0)
        return u;
    const bool rs = compactRow.side == Side::RS;
    const int compactColumns = static_cast<int>(compactRow.cells.size());
    // By column. Repeats of rows of both sides stand over each other: over their rightmost working.
    std::map<int, const WorkedCell*> first, last;
    for (const WorkedCell& cell : trace.cells) {
        first.emplace(cell.column, &cell);
        last.insert_or_assign(cell.column, &cell);
    }
    const auto inLongRepeat = [&](std::size_t cell) {
        return std::any_of(draft.boxes.begin(), draft.boxes.end(), [&](const DraftBox& box) {
            return box.first < box.last && box.first <= cell && cell <= box.last;
        });
    };
    std::vector<std::optional<WantedRange>> wanted(draft.cells.size());
    bool any = false;
    for (std::size_t i = 0; i < draft.cells.size(); ++i) {
        const int column = rs ? u[i] + 1 : compactColumns - u[i] - draft.cells[i].width + 1;
        const auto& worked = !rs && inLongRepeat(i) ? last : first;
        const auto found = worked.find(column);
        if (draft.cells[i].cell.stitch == noStitch || found == worked.end() || found->second->takesUp == 0)
            continue;
        const WorkedCell& cell = *found->second;
        const auto columnOf = [&](int loop) {
            return loop >= 0 && loop < before.count()
                       ? static_cast<int>(before.loops[static_cast<std::size_t>(loop)].column)
                       : 0;
        };
        const int low = columnOf(cell.firstLoop);
        const int high = columnOf(cell.firstLoop + cell.takesUp - 1);
        if (low <= 0 || high <= 0)
            continue;
        const int right = (low + high - draft.cells[i].width + 1) / 2; // its rightmost column
        const int place = rs ? right - 1 : columns - right - draft.cells[i].width + 1;
        wanted[i] = WantedRange{place - u[i], place - u[i]};
        any = true;
    }
    const std::vector<int> shift =
        any ? neverFalling(wanted) : std::vector<int>(draft.cells.size(), room / 2);
    for (std::size_t i = 0; i < u.size(); ++i)
        u[i] += std::clamp(shift[i], 0, room);
    return u;
}

} // namespace shawlwright
