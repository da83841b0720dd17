// Numbers as a row says them.
//
// Shape:   sizes stand in parentheses after the first: "4 (5, 6)" (Craft Star Studios; The Knitter).
#pragma once

#include "core/pattern/quantity.h"
#include "core/wording/style.h"

#include <string>

namespace shawlwright {

std::string inWords(const Quantity& quantity); // "4", "4 (5, 6)"
// "once", "twice", "4 times", "four times", "4 (5, 6) times"
std::string timesInWords(const Quantity& quantity, TimesForm form = TimesForm::Mixed);
std::string stitchesInWords(const Quantity& quantity); // "1 st", "5 sts", "5 (6, 7) sts"
// "once more", "nine more times"; mixed is in words here
std::string moreTimesInWords(const Quantity& more, TimesForm form = TimesForm::Mixed);
// Words up to ninety-nine, so that a number never stands beside a row's; figures beyond.
std::string numberInWords(int number);
bool everyValueIs(const Quantity& quantity, int value);

} // namespace shawlwright
