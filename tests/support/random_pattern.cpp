#include "tests/support/random_pattern.h"

#include "core/edits/marks.h"
#include "core/edits/motifs.h"
#include "core/edits/move_stitches.h"
#include "core/edits/paint.h"
#include "core/edits/rows.h"
#include "core/edits/sections.h"
#include "core/edits/selected.h"
#include "core/edits/times.h"
#include "core/edits/turned.h"
#include "core/files/builtin_catalogue.h"

namespace shawlwright::tests {
namespace {

class Chance {
public:
    explicit Chance(std::mt19937& random) : m_random(random) {}
    // From 0 to n - 1; the same numbers on every machine, unlike the standard distributions.
    int below(int n) { return n <= 1 ? 0 : static_cast<int>(m_random() % static_cast<unsigned>(n)); }
    bool oneIn(int n) { return below(n) == 0; }
    template <typename List>
    const auto& of(const List& list)
    {
        return list[static_cast<std::size_t>(below(static_cast<int>(std::size(list))))];
    }

private:
    std::mt19937& m_random;
};

const char* const commonStitches[] = {"k", "k", "k", "p", "p", "yo", "k2tog", "ssk", "yo2", "kfb", "sl", "m1l"};
const char* const rareStitches[] = {"s2kp", "s2k3p", "kpk", "kyok", "brk", "brp", "sl1yo", "ds", "bo", "co", "yo2_k1p1",
                                    "yo2_k1p1k1p1", "k3tog", "c1_1_rc", "k_tbl", "drop_st"};

StitchId anyStitch(Chance& chance)
{
    const Catalogue& catalogue = builtInCatalogue();
    const char* key = chance.oneIn(5) ? chance.of(rareStitches) : chance.of(commonStitches);
    return catalogue.find(key).value_or(catalogue.require("k"));
}

Quantity anyQuantity(Chance& chance, const PatternHead& head, int most)
{
    if (head.sizes.size() < 2 || chance.oneIn(2))
        return Quantity(1 + chance.below(most));
    std::vector<int> values;
    for (std::size_t i = 0; i < head.sizes.size(); ++i)
        values.push_back(1 + chance.below(most));
    return Quantity(std::move(values));
}

Row anyRow(Chance& chance, const PatternHead& head, int columns, RowId id, Side side)
{
    Row row;
    row.id = id;
    row.side = chance.oneIn(12) ? otherSide(side) : side;
    row.yarn = chance.oneIn(4) ? YarnId{2} : YarnId{1};
    row.cells.resize(static_cast<std::size_t>(columns));
    for (int column = 1; column <= columns;) {
        const StitchId stitch = chance.oneIn(9) ? noStitch : anyStitch(chance);
        const int width = stitch == noStitch ? 1 : builtInCatalogue().stitch(stitch).width();
        if (column + width - 1 <= columns && stitch != noStitch)
            row = painted(std::move(row), builtInCatalogue(), column, stitch, chance.oneIn(20) ? YarnId{2} : YarnId{});
        column += width;
    }
    if (chance.oneIn(8))
        row.start = {StartKind::AfterSlipping, anyQuantity(chance, head, 4), chance.oneIn(2)};
    else if (chance.oneIn(12))
        row.start.kind = StartKind::AtEdge;
    row.start.joins = row.start.joins || chance.oneIn(5);
    if (chance.oneIn(4))
        row.finish = {FinishKind::TurnEarly, static_cast<TurnMethod>(chance.below(6)), chance.oneIn(10)};
    else if (chance.oneIn(8))
        row.finish.kind = FinishKind::Slide;
    else if (chance.oneIn(25))
        row.finish.kind = chance.oneIn(2) ? FinishKind::Round : FinishKind::BindOff;
    if (chance.oneIn(8))
        row.stated = anyQuantity(chance, head, 30);
    if (chance.oneIn(20))
        row.note = "keep \"an eye\" on the edge";
    if (chance.oneIn(25))
        row.label = "12a";
    if (!head.markers.empty() && chance.oneIn(3))
        row.moves.push_back({chance.of(head.markers).id, chance.below(columns + 1), static_cast<MoveKind>(chance.below(3)),
                             chance.oneIn(5) ? MoveReach::EachTime : MoveReach::Once});
    return row;
}

Box anyBox(Chance& chance, const PatternHead& head, const Section& section)
{
    Box box;
    const int rows = static_cast<int>(section.rows.size());
    const int first = chance.below(rows);
    const int last = std::min(rows - 1, first + chance.below(3));
    box.firstRow = section.rows[static_cast<std::size_t>(first)]->id;
    box.lastRow = section.rows[static_cast<std::size_t>(last)]->id;
    box.firstColumn = 1 + chance.below(section.frame.columns);
    box.lastColumn = std::min(section.frame.columns, box.firstColumn + chance.below(5));
    box.until = static_cast<BoxUntil>(chance.below(4));
    if (box.until == BoxUntil::Marker && head.markers.empty())
        box.until = BoxUntil::RowEnd;
    if (box.until == BoxUntil::Marker)
        box.marker = chance.of(head.markers).id;
    if (box.until == BoxUntil::Times)
        box.times = anyQuantity(chance, head, 4);
    else
        box.leaving = Quantity(chance.below(5));
    return box;
}

void performIfPossible(Pattern& pattern, const Result<Edit>& edit)
{
    if (edit.ok() && !edit.value().empty())
        apply(pattern, edit.value());
}

// Saved from somewhere in the pattern.
Result<Edit> anyMotif(Chance& chance, const Pattern& pattern)
{
    const Section& section = chance.of(pattern.sections);
    const int rows = static_cast<int>(section.rows.size());
    const int columns = section.frame.columns;
    const int row = chance.below(rows), column = 1 + chance.below(columns);
    auto motif = motifOf(pattern, builtInCatalogue(), section.id,
                         Area{row, std::min(rows - 1, row + chance.below(3)), column,
                              std::min(columns, column + chance.below(5))},
                         "motif " + std::to_string(chance.below(20)));
    if (!motif.ok())
        return motif.fault();
    return addMotif(pattern, std::move(motif).take());
}

// What is done to a selection.
Result<Edit> anySelectionEdit(Chance& chance, const Pattern& pattern, const Section& section)
{
    const Catalogue& catalogue = builtInCatalogue();
    const int rows = static_cast<int>(section.rows.size()), columns = section.frame.columns;
    const auto anyArea = [&] {
        const int row = chance.below(rows), column = 1 + chance.below(columns);
        return Area{row, std::min(rows - 1, row + chance.below(3)), column, std::min(columns, column + chance.below(4))};
    };
    const auto editOf = [](auto made) { return made.ok() ? Result<Edit>(made.value().edit) : Result<Edit>(made.fault()); };
    const Area area = anyArea();
    const Areas areas = joined({area}, anyArea());
    switch (chance.below(8)) {
    case 0:
        return moveStitches(pattern, catalogue, section.id, areas, chance.below(3) - 1, chance.below(3) - 1,
                            chance.oneIn(2) ? Leaving::NoStitch : Leaving::TheStitches);
    case 1:
        return shiftPart(pattern, catalogue, section.id, area, chance.oneIn(2) ? Part::Left : Part::Right,
                         chance.oneIn(2) ? Gap::Open : Gap::Close);
    case 2:
        return editOf(mirrored(pattern, catalogue, section.id, area));
    case 3:
        return editOf(upsideDown(pattern, catalogue, section.id, area));
    case 4:
        return editOf(putDownTimes(pattern, catalogue, section.id, area, static_cast<Along>(chance.below(4)),
                                   1 + chance.below(2)));
    case 5:
        return deleteRows(pattern, section.id, rowRuns(areas));
    case 6:
        return deleteColumns(pattern, catalogue, section.id, columnRuns(areas));
    default:
        return chance.oneIn(2) ? erase(pattern, catalogue, section.id, areas)
                               : fill(pattern, catalogue, section.id, areas, anyStitch(chance));
    }
}

} // namespace

Pattern randomPattern(std::mt19937& random, const RandomWishes& wishes)
{
    Chance chance(random);
    Pattern pattern;
    PatternHead& head = pattern.head;
    head.title = "Random";
    head.yarns = {{YarnId{1}, "MC", "moss", 0x556b2f, 1, 400, 100}, {YarnId{2}, "CC", "chalk", 0xf0ead6, -1, 0, 0}};
    head.markers = {{MarkerId{1}, "A"}, {MarkerId{2}, "B"}};
    if (!wishes.oneSize && chance.oneIn(3))
        head.sizes = {"small", "large"};
    if (!wishes.oneSize && chance.oneIn(3))
        head.versions = {"plain", "fancy"};
    head.castOn = {anyQuantity(chance, head, 3 * wishes.columns), YarnId{1}, "", chance.oneIn(3) ? Side::WS : Side::RS};
    std::uint32_t rowId = 0;
    for (int s = 0; s < wishes.sections; ++s) {
        Section section;
        section.id = SectionId{static_cast<std::uint32_t>(s + 1)};
        section.frame.title = "Part " + std::to_string(s + 1);
        section.frame.columns = 2 + chance.below(wishes.columns);
        if (!head.versions.empty() && chance.oneIn(3))
            section.frame.versions = {chance.of(head.versions)};
        const int rows = 1 + chance.below(wishes.rows);
        Side side = chance.oneIn(2) ? Side::WS : Side::RS;
        for (int r = 0; r < rows; ++r) {
            section.rows.push_back(
                std::make_shared<const Row>(anyRow(chance, head, section.frame.columns, RowId{++rowId}, side)));
            side = section.rows.back()->finish.kind == FinishKind::Slide ? section.rows.back()->side
                                                                        : otherSide(section.rows.back()->side);
        }
        pattern.sections.push_back(std::move(section));
        const SectionId id = pattern.sections.back().id;
        for (int b = chance.below(4); b > 0; --b)
            performIfPossible(pattern, addBox(pattern, id, anyBox(chance, head, pattern.sections.back())));
        for (int b = chance.below(3); b > 0; --b) {
            const int first = chance.below(rows);
            performIfPossible(pattern, addBracket(pattern, id, first, std::min(rows - 1, first + chance.below(4)),
                                                  anyQuantity(chance, head, 4)));
        }
    }
    if (chance.oneIn(3))
        performIfPossible(pattern, anyMotif(chance, pattern));
    return pattern;
}

Result<Edit> randomEdit(std::mt19937& random, const Pattern& pattern)
{
    Chance chance(random);
    const Catalogue& catalogue = builtInCatalogue();
    const Section& section = chance.of(pattern.sections);
    const int rows = static_cast<int>(section.rows.size());
    const int columns = std::max(1, section.frame.columns);
    const At at{chance.below(std::max(1, rows)), 1 + chance.below(columns)};
    if (rows == 0)
        return insertRows(pattern, section.id, 0, 2);
    switch (chance.below(24)) {
    case 0:
    case 1:
    case 2:
    case 3: {
        const At cells[] = {at, {at.row, std::min(columns, at.column + 1)}};
        return paint(pattern, catalogue, section.id, cells, anyStitch(chance));
    }
    case 4: {
        const Area area{at.row, std::min(rows - 1, at.row + 2), at.column, std::min(columns, at.column + 3)};
        return fill(pattern, catalogue, section.id, area, anyStitch(chance));
    }
    case 5: {
        const At cells[] = {at};
        return erase(pattern, catalogue, section.id, cells);
    }
    case 6: {
        Row row = anyRow(chance, pattern.head, columns, section.rows[static_cast<std::size_t>(at.row)]->id, Side::RS);
        return setRow(pattern, section.id, at.row, std::move(row), "change row");
    }
    case 7:
        return insertRows(pattern, section.id, chance.below(rows + 1), 1 + chance.below(3));
    case 8:
        return deleteRows(pattern, section.id, at.row, std::min(rows - 1, at.row + chance.below(2)));
    case 9:
        return insertColumns(pattern, section.id, chance.below(columns + 1), 1 + chance.below(2));
    case 10:
        return deleteColumns(pattern, catalogue, section.id, at.column, at.column);
    case 11:
        return addBox(pattern, section.id, anyBox(chance, pattern.head, section));
    case 12:
        return addBracket(pattern, section.id, at.row, std::min(rows - 1, at.row + chance.below(3)), Quantity(1 + chance.below(3)));
    case 13:
        return placeNewMarker(pattern, section.id, at.row, chance.below(columns + 1));
    case 14:
        return duplicateRows(pattern, section.id, at.row, std::min(rows - 1, at.row + 1));
    case 15: {
        PatternHead head = pattern.head;
        head.castOn.stitches = Quantity(chance.below(3 * columns));
        return setHead(pattern, std::move(head), "change cast-on");
    }
    case 16:
        if (pattern.sections.size() < 5 && chance.oneIn(2))
            return duplicateSection(pattern, section.id);
        return moveSection(pattern, section.id, chance.below(static_cast<int>(pattern.sections.size())));
    case 17:
        return columns > 0 ? anyMotif(chance, pattern) : Result<Edit>(Edit{});
    case 18:
        if (!pattern.head.motifs.empty())
            return stampMotif(pattern, catalogue, section.id, at,
                              chance.oneIn(2) ? chance.of(pattern.head.motifs)
                                              : mirroredMotif(chance.of(pattern.head.motifs), catalogue));
        return anyMotif(chance, pattern);
    case 19: {
        const auto motif = static_cast<std::size_t>(chance.below(3));
        return chance.oneIn(2) ? deleteMotif(pattern, motif)
                               : renameMotif(pattern, motif, "renamed " + std::to_string(chance.below(20)));
    }
    case 20:
    case 21:
    case 22:
        return anySelectionEdit(chance, pattern, section);
    default:
        if (!section.frame.boxes.empty() && chance.oneIn(2))
            return deleteBox(pattern, section.id, chance.of(section.frame.boxes).id);
        return shiftRow(pattern, catalogue, section.id, at.row, chance.oneIn(2) ? 1 : -1);
    }
}

} // namespace shawlwright::tests
