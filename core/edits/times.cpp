#include "core/edits/times.h"

#include "core/base/text.h"
#include "core/edits/chart_clip.h"
#include "core/edits/checks.h"
#include "core/edits/rows.h"

namespace shawlwright {
namespace {

int heightOf(const Area& area)
{
    return area.lastRow - area.firstRow + 1;
}
int widthOf(const Area& area)
{
    return area.lastColumn - area.firstColumn + 1;
}

Area copiesOf(const Area& area, Along along, int times)
{
    Area over = area;
    const int rows = times * heightOf(area), columns = times * widthOf(area);
    if (along == Along::Left) {
        over.firstColumn = area.lastColumn + 1;
        over.lastColumn = area.lastColumn + columns;
    } else if (along == Along::Right) {
        over.firstColumn = area.firstColumn - columns;
        over.lastColumn = area.firstColumn - 1;
    } else {
        over.firstRow = area.lastRow + 1;
        over.lastRow = area.lastRow + rows;
    }
    return over;
}

Result<Edit> inNewRows(const Pattern& pattern, const Section& section, const Area& area, int times,
                       const std::string& name)
{
    const Row* below = section.rows[static_cast<std::size_t>(area.lastRow)].get();
    const bool rounds = below->finish.kind == FinishKind::Round;
    Side side = below->finish.kind == FinishKind::Slide || rounds ? below->side : otherSide(below->side);
    std::vector<Row> rows;
    for (int i = 0; i < times * heightOf(area); ++i) {
        const Row& from = *section.rows[static_cast<std::size_t>(area.firstRow + i % heightOf(area))];
        Row row;
        row.yarn = from.yarn;
        row.side = side;
        if (rounds)
            row.finish.kind = FinishKind::Round;
        else
            side = otherSide(side);
        row.cells.resize(static_cast<std::size_t>(section.frame.columns));
        for (int column = area.firstColumn; column <= area.lastColumn; ++column)
            row.cells[static_cast<std::size_t>(column) - 1] = cellAt(from, column);
        rows.push_back(std::move(row));
    }
    return insertRows(pattern, section.id, area.lastRow + 1, std::move(rows), name);
}

} // namespace

int timesThatFit(const Pattern& pattern, SectionId id, const Area& area, Along along)
{
    if (sectionFault(pattern, id) || area.lastRow < area.firstRow || area.lastColumn < area.firstColumn)
        return 0;
    const Section& section = sectionIn(pattern, id);
    const int rows = static_cast<int>(section.rows.size());
    switch (along) {
    case Along::Up:
        return (rows - 1 - area.lastRow) / heightOf(area);
    case Along::UpNewRows:
        return (mostRows - rows) / heightOf(area);
    case Along::Left:
        return (section.frame.columns - area.lastColumn) / widthOf(area);
    case Along::Right:
        return (area.firstColumn - 1) / widthOf(area);
    }
    return 0;
}

Result<Times> putDownTimes(const Pattern& pattern, const Catalogue& catalogue, SectionId id, const Area& area,
                           Along along, int times)
{
    if (auto fault = cutFault(pattern, catalogue, id, joined({}, area)))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const int most = timesThatFit(pattern, id, area, along);
    if (times < 1 || times > most)
        return Fault{{},
                     sectionWords(section),
                     most == 0 ? "there is no room for " + counted(heightOf(area), "row") + " of " +
                                     counted(widthOf(area), "column") + " there; insert " +
                                     (along == Along::Up ? "rows, or choose new rows" : "columns first")
                               : toText(times) + " times asked for, " + toText(most) + " fit"};
    Times made{{}, copiesOf(area, along, times), false};
    const std::string name = "repeat the selection " + counted(times, "time");
    if (along == Along::UpNewRows) {
        auto edit = inNewRows(pattern, section, area, times, name);
        if (!edit.ok())
            return edit.fault();
        made.edit = std::move(edit.value());
        made.otherSide =
            heightOf(made.over) % 2 == 1 && area.lastRow + 1 < static_cast<int>(section.rows.size());
        return made;
    }
    const ChartClip clip = clipOf(section, catalogue, {area});
    std::map<int, Row> rows;
    for (int i = 1; i <= times; ++i) {
        const Area over = copiesOf(area, along, i);
        const At at = along == Along::Up     ? At{over.lastRow - heightOf(area) + 1, area.firstColumn}
                      : along == Along::Left ? At{area.firstRow, over.lastColumn - widthOf(area) + 1}
                                             : At{area.firstRow, over.firstColumn};
        putInto(rows, section, catalogue, at, clip);
    }
    auto edit = setRows(pattern, id, rows, name);
    if (!edit.ok())
        return edit.fault();
    made.edit = std::move(edit.value());
    return made;
}

} // namespace shawlwright
