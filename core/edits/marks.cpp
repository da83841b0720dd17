#include "core/edits/marks.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

#include <algorithm>

namespace shawlwright {
namespace {

// A, B, ... Z, A2, B2, ...
std::string freeName(const PatternHead& head)
{
    for (int round = 1;; ++round)
        for (char letter = 'A'; letter <= 'Z'; ++letter) {
            const std::string name = std::string(1, letter) + (round > 1 ? toText(round) : std::string());
            if (std::none_of(head.markers.begin(), head.markers.end(),
                             [&](const Marker& m) { return m.name == name; }))
                return name;
        }
}

std::string where(const Section& section, int row)
{
    return sectionWords(section) + ", Row " + rowLabels(section)[static_cast<std::size_t>(row)];
}

MaybeFault boundaryFault(const Pattern& pattern, SectionId id, int row, int boundary)
{
    if (auto fault = rowFault(pattern, id, row))
        return fault;
    const Section& section = sectionIn(pattern, id);
    if (boundary >= 0 && boundary <= section.frame.columns)
        return std::nullopt;
    return Fault{{},
                 where(section, row),
                 "a marker after column " + toText(boundary) + " lies outside of the chart of " +
                     counted(section.frame.columns, "column") + "; put it inside"};
}

// A marker cannot be put into the middle of a stitch.
MaybeFault insideFault(const Section& section, int at, int boundary)
{
    const Row& row = *section.rows[static_cast<std::size_t>(at)];
    if (boundary < 1)
        return std::nullopt;
    const Columns stitch = stitchAround(row, boundary);
    if (stitch.last == boundary)
        return std::nullopt;
    return Fault{{},
                 where(section, at),
                 "a stitch fills columns " + toText(stitch.first) + " to " + toText(stitch.last) +
                     "; put the marker before or after it"};
}

// The row with one more move; the same row where it has that move already.
Row withMove(Row row, const MarkerMove& move)
{
    const auto same = [&](const MarkerMove& m) {
        return m.marker == move.marker && m.boundary == move.boundary && m.kind == move.kind;
    };
    if (std::none_of(row.moves.begin(), row.moves.end(), same))
        row.moves.push_back(move);
    return row;
}

Edit swapped(const Section& section, int at, Row row, std::string name)
{
    Edit edit{std::move(name), {}};
    std::map<int, Row> rows;
    rows.emplace(at, std::move(row));
    addSwap(edit, section, std::move(rows));
    return edit;
}

Result<Edit> moved(const Pattern& pattern, SectionId id, int at, MarkerMove move, const std::string& act)
{
    if (auto fault = boundaryFault(pattern, id, at, move.boundary))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const Marker* marker = markerOf(pattern.head, move.marker);
    if (!marker)
        return Fault{{}, where(section, at), "the marker is not one of the pattern's; place one first"};
    return swapped(section, at, withMove(*section.rows[static_cast<std::size_t>(at)], move),
                   act + " marker " + marker->name);
}

Result<int> moveAt(const Pattern& pattern, SectionId id, int at, int index)
{
    if (auto fault = rowFault(pattern, id, at))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    const int moves = static_cast<int>(section.rows[static_cast<std::size_t>(at)]->moves.size());
    if (index >= 0 && index < moves)
        return index;
    return Fault{{},
                 where(section, at),
                 "the row moves " + counted(moves, "marker") + ", there is no number " + toText(index + 1)};
}

std::string nameOf(const Pattern& pattern, MarkerId id)
{
    const Marker* marker = markerOf(pattern.head, id);
    return marker ? marker->name : std::string();
}

} // namespace

Result<Edit> placeMarker(const Pattern& pattern, SectionId id, int at, int boundary, MarkerId marker)
{
    if (auto fault = boundaryFault(pattern, id, at, boundary))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (auto fault = insideFault(section, at, boundary))
        return *fault;
    if (markerOf(pattern.head, marker))
        return moved(pattern, id, at, {marker, boundary, MoveKind::Place, MoveReach::Once}, "place");

    PatternHead head = pattern.head;
    const Marker fresh{marker == MarkerId{} ? freshMarkerId(head) : marker, freeName(head)};
    head.markers.push_back(fresh);
    Edit edit = swapped(section, at,
                        withMove(*section.rows[static_cast<std::size_t>(at)],
                                 {fresh.id, boundary, MoveKind::Place, MoveReach::Once}),
                        "place marker " + fresh.name);
    edit.steps.insert(edit.steps.begin(), SwapHead{std::move(head)});
    return edit;
}

Result<Edit> placeNewMarker(const Pattern& pattern, SectionId id, int at, int boundary)
{
    return placeMarker(pattern, id, at, boundary, freshMarkerId(pattern.head));
}

Result<Edit> removeMarker(const Pattern& pattern, SectionId id, int at, int boundary, MarkerId marker)
{
    return moved(pattern, id, at, {marker, boundary, MoveKind::Remove, MoveReach::Once}, "remove");
}

Result<Edit> shiftMarker(const Pattern& pattern, SectionId id, int at, int boundary, MarkerId marker)
{
    return moved(pattern, id, at, {marker, boundary, MoveKind::Shift, MoveReach::Once}, "shift");
}

Result<Edit> moveMarkerMove(const Pattern& pattern, SectionId id, int at, int index, int toBoundary)
{
    const auto found = moveAt(pattern, id, at, index);
    if (!found.ok())
        return found.fault();
    if (auto fault = boundaryFault(pattern, id, at, toBoundary))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    Row row = *section.rows[static_cast<std::size_t>(at)];
    MarkerMove& move = row.moves[static_cast<std::size_t>(index)];
    if (move.kind == MoveKind::Place)
        if (auto fault = insideFault(section, at, toBoundary))
            return *fault;
    move.boundary = toBoundary;
    const std::string name = "move marker " + nameOf(pattern, move.marker);
    return swapped(section, at, std::move(row), name);
}

Result<Edit> deleteMarkerMove(const Pattern& pattern, SectionId id, int at, int index)
{
    const auto found = moveAt(pattern, id, at, index);
    if (!found.ok())
        return found.fault();
    const Section& section = sectionIn(pattern, id);
    Row row = *section.rows[static_cast<std::size_t>(at)];
    const std::string name = "take marker " +
                             nameOf(pattern, row.moves[static_cast<std::size_t>(index)].marker) +
                             " out of the row";
    row.moves.erase(row.moves.begin() + index);
    return swapped(section, at, std::move(row), name);
}

Result<Edit> renameMarker(const Pattern& pattern, MarkerId id, std::string name)
{
    PatternHead head = pattern.head;
    const auto found =
        std::find_if(head.markers.begin(), head.markers.end(), [id](const Marker& m) { return m.id == id; });
    if (found == head.markers.end())
        return Fault{{}, "", "the marker is not one of the pattern's; choose one that is"};
    name = std::string(trimmed(name));
    if (name.empty() || !validUtf8(name))
        return Fault{{}, "Marker " + found->name, "needs a name; type a letter or a short word"};
    for (const Marker& other : head.markers)
        if (other.id != id && other.name == name)
            return Fault{
                {}, "Marker " + found->name, "another marker is called '" + name + "'; choose another name"};
    Edit edit{"rename marker " + found->name + " to " + name, {}};
    if (found->name == name)
        return edit;
    found->name = name;
    edit.steps.push_back(SwapHead{std::move(head)});
    return edit;
}

} // namespace shawlwright
