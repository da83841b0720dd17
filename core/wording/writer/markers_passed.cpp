#include "core/wording/writer/markers_passed.h"

#include <algorithm>
#include <limits>
#include <map>
#include <optional>

namespace shawlwright {
namespace {

using Gap = std::pair<const RowSequence*, std::size_t>;
using Said = std::map<Gap, std::vector<MarkerPhrase>>;

bool movedBy(const Row& row, MarkerId marker, MoveKind kind)
{
    return std::any_of(row.moves.begin(), row.moves.end(),
                       [&](const MarkerMove& move) { return move.marker == marker && move.kind == kind; });
}

// A marker that stood before the row and stands after it, and the place in the order worked where it was
// passed.
struct Passed {
    MarkerId marker;
    std::size_t before = 0; // index of the worked cell that follows
    bool unsure = false;    // beside a stitch that takes up none: the words must tell its side
};

// Where a marker that stood at `position` stands now, out of `places` of its name; nothing where that can't
// be told. Stitches that take some up keep their side of it.
std::optional<int> placeNow(const std::vector<int>& places, int position, const Trace& trace)
{
    int lowest = 0;
    int highest = std::numeric_limits<int>::max();
    for (const WorkedCell& cell : trace.cells) {
        if (cell.takesUp == 0 || cell.leaves == 0)
            continue;
        if (cell.firstLoop + cell.takesUp <= position)
            lowest = std::max(lowest, cell.firstMade + cell.leaves);
        else
            highest = std::min(highest, cell.firstMade);
    }
    std::optional<int> found;
    for (const int place : places) {
        if (place < lowest || place > highest)
            continue;
        if (found && *found != place)
            return std::nullopt;
        found = place;
    }
    return found;
}

std::vector<Passed> markersPassed(const Row& row, const Needle& before, const Needle& after,
                                  const LedgerLine& line, const Trace& trace)
{
    std::vector<Passed> passed;
    std::map<MarkerId, std::vector<int>> placesAfter;
    std::map<MarkerId, std::size_t> used;
    std::map<MarkerId, std::size_t> stood;
    for (const MarkerAt& marker : after.markers)
        placesAfter[marker.marker].push_back(marker.position);
    for (const MarkerAt& marker : before.markers)
        ++stood[marker.marker];

    const bool rs = row.side == Side::RS;
    for (const MarkerAt& marker : before.markers) {
        const std::vector<int>& places = placesAfter[marker.marker];
        if (movedBy(row, marker.marker, MoveKind::Remove))
            continue;
        // Others of its name were placed: which of them is it?
        const bool mixed =
            movedBy(row, marker.marker, MoveKind::Place) || places.size() != stood[marker.marker];
        const auto there =
            mixed ? placeNow(places, marker.position, trace) : std::optional(places[used[marker.marker]++]);
        if (!there || marker.position < line.firstTaken || marker.position > line.lastTaken)
            continue;
        const int now = *there;
        // What leaves nothing lies on the side of the marker where its loops were.
        const auto workedFirst = [&](const WorkedCell& cell) {
            if (cell.leaves > 0)
                return rs ? cell.firstMade + cell.leaves <= now : cell.firstMade >= now;
            return rs ? cell.firstLoop + cell.takesUp <= marker.position : cell.firstLoop >= marker.position;
        };
        std::size_t next = 0;
        while (next < trace.cells.size() && workedFirst(trace.cells[next]))
            ++next;
        const bool somethingFollows = next < trace.cells.size();
        const bool standsAtStart = next == 0 && somethingFollows && trace.cells[0].takesUp > 0;
        if (!somethingFollows || standsAtStart)
            continue;
        const bool unsure =
            trace.cells[next].takesUp == 0 || (next > 0 && trace.cells[next - 1].takesUp == 0);
        passed.push_back({marker.marker, next, unsure});
    }
    return passed;
}

// Where each worked cell stands in the tree: from the outermost sequence to the one it lies in, with the
// number of the time that sequence was gone through.
struct Step {
    RowSequence* sequence;
    std::size_t part;
    int round;
};
using Path = std::vector<Step>;

class Walk {
public:
    Walk(RowSequence& tree, const Trace& trace) : m_trace(trace) { sequence(tree, {}); }

