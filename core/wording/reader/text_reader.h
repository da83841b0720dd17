// The whole of a text, line by line. See reader.h for what comes out of it.
//
// Shape:   lines go to sections as drafts of rows, each run on a needle as soon as it is read, so that
// doubtful words can
//          be settled; at the end of a section its drafts are laid out on one grid.
#pragma once

#include "core/wording/reader/cast_on_markers.h"
#include "core/wording/reader/layout.h"
#include "core/wording/reader/marker_sense.h"
#include "core/wording/reader/reader.h"
#include "core/wording/reader/row_head.h"
#include "core/wording/reader/row_reader.h"

#include <map>

namespace shawlwright {

class TextReader {
public:
    TextReader(const Catalogue& catalogue, const ReadOptions& options);
    ReadText read(std::string_view text);

private:
    struct DraftRow {
        Row base; // without cells
        RowDraft draft;
        PlacedRow compact;
        std::string label; // as the text has it; empty: none
        NormalText words;
        Place at;
        int after = -1;            // stitches after it when it was read; -1: not known
        std::string closing, rest; // its note: of turns, and what follows its last sentence
        bool placesCastOn = false; // markers that the cast-on tells of
        std::vector<int> eachTime; // counts of its times, where the text lists them
    };
    struct Repeat {
        std::size_t first = 0, last = 0;
        Quantity times;
    };
    struct DraftSection {
        std::string title, note;
        std::vector<std::string> versions; // empty: all
        std::vector<DraftRow> rows;
        std::vector<Repeat> repeats; // inner ones first
        // Numbers of rows painted out: "Rep Rows 3-6 nine more times." may end at Row 42, which is Row 6
        // here.
        std::map<int, std::size_t> ends;
        struct Painted { // numbers of such rows: `from` to `to` are those from `first` on, over and over
            int from = 0, to = 0;
            std::size_t first = 0, rows = 1;
        };
        std::vector<Painted> painted;
        Needle start;
        std::size_t numberedOnFrom = static_cast<std::size_t>(-1); // rows that the text numbers otherwise
    };
    struct Template { // "Row 2 and all WS rows"
        RowHead head;
        NormalText words;
        int from = 0;
    };
    struct Tried {
        DraftRow row;
        std::vector<ReadingNote> notes;
        std::vector<Doubt> doubts;
        Needle after;
        int faults = 0;
        bool understood = true;
    };

    // text_lines.cpp
    void lines(const std::vector<NormalText>& all);
    void line(const NormalText& line);
    RowWords rowWords(const NormalText& text, Side side, const std::vector<int>& choices = {});
    bool headLine(const NormalText& line);
    bool continues(const NormalText& line);
    void paragraph();
    bool headFact(const std::string& line); // of yarn, needles, gauge, designer
    void prose(const NormalText& line);
    bool special(const NormalText& line);
    bool sizesLine(const NormalText& line);
    bool noRow(const NormalText& line);
    // text_written.cpp
    bool ofThisWriter(const NormalText& line);
    void reached(const CountWords& count, const NormalText& line);
    // text_versions.cpp
    bool versionLine(const NormalText& line);
    void takeUpVersion();
    void leaveVersion();
    const Row* lastRowBefore() const; // of the sections before, in the version of this one; null: none
    // text_lines.cpp
    void endRow();
    void forgetNote(const NormalText& note);
    void decideFirstSide(const std::vector<NormalText>& all);
    // text_rows.cpp
    void rowBlock(const RowHead& head, const NormalText& words);
    void forgetTwice(std::size_t notes);
    void oneRow(const std::string& label, std::optional<Side> side, bool round, const std::string& yarn,
                const NormalText& words);
    Tried tried(const DraftRow& base, const NormalText& words, const std::vector<int>& choices);
    void settle(Tried& best, const DraftRow& base, const NormalText& words);
    void keepAsWords(DraftRow& row);
    void keepUnread(const std::string& label, NormalText words, Place at);
    void fillTo(int number);
    bool fillOne(int number);
    Side nextSide() const;
    const NormalText* wordsOfRow(const std::string& label) const;
    void castOn(const CastOnWords& words, Place at);
    void guessCastOn(const NormalText& text, Side side);
    void beginNeedle();
    Phrases withCastOnMarkers(Phrases phrases, const DraftRow& row, std::vector<ReadingNote>& notes);
    void showBindOff(Phrases& phrases) const;
    void tellResting(int said, Tried& row) const;
    void tellNeverWorked(Tried& row, const Trace& trace) const;
    void tellCounts(const CountWords& counts, Tried& row) const;
    void tellTurn(const Phrases& phrases, const DraftRow& row, std::vector<ReadingNote>& notes) const;
    // text_repeats.cpp
    void repeatRows(const RowRepeat& repeat, Place at, const std::string& found);
    void forgetPainted();
    bool numbersAreRows(const RowRepeat& told, std::size_t first, std::size_t last) const;
    bool repeatsUnder(const RowHead& head, const NormalText& words);
    void paintedOut(const RowRepeat& told, const Quantity& inAll, std::size_t last);
    std::optional<std::size_t> rowLabelled(const std::string& label, std::size_t upTo) const;
    void countsOfFirstTime(std::size_t first, std::size_t last, int times);
    static bool worksAgain(const RowRepeat& repeat);
    void workAnew(std::size_t first, std::size_t last);
    void knitAgain(std::size_t first, std::size_t last, int times);
    // text_sections.cpp
    void beginSection();
    void endSection();
    int columnsOfShortRows(const DraftSection& draft) const; // 0: it has none
    Section laidOut(DraftSection& draft);
    void typeLabels(Section& section, const std::vector<std::string>& wanted) const;

    void say(ReadingNote::Weight weight, Place at, std::string found, std::string expected,
             std::string chosen);
    int work(Needle& needle, const PlacedRow& row, bool startsSection,
             Trace* trace = nullptr) const; // faults
    bool mayWork() const { return m_worked < mostWorked; }

    Vocabulary m_words;
    ReadText m_out;
    DraftSection m_section;
    bool m_inSection = false;
    std::vector<NormalText> m_prose;  // lines since the last row
    std::optional<RowHead> m_rowHead; // the row that is being gathered
    NormalText m_rowText;
    bool m_afterBlank = true;
    std::vector<Template> m_templates;
    std::map<int, Template> m_waiting; // "Rows 2, 4 and 6" before row 3 was told
    int m_lastNumber = 0;
    std::optional<int>
        m_paintedTo; // the number that the row repeat just told ends at, were its rows painted out
    bool m_abbreviations = false;                            // within their list
    std::vector<std::string> m_nextVersions, m_partVersions; // of the section told next; of all that follow
    struct Knitted {                                         // a version as far as its last section
        Needle needle;
        YarnId yarn;
    };
    std::map<std::string, Knitted> m_knitted;
    bool m_versionsTold = false; // by a line at the head
    bool m_haveCastOn = false;
    bool m_needleBegun = false;
    std::vector<CastOnMarker> m_castOnMarkers;
    std::optional<Side> m_firstSide;
    bool m_countsOfOneSize = false;
    bool m_titled = false;
    Needle m_needle;
    bool m_sure = true; // the needle is as the text says
    std::uint32_t m_rowId = 0;
    YarnId m_yarn{1};
    std::optional<int> m_columnsThere; // of the chart that the rows go on in
    mutable long long m_worked = 0;
    static constexpr long long mostWorked = 20'000'000; // loops
    static constexpr int rowItself = 150;               // what a row costs besides its loops, in loops
};

} // namespace shawlwright
