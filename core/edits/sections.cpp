#include "core/edits/sections.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

#include <algorithm>
#include <unordered_map>

namespace shawlwright {
namespace {

MaybeFault titleFault(std::string_view title)
{
    if (trimmed(title).empty())
        return Fault{{}, "", "a section needs a title; type one"};
    if (!validUtf8(title))
        return Fault{{}, "", "the title holds characters that can't be kept; type it again"};
    return std::nullopt;
}

MaybeFault roomFault(const Pattern& pattern)
{
    if (static_cast<int>(pattern.sections.size()) < mostSections)
        return std::nullopt;
    return Fault{
        {}, "", "the pattern has " + toText(mostSections) + " sections already, and can't have more"};
}

MaybeFault indexFault(const Pattern& pattern, int at, int most)
{
    if (at >= 0 && at <= most)
        return std::nullopt;
    return Fault{{},
                 "",
                 "place " + toText(at + 1) + " asked for, the pattern has " +
                     counted(static_cast<int>(pattern.sections.size()), "section")};
}

std::string quoted(const Section& section)
{
    return "'" + section.frame.title + "'";
}

// What a narrower chart would cut off.
MaybeFault narrowFault(const Section& section, int columns)
{
    const auto labels = rowLabels(section);
    for (std::size_t i = 0; i < section.rows.size(); ++i) {
        const Row& row = *section.rows[i];
        for (int column = columns + 1; column <= static_cast<int>(row.cells.size()); ++column)
            if (cellAt(row, column).stitch != noStitch)
                return Fault{{},
                             sectionWords(section) + ", Row " + labels[i],
                             "column " + toText(column) + " holds a stitch, so the chart can't be " +
                                 counted(columns, "column") + " wide; erase it or delete columns"};
    }
    return std::nullopt;
}

} // namespace

Result<Edit> addSection(const Pattern& pattern, int at, std::string title, int rows, int columns)
{
    if (auto fault = titleFault(title))
        return *fault;
    if (auto fault = roomFault(pattern))
        return *fault;
    if (auto fault = indexFault(pattern, at, static_cast<int>(pattern.sections.size())))
        return *fault;
    if (rows < 1 || rows > mostRows || columns < 1 || columns > mostColumns)
        return Fault{{},
                     "",
                     toText(rows) + " rows and " + toText(columns) +
                         " columns asked for; a section has 1 to " + toText(mostRows) + " rows and 1 to " +
                         toText(mostColumns) + " columns"};

    Section section;
    section.id = freshSectionId(pattern);
    section.frame.title = std::string(trimmed(title));
    section.frame.columns = columns;
    Row row;
    row.side = pattern.head.castOn.firstSide;
    row.yarn = pattern.head.castOn.yarn;
    if (at > 0 && !pattern.sections[static_cast<std::size_t>(at) - 1].rows.empty()) {
        const Row& before = *pattern.sections[static_cast<std::size_t>(at) - 1].rows.back();
        const bool same = before.finish.kind == FinishKind::Slide || before.finish.kind == FinishKind::Round;
        row.side = same ? before.side : otherSide(before.side);
        row.yarn = before.yarn;
    }
    row.cells.resize(static_cast<std::size_t>(columns));
    row.id = freshRowId(pattern);
    for (int i = 0; i < rows; ++i) {
        section.rows.push_back(std::make_shared<const Row>(row));
        row.side = otherSide(row.side);
        ++row.id.value;
    }
    Edit edit{"add section " + quoted(section), {}};
    edit.steps.push_back(SpliceSections{at, 0, {std::move(section)}});
    return edit;
}

Result<Edit> renameSection(const Pattern& pattern, SectionId id, std::string title)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    SectionFrame frame = sectionIn(pattern, id).frame;
    frame.title = std::string(trimmed(title));
    return setFrame(pattern, id, std::move(frame), "rename section " + quoted(sectionIn(pattern, id)));
}

