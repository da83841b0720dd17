// How rows are written: a style sheet, kept in the pattern as plain words (PatternHead::style).
//
// Shape:   one word per key, "counts": "where they change"; toWords() names every key and value there is.
// Errors:  a value that isn't known gives the default.
// Source:  what a style sheet settles (capitals, "rep" or "repeat", parentheses, counts): Frasier Knits; Craft
//          Star Studios; Joeli's Kitchen. Labels without a colon: Interweave knitscene style in Pattern Play.
//          A group with its number or an asterisk: Interweave, Pattern Play; Remade by Hand. "Slip markers as you
//          come to them", said once, allows leaving out sm: Yours UK shawl (2017).
#pragma once

#include "core/pattern/pattern.h"

namespace shawlwright {

enum class CountsShown { Always, WhereTheyChange, Never };
// Which of two texts of one length is taken.
enum class RepeatForm { Bracket, Asterisk };
// "[k2tog] 4 times" with "nine more times"; 4 and 9; four and nine.
enum class TimesForm { Mixed, Figures, Words };
// "k2, k2tog"; "K2, k2tog"; "K2, K2tog".
enum class Capitals { Small, RowStart, Stitches };
// "(RS)"; kept wherever the words would be wrong without.
enum class SidesShown { EveryRow, WhereDoubtful, Never };
enum class RepeatWord { Rep, Repeat };
// "Row 5 (RS):", "Row 5 (RS).", "R5 (RS):", "5th row (RS):".
enum class LabelForm { Colon, FullStop, Short, Ordinal };
// "(23 sts)", "[23 sts]", "- 23 sts", "23 sts".
enum class CountMarks { Parentheses, Brackets, Dash, None };
// Rows that say the same.
enum class Gathering { Gathered, RowByRow };
// A run of more than a dozen stitches: "k to last 4 sts"; "k83".
enum class LongRuns { ToAPlace, Counted };
// "k4, sm, k16"; "k20" with "Slip markers as you come to them." said once.
enum class MarkersSlipped { Said, WhereNeeded };
// Each whole after the other; section by section.
enum class VersionsTold { Apart, SideBySide };

struct Style {
    Words words = Words::US;
    CountsShown counts = CountsShown::WhereTheyChange;
    RepeatForm repeats = RepeatForm::Asterisk;
    TimesForm times = TimesForm::Mixed;
    Capitals capitals = Capitals::Small;
    SidesShown sides = SidesShown::EveryRow;
    RepeatWord repeatWord = RepeatWord::Rep;
    LabelForm labels = LabelForm::Colon;
    CountMarks countMarks = CountMarks::Parentheses;
    Gathering gathering = Gathering::Gathered;
    LongRuns longRuns = LongRuns::ToAPlace;
    MarkersSlipped markers = MarkersSlipped::Said;
    VersionsTold versions = VersionsTold::SideBySide;
    bool operator==(const Style&) const = default;
};

Style styleOf(const PatternHead& head);
std::map<std::string, std::string> toWords(const Style& style);

} // namespace shawlwright
