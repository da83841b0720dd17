#include "core/chart/cells.h"

#include "core/base/text.h"

#include <algorithm>
#include <map>

namespace shawlwright::chart {

namespace {

enum class Look : std::uint8_t { Stitch, NoStitch, Resting };

// What each cell of the frame is; beyond the frame nothing is.
class Looks {
public:
    Looks(const Frame& frame, const std::vector<RowFacts>& facts)
        : m_frame(frame), m_columns(frame.lastColumn - frame.firstColumn + 1)
    {
        for (int index = frame.firstRow; index <= frame.lastRow; ++index) {
            std::vector<Look> row(static_cast<std::size_t>(m_columns), Look::NoStitch);
            for (int column = frame.firstColumn; column <= frame.lastColumn; ++column)
                if (cellAt(frame.row(index), column).stitch != noStitch)
                    row[static_cast<std::size_t>(column - frame.firstColumn)] = Look::Stitch;
            if (static_cast<std::size_t>(index) < facts.size())
                for (const int column : facts[static_cast<std::size_t>(index)].restingColumns)
                    if (frame.shows(column)) {
                        Look& look = row[static_cast<std::size_t>(column - frame.firstColumn)];
                        look = look == Look::Stitch ? Look::Stitch : Look::Resting;
                    }
            m_rows.push_back(std::move(row));
        }
    }

