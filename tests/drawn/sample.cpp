#include "tests/drawn/sample.h"

#include <sstream>

namespace shawlwright::chart {

namespace {

RowRef rowOf(const Catalogue& catalogue, std::uint32_t id, Side side, std::uint8_t yarn,
             const std::string& keys, Finish finish = {}, std::vector<MarkerMove> moves = {},
             Start start = {})
{
    Row row;
    row.id = RowId{id};
    row.side = side;
    row.yarn = YarnId{yarn};
    row.cells = cellsOf(catalogue, keys);
    row.finish = finish;
    row.moves = std::move(moves);
    row.start = start;
    return std::make_shared<const Row>(row);
}

std::vector<int> columnsFromTo(int first, int last)
{
    std::vector<int> columns;
    for (int column = first; column <= last; ++column)
        columns.push_back(column);
    return columns;
}

} // namespace

std::vector<Cell> cellsOf(const Catalogue& catalogue, const std::string& keys)
{
    std::vector<Cell> cells;
    std::istringstream words(keys);
    std::string word;
    while (words >> word) {
        int times = 1;
        if (const auto star = word.find('*'); star != std::string::npos) {
            times = std::stoi(word.substr(star + 1));
            word.resize(star);
        }
        const StitchId id = word == "." ? noStitch : catalogue.require(word);
        for (int i = 0; i < times; ++i)
            for (int part = 0; part < catalogue.stitch(id).width(); ++part)
                cells.push_back({id, {}, static_cast<std::uint8_t>(part)});
    }
    return cells;
}

Sample wedgeSample(const Catalogue& catalogue)
{
    Sample s;
    s.head.yarns = {{YarnId{1}, "MC", "sand", 0xE8C16B, -1, 0, 0},
                    {YarnId{2}, "CC", "deep sea", 0x35557F, -1, 0, 0}};
    s.head.markers = {{MarkerId{1}, "A"}, {MarkerId{2}, "B"}};
    s.section.id = SectionId{1};
    s.section.frame.title = "Right wing";
    s.section.frame.columns = 22;
    const Finish early{FinishKind::TurnEarly, TurnMethod::Plain, false};
    const Finish doubled{FinishKind::TurnEarly, TurnMethod::DoubleStitch, false};
    const MarkerId a{1}, b{2};
    auto& rows = s.section.rows;
    rows.push_back(
        rowOf(catalogue, 1, Side::RS, 1, "k*2 yo k*17 . .", early, {{a, 14, MoveKind::Place, {}}}));
    rows.push_back(rowOf(catalogue, 2, Side::WS, 1, "p*2 k*17 sl . ."));
    rows.push_back(rowOf(catalogue, 3, Side::RS, 2, "k*4 k2tog yo k*2 k2tog yo k*6 . . . . . .", early));
    rows.push_back(rowOf(catalogue, 4, Side::WS, 2, "p*15 sl . . . . . ."));
    rows.push_back(rowOf(catalogue, 5, Side::RS, 1, "k*2 yo k*9 . . . . . . . . . .", doubled,
                         {{b, 6, MoveKind::Place, {}}}));
    rows.push_back(rowOf(catalogue, 6, Side::WS, 1, "p*2 k*9 ds . . . . . . . . . ."));
    rows.push_back(rowOf(catalogue, 7, Side::RS, 2, ". . . s2kp k*4 . . . . . . . . . . . . . .", early,
                         {{b, 7, MoveKind::Shift, {}}}, {StartKind::AfterSlipping, 3, true}));
    rows.push_back(rowOf(catalogue, 8, Side::WS, 2, "p*7 sl . . . . . . . . . . . . . .",
                         {FinishKind::Turn, TurnMethod::Plain, true}));
    rows.push_back(rowOf(catalogue, 9, Side::RS, 1, "k*2 yo k*19",
                         {FinishKind::Slide, TurnMethod::Plain, false}, {{b, 7, MoveKind::Remove, {}}}));
    rows.push_back(rowOf(catalogue, 10, Side::RS, 2, "k*22", {FinishKind::BindOff, TurnMethod::Plain, true},
                         {{a, 14, MoveKind::Remove, {}}}));
    Box eyelets;
    eyelets.id = BoxId{1};
    eyelets.firstRow = eyelets.lastRow = RowId{3};
    eyelets.firstColumn = 5;
    eyelets.lastColumn = 8;
    eyelets.until = BoxUntil::LastTurn;
    eyelets.leaving = 4;
    Box ground;
    ground.id = BoxId{2};
    ground.firstRow = RowId{1};
    ground.lastRow = RowId{2};
    ground.firstColumn = 9;
    ground.lastColumn = 14;
    ground.until = BoxUntil::Times;
    ground.times = 3;
    s.section.frame.boxes = {eyelets, ground};
    s.section.frame.brackets = {{RowId{1}, RowId{4}, 10}, {RowId{3}, RowId{4}, 2}};
    const int resting[] = {2, 2, 6, 6, 10, 10, 14, 14, 0, 0};
    const int after[] = {62, 62, 62, 62, 63, 63, 61, 61, 62, 0};
    for (int i = 0; i < 10; ++i) {
        RowFacts facts;
        facts.before = i == 0 ? 61 : after[i - 1];
        facts.after = after[i];
        facts.restingColumns = columnsFromTo(22 - resting[i] + 1, 22);
        facts.fault = i == 6;
        s.facts.push_back(facts);
    }
    return s;
}

Sample laceSample(const Catalogue& catalogue)
{
    Sample s;
    s.head.yarns = {{YarnId{1}, "A", "flax", 0xD8D2C4, -1, 0, 0}};
    s.section.id = SectionId{1};
    s.section.frame.title = "Leaf edging";
    s.section.frame.columns = 15;
    auto& rows = s.section.rows;
    rows.push_back(rowOf(catalogue, 1, Side::RS, 1, "k yo k ssk . k k2tog k yo k yo k k2tog . ssk"));
    rows.push_back(rowOf(catalogue, 2, Side::WS, 1, "k*4 . k*8 . k"));
    rows.push_back(rowOf(catalogue, 3, Side::RS, 1, "k yo k*2 . . s2kp k*2 yo k*3 . k yo"));
    rows.push_back(rowOf(catalogue, 4, Side::WS, 1, "p k*3 . . k*6 . p*2"));
    rows.push_back(
        rowOf(catalogue, 5, Side::RS, 1, "k yo2 k2tog k nupp5 k_tbl c1_1_rc k*2 sssk m1l yo k2tog"));
    rows.push_back(rowOf(catalogue, 6, Side::WS, 1, "k yo2_k1p1 k*2 p7tog p c1_1_lpc k brk brp k*2 k"));
    const auto box = [&](std::uint32_t id, std::uint32_t first, std::uint32_t last, int right, int left) {
        Box b;
        b.id = BoxId{id};
        b.firstRow = RowId{first};
        b.lastRow = RowId{last};
        b.firstColumn = right;
        b.lastColumn = left;
        return b;
    };
    s.section.frame.boxes = {box(1, 1, 6, 2, 13), box(2, 1, 4, 2, 7), box(3, 1, 2, 2, 4)};
    s.section.frame.boxes[0].until = BoxUntil::RowEnd;
    s.section.frame.boxes[0].leaving = 2;
    s.section.frame.boxes[2].times = Quantity(std::vector<int>{3, 4, 5});
    return s;
}

} // namespace shawlwright::chart
