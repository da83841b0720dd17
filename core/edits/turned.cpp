#include "core/edits/turned.h"

#include "core/base/text.h"
#include "core/edits/chart_clip.h"
#include "core/edits/checks.h"
#include "core/edits/rows.h"

#include <algorithm>

namespace shawlwright {
namespace {

using Piece = ChartClip::Piece;

bool leans(const Stitch& stitch)
{
    return stitch.lean == Lean::Left || stitch.lean == Lean::Right;
}

Lean opposite(Lean lean)
{
    return lean == Lean::Left ? Lean::Right : lean == Lean::Right ? Lean::Left : lean;
}

bool plainHeads(const Stitch& stitch)
{
    const HeadKind plain = stitch.face == Face::Knit ? HeadKind::Knit : HeadKind::Purl;
    return std::all_of(stitch.heads.begin(), stitch.heads.end(),
                       [plain](HeadKind head) { return head == plain; });
}

bool changesCount(const Stitch& stitch)
{
    return stitch.takesUp != stitch.leaves;
}

// Markers strictly inside change sides; those on the edges where the edges are the chart's own.
void mirrorMarkers(Row& row, const Area& area, int columns)
{
    const int right = area.firstColumn - 1, left = area.lastColumn;
    const bool whole = right == 0 && left == columns;
    for (MarkerMove& move : row.moves)
        if (whole || (move.boundary > right && move.boundary < left))
            move.boundary = right + left - move.boundary;
}

class UpsideDown {
public:
    UpsideDown(const Section& section, const Catalogue& catalogue, const Area& area)
        : m_section(section), m_catalogue(catalogue), m_area(area)
    {
    }

    // The pieces of one row as they stand in its turned one; a fault where one can't be turned.
    std::optional<Fault> turn(std::vector<Piece>& pieces) const
    {
        int takenUp = 0, left = 0;
        std::vector<bool> taken(static_cast<std::size_t>(m_area.lastColumn - m_area.firstColumn + 1));
        for (const Piece& piece : pieces) {
            const Stitch& stitch = m_catalogue.stitch(piece.stitch);
            takenUp += stitch.takesUp;
            left += stitch.leaves;
            std::fill_n(taken.begin() + piece.column, stitch.width(), true);
        }
        for (Piece& piece : pieces) {
            const Stitch& stitch = m_catalogue.stitch(piece.stitch);
            if (takenUp != left && changesCount(stitch)) {
                if (auto fault = exchange(piece, taken))
                    return fault;
            } else if (leans(stitch)) {
                const auto image = m_catalogue.mirrored(piece.stitch);
                if (!image)
                    return Fault{{},
                                 place(piece),
                                 words(piece) + " has no mirror image to lean the other way; "
                                                "choose another stitch or leave this row out"};
                piece.stitch = *image;
            }
        }
        return std::nullopt;
    }

private:
    std::string place(const Piece& piece) const
    {
        return cellWords(m_section, m_area.firstRow + piece.row, m_area.firstColumn + piece.column);
    }
    std::string words(const Piece& piece) const
    {
        const Side side = m_section.rows[static_cast<std::size_t>(m_area.firstRow + piece.row)]->side;
        return stitchWords(m_catalogue, piece.stitch, side);
    }

    std::optional<Fault> exchange(Piece& piece, std::vector<bool>& taken) const
    {
        const Stitch& stitch = m_catalogue.stitch(piece.stitch);
        const auto other = counterpart(m_catalogue, piece.stitch);
        if (!other)
            return Fault{{},
                         place(piece),
                         words(piece) + " makes " + toText(stitch.leaves) + " of " + toText(stitch.takesUp) +
                             "; upside down it would make " + toText(stitch.takesUp) + " of " +
                             toText(stitch.leaves) + ", and no stitch does that" +
                             (leans(stitch) ? " with the other lean" : "") +
                             "; change it, or leave out rows whose count changes"};
        const int width = stitch.width(), wanted = m_catalogue.stitch(*other).width();
        int from = piece.column;
        const auto free = [&](int first, int count) {
            if (first < 0 || first + count > static_cast<int>(taken.size()))
                return false;
            return std::none_of(taken.begin() + first, taken.begin() + first + count,
                                [](bool is) { return is; });
        };
        if (wanted > width) {
            const int more = wanted - width;
            if (!free(from + width, more)) {
                if (!free(from - more, more))
                    return Fault{{},
                                 place(piece),
                                 words(piece) + " would become " +
                                     stitchWords(m_catalogue, *other, Side::RS) + ", which is " +
                                     counted(wanted, "column") + " wide, and there is no room of " +
                                     counted(more, "column") +
                                     " without a stitch beside it; select such a column "
                                     "with it or insert one"};
                from -= more;
            }
            std::fill_n(taken.begin() + from, wanted, true);
        }
        piece.column = from;
        piece.stitch = *other;
        return std::nullopt;
    }

