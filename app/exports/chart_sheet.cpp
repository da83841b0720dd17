#include "app/exports/chart_sheet.h"

#include "core/base/text.h"
#include "core/wording/writer/writer.h"

#include <algorithm>

namespace shawlwright::app {

namespace {

// The pattern with nothing but the part in the section that it is of: what lies between its areas is not
// drawn.
Pattern withPartAlone(Pattern pattern, SectionId id, const Areas& part)
{
    const int at = sectionIndex(pattern, id);
    if (at < 0 || part.size() < 2)
        return pattern;
    Section& section = pattern.sections[static_cast<std::size_t>(at)];
    const Area whole = *around(part);
    for (int row = whole.firstRow; row <= whole.lastRow; ++row) {
        RowRef& ref = section.rows[static_cast<std::size_t>(row)];
        Row alone = *ref;
        for (std::size_t column = 0; column < alone.cells.size(); ++column)
            if (!holds(part, At{row, static_cast<int>(column) + 1}))
                alone.cells[column] = Cell{};
        ref = std::make_shared<const Row>(std::move(alone));
    }
    return pattern;
}

std::string joinedTitle(const std::string& title, const std::string& choice)
{
    return title.empty() || choice.empty() ? title + choice : title + " – " + choice;
}

} // namespace

Result<ChartSheet> chartSheet(const Pattern& pattern, const Catalogue& catalogue,
                              const ExportOptions& options)
{
    const ToldRuns told = runsToTell(pattern, catalogue, options.choice.version,
                                     options.everySize ? std::nullopt : std::optional(options.choice.size));
    const std::string choice = choiceInWords(pattern, options);
    ChartSheet sheet;
    sheet.cellMm = options.cellMm;
    chart::ChartOptions drawn;
    drawn.title = false; // set above each chart in one size, whatever the cells'
    const std::optional<Area> part = options.section ? around(options.part) : std::nullopt;
    if (part) {
        drawn.key = false;
        drawn.firstRow = part->firstRow;
        drawn.lastRow = part->lastRow;
        drawn.firstColumn = part->firstColumn;
        drawn.lastColumn = part->lastColumn;
        // The count of a row says nothing of a part of it.
        const int at = sectionIndex(pattern, *options.section);
        drawn.counts = at >= 0 && options.part.size() == 1 && part->firstColumn == 1 &&
                       part->lastColumn == pattern.sections[static_cast<std::size_t>(at)].frame.columns;
    }
    const Pattern shown = part ? withPartAlone(pattern, *options.section, options.part) : pattern;
    double y = sheetMarginMm;
    double widest = 0;
    for (const SectionChart& chart : sectionCharts(pattern, catalogue, told.versions.front().bySize, options)) {
        PlacedChart placed;
        placed.section = chart.section;
        placed.title = part ? std::string() : joinedTitle(chart.title, choice);
        placed.rows =
            drawn.lastRow < 0 ? static_cast<int>(chart.facts.size()) : drawn.lastRow - drawn.firstRow + 1;
        placed.columns = part ? part->lastColumn - part->firstColumn + 1
                              : pattern.sections[static_cast<std::size_t>(chart.section)].frame.columns;
        drawn.notes = chart.notShown;
        placed.drawing = drawingOf(chart, shown, catalogue, drawn);
        const chart::Rect& bounds = placed.drawing.bounds;
        if (!sheet.charts.empty())
            y += 2 * sheetMarginMm;
        if (!placed.title.empty()) {
            placed.titleAt = {sheetMarginMm, y + sheetTitleMm * 0.8};
            y += sheetTitleMm + sheetMarginMm * 0.5;
            widest = std::max(widest, codePoints(placed.title) * sheetTitleMm * 0.62);
        }
        placed.origin = {sheetMarginMm - bounds.x * options.cellMm, y - bounds.y * options.cellMm};
        y += bounds.height * options.cellMm;
        widest = std::max(widest, bounds.width * options.cellMm);
        sheet.charts.push_back(std::move(placed));
    }
    if (sheet.charts.empty())
        return Fault{{},
                     {},
                     "There is no chart to draw: no section of this version has rows in a grid. "
                     "A text (.txt) or PDF holds the words."};
    sheet.widthMm = widest + 2 * sheetMarginMm;
    sheet.heightMm = y + sheetMarginMm;
    return sheet;
}

} // namespace shawlwright::app
