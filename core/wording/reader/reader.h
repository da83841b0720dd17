// Reads what designers write: the rows of a pattern as text become a pattern, laid out as charts.
//
// Shape:   sections, rows, stitch repeats and row repeats as the text tells them; "Row 4 and all WS rows"
// become rows of
//          their own. All rows of a section share a grid.
// Units:   notes carry line and column of the text, from 1, in code points.
// Errors:  no row is lost: one that isn't understood is kept as the designer's own words, without cells, and
// an error note
//          says what was found there and what would have been understood. Where words have two readings and
//          the needle can tell, the one that comes out is taken; a note says so. Nothing is guessed silently.
//          A text of more than mostTextBytes is refused; at most mostNotes notes are kept.
// Source:  shapes of rows, heads and repeats as in row_reader.h and row_head.h; which words are doubtful:
// Josephine Kush,
//          Row Repeats; Kate Atherley, 2006-08-13 (markers beside yarn overs).
#pragma once

#include "core/needle/needle.h"
#include "core/wording/phrases.h"
#include "core/wording/reader/reading_note.h"

#include <map>
#include <string_view>

namespace shawlwright {

inline constexpr std::size_t mostTextBytes = 16u * 1024u * 1024u;
inline constexpr int mostNotes = 1000;

// Rows that go on in a chart that is there: they take up the loops of its needle and are laid over them.
struct Onward {
    Needle before;
    int columns = 0;      // of the chart; it may have to grow
    Side side = Side::RS; // of the first row where the text doesn't say
    YarnId yarn;          // of the rows until the text says another
};

struct ReadOptions {
    PatternHead head;             // what is known before: yarns, markers, sizes, stitches of its own
    std::optional<Onward> onward; // else the text begins with its cast-on
};

struct ReadText {
    Pattern pattern;
    std::vector<ReadingNote> notes; // in the order of the text
    std::map<std::uint32_t, Place> rowPlaces; // by row id: where the row is told
    int rowsRead = 0;
    int rowsNot = 0; // kept as words
    long long steps =
        0; // of reading, in letters and words looked at: in proportion to the text, whatever stands in it
};
ReadText readText(std::string_view text, const Catalogue& catalogue, const ReadOptions& options = {});

// One row's words, to edit a row in place. The head comes back with markers, yarns and stitches that the
// words brought.
struct RowReading {
    Phrases phrases;
    std::optional<Quantity> stated;
    std::string note;
    std::vector<ReadingNote> notes; // doubts with the reading that was taken among them
    bool understood = true;
    PatternHead head;
};
RowReading readRow(std::string_view text, Side side, const Catalogue& catalogue, const PatternHead& head);

} // namespace shawlwright