    const Section& m_section;
    const Catalogue& m_catalogue;
    const Area& m_area;
};

bool moreThanPlain(const Row& row, const Catalogue& catalogue, const Area& area)
{
    for (int column = area.firstColumn; column <= area.lastColumn; ++column)
        if (const Cell cell = cellAt(row, column); cell.stitch != noStitch)
            if (catalogue.stitch(cell.stitch).family != Family::Basic)
                return true;
    return false;
}

} // namespace

std::optional<StitchId> counterpart(const Catalogue& catalogue, StitchId id)
{
    const Stitch& stitch = catalogue.stitch(id);
    if (stitch.family != Family::Increase && stitch.family != Family::Decrease)
        return std::nullopt;
    if (stitch.manner != Manner::Worked || !plainHeads(stitch) || stitch.takesUp == 0 || stitch.leaves == 0)
        return std::nullopt;
    for (const Stitch& other : catalogue.builtIn())
        if ((other.family == Family::Increase || other.family == Family::Decrease) &&
            other.manner == Manner::Worked && other.takesUp == stitch.leaves &&
            other.leaves == stitch.takesUp && other.face == stitch.face && plainHeads(other) &&
            other.lean == opposite(stitch.lean))
            return other.id;
    return std::nullopt;
}

Result<Turned> mirrored(const Pattern& pattern, const Catalogue& catalogue, SectionId id, const Area& area)
{
    if (auto fault = cutFault(pattern, catalogue, id, joined({}, area)))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    Turned turned;
    ChartClip clip = clipOf(section, catalogue, {area});
    for (Piece& piece : clip.pieces) {
        const Stitch& stitch = catalogue.stitch(piece.stitch);
        piece.column = clip.columns - piece.column - stitch.width();
        const auto image = catalogue.mirrored(piece.stitch);
        if (!image && leans(stitch))
            turned.unlike.push_back({area.firstRow + piece.row, area.firstColumn + piece.column});
        piece.stitch = image.value_or(piece.stitch);
    }
    std::map<int, Row> rows;
    putInto(rows, section, catalogue, At{area.firstRow, area.firstColumn}, clip);
    for (auto& [at, row] : rows)
        mirrorMarkers(row, area, section.frame.columns);
    auto edit = setRows(pattern, id, rows, "mirror the selection");
    if (!edit.ok())
        return edit.fault();
    turned.edit = std::move(edit.value());
    return turned;
}

Result<Turned> upsideDown(const Pattern& pattern, const Catalogue& catalogue, SectionId id, const Area& area)
{
    if (auto fault = cutFault(pattern, catalogue, id, joined({}, area)))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const UpsideDown turning(section, catalogue, area);
    ChartClip clip = clipOf(section, catalogue, {area});
    std::vector<std::vector<Piece>> byRow(static_cast<std::size_t>(clip.rows));
    for (const Piece& piece : clip.pieces)
        byRow[static_cast<std::size_t>(piece.row)].push_back(piece);
    clip.pieces.clear();
    Turned turned;
    for (int row = 0; row < clip.rows; ++row) {
        std::vector<Piece>& pieces = byRow[static_cast<std::size_t>(row)];
        if (auto fault = turning.turn(pieces))
            return *fault;
        const Row& from = *section.rows[static_cast<std::size_t>(area.firstRow + row)];
        const Row& to = *section.rows[static_cast<std::size_t>(area.lastRow - row)];
        turned.rowsOnOtherSide += from.side != to.side && moreThanPlain(from, catalogue, area) ? 1 : 0;
        for (Piece& piece : pieces) {
            piece.row = clip.rows - 1 - row;
            clip.pieces.push_back(piece);
        }
    }
    std::map<int, Row> rows;
    putInto(rows, section, catalogue, At{area.firstRow, area.firstColumn}, clip);
    auto edit = setRows(pattern, id, rows, "turn the selection upside down");
    if (!edit.ok())
        return edit.fault();
    turned.edit = std::move(edit.value());
    return turned;
}

} // namespace shawlwright
