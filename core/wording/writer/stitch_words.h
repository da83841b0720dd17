// How often a stitch is worked, in the form that suits its abbreviation.
//
// Shape:   three kinds of abbreviation.
//          Plain: k, p, brk, brp, sl, drop, with or without "1", perhaps with "tbl" or "wyif" behind it; the
//          number stands in the word: "k3", "sl2 wyif", "k1 tbl".
//          Edge: binding off, casting on, picking up; the number follows: "bo 5", "co 28", "pu 17".
//          Other: "k2tog"; more than one of them in brackets: "[k2tog] 4 times".
//          A double yarn over is "yo twice"; single ones side by side are told one by one: "yo, yo".
// Source:  Remade by Hand and Interweave, Pattern Play, for brackets and times.
#pragma once

#include "core/stitches/catalogue.h"
#include "core/wording/style.h"

#include <string>

namespace shawlwright {

enum class CountForm { Plain, Edge, Other };

struct StitchWord {
    CountForm form = CountForm::Other;
    std::string word;    // the abbreviation; of a plain one the letters before the number
    std::string tail;    // of a plain one, what follows the number: " wyif"
    bool goesTo = false; // "k to end": the word does without a number

    std::string times(const std::string& number) const; // Plain and Edge: "k4 (5, 6)", "bo 5"
};

StitchWord stitchWord(const Stitch& stitch, Side side, Words words, TimesForm times = TimesForm::Mixed);

// Makes loops of yarn alone, one or more.
bool isYarnOver(const Stitch& stitch);
// Worked as a plain knit or purl on that side.
bool plainlyWorked(const Stitch& stitch, Side side);

} // namespace shawlwright
