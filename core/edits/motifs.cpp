#include "core/edits/motifs.h"

#include "core/base/text.h"
#include "core/edits/checks.h"
#include "core/edits/rows.h"

#include <algorithm>

namespace shawlwright {
namespace {

// The cells of a row without the stitches that the columns [first, last] cut in two.
std::vector<Cell> wholeCells(const Row& row, const Catalogue& catalogue, int first, int last)
{
    std::vector<Cell> cells(static_cast<std::size_t>(last - first + 1));
    for (int column = first; column <= last; ++column) {
        const Cell cell = cellAt(row, column);
        const int width = catalogue.stitch(cell.stitch).width();
        if (cell.stitch == noStitch || cell.part != 0 || column + width - 1 > last)
            continue;
        for (int part = 0; part < width; ++part)
            cells[static_cast<std::size_t>(column - first + part)] = {cell.stitch, cell.yarn,
                                                                      static_cast<std::uint8_t>(part)};
    }
    return cells;
}

bool empty(const std::vector<Cell>& cells)
{
    return std::all_of(cells.begin(), cells.end(), [](const Cell& cell) { return cell.stitch == noStitch; });
}

MaybeFault nameFault(const Pattern& pattern, const std::string& name, std::size_t except)
{
    if (trimmed(name).empty() || !validUtf8(name))
        return Fault{{}, "", "a motif needs a name; type one"};
    if (name.size() > mostMotifName)
        return Fault{{}, "", "the name of a motif has up to " + toText(static_cast<int>(mostMotifName)) +
                                 " bytes; type a shorter one"};
    for (std::size_t i = 0; i < pattern.head.motifs.size(); ++i)
        if (i != except && pattern.head.motifs[i].name == name)
            return Fault{{}, "", "a motif is called '" + name + "' already; give it another name"};
    return std::nullopt;
}

MaybeFault placeFault(const Pattern& pattern, std::size_t at)
{
    if (at < pattern.head.motifs.size())
        return std::nullopt;
    return Fault{{}, "", "the motif is no longer in the pattern; choose one that is"};
}

Edit headEdit(PatternHead head, std::string name)
{
    return {std::move(name), {SwapHead{std::move(head)}}};
}

} // namespace

Result<Motif> motifOf(const Pattern& pattern, const Catalogue& catalogue, SectionId id, const Area& area,
                      std::string name)
{
    if (auto fault = rowsFault(pattern, id, area.firstRow, area.lastRow))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (area.firstColumn < 1 || area.lastColumn < area.firstColumn || area.lastColumn > section.frame.columns)
        return Fault{{}, sectionWords(section), "the area lies outside of the chart; select one inside it"};
    const int columns = area.lastColumn - area.firstColumn + 1, rows = area.lastRow - area.firstRow + 1;
    if (columns > mostMotifColumns || rows > mostMotifRows)
        return Fault{{},
                     sectionWords(section),
                     "a motif has up to " + toText(mostMotifColumns) + " columns and " + toText(mostMotifRows) +
                         " rows, " + toText(columns) + " and " + toText(rows) + " are selected; select fewer"};
    Motif motif;
    motif.name = trimmed(name);
    motif.columns = columns;
    for (int row = area.firstRow; row <= area.lastRow; ++row)
        motif.rows.push_back(wholeCells(*section.rows[static_cast<std::size_t>(row)], catalogue, area.firstColumn,
                                        area.lastColumn));
    if (std::all_of(motif.rows.begin(), motif.rows.end(), empty))
        return Fault{{}, sectionWords(section), "no whole stitch is selected; select those of the motif"};
    return motif;
}

Motif mirroredMotif(const Motif& motif, const Catalogue& catalogue)
{
    Motif mirrored = motif;
    for (std::size_t row = 0; row < motif.rows.size(); ++row) {
        Row cells;
        cells.cells.resize(static_cast<std::size_t>(motif.columns));
        for (int column = 1; column <= motif.columns; ++column) {
            const Cell cell = motif.rows[row][static_cast<std::size_t>(column) - 1];
            if (cell.stitch == noStitch || cell.part != 0)
                continue;
            const int width = catalogue.stitch(cell.stitch).width();
            cells = painted(std::move(cells), catalogue, motif.columns - column - width + 2,
                            catalogue.mirrored(cell.stitch).value_or(cell.stitch), cell.yarn);
        }
        mirrored.rows[row] = std::move(cells.cells);
    }
    return mirrored;
}

Result<Edit> addMotif(const Pattern& pattern, Motif motif)
{
    if (auto fault = nameFault(pattern, motif.name, pattern.head.motifs.size()))
        return *fault;
    if (static_cast<int>(pattern.head.motifs.size()) >= mostMotifs)
        return Fault{{}, "", "a pattern keeps up to " + toText(mostMotifs) + " motifs; delete one first"};
    PatternHead head = pattern.head;
    const std::string name = "motif " + motif.name;
    head.motifs.push_back(std::move(motif));
    return headEdit(std::move(head), name);
}

Result<Edit> renameMotif(const Pattern& pattern, std::size_t at, std::string name)
{
    name = trimmed(name);
    if (auto fault = placeFault(pattern, at))
        return *fault;
    if (auto fault = nameFault(pattern, name, at))
        return *fault;
    if (pattern.head.motifs[at].name == name)
        return Edit{};
    PatternHead head = pattern.head;
    head.motifs[at].name = std::move(name);
    return headEdit(std::move(head), "rename motif");
}

Result<Edit> deleteMotif(const Pattern& pattern, std::size_t at)
{
    if (auto fault = placeFault(pattern, at))
        return *fault;
    PatternHead head = pattern.head;
    const std::string name = "delete motif " + head.motifs[at].name;
    head.motifs.erase(head.motifs.begin() + static_cast<std::ptrdiff_t>(at));
    return headEdit(std::move(head), name);
}

Result<Edit> stampMotif(const Pattern& pattern, const Catalogue& catalogue, SectionId id, At at, const Motif& motif)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const std::string name = "motif " + motif.name;
    const Section& first = sectionIn(pattern, id);
    const int rows = static_cast<int>(first.rows.size()), tall = static_cast<int>(motif.rows.size());
    if (at.row < 0 || at.row > rows || at.column < 1)
        return Fault{{}, sectionWords(first), "a motif is stamped with its lower right corner in the chart"};
    const int left = at.column + motif.columns - 1;
    if (left > mostColumns)
        return Fault{{},
                     sectionWords(first),
                     "the motif would reach to column " + toText(left) + ", a chart has up to " + toText(mostColumns) +
                         "; stamp it further to the right"};
    if (at.row + tall > mostRows)
        return Fault{{},
                     sectionWords(first),
                     "the motif would reach to row " + toText(at.row + tall) + " of the chart, it has up to " +
                         toText(mostRows) + "; stamp it further down"};
    Pattern grown = pattern; // a pointer a row
    Edit edit;
    const auto grow = [&](Result<Edit> more) -> MaybeFault {
        if (!more.ok())
            return more.fault();
        apply(grown, more.value());
        edit = composed(std::move(edit), std::move(more.value()));
        return std::nullopt;
    };
    if (left > first.frame.columns)
        if (auto fault = grow(insertColumns(grown, id, first.frame.columns, left - first.frame.columns)))
            return *fault;
    if (at.row + tall > rows)
        if (auto fault = grow(insertRows(grown, id, rows, at.row + tall - rows)))
            return *fault;
    const Section& section = sectionIn(grown, id);
    std::map<int, Row> changed;
    for (int row = 0; row < tall; ++row) {
        const std::vector<Cell>& cells = motif.rows[static_cast<std::size_t>(row)];
        Row fresh = *section.rows[static_cast<std::size_t>(at.row + row)];
        for (int column = 0; column < motif.columns; ++column)
            if (const Cell cell = cells[static_cast<std::size_t>(column)]; cell.stitch != noStitch && cell.part == 0)
                fresh = painted(std::move(fresh), catalogue, at.column + column, cell.stitch, cell.yarn);
        changed.emplace(at.row + row, std::move(fresh));
    }
    Edit stamp;
    addSwap(stamp, section, std::move(changed));
    edit = composed(std::move(edit), std::move(stamp));
    edit.name = name;
    return edit;
}

} // namespace shawlwright