Result<Edit> moveSection(const Pattern& pattern, SectionId id, int to)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    if (auto fault = indexFault(pattern, to, static_cast<int>(pattern.sections.size()) - 1))
        return *fault;
    const int from = sectionIndex(pattern, id);
    Edit edit{"move section " + quoted(sectionIn(pattern, id)), {}};
    if (from == to)
        return edit;
    edit.steps.push_back(SpliceSections{from, 1, {}});
    edit.steps.push_back(SpliceSections{to, 0, {sectionIn(pattern, id)}});
    return edit;
}

Result<Edit> duplicateSection(const Pattern& pattern, SectionId id)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    if (auto fault = roomFault(pattern))
        return *fault;
    Section copy = sectionIn(pattern, id);
    Edit edit{"duplicate section " + quoted(copy), {}};
    copy.id = freshSectionId(pattern);
    copy.frame.title += " (copy)";
    std::unordered_map<std::uint32_t, RowId> now;
    RowId next = freshRowId(pattern);
    for (RowRef& ref : copy.rows) {
        Row row = *ref;
        now.emplace(row.id.value, next);
        row.id = next;
        ++next.value;
        ref = std::make_shared<const Row>(std::move(row));
    }
    const auto follow = [&](auto& repeat) {
        repeat.firstRow = now[repeat.firstRow.value];
        repeat.lastRow = now[repeat.lastRow.value];
    };
    std::for_each(copy.frame.boxes.begin(), copy.frame.boxes.end(), follow);
    std::for_each(copy.frame.brackets.begin(), copy.frame.brackets.end(), follow);
    edit.steps.push_back(SpliceSections{sectionIndex(pattern, id) + 1, 0, {std::move(copy)}});
    return edit;
}

Result<Edit> deleteSection(const Pattern& pattern, SectionId id)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (pattern.sections.size() == 1)
        return Fault{
            {}, sectionWords(section), "is the only section, and one has to stay; add another first"};
    Edit edit{"delete section " + quoted(section), {}};
    edit.steps.push_back(SpliceSections{sectionIndex(pattern, id), 1, {}});
    return edit;
}

Result<Edit> setFrame(const Pattern& pattern, SectionId id, SectionFrame frame, std::string name)
{
    if (auto fault = sectionFault(pattern, id))
        return *fault;
    const Section& section = sectionIn(pattern, id);
    if (auto fault = titleFault(frame.title))
        return *fault;
    for (const std::string* text : {&frame.note, &frame.words})
        if (!validUtf8(*text))
            return Fault{
                {}, sectionWords(section), "the text holds characters that can't be kept; type it again"};
    for (const std::string& version : frame.versions)
        if (const auto& all = pattern.head.versions; std::find(all.begin(), all.end(), version) == all.end())
            return Fault{
                {}, sectionWords(section), "the pattern has no version '" + version + "'; add it first"};
    if (frame.columns < 1 || frame.columns > mostColumns)
        return Fault{{},
                     sectionWords(section),
                     toText(frame.columns) + " columns asked for; 1 to " + toText(mostColumns) +
                         " are possible"};
    if (auto fault = narrowFault(section, frame.columns))
        return *fault;

    std::map<int, Row> rows;
    std::vector<RowRef> after;
    for (std::size_t i = 0; i < section.rows.size(); ++i) {
        Row row = *section.rows[i];
        for (const MarkerMove& move : row.moves)
            if (move.boundary > frame.columns)
                return Fault{{},
                             placeInWords(pattern, sectionIndex(pattern, id), static_cast<int>(i)),
                             "a marker stands after column " + toText(move.boundary) +
                                 ", so the chart can't be " + counted(frame.columns, "column") +
                                 " wide; move the marker first"};
        if (frame.columns != section.frame.columns) {
            row.cells.resize(static_cast<std::size_t>(frame.columns));
            rows.emplace(static_cast<int>(i), row);
        }
        after.push_back(std::make_shared<const Row>(std::move(row)));
    }
    if (auto fault = repeatsFault(pattern, frame, after))
        return *fault;
    Edit edit{std::move(name), {}};
    addFrame(edit, section, std::move(frame));
    addSwap(edit, section, std::move(rows));
    return edit;
}

} // namespace shawlwright
