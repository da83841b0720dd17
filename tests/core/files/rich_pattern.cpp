#include "tests/core/files/rich_pattern.h"

#include "core/files/builtin_catalogue.h"

namespace shawlwright::tests {
namespace {

constexpr YarnId contrast{7};

Stitch bigNupp()
{
    Stitch stitch;
    stitch.id = StitchId{1003};
    stitch.key = "nupp11";
    stitch.name = "nupp of \"eleven\"";
    stitch.family = Family::Nupp;
    stitch.onRS = stitch.onWS = "nupp11";
    stitch.sameOnBothSides = true;
    stitch.howToRS = "Knit into it eleven times.\nPull up each loop well.";
    stitch.howToWS = "Purl all together.";
    stitch.drawing = Drawing::Disc;
    stitch.drawingNumber = 11;
    stitch.strokes = "0.1,0.2 0.8,0.9; 0.5,0.5 0.5,0.8";
    stitch.source = "common practice, no source";
    stitch.unknown = R"({"tempo": [1, 2.50]})";
    return stitch;
}

Stitch ownCable()
{
    Stitch stitch;
    stitch.id = StitchId{1001};
    stitch.key = "c2over1_p";
    stitch.family = Family::Cable;
    stitch.takesUp = stitch.leaves = 3;
    stitch.columns = 3;
    stitch.lean = Lean::Left;
    stitch.heads = {HeadKind::Knit, HeadKind::Purl, HeadKind::YarnOver};
    stitch.face = Face::Purl;
    stitch.manner = Manner::Slipped;
    stitch.onRS = "2/1 LPC";
    stitch.onWS = "2/1 LPC on WS";
    stitch.onRSUK = "C3L";
    stitch.onWSUK = "C3L on WS";
    stitch.mirror = "c2over1_p";
    stitch.drawing = Drawing::Crossing;
    stitch.crossing = {2, 1, true, R"({"twist": true})"};
    return stitch;
}

std::vector<Cell> ownCells(StitchId id, int width)
{
    std::vector<Cell> cells;
    for (int part = 0; part < width; ++part)
        cells.push_back({id, {}, static_cast<std::uint8_t>(part)});
    return cells;
}

PatternHead richHead()
{
    PatternHead head;
    head.title = "Ebb & \"flow\" \\ Grüße";
    head.designer = "N. N.";
    head.introduction = "Two lines,\nand a\ttab; \x01 too.";
    head.notes = "Wash it.";
    head.yarns = {Yarn{YarnId{1}, "MC", "Moor", 0x3a5f2b, 2, 437.5, 100, R"({"dye lot": "7b"})"},
                  Yarn{contrast, "CC", "", 0xffffff, -1, 0, 0},
                  Yarn{YarnId{2}, "a blank", "odd code", 0, 0, 0.1, 25}};
    head.markers = {Marker{MarkerId{1}, "A"}, Marker{MarkerId{5}, "the middle", R"({"ring": "red"})"}};
    head.needleMm = 3.25;
    head.gauge = {18.3, 36, "garter stitch, blocked", R"({"swatch": null})"};
    head.castOn = {Quantity({7, 9, 11}), YarnId{1}, "long tail", Side::WS, R"({"tail": "1 m"})"};
    head.versions = {"garter", "brioche"};
    head.sizes = {"S", "M", "L"};
    head.stitches = {ownCable(), bigNupp()};
    head.style = {{"words", "UK"}, {"counts", "always"}};
    head.unknown = R"({"future": {"deep": [true, "a , b : c \" \\"]}, "zero": 1.0})";
    return head;
}

} // namespace

std::vector<Cell> cellsOf(const char* key, int times, YarnId yarn)
{
    const Catalogue& catalogue = builtInCatalogue();
    const StitchId id = catalogue.require(key);
    std::vector<Cell> cells;
    for (int i = 0; i < times; ++i)
        for (int part = 0; part < catalogue.stitch(id).width(); ++part)
            cells.push_back({id, yarn, static_cast<std::uint8_t>(part)});
    return cells;
}

std::vector<Cell> operator+(std::vector<Cell> a, const std::vector<Cell>& b)
{
    a.insert(a.end(), b.begin(), b.end());
    return a;
}

Row rowOf(std::uint32_t id, Side side, std::vector<Cell> cells, int columns)
{
    Row row;
    row.id = RowId{id};
    row.side = side;
    row.yarn = YarnId{1};
    row.cells = std::move(cells);
    row.cells.resize(static_cast<std::size_t>(columns));
    return row;
}

Pattern richPattern()
{
    Pattern pattern;
    pattern.head = richHead();

    Section wing;
    wing.id = SectionId{4};
    wing.frame.title = "Left wing";
    wing.frame.note = "Begins at the tip.";
    wing.frame.versions = {"garter"};
    wing.frame.columns = 24;
    wing.frame.words = "As you like it.";
    wing.frame.unknown = R"({"page": "break"})";

    Row first = rowOf(12, Side::WS,
                      cellsOf("k", 12) + cellsOf("yo") + cellsOf("k2tog", 3) + cellsOf("no_st", 2) +
                          ownCells(StitchId{1001}, 3) + ownCells(StitchId{1001}, 3));
    first.start = {StartKind::AfterSlipping, Quantity({6, 7, 8}), true};
    first.finish = {FinishKind::TurnEarly, TurnMethod::WrapAndTurn, true};
    first.moves = {{MarkerId{5}, 12, MoveKind::Place, MoveReach::Once},
                   {MarkerId{1}, 3, MoveKind::Remove, MoveReach::EachTime},
                   {MarkerId{1}, 24, MoveKind::Shift, MoveReach::Once, R"({"slack": 0})"}};
    first.stated = Quantity({20, 30, 40});
    first.label = "12a";
    first.note = "Mind the gap.";
    first.words = "Knit to the middle.";
    first.unknown = R"({"mood": "calm", "heat": 1e-3})";

    Row second = rowOf(3, Side::RS,
                       cellsOf("no_st", 2, contrast) + cellsOf("p", 3, contrast) + cellsOf("k") +
                           cellsOf("k", 2, YarnId{2}) + cellsOf("yo2", 2) + ownCells(StitchId{1003}, 1));
    second.yarn = contrast;
    second.start.kind = StartKind::AtEdge;
    second.finish.kind = FinishKind::Slide;
    second.stated = Quantity(0);
    Row third = rowOf(40, Side::RS, {});
    third.finish.kind = FinishKind::BindOff;
    wing.rows = {std::make_shared<Row>(first), std::make_shared<Row>(second), std::make_shared<Row>(third)};
    wing.frame.boxes = {
        Box{BoxId{2}, RowId{12}, RowId{12}, 1, 12, BoxUntil::Times, Quantity({2, 3, 4}), {}, Quantity(0)},
        Box{BoxId{9}, RowId{12}, RowId{12}, 2, 3, BoxUntil::Marker, Quantity(2), MarkerId{5}, Quantity(1)},
        Box{BoxId{1},
            RowId{3},
            RowId{40},
            20,
            20,
            BoxUntil::LastTurn,
            Quantity(6),
            {},
            Quantity({1, 2, 3}),
            R"({"edge": 1})"}};
    wing.frame.brackets = {Bracket{RowId{12}, RowId{40}, Quantity({4, 5, 6})},
                           Bracket{RowId{12}, RowId{3}, Quantity(2), R"({"why": "more"})"}};

    Section empty;
    empty.id = SectionId{1};
    pattern.sections = {wing, empty};
    return pattern;
}

} // namespace shawlwright::tests
