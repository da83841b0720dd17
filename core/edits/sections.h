// Makers of edits on sections and on the head of a pattern; and new patterns.
//
// Errors:  a Fault where a title is empty, an index lies outside, or something still in use would go.
#pragma once

#include "core/edits/edit.h"

namespace shawlwright {

struct NewPattern {
    std::string title = "New shawl";
    std::string designer;
    CastOn castOn;
    std::vector<Yarn> yarns; // empty: MC and CC of our own
    Gauge gauge;
    double needleMm = 4.0;
    std::string sectionTitle = "Section 1";
    int rows = 20;
    int columns = 20;
};
Pattern newPattern(const NewPattern& wishes); // one section, an empty grid, rows alternating from castOn.firstSide

Result<Edit> addSection(const Pattern&, int at, std::string title, int rows, int columns);
Result<Edit> renameSection(const Pattern&, SectionId, std::string title);
Result<Edit> moveSection(const Pattern&, SectionId, int toIndex);
Result<Edit> duplicateSection(const Pattern&, SectionId);
Result<Edit> deleteSection(const Pattern&, SectionId); // the last one is refused
Result<Edit> setFrame(const Pattern&, SectionId, SectionFrame frame, std::string name);
// An own stitch made or changed (by its id); another own stitch that it names as its mirror image names it too, and one
// that it no longer names has none.
PatternHead withOwnStitch(PatternHead head, const Stitch& stitch);
Result<Edit> setHead(const Pattern&, PatternHead head, std::string name); // refuses to drop yarns, markers, stitches in use

} // namespace shawlwright
