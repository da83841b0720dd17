#include "core/pattern/plain_ws_rows.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {
namespace {

bool wayBack(const Row& row, const Row* below)
{
    const bool plainHead = row.side == Side::WS && row.start.kind == StartKind::Continue && !row.start.joins &&
                           row.finish.kind == FinishKind::Turn && !row.finish.breaksYarn && row.moves.empty() &&
                           !row.stated && row.note.empty() && row.words.empty();
    if (!plainHead || !below)
        return plainHead;
    return below->yarn == row.yarn &&
           (below->finish.kind == FinishKind::Turn || below->finish.kind == FinishKind::TurnEarly);
}

// What a cell shows to the row that is worked into it; nothing where either way is plain, as over a yarn over.
std::optional<Face> shownBy(const Stitch& stitch, int part)
{
    if (stitch.heads.empty())
        return stitch.face;
    const auto head = stitch.heads[std::min(stitch.heads.size() - 1, static_cast<std::size_t>(part))];
    if (head == HeadKind::YarnOver)
        return std::nullopt;
    return head == HeadKind::Purl ? Face::Purl : Face::Knit;
}

// The first or last of the rows [from, to] that stays; -1: none does.
int staying(const std::vector<bool>& gone, int from, int to)
{
    const int step = from <= to ? 1 : -1;
    for (int at = from; at != to + step; at += step)
        if (!gone[static_cast<std::size_t>(at)])
            return at;
    return -1;
}

template <typename Repeat>
bool holdsNone(Repeat& repeat, const Section& section, const std::vector<bool>& gone)
{
    const int first = rowIndex(section, repeat.firstRow), last = rowIndex(section, repeat.lastRow);
    if (first < 0 || last < first)
        return true;
    const int from = staying(gone, first, last), to = staying(gone, last, first);
    if (from < 0)
        return true;
    repeat.firstRow = section.rows[static_cast<std::size_t>(from)]->id;
    repeat.lastRow = section.rows[static_cast<std::size_t>(to)]->id;
    return false;
}

struct BackStitch {
    int column = 1;
    bool purled = false;
    bool asShown = false; // by the row below
};

// From right to left, so that a border at the right is worked last.
PlainWs wayOf(std::span<const BackStitch> stitches, const std::vector<Box>& boxes)
{
    using Way = PlainWs::Way;
    const auto allAlike = [&](bool purled) {
        return std::all_of(stitches.begin(), stitches.end(),
                           [purled](const BackStitch& one) { return one.purled == purled; });
    };
    const auto allAsShown = [&] {
        return std::all_of(stitches.begin(), stitches.end(), [](const BackStitch& one) { return one.asShown; });
    };
    const auto inBorder = [&](const BackStitch& one) {
        return !one.purled && std::none_of(boxes.begin(), boxes.end(), [&](const Box& box) {
            return box.firstColumn <= one.column && one.column <= box.lastColumn;
        });
    };
    if (stitches.empty())
        return {};
    if (allAlike(true))
        return {Way::Purl};
    if (allAlike(false))
        return {Way::Knit};
    if (allAsShown())
        return {Way::AsTheyShow};
    PlainWs made;
    while (!stitches.empty() && inBorder(stitches.front())) {
        ++made.last;
        stitches = stitches.subspan(1);
    }
    while (!stitches.empty() && inBorder(stitches.back())) {
        ++made.first;
        stitches = stitches.first(stitches.size() - 1);
    }
    if (stitches.empty() || made.first > mostGarterBorder || made.last > mostGarterBorder)
        return {};
    made.way = allAlike(true) ? Way::Purl : allAsShown() ? Way::AsTheyShow : Way::None;
    return made.plain() ? made : PlainWs{};
}

} // namespace

PlainWs plainWs(const Section& section, const Catalogue& catalogue, int at)
{
    const Row& row = *section.rows[static_cast<std::size_t>(at)];
    const Row* below = at > 0 ? section.rows[static_cast<std::size_t>(at) - 1].get() : nullptr;
    if (!wayBack(row, below))
        return {};
    const auto knit = catalogue.find("k"), purl = catalogue.find("p");
    std::vector<BackStitch> stitches;
    for (std::size_t i = 0; i < row.cells.size(); ++i) {
        const Cell& cell = row.cells[i];
        if (cell.stitch == noStitch)
            continue;
        if (cell.yarn != YarnId{} || (cell.stitch != knit && cell.stitch != purl))
            return {};
        const bool purled = cell.stitch == knit; // it is charted as seen from the right side
        const Cell under = below ? cellAt(*below, static_cast<int>(i) + 1) : Cell{};
        std::optional<Face> face;
        if (under.stitch != noStitch)
            face = shownBy(catalogue.stitch(under.stitch), under.part);
        const bool asShown = under.stitch != noStitch && (!face || (*face == Face::Knit) == purled);
        stitches.push_back({static_cast<int>(i) + 1, purled, asShown});
    }
    return wayOf(stitches, boxesOn(section, at));
}

