// Labels of rows in the form of the style sheet, closing mark included: "Row 5 (RS):", "R5 (RS):", "5th row
// (RS):", "Rows 2, 4 and 6 (WS).".
//
// Source:  "Rnd" in the round: Frasier Knits; sides on the first pair and wherever they could be doubted:
//          slippedstitches.wordpress.com; labels without a colon: Interweave knitscene style in Pattern Play.
#pragma once

#include "core/wording/style.h"
#include "core/wording/writer/section_facts.h"

namespace shawlwright {

// The rows that one label names.
struct LabelledRows {
    std::vector<int> rows; // indexes in the section, the first of them first
    enum class Form {
        List,      // "Row 3", "Rows 2, 4 and 6"
        Run,       // "Rows 3-8", "Rows 3 and 4"
        Following, // "Row 4 and all following WS rows"
        UpTo       // "Row 4 and all WS rows to Row 12"
    } form = Form::List;
};

class RowLabels {
public:
    RowLabels(const SectionFacts& facts, const Style& style);

    std::string label(const LabelledRows& what) const;
    std::string label(int row) const { return label({{row}, LabelledRows::Form::List}); }
    // "Rows 3-6", "Row 3", "R3-6", "3rd-6th rows"
    std::string range(int first, int last) const;
    // Whether the side is told on a row of its own.
    bool tellsSide(int row) const;

private:
    std::string numbered(const std::string& word, bool round) const;
    std::string listed(const std::vector<int>& rows, bool round) const;

    const SectionFacts& m_facts;
    LabelForm m_form;
    SidesShown m_sides;
    bool m_surprises = false; // a row of the section has a side that is not due
};

} // namespace shawlwright
