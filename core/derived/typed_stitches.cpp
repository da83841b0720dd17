#include "core/derived/typed_stitches.h"

#include "core/base/text.h"
#include "core/edits/checks.h"
#include "core/edits/marks.h"
#include "core/wording/reader/reader.h"

#include <algorithm>

namespace shawlwright {
namespace {

// "7 k2tog" as a text says it: "[k2tog] 7 times".
std::string pieceInOrder(std::string_view typed)
{
    const std::string_view text = trimmed(typed);
    const std::size_t number = std::min(text.find_first_not_of("0123456789"), text.size());
    const std::size_t word = text.find_first_not_of(' ', number);
    if (number == 0 || word == number || word == std::string_view::npos)
        return std::string(text);
    return "[" + std::string(text.substr(word)) + "] " + std::string(text.substr(0, number)) + " times";
}

std::string pieceWithoutTimes(std::string_view typed)
{
    const std::string_view text = trimmed(typed);
    return std::string(trimmed(text.substr(std::min(text.find_first_not_of("0123456789"), text.size()))));
}

// The same of each piece between commas, brackets left whole.
std::string ofEachPiece(std::string_view typed, std::string (*made)(std::string_view))
{
    std::string out;
    int depth = 0;
    std::size_t from = 0;
    for (std::size_t i = 0; i <= typed.size(); ++i) {
        const char c = i < typed.size() ? typed[i] : ',';
        depth += c == '[' || c == '(' ? 1 : c == ']' || c == ')' ? -1 : 0;
        if (c != ',' || (depth > 0 && i < typed.size()))
            continue;
        out += (out.empty() ? "" : ", ") + made(typed.substr(from, i - from));
        from = i + 1;
    }
    return out;
}

std::string inOrder(std::string_view typed)
{
    return ofEachPiece(typed, pieceInOrder);
}

std::string withoutTimes(std::string_view typed)
{
    return ofEachPiece(typed, pieceWithoutTimes);
}

// The first sentence of a weight; empty: none.
std::string said(const RowReading& read, ReadingNote::Weight weight)
{
    for (const ReadingNote& note : read.notes)
        if (note.weight == weight)
            return sentence(note);
    return {};
}

bool hasRepeat(std::string_view typed)
{
    return typed.find_first_of("[(*") != std::string_view::npos;
}

struct Piece {
    Cell cell;
    std::optional<MarkerId> marker{}; // placed before the next stitch; 0: a new one
};

// The stitches one by one; false where the words need more than a place.
bool flatten(const Phrases& phrases, std::vector<Piece>& out)
{
    for (const Phrase& phrase : phrases) {
        if (out.size() > static_cast<std::size_t>(mostColumns))
            return true;
        if (const auto* run = std::get_if<Stretch>(&phrase.is)) {
            if (run->count == 0)
                return false;
            Cell cell;
            cell.stitch = run->stitch;
            cell.yarn = run->yarn;
            out.insert(out.end(), static_cast<std::size_t>(std::min(run->count, mostColumns + 1)),
                       Piece{cell, {}});
        } else if (const auto* group = std::get_if<Group>(&phrase.is)) {
            if (group->to.place != BoxUntil::Times || !group->times.single())
                return false;
            for (int n = 0; n < group->times.at(0) && out.size() <= static_cast<std::size_t>(mostColumns);
                 ++n)
                if (!flatten(group->inside, out))
                    return false;
        } else if (const auto* marker = std::get_if<MarkerPhrase>(&phrase.is)) {
            if (marker->act != MarkerPhrase::Act::Place)
                return false;
            out.push_back({Cell{}, marker->marker});
        } else {
            return false;
        }
    }
    return true;
}

} // namespace

TypedStitches typedStitches(const Pattern& pattern, const Catalogue& catalogue, SectionId id, At from,
                            std::string_view text)
{
    TypedStitches typed{Edit{}, from, 0, false, {}};
    if (auto fault = rowFault(pattern, id, from.row)) {
        typed.edit = *fault;
        return typed;
    }
    const Section& section = sectionIn(pattern, id);
    const std::string where = placeInWords(pattern, sectionIndex(pattern, id), from.row);
    const Row& was = *section.rows[static_cast<std::size_t>(from.row)];
    const RowReading read = readRow(inOrder(text), was.side, catalogue, pattern.head);
    if (!read.understood) {
        // Brackets that were put round "7 k" are not what was typed.
        const RowReading asTyped = hasRepeat(text) ? read : readRow(withoutTimes(text), was.side, catalogue, pattern.head);
        std::string why = said(asTyped.understood ? read : asTyped, ReadingNote::Weight::Error);
        typed.edit = Fault{{}, where, why.empty() ? "no stitch in these words" : std::move(why)};
        return typed;
    }
    typed.warning = said(read, ReadingNote::Weight::Warning);
    Phrases phrases = read.phrases;
    if (phrases.size() == 1 &&
        catalogue.worked(trimmed(text), was.side)) // a row of "k" is knit; a cell is one stitch
        if (auto* run = std::get_if<Stretch>(&phrases.front().is); run && run->count == 0)
            run->count = 1;
    std::vector<Piece> pieces;
    if (!flatten(phrases, pieces) || pieces.empty()) {
        typed.needsRow = true;
        typed.edit = Fault{{},
                           where,
                           "'" + std::string(trimmed(text)) +
                               "' needs the whole row; type stitches with their numbers here, or change the "
                               "words of the row"};
        return typed;
    }
    const Catalogue known = catalogue.with(read.head.stitches);
    const bool rs = was.side == Side::RS;
    Row row = padded(was, section.frame.columns);
    const auto stitches =
        std::count_if(pieces.begin(), pieces.end(), [](const Piece& one) { return !one.marker; });
    std::vector<int> fresh; // boundaries of new markers
    int column = from.column;
    for (const Piece& piece : pieces) {
        if (piece.marker) {
            const int boundary = rs ? column - 1 : column;
            if (*piece.marker == MarkerId{})
                fresh.push_back(boundary);
            else
                row.moves.push_back({*piece.marker, boundary, MoveKind::Place, MoveReach::Once});
            continue;
        }
        const int width = known.stitch(piece.cell.stitch).width();
        const int first = rs ? column : column - width + 1;
        if (first < 1 || first + width - 1 > section.frame.columns) {
            typed.edit = Fault{{},
                               where,
                               "of " + counted(static_cast<int>(stitches), "stitch", "stitches") + " " +
                                   toText(typed.stitches) +
                                   " fit before the edge of the chart; widen the chart, or begin "
                                   "further " +
                                   (rs ? "to the right" : "to the left")};
            typed.stitches = 0;
            typed.needsRow = hasRepeat(text); // drawn as repeats they take fewer columns
            return typed;
        }
        row = painted(std::move(row), known, first, piece.cell.stitch, piece.cell.yarn);
        column = rs ? first + width : first - 1;
        ++typed.stitches;
    }
    typed.next = {from.row, column};
    Pattern after = pattern;
    after.head = read.head;
    Section& placed = after.sections[static_cast<std::size_t>(sectionIndex(pattern, id))];
    placed.rows[static_cast<std::size_t>(from.row)] = std::make_shared<const Row>(std::move(row));
    for (const int boundary : fresh) {
        const Result<Edit> marker = placeNewMarker(after, id, from.row, boundary);
        if (!marker.ok()) {
            typed.edit = marker.fault();
            return typed;
        }
        apply(after, marker.value());
    }
    Edit edit{"type " + std::string(trimmed(text)), {}};
    if (after.head != pattern.head)
        edit.steps.push_back(SwapHead{after.head});
    addSwap(edit, section, {{from.row, *placed.rows[static_cast<std::size_t>(from.row)]}});
    typed.edit = std::move(edit);
    return typed;
}

At startOfRow(const Section& section, int row)
{
    const bool rs = section.rows[static_cast<std::size_t>(row)]->side == Side::RS;
    ColumnSpan below;
    if (row > 0)
        below = usedColumns(*section.rows[static_cast<std::size_t>(row) - 1], boxesOn(section, row - 1));
    if (below.first == 0)
        return {row, rs ? 1 : section.frame.columns};
    return {row, rs ? below.first : below.last};
}

} // namespace shawlwright
