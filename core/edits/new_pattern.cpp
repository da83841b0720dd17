// A pattern to start from: sections.h. The grid is empty (no stitch everywhere): paper to paint on.

#include "core/edits/sections.h"

#include <algorithm>

namespace shawlwright {

Pattern newPattern(const NewPattern& wishes)
{
    Pattern pattern;
    PatternHead& head = pattern.head;
    head.title = wishes.title;
    head.designer = wishes.designer;
    head.castOn = wishes.castOn;
    head.gauge = wishes.gauge;
    head.needleMm = wishes.needleMm;
    head.yarns = wishes.yarns;
    if (head.yarns.empty()) {
        Yarn main{YarnId{1}, "MC", "main colour", 0x2F5D62};
        Yarn contrast{YarnId{2}, "CC", "contrast colour", 0xD9A441};
        head.yarns = {main, contrast};
    }
    if (!yarnOf(head, head.castOn.yarn))
        head.castOn.yarn = head.yarns.front().id;

    Section section;
    section.id = SectionId{1};
    section.frame.title = wishes.sectionTitle;
    section.frame.columns = std::clamp(wishes.columns, 1, mostColumns);
    Row row;
    row.side = head.castOn.firstSide;
    row.yarn = head.castOn.yarn;
    row.cells.resize(static_cast<std::size_t>(section.frame.columns));
    for (int i = 0; i < std::clamp(wishes.rows, 1, mostRows); ++i) {
        row.id = RowId{static_cast<std::uint32_t>(i) + 1};
        section.rows.push_back(std::make_shared<const Row>(row));
        row.side = otherSide(row.side);
    }
    pattern.sections.push_back(std::move(section));
    return pattern;
}

} // namespace shawlwright
