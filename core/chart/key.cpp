// What the key lists, and in which order.
#include "core/chart/chart.h"

#include <algorithm>
#include <set>

namespace shawlwright::chart {

namespace {

struct Found {
    std::set<StitchId> stitches;
    std::set<TurnMethod> turns;
    bool noStitch = false, resting = false, slips = false, slides = false, bindsOff = false, breaks = false;
    bool boxes = false, brackets = false, markers = false, removed = false;
};

void look(Found& found, const Section& section, const std::vector<RowFacts>& facts)
{
    const int columns = section.frame.columns;
    for (std::size_t r = 0; r < section.rows.size(); ++r) {
        const Row& row = *section.rows[r];
        std::set<int> resting;
        if (r < facts.size())
            resting.insert(facts[r].restingColumns.begin(), facts[r].restingColumns.end());
        for (int column = 1; column <= columns; ++column) {
            const Cell cell = cellAt(row, column);
            if (cell.stitch != noStitch) {
                found.stitches.insert(cell.stitch);
            } else if (resting.count(column) > 0) {
                found.resting = true;
            } else {
                found.noStitch = true;
            }
        }
        if (row.finish.kind == FinishKind::TurnEarly)
            found.turns.insert(row.finish.method);
        found.slides |= row.finish.kind == FinishKind::Slide;
        found.bindsOff |= row.finish.kind == FinishKind::BindOff;
        found.breaks |= row.finish.breaksYarn;
        found.slips |= row.start.kind == StartKind::AfterSlipping;
        for (const MarkerMove& move : row.moves)
            (move.kind == MoveKind::Remove ? found.removed : found.markers) = true;
    }
    found.boxes |= !section.frame.boxes.empty();
    found.brackets |= !section.frame.brackets.empty();
}

// Quiet stitches, yarn overs, decreases by size, increases, the rest in the catalogue's order.
int rank(const Stitch& stitch)
{
    if (stitch.key == "k" || stitch.key == "p")
        return 0;
    if (stitch.family == Family::Basic)
        return 1;
    if (stitch.family == Family::YarnOver)
        return 2;
    if (stitch.family == Family::Decrease)
        return 3 + stitch.takesUp;
    if (stitch.family == Family::Increase)
        return 200;
    return 201;
}

// Both sides wherever the words differ, so that the entry says what the symbol shows from the right side too.
std::string wordsOf(const Stitch& stitch, Words words)
{
    const std::string& rs = abbreviation(stitch, Side::RS, words);
    const std::string& ws = abbreviation(stitch, Side::WS, words);
    return rs == ws ? rs : "RS: " + rs + "; WS: " + ws;
}

const char* turnName(TurnMethod method)
{
    switch (method) {
    case TurnMethod::Plain:
        return "turn";
    case TurnMethod::WrapAndTurn:
        return "wrap the next stitch and turn";
    case TurnMethod::DoubleStitch:
        return "turn, then make a double stitch";
    case TurnMethod::YarnOver:
        return "turn, then begin with a yarn over";
    case TurnMethod::PinnedYarn:
        return "turn, a pin on the yarn";
    case TurnMethod::TwinStitch:
        return "make a twin stitch and turn";
    }
    return "";
}

} // namespace

std::vector<KeyEntry> keyOf(const Section& section, const Catalogue& catalogue)
{
    return keyOf({&section}, catalogue);
}

std::vector<KeyEntry> keyOf(const std::vector<const Section*>& sections, const Catalogue& catalogue,
                            const std::vector<std::vector<RowFacts>>& facts, Words words)
{
    Found found;
    static const std::vector<RowFacts> none;
    for (std::size_t i = 0; i < sections.size(); ++i)
        look(found, *sections[i], i < facts.size() ? facts[i] : none);

    std::vector<KeyEntry> entries;
    for (const StitchId id : found.stitches) {
        const Stitch& stitch = catalogue.stitch(id);
        entries.push_back({id, wordsOf(stitch, words), stitch.name, KeyKind::Stitch, TurnMethod::Plain});
    }
    std::stable_sort(entries.begin(), entries.end(), [&](const KeyEntry& a, const KeyEntry& b) {
        return rank(catalogue.stitch(a.stitch)) < rank(catalogue.stitch(b.stitch));
    });
    const auto add = [&](bool used, KeyKind kind, const char* name, TurnMethod method = TurnMethod::Plain) {
        if (used)
            entries.push_back({noStitch, {}, name, kind, method});
    };
    add(found.noStitch, KeyKind::NoStitch, "no stitch");
    add(found.resting, KeyKind::Resting, "stitch that rests, not worked");
    for (const TurnMethod method : found.turns)
        add(true, KeyKind::Turn, turnName(method), method);
    add(found.slips, KeyKind::Slip, "slip to the right needle, not worked");
    add(found.slides, KeyKind::Slide, "slide: do not turn, begin again at the other end");
    add(found.bindsOff, KeyKind::BindOff, "bind off at the end of the row");
    add(found.breaks, KeyKind::BreakYarn, "break the yarn");
    add(found.markers, KeyKind::Marker, "place marker; thin line: it stands here");
    add(found.removed, KeyKind::MarkerRemoved, "remove marker");
    add(found.boxes, KeyKind::StitchRepeat, "stitch repeat");
    add(found.brackets, KeyKind::RowRepeat, "row repeat");
    return entries;
}

} // namespace shawlwright::chart
