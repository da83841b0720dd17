// The words of one row as phrases.
//
// Shape:   phrases in the order worked, with the start (slip, edge, yarn) and the finish of the row among
// them. A marker
//          without a name has id 0: whichever stands there. Where a word may be taken in more than one way a
//          Doubt tells the readings; `choices` says which of them to take, the first where it says nothing.
//          "Knit the knits and purl the purls" is OwnWords{asTheyFace}, the loops on the needle say what it
//          means.
// Errors:  what is not understood gives an error note and understood = false; nothing is left out silently.
//          Repeats nest at most mostNesting deep.
// Source:  forms of rows: Interweave, Pattern Play; Remade by Hand; Josephine Kush, Row Repeats (n times and
// n more times);
//          the count after binding off: Mee, Exercises in Knitting, 1846 (e-text 21032), p. 98.
#pragma once

#include "core/wording/phrases.h"
#include "core/wording/reader/count_words.h"
#include "core/wording/reader/normal_text.h"
#include "core/wording/reader/reading_note.h"
#include "core/wording/reader/vocabulary.h"

namespace shawlwright {

inline constexpr const char* asTheyFace = "knit the knits and purl the purls";

struct Doubt {
    Place at;
    std::string found;
    std::vector<std::string> readings;
    bool alwaysSay = false; // even where the first reading fits
};

struct RowWords {
    Phrases phrases;
    std::optional<Quantity> stated; // a total: "(45 sts)"
    CountWords counts;              // all that the row's count says
    std::string closing;            // "picking up wraps": of turns, which the needle closes by itself
    std::string note;               // what follows the row's last sentence
    std::string sameAs;             // "as Row 3": the label
    std::vector<ReadingNote> notes;
    std::vector<Doubt> doubts;
    bool toEndTurn = false; // "k to end, turn"
    bool understood = true;
    long long steps = 0; // see Cursor::steps()
};

std::string noteOf(const RowWords& words); // both, as one note to the row

RowWords readRowWords(const NormalText& text, Side side, Vocabulary& words,
                      const std::vector<int>& choices = {});

} // namespace shawlwright
