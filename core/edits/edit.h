// Every change a person can make to a pattern, as a value. Applying it gives the edit that takes it back.
//
// Shape:   an Edit is a list of steps applied in order; an edit without steps changes nothing and is never performed.
// Errors:  apply() cannot fail: the makers (paint.h, rows.h, marks.h, sections.h) have checked.
#pragma once

#include "core/pattern/questions.h"

#include <map>
#include <string>
#include <variant>
#include <vector>

namespace shawlwright {

struct SwapRows { // same row count; row index -> the row that stands there now
    SectionId section;
    std::map<int, RowRef> rows;
};
struct SpliceRows { // rows come and go
    SectionId section;
    int at = 0;
    int removed = 0;
    std::vector<RowRef> added;
};
struct SwapFrame { // title, versions, width, boxes and brackets of a section
    SectionId section;
    SectionFrame frame;
};
struct SpliceSections {
    int at = 0;
    int removed = 0;
    std::vector<Section> added;
};
struct SwapHead {
    PatternHead head;
};
using EditStep = std::variant<SwapRows, SpliceRows, SwapFrame, SpliceSections, SwapHead>;

struct Edit {
    std::string name; // of the undo step: "paint k2tog"
    std::vector<EditStep> steps;
    bool empty() const { return steps.empty(); }
};

// What an edit touched, so that views repaint no more than that.
struct Change {
    bool all = false;      // another document, or sections came or went
    bool head = false;
    struct Rows {
        SectionId section;
        int first = 0;     // row indexes after the edit
        int last = -1;
        bool spliced = false; // rows came or went: everything from `first` on moved
        bool frame = false;
    };
    std::vector<Rows> rows;
};

struct Applied {
    Edit takeBack;
    Change change;
};
Applied apply(Pattern& pattern, const Edit& edit);

// Two edits of one stroke as one: `later` applied after `earlier`. For edits that take back, the older row stays.
Edit composed(Edit earlier, Edit later);

} // namespace shawlwright