    Look at(int row, int column) const
    {
        if (row < m_frame.firstRow || row > m_frame.lastRow || !m_frame.shows(column))
            return Look::NoStitch;
        return m_rows[static_cast<std::size_t>(row - m_frame.firstRow)]
                     [static_cast<std::size_t>(column - m_frame.firstColumn)];
    }

private:
    const Frame& m_frame;
    int m_columns;
    std::vector<std::vector<Look>> m_rows;
};

// Cells that are filled alike as one path of rectangles as large as can be: no seam shows between them. `key`
// says what a cell is filled with, negative for nothing.
template <typename Key>
std::map<int, Path> mergedFills(const Frame& frame, Key key)
{
    struct Run {
        int from = 0, to = 0, value = 0, firstRow = 0;
        bool operator<(const Run& other) const { return from < other.from; }
    };
    std::map<int, Path> paths;
    std::vector<Run> open; // runs that may go on in the next row up
    const auto close = [&](const Run& run, int lastRow) {
        paths[run.value].add(
            rectangle({frame.x(run.to), frame.top(lastRow), static_cast<double>(run.to - run.from + 1),
                       (lastRow - run.firstRow + 1) * frame.cellHeight}),
            0, 0);
    };
    for (int row = frame.firstRow; row <= frame.lastRow + 1; ++row) {
        std::vector<Run> runs;
        for (int column = frame.firstColumn; row <= frame.lastRow && column <= frame.lastColumn;) {
            const int value = key(row, column);
            int to = column;
            while (to < frame.lastColumn && key(row, to + 1) == value)
                ++to;
            if (value >= 0)
                runs.push_back({column, to, value, row});
            column = to + 1;
        }
        for (const Run& old : open) {
            const auto same = std::find_if(runs.begin(), runs.end(), [&](const Run& run) {
                return run.from == old.from && run.to == old.to && run.value == old.value;
            });
            if (same != runs.end())
                same->firstRow = old.firstRow;
            else
                close(old, row - 1);
        }
        open = std::move(runs);
    }
    return paths;
}

void addSegment(Path& path, Point from, Point to)
{
    path.move(from).line(to);
}

// Lines beside every cell that is something, none inside of no-stitch areas or of wide stitches.
Group gridLines(const Frame& frame, const Looks& looks)
{
    Path thin, tenth;
    const auto something = [&](int row, int column) { return looks.at(row, column) != Look::NoStitch; };
    for (int boundary = frame.firstColumn - 1; boundary <= frame.lastColumn; ++boundary) {
        Path& path = boundary > 0 && boundary % 10 == 0 ? tenth : thin;
        const double x = frame.x(boundary);
        int from = -1;
        for (int row = frame.firstRow; row <= frame.lastRow + 1; ++row) {
            const bool drawn = row <= frame.lastRow &&
                               (something(row, boundary) || something(row, boundary + 1)) &&
                               !(frame.shows(boundary) && cellAt(frame.row(row), boundary + 1).part > 0);
            if (drawn && from < 0)
                from = row;
            if (!drawn && from >= 0) {
                addSegment(path, {x, frame.top(from - 1)}, {x, frame.top(row - 1)});
                from = -1;
            }
        }
    }
    for (int below = frame.firstRow; below <= frame.lastRow + 1; ++below) { // the line under row `below`
        Path& path = below > 0 && below % 10 == 0 ? tenth : thin;
        const double y = frame.top(below - 1);
        int from = -1;
        for (int column = frame.firstColumn; column <= frame.lastColumn + 1; ++column) {
            const bool drawn =
                column <= frame.lastColumn && (something(below, column) || something(below - 1, column));
            if (drawn && from < 0)
                from = column;
            if (!drawn && from >= 0) {
                addSegment(path, {frame.x(from - 1), y}, {frame.x(column - 1), y});
                from = -1;
            }
        }
    }
    Group group{"grid", {}, -1, {}};
    if (!thin.verbs.empty())
        group.shapes.push_back(Stroke{std::move(thin), 0.03, Ink::GridLine, false});
    if (!tenth.verbs.empty())
        group.shapes.push_back(Stroke{std::move(tenth), 0.05, Ink::TenthLine, false});
    return group;
}

Group restingCells(const Frame& frame, const Looks& looks)
{
    Group group{"resting stitches", {}, -1, {}};
    Path strokes;
    const double h = frame.cellHeight;
    for (int row = frame.firstRow; row <= frame.lastRow; ++row)
        for (int column = frame.firstColumn; column <= frame.lastColumn; ++column)
            if (looks.at(row, column) == Look::Resting)
                addSegment(strokes, {frame.x(column) + 0.28, frame.top(row) + 0.72 * h},
                           {frame.x(column) + 0.72, frame.top(row) + 0.28 * h});
    if (!strokes.verbs.empty())
        group.shapes.push_back(Stroke{std::move(strokes), 0.05, Ink::Resting, false});
    return group;
}

std::string rowWords(const Row& row, const std::string& label, const RowFacts* facts)
{
    std::string words = "Row " + label + (row.side == Side::RS ? ", right side" : ", wrong side");
    if (facts && facts->after)
        words += ", " + sizesLabel(*facts->after) + (*facts->after == Quantity(1) ? " stitch" : " stitches");
    return words;
}

} // namespace

bool usesColour(const PatternHead& head)
{
    return head.yarns.size() > 1;
}

std::vector<Group> cellGroups(const Frame& frame, const ChartInput& input, const ChartOptions& options)
{
    std::vector<Group> groups;
    const Looks looks(frame, input.facts);
    groups.push_back({"paper", {}, -1, {Fill{rectangle(frame.area()), Ink::Paper, {}}}});
    if (options.yarnTints && usesColour(input.head)) {
        Group tints{"yarn tints", {}, -1, {}};
        const auto yarn = [&](int row, int column) {
            if (looks.at(row, column) != Look::Stitch)
                return -1;
            const YarnId own = cellAt(frame.row(row), column).yarn;
            return static_cast<int>(own.value != 0 ? own.value : frame.row(row).yarn.value);
        };
        for (auto& [id, path] : mergedFills(frame, yarn))
            if (yarnOf(input.head, YarnId{static_cast<std::uint8_t>(id)}))
                tints.shapes.push_back(
                    Fill{std::move(path), Ink::YarnTint, YarnId{static_cast<std::uint8_t>(id)}});
        groups.push_back(std::move(tints));
    }
    Group none{"no stitch", {}, -1, {}};
    for (auto& [look, path] : mergedFills(
             frame, [&](int row, int column) { return looks.at(row, column) == Look::NoStitch ? 0 : -1; }))
        none.shapes.push_back(Fill{std::move(path), Ink::NoStitch, {}});
    groups.push_back(std::move(none));
    groups.push_back(restingCells(frame, looks));
    groups.push_back(gridLines(frame, looks));

    const auto labels = rowLabels(frame.section);
    std::map<StitchId, Symbol> symbols;
    for (int index = frame.firstRow; index <= frame.lastRow; ++index) {
        const Row& row = frame.row(index);
        const auto at = static_cast<std::size_t>(index);
        Group group{"row " + labels[at],
                    rowWords(row, labels[at], at < input.facts.size() ? &input.facts[at] : nullptr),
                    index,
                    {}};
        for (int column = frame.firstColumn; column <= frame.lastColumn; ++column) {
            const Cell cell = cellAt(row, column);
            if (cell.stitch == noStitch || cell.part != 0)
                continue;
            auto known = symbols.find(cell.stitch);
            if (known == symbols.end())
                known = symbols.emplace(cell.stitch, symbolOf(input.catalogue.stitch(cell.stitch))).first;
            const Symbol& symbol = known->second;
            const auto drawn =
                symbolIn(symbol, cellRect(frame.section, frame.cellHeight, index, column, symbol.width));
            group.shapes.insert(group.shapes.end(), drawn.begin(), drawn.end());
        }
        groups.push_back(std::move(group));
    }
    return groups;
}

} // namespace shawlwright::chart
