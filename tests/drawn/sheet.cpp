// Prints pictures to look at: every symbol at several sizes, the marks, and a sample chart.
// drawn_sheet symbols|wedge|lace|page|low > picture.svg
#include "core/chart/draw.h"
#include "core/chart/symbols.h"
#include "core/files/builtin_catalogue.h"
#include "tests/drawn/sample.h"
#include "tests/drawn/svg_of.h"

#include <cstdio>
#include <cstring>

using namespace shawlwright;
using namespace shawlwright::chart;

namespace {

struct Sheet {
    chart::Drawing drawing;
    Group group;

    void addSymbol(const Symbol& symbol, double x, double y, double cell)
    {
        group.shapes.push_back(Stroke{rectangle({x, y, symbol.width * cell, cell}), 1, Ink::GridLine, false});
        for (const Shape& shape : symbolIn(symbol, {x, y, symbol.width * cell, cell}))
            group.shapes.push_back(shape);
    }
};

void symbolSheet(Sheet& sheet)
{
    double x = 20, y = 20;
    for (const Stitch& stitch : builtInCatalogue().builtIn()) {
        const Symbol symbol = symbolOf(stitch);
        const double room = std::max(symbol.width * 56.0, 96.0) + 14;
        if (x + room > 1500) {
            x = 20;
            y += 88;
        }
        sheet.addSymbol(symbol, x, y, 56);
        sheet.group.shapes.push_back(Text{{x, y + 69}, stitch.key, 11, Align::Left, Ink::Label, false});
        x += room;
    }
    y += 100;
    for (const double cell : {24.0, 16.0, 12.0, 8.0}) {
        x = 20;
        for (const Stitch& stitch : builtInCatalogue().builtIn()) {
            const Symbol symbol = symbolOf(stitch);
            if (x + symbol.width * cell > 1500) {
                x = 20;
                y += cell;
            }
            sheet.addSymbol(symbol, x, y, cell);
            x += symbol.width * cell;
        }
        y += cell + 14;
    }
    x = 80;
    for (const Side side : {Side::RS, Side::WS}) {
        for (int m = 0; m < 6; ++m) {
            const Symbol mark = turnMark(static_cast<TurnMethod>(m), side);
            sheet.group.shapes.push_back(Stroke{rectangle({x, y, 56, 56}), 1, Ink::GridLine, false});
            for (const Shape& shape : mark.shapes)
                sheet.group.shapes.push_back(moved(scaled(shape, 56, 56), side == Side::RS ? x + 56 : x, y));
            x += 70;
        }
    }
    for (const Symbol& mark : {slideMark(Side::RS), slideMark(Side::WS), bindOffMark(), breakYarnMark()}) {
        sheet.addSymbol(mark, x, y, 56);
        x += 70;
    }
    sheet.drawing.bounds = {0, 0, 1520, y + 80};
}

} // namespace

int main(int argc, char** argv)
{
    const std::string what = argc > 1 ? argv[1] : "symbols";
    const Catalogue& catalogue = builtInCatalogue();
    if (what == "symbols") {
        Sheet sheet;
        symbolSheet(sheet);
        sheet.drawing.groups.push_back(sheet.group);
        std::fputs(svgOf(sheet.drawing, {}, 1).c_str(), stdout);
        return 0;
    }
    const Sample sample = what == "lace" ? laceSample(catalogue) : wedgeSample(catalogue);
    ChartOptions options;
    if (what == "page") {
        options.firstRow = 2;
        options.lastRow = 7;
        options.firstColumn = 4;
        options.lastColumn = 17;
    }
    if (what == "low")
        options.cellHeight = 0.6;
    const auto drawing = chartOf({sample.section, sample.head, catalogue, sample.facts}, options);
    std::fputs(svgOf(drawing, sample.head, 30).c_str(), stdout);
    return 0;
}
