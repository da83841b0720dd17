// Stitch repeats and row repeats: marks.h.

#include "core/edits/marks.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

namespace shawlwright {
namespace {

// The edges of a stitch repeat run between stitches on each of its rows.
MaybeFault cutFault(const Section& section, const Box& box)
{
    const auto labels = rowLabels(section);
    for (int at = rowIndex(section, box.firstRow); at <= rowIndex(section, box.lastRow); ++at) {
        const Row& row = *section.rows[static_cast<std::size_t>(at)];
        for (const int edge : {box.firstColumn - 1, box.lastColumn}) {
            if (edge < 1 || edge >= static_cast<int>(row.cells.size()))
                continue;
            const Columns stitch = stitchAround(row, edge);
            if (stitch.last > edge)
                return Fault{{},
                             sectionWords(section) + ", Row " + labels[static_cast<std::size_t>(at)],
                             "the edge of the stitch repeat would cut the stitch in columns " +
                                 toText(stitch.first) + " to " + toText(stitch.last) +
                                 " in two; let the repeat end beside it"};
        }
    }
    return std::nullopt;
}

Result<Edit> framed(const Pattern& pattern, const Section& section, SectionFrame frame, std::string name)
{
    if (auto fault = repeatsFault(pattern, frame, section.rows))
        return *fault;
    Edit edit{std::move(name), {}};
    addFrame(edit, section, std::move(frame));
    return edit;
}

Fault noSuchRepeat(const Section& section, const std::string& what)
{
    return Fault{{}, sectionWords(section), "this " + what + " is no longer there; choose one that is"};
}

} // namespace

Result<Edit> addBox(const Pattern& pattern, SectionId id, Box box)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    SectionFrame frame = section.frame;
    box.id = freshBoxId(section);
    frame.boxes.push_back(box);
    auto edit = framed(pattern, section, std::move(frame), "add a stitch repeat");
    if (edit.ok())
        if (auto fault = cutFault(section, box))
            return *fault;
    return edit;
}

Result<Edit> setBox(const Pattern& pattern, SectionId id, const Box& box)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    SectionFrame frame = section.frame;
    bool found = false;
    for (Box& stands : frame.boxes)
        if (stands.id == box.id) {
            stands = box;
            found = true;
        }
    if (!found)
        return noSuchRepeat(section, "stitch repeat");
    auto edit = framed(pattern, section, std::move(frame), "change a stitch repeat");
    if (edit.ok() && !edit.value().empty())
        if (auto fault = cutFault(section, box))
            return *fault;
    return edit;
}

Result<Edit> deleteBox(const Pattern& pattern, SectionId id, BoxId box)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    SectionFrame frame = section.frame;
    if (std::erase_if(frame.boxes, [box](const Box& stands) { return stands.id == box; }) == 0)
        return noSuchRepeat(section, "stitch repeat");
    return framed(pattern, section, std::move(frame), "delete a stitch repeat");
}

Result<Edit> addBracket(const Pattern& pattern, SectionId id, int firstRow, int lastRow, Quantity times)
{
    if (auto fault = rowsFault(pattern, id, firstRow, lastRow))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    SectionFrame frame = section.frame;
    const Bracket bracket{section.rows[static_cast<std::size_t>(firstRow)]->id,
                          section.rows[static_cast<std::size_t>(lastRow)]->id, std::move(times)};
    for (const Bracket& other : frame.brackets)
        if (other.firstRow == bracket.firstRow && other.lastRow == bracket.lastRow)
            return Fault{{},
                         sectionWords(section),
                         "these very rows are repeated already; change how many times instead"};
    frame.brackets.push_back(bracket);
    return framed(pattern, section, std::move(frame), "add a row repeat");
}

Result<Edit> setBracket(const Pattern& pattern, SectionId id, int index, Bracket bracket)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (index < 0 || index >= static_cast<int>(section.frame.brackets.size()))
        return noSuchRepeat(section, "row repeat");
    SectionFrame frame = section.frame;
    frame.brackets[static_cast<std::size_t>(index)] = std::move(bracket);
    return framed(pattern, section, std::move(frame), "change a row repeat");
}

Result<Edit> deleteBracket(const Pattern& pattern, SectionId id, int index)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (index < 0 || index >= static_cast<int>(section.frame.brackets.size()))
        return noSuchRepeat(section, "row repeat");
    SectionFrame frame = section.frame;
    frame.brackets.erase(frame.brackets.begin() + index);
    return framed(pattern, section, std::move(frame), "delete a row repeat");
}

} // namespace shawlwright
