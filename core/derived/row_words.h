// Rows of a chart made from words: somebody changed what is written, the chart follows.
//
// Shape:   the rows of the text take the places of the section's rows from `first` on, over the loops of the
// needle ahead of
//          it; rows that are missing at the end are added, the chart is widened where it has to be. Ids,
//          typed labels and row repeats of the rows that are there stay. A text without a row's label is one
//          row. A stitch repeat of the words becomes one of the chart, except where the row had none and each
//          knitting of it works the repeat the same number of times: there it is painted out, so that the
//          chart stays a picture.
// Errors:  no edit where a row was not understood, or where it can't stand in the chart; the notes and the
// fault say why.
#pragma once

#include "core/edits/edit.h"
#include "core/needle/ledger.h"
#include "core/wording/reader/reading_note.h"

#include <span>
#include <string_view>

namespace shawlwright {

struct RowsFromWords {
    Result<Edit> edit;
    std::vector<ReadingNote> notes; // with places in the text as it was typed
    int rows = 0;                   // that the text tells
    std::vector<Fault> leftOut;     // why a row was not understood, with its place in the text
};

// What becomes of rows that are not understood where others are. LeaveOut: the row of the chart in their place stays as it
// is, and one past the last row is added with nothing but their words.
enum class BadRows { RefuseAll, LeaveOut };

// `ledgers`: of every version and size; `shown` is the one whose needle tells the loops there are.
RowsFromWords rowsFromWords(const Pattern& pattern, const Catalogue& catalogue,
                            std::span<const Ledger> ledgers, std::size_t shown, SectionId section, int first,
                            std::string_view text, BadRows bad = BadRows::RefuseAll);

// The words of a row as they may be typed over: without label and counted total, with a stated count and the
// note.
std::string wordsToEdit(const Row& row, const std::string& text);

} // namespace shawlwright