    // Empty where the trace isn't that of the tree (a row cut short).
    std::vector<Path> take()
    {
        if (m_lost || m_paths.size() != m_trace.cells.size())
            m_paths.clear();
        return std::move(m_paths);
    }
    int rounds(const RowSequence* sequence) const
    {
        const auto found = m_rounds.find(sequence);
        return found == m_rounds.end() ? 0 : found->second;
    }
    int begun(const RowSequence* sequence) const
    {
        const auto found = m_begun.find(sequence);
        return found == m_begun.end() ? 0 : found->second;
    }

private:
    void sequence(RowSequence& at, Path path)
    {
        const int round = ++m_rounds[&at];
        path.push_back({&at, 0, round});
        for (std::size_t i = 0; i < at.parts.size() && !m_lost; ++i) {
            path.back().part = i;
            const RowPart& part = at.parts[i];
            if (!part.inside) {
                m_lost = m_paths.size() >= m_trace.cells.size() ||
                         m_trace.cells[m_paths.size()].column != part.column;
                m_paths.push_back(path);
                continue;
            }
            while (m_nextBox < m_trace.boxes.size() && m_trace.boxes[m_nextBox].box != part.box->id)
                ++m_nextBox;
            const int times = m_nextBox < m_trace.boxes.size() ? m_trace.boxes[m_nextBox++].times : 0;
            m_begun[part.inside.get()] += times > 0 ? 1 : 0;
            for (int time = 0; time < times && !m_lost; ++time)
                sequence(*part.inside, path);
        }
    }

    const Trace& m_trace;
    std::vector<Path> m_paths;
    std::size_t m_nextBox = 0;
    std::map<const RowSequence*, int> m_rounds; // how often gone through
    std::map<const RowSequence*, int> m_begun;  // how often begun
    bool m_lost = false;
};

constexpr std::size_t betweenRounds = static_cast<std::size_t>(-1);

// The markers that are met at one gap, with the time round in which they are.
struct Met {
    std::vector<std::pair<int, MarkerId>> markers;
};

// The gap between two worked cells, at the outermost level that holds both.
std::pair<Gap, int> gapBetween(const Path* before, const Path& after)
{
    if (!before)
        return {{after.front().sequence, after.front().part}, after.front().round};
    std::size_t depth = 0;
    while (depth + 1 < std::min(before->size(), after.size()) && (*before)[depth].part == after[depth].part &&
           (*before)[depth].round == after[depth].round)
        ++depth;
    const Step& from = (*before)[depth];
    const Step& to = after[depth];
    if (from.round != to.round)
        return {{to.sequence, betweenRounds}, to.round};
    return {{to.sequence, to.part}, to.round};
}

// One marker at each of n times round.
bool oncePerRound(const Met& met, int from, int to)
{
    if (static_cast<int>(met.markers.size()) != to - from + 1)
        return false;
    for (int i = 0; i < to - from + 1; ++i)
        if (met.markers[static_cast<std::size_t>(i)].first != from + i)
            return false;
    return true;
}

MarkerPhrase slipOf(const Met& met)
{
    const bool oneName = std::all_of(met.markers.begin(), met.markers.end(),
                                     [&](const auto& m) { return m.second == met.markers.front().second; });
    return {MarkerPhrase::Act::Slip, oneName ? met.markers.front().second : MarkerId{}};
}

class Teller {
public:
    Teller(RowSequence& tree, const Walk& walk, std::map<Gap, Met> met) : m_walk(walk), m_met(std::move(met))
    {
        joinRounds(tree);
        for (const auto& [gap, at] : m_met)
            if (gap.second != betweenRounds)
                tell(gap, at);
    }
    Said take() { return std::move(m_said); }

private:
    // "[k4, sm] 5 times": between the times round and after the last, or before the first.
    void joinRounds(RowSequence& outer)
    {
        for (std::size_t i = 0; i < outer.parts.size(); ++i) {
            if (!outer.parts[i].inside)
                continue;
            RowSequence& inner = *outer.parts[i].inside;
            joinRounds(inner);
            const auto between = m_met.find({&inner, betweenRounds});
            const int rounds = m_walk.rounds(&inner);
            if (between == m_met.end() || inner.parts.size() < 2 || m_walk.begun(&inner) != 1 ||
                !oncePerRound(between->second, 2, rounds))
                continue;
            for (const bool last : {true, false}) {
                const auto edge = m_met.find({&outer, last ? i + 1 : i});
                if (edge == m_met.end() || edge->second.markers.size() != 1)
                    continue;
                Met all = between->second;
                all.markers.push_back(edge->second.markers.front());
                m_said[{&inner, last ? inner.parts.size() : 0}].push_back(slipOf(all));
                m_met.erase(edge);
                break;
            }
        }
    }

