#include "core/wording/writer/quantity_words.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

bool everyValueIs(const Quantity& quantity, int value)
{
    return std::all_of(quantity.values.begin(), quantity.values.end(), [value](int v) { return v == value; });
}

namespace {

// The same for every size is said once.
bool saidOnce(const Quantity& quantity)
{
    return everyValueIs(quantity, quantity.at(0));
}

} // namespace

std::string inWords(const Quantity& quantity)
{
    std::string text = toText(quantity.at(0));
    if (saidOnce(quantity))
        return text;
    text += " (";
    for (std::size_t i = 1; i < quantity.values.size(); ++i)
        text += (i > 1 ? ", " : "") + toText(quantity.values[i]);
    return text + ")";
}

std::string timesInWords(const Quantity& quantity, TimesForm form)
{
    if (everyValueIs(quantity, 1))
        return "once";
    if (everyValueIs(quantity, 2))
        return "twice";
    const bool words = form == TimesForm::Words && saidOnce(quantity);
    return (words ? numberInWords(quantity.at(0)) : inWords(quantity)) + " times";
}

std::string stitchesInWords(const Quantity& quantity)
{
    return inWords(quantity) + (everyValueIs(quantity, 1) ? " st" : " sts");
}

std::string moreTimesInWords(const Quantity& more, TimesForm form)
{
    if (everyValueIs(more, 1))
        return "once more";
    const bool words = form != TimesForm::Figures && saidOnce(more);
    return (words ? numberInWords(more.at(0)) : inWords(more)) + " more times";
}

std::string numberInWords(int number)
{
    static const char* const units[] = {"no",      "one",     "two",       "three",    "four",
                                        "five",    "six",     "seven",     "eight",    "nine",
                                        "ten",     "eleven",  "twelve",    "thirteen", "fourteen",
                                        "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"};
    static const char* const tens[] = {"",      "",      "twenty",  "thirty", "forty",
                                       "fifty", "sixty", "seventy", "eighty", "ninety"};
    if (number < 0 || number > 99)
        return toText(number);
    if (number < 20)
        return units[number];
    const std::string ten = tens[number / 10];
    return number % 10 == 0 ? ten : ten + "-" + units[number % 10];
}

} // namespace shawlwright