void exceptWholeRepeats(std::vector<PlainWs>& rows, const Section& section)
{
    const std::vector<PlainWs> alone = rows;
    for (const Bracket& bracket : section.frame.brackets) {
        const int first = rowIndex(section, bracket.firstRow), last = rowIndex(section, bracket.lastRow);
        if (first < 0 || last < first)
            continue;
        const auto from = alone.begin() + first, to = alone.begin() + last + 1;
        if (std::all_of(from, to, [](const PlainWs& one) { return one.plain(); }))
            std::fill(rows.begin() + first, rows.begin() + last + 1, PlainWs{});
    }
}

std::vector<PlainWs> plainWsRows(const Section& section, const Catalogue& catalogue)
{
    std::vector<PlainWs> rows;
    for (std::size_t at = 0; at < section.rows.size(); ++at)
        rows.push_back(plainWs(section, catalogue, static_cast<int>(at)));
    exceptWholeRepeats(rows, section);
    return rows;
}

std::string plainWsWords(PlainWs how)
{
    using Way = PlainWs::Way;
    if (!how.plain())
        return {};
    const std::string middle = how.way == Way::Purl   ? "purl"
                               : how.way == Way::Knit ? "knit"
                                                      : "knit the knits and purl the purls";
    std::string words = how.first > 0 ? "k" + toText(how.first) + ", " + middle : middle;
    if (how.last > 0)
        words += " to the last " + counted(how.last, "st") + ", k" + toText(how.last);
    else if (how.first > 0)
        words += " to the end";
    return words;
}

std::vector<std::string> rowsNotShown(const Section& section, const std::vector<PlainWs>& plain)
{
    // Runs of WS rows that are worked alike, in the order of the chart.
    struct Run {
        PlainWs how;
        std::size_t first = 0, last = 0;
    };
    std::vector<Run> runs;
    for (std::size_t at = 0; at < plain.size(); ++at)
        if (section.rows[at]->side == Side::WS) {
            if (runs.empty() || runs.back().how != plain[at])
                runs.push_back({plain[at], at, at});
            runs.back().last = at;
        }
    const bool all = runs.size() == 1;
    const std::vector<std::string> labels = rowLabels(section);
    std::vector<std::string> sentences;
    for (auto run = runs.begin(); run != runs.end(); ++run) {
        const auto toldBefore = [&](const Run& other) { return other.how == run->how; };
        if (!run->how.plain() || std::any_of(runs.begin(), run, toldBefore))
            continue;
        std::vector<std::string> places;
        bool several = false;
        for (const Run& one : runs)
            if (one.how == run->how) {
                const bool alone = one.first == one.last;
                places.push_back(labels[one.first] + (alone ? "" : "-" + labels[one.last]));
                several = several || !alone;
            }
        std::string where;
        for (std::size_t i = 0; i < places.size(); ++i)
            where += (i == 0 ? "" : i + 1 == places.size() ? " and " : ", ") + places[i];
        const bool plural = several || places.size() > 1;
        sentences.push_back((all ? std::string("WS rows") : (plural ? "WS rows " : "WS row ") + where) +
                            " not shown: " + plainWsWords(run->how) + ".");
    }
    return sentences;
}

FewerRows withoutRows(const Section& section, const std::vector<bool>& gone)
{
    FewerRows fewer;
    fewer.section.id = section.id;
    fewer.section.frame = section.frame;
    std::erase_if(fewer.section.frame.boxes, [&](Box& box) { return holdsNone(box, section, gone); });
    std::erase_if(fewer.section.frame.brackets, [&](Bracket& one) { return holdsNone(one, section, gone); });
    const std::vector<std::string> labels = rowLabels(section);
    for (std::size_t at = 0; at < section.rows.size(); ++at) {
        if (gone[at])
            continue;
        Row row = *section.rows[at];
        row.label = labels[at];
        fewer.section.rows.push_back(std::make_shared<const Row>(std::move(row)));
        fewer.rows.push_back(static_cast<int>(at));
    }
    return fewer;
}

} // namespace shawlwright
