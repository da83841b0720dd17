// The way to tell a section's rows in the fewest letters.
//
// Method:  dynamic programming over the nodes from the last one back: a node alone, a run of rows alike
// ("Rows 3-8: knit."),
//          or a block and how often it is worked again ("Rep Rows 3-6 nine more times."), the block told in
//          the fewest letters within itself, three deep. A swallowed row must be found by counting from the
//          rows that are told, so no label in it may be typed.
#pragma once

#include "core/wording/writer/alike_rows.h"

#include <memory>

namespace shawlwright {

struct LinePlan {
    enum class Kind { Row, Run, Repeat, Own } kind = Kind::Row;
    int at = 0;                                           // node
    int length = 1;                                       // Run: rows; Repeat: nodes of the block
    int times = 1;                                        // Repeat: in all
    std::shared_ptr<const std::vector<LinePlan>> block{}; // Repeat and Own
};

std::vector<LinePlan> fewestLines(const SectionFacts& facts, const AlikeRows& rows,
                                  std::span<const SectionNode> nodes);

} // namespace shawlwright