    void tell(const Gap& gap, const Met& met)
    {
        const int rounds = m_walk.rounds(gap.first);
        if (rounds == 1) {
            for (const auto& [round, marker] : met.markers)
                m_said[gap].push_back({MarkerPhrase::Act::Slip, marker});
        } else if (oncePerRound(met, 1, rounds)) {
            m_said[gap].push_back(slipOf(met));
        }
    }

    const Walk& m_walk;
    std::map<Gap, Met> m_met;
    Said m_said;
};

constexpr int mostUnrolled = 1000; // what repeats in it is found again

struct OneWorking {
    Said said;
    std::vector<Unrolled> unroll;
};

OneWorking oneWorking(RowSequence& tree, const Row& row, const Pattern& pattern, const Catalogue& catalogue,
                      const Ledger& ledger, int line)
{
    const auto at = static_cast<std::size_t>(line);
    const Trace trace = traceOf(ledger, pattern, catalogue, line);
    std::vector<Passed> passed =
        markersPassed(row, ledger.before[at], ledger.before[at + 1], ledger.lines[at], trace);
    // In the order worked; the needle lists them from the right.
    if (row.side == Side::WS)
        std::reverse(passed.begin(), passed.end());
    std::stable_sort(passed.begin(), passed.end(),
                     [](const Passed& a, const Passed& b) { return a.before < b.before; });
    Walk walk(tree, trace);
    const std::vector<Path> paths = walk.take();
    if (paths.empty())
        return {};
    std::map<Gap, Met> met;
    std::vector<std::pair<Gap, const Box*>> unsure;
    for (const Passed& one : passed) {
        const auto [gap, round] =
            gapBetween(one.before > 0 ? &paths[one.before - 1] : nullptr, paths[one.before]);
        met[gap].markers.emplace_back(round, one.marker);
        if (one.unsure && gap.first != &tree)
            unsure.emplace_back(gap, tree.parts[paths[one.before].front().part].box);
    }
    OneWorking working{Teller(tree, walk, std::move(met)).take(), {}};
    for (const auto& [gap, box] : unsure) {
        const auto sequence = gap.first;
        const auto said = [&, sequence](std::size_t i) { return working.said.contains({sequence, i}); };
        const bool told =
            gap.second == betweenRounds ? said(0) || said(gap.first->parts.size()) : said(gap.second);
        for (const BoxWorked& worked : trace.boxes)
            if (!told && worked.box == box->id && worked.times <= mostUnrolled)
                working.unroll.push_back({box, worked.times});
    }
    return working;
}

bool saysSo(const Said& said, const std::pair<const Gap, std::vector<MarkerPhrase>>& entry)
{
    const auto found = said.find(entry.first);
    return found != said.end() && found->second == entry.second;
}

void write(RowSequence& sequence, const Said& said)
{
    for (std::size_t gap = 0; gap < sequence.gaps.size(); ++gap) {
        const auto found = said.find({&sequence, gap});
        if (found != said.end())
            sequence.gaps[gap].insert(sequence.gaps[gap].end(), found->second.begin(), found->second.end());
    }
    for (RowPart& part : sequence.parts)
        if (part.inside)
            write(*part.inside, said);
}

} // namespace

std::vector<Unrolled> sayMarkersPassed(RowSequence& tree, const Row& row, const Pattern& pattern,
                                       const Catalogue& catalogue, const Ledger& ledger,
                                       std::span<const int> lines)
{
    const auto bare = [&](int line) { return ledger.before[static_cast<std::size_t>(line)].markers.empty(); };
    if (lines.empty() || std::any_of(lines.begin(), lines.end(), bare))
        return {};
    auto [said, unroll] = oneWorking(tree, row, pattern, catalogue, ledger, lines.front());
    for (std::size_t i = 1; i < lines.size() && !(said.empty() && unroll.empty()); ++i) {
        const OneWorking again = oneWorking(tree, row, pattern, catalogue, ledger, lines[i]);
        std::erase_if(said, [&](const auto& entry) { return !saysSo(again.said, entry); });
        std::erase_if(unroll, [&](const Unrolled& one) {
            return std::none_of(again.unroll.begin(), again.unroll.end(),
                                [&](const Unrolled& o) { return o.box == one.box && o.times == one.times; });
        });
    }
    write(tree, said);
    return unroll;
}

} // namespace shawlwright
