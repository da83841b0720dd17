#include "core/pattern/questions.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

bool operator==(const Section& a, const Section& b)
{
    return a.id == b.id && a.frame == b.frame &&
           std::equal(a.rows.begin(), a.rows.end(), b.rows.begin(), b.rows.end(),
                      [](const RowRef& x, const RowRef& y) { return x == y || *x == *y; });
}

int sectionIndex(const Pattern& pattern, SectionId id)
{
    for (std::size_t i = 0; i < pattern.sections.size(); ++i)
        if (pattern.sections[i].id == id)
            return static_cast<int>(i);
    return -1;
}

int rowIndex(const Section& section, RowId id)
{
    for (std::size_t i = 0; i < section.rows.size(); ++i)
        if (section.rows[i]->id == id)
            return static_cast<int>(i);
    return -1;
}

namespace {

template <typename Thing, typename Id>
const Thing* withId(const std::vector<Thing>& things, Id id)
{
    const auto found = std::find_if(things.begin(), things.end(), [id](const Thing& t) { return t.id == id; });
    return found == things.end() ? nullptr : &*found;
}

template <typename Id, typename Thing>
Id onePast(const std::vector<Thing>& things)
{
    Id greatest{};
    for (const Thing& thing : things)
        greatest = std::max(greatest, thing.id);
    ++greatest.value;
    return greatest;
}

} // namespace

const Yarn* yarnOf(const PatternHead& head, YarnId id)
{
    return withId(head.yarns, id);
}

const Marker* markerOf(const PatternHead& head, MarkerId id)
{
    return withId(head.markers, id);
}

RowId freshRowId(const Pattern& pattern)
{
    RowId greatest;
    for (const Section& section : pattern.sections)
        for (const RowRef& row : section.rows)
            greatest = std::max(greatest, row->id);
    return RowId{greatest.value + 1};
}

SectionId freshSectionId(const Pattern& pattern)
{
    return onePast<SectionId>(pattern.sections);
}

BoxId freshBoxId(const Section& section)
{
    return onePast<BoxId>(section.frame.boxes);
}

StitchId freshStitchId(const PatternHead& head)
{
    const StitchId next = onePast<StitchId>(head.stitches);
    return next.value < firstOwnStitch ? StitchId{firstOwnStitch} : next;
}

YarnId freshYarnId(const PatternHead& head)
{
    return onePast<YarnId>(head.yarns);
}

MarkerId freshMarkerId(const PatternHead& head)
{
    return onePast<MarkerId>(head.markers);
}

int versionCount(const Pattern& pattern)
{
    return std::max(1, static_cast<int>(pattern.head.versions.size()));
}

int sizeCount(const Pattern& pattern)
{
    return std::max(1, static_cast<int>(pattern.head.sizes.size()));
}

std::string versionName(const Pattern& pattern, int version)
{
    const auto& names = pattern.head.versions;
    return version >= 0 && version < static_cast<int>(names.size()) ? names[static_cast<std::size_t>(version)]
                                                                    : std::string();
}

bool belongsTo(const Section& section, const Pattern& pattern, int version)
{
    const auto& names = section.frame.versions;
    return names.empty() || pattern.head.versions.empty() ||
           std::find(names.begin(), names.end(), versionName(pattern, version)) != names.end();
}

std::vector<Box> boxesOn(const Section& section, int row)
{
    std::vector<Box> boxes;
    if (row < 0 || row >= static_cast<int>(section.rows.size()))
        return boxes;
    const RowId id = section.rows[static_cast<std::size_t>(row)]->id;
    for (const Box& box : section.frame.boxes) {
        if (box.firstRow == box.lastRow) { // most are of one row; looking for each of them would cost all rows
            if (box.firstRow == id)
                boxes.push_back(box);
            continue;
        }
        const int first = rowIndex(section, box.firstRow);
        const int last = rowIndex(section, box.lastRow);
        if (first >= 0 && first <= row && row <= last)
            boxes.push_back(box);
    }
    std::stable_sort(boxes.begin(), boxes.end(), [](const Box& a, const Box& b) {
        return a.lastColumn - a.firstColumn > b.lastColumn - b.firstColumn;
    });
    return boxes;
}

ColumnSpan usedColumns(const Row& row, std::span<const Box> boxes)
{
    ColumnSpan used;
    const auto cover = [&used](int first, int last) {
        used.first = used.first == 0 ? first : std::min(used.first, first);
        used.last = std::max(used.last, last);
    };
    const int columns = static_cast<int>(row.cells.size());
    for (int column = 1; column <= columns; ++column)
        if (cellAt(row, column).stitch != noStitch)
            cover(column, column);
    for (const Box& box : boxes)
        for (int column = box.firstColumn; column <= std::min(box.lastColumn, columns); ++column)
            if (cellAt(row, column).stitch != noStitch) {
                cover(box.firstColumn, std::min(box.lastColumn, columns));
                break;
            }
    return used;
}

std::vector<std::string> rowLabels(const Section& section)
{
    std::vector<std::string> labels;
    int number = 0;
    char letter = 0; // of the next row of a group joined by slides; 0: a new group begins
    for (std::size_t i = 0; i < section.rows.size(); ++i) {
        const Row& row = *section.rows[i];
        const bool slides = row.finish.kind == FinishKind::Slide;
        if (letter == 0) {
            ++number;
            if (slides && i + 1 < section.rows.size())
                letter = 'a';
        }
        if (!row.label.empty()) {
            labels.push_back(row.label);
            if (const auto typed = readInt(row.label))
                number = *typed;
        } else {
            labels.push_back(toText(number) + (letter != 0 ? std::string(1, letter) : std::string()));
        }
        letter = slides && letter != 0 && letter < 'z' ? static_cast<char>(letter + 1) : '\0';
    }
    return labels;
}

std::string placeInWords(const Pattern& pattern, int section, int row)
{
    const Section& at = pattern.sections[static_cast<std::size_t>(section)];
    return "Section '" + at.frame.title + "', Row " + rowLabels(at)[static_cast<std::size_t>(row)];
}

} // namespace shawlwright
