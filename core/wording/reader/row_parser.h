// The recursive descent behind readRowWords(). See row_reader.h for what comes out of it.
#pragma once

#include "core/wording/reader/cursor.h"
#include "core/wording/reader/row_reader.h"

namespace shawlwright {

class RowParser {
public:
    RowParser(const NormalText& text, Side side, Vocabulary& words, const std::vector<int>& choices)
        : m_text(text), m_cursor(m_text), m_side(side), m_words(words), m_choices(choices)
    {
    }
    RowWords row();

private:
    enum class Got { Something, Nothing, Fault };

    // row_parser.cpp
    bool sentences(Phrases& out);
    Got item(Phrases& out);
    Got itemItself(Phrases& out);
    bool mendWord();
    void tellStitchLeft(Phrases& out, std::size_t at, std::size_t from);
    bool separator();
    bool countHere();
    void restIsNote();
    bool closingOfTurns();
    void leaveRoomForEnd(Phrases& out);
    Got fault(std::string expected);
    Got fault(std::size_t at, std::string found, std::string expected);
    int doubt(std::size_t at, std::string found, std::vector<std::string> readings, bool alwaysSay);
    void remark(ReadingNote::Weight weight, std::size_t at, std::string found, std::string chosen);
    Quantity sized(Quantity quantity);
    std::optional<Quantity> quantity();
    std::optional<Quantity> times();
    Phrase group(Phrases&& inside, Quantity times, Reach to = {}) const;

    // row_repeats.cpp
    Got starred(Phrases& out);
    Got bracketed(Phrases& out);
    Got repeatTo(Phrases& out);
    bool inside(Phrases& out, char closer);
    bool timesAfterComma(Phrases& out);

    // row_stitches.cpp
    Got stitch(Phrases& out);
    Got numbered(Phrases& out);
    Got wholeRow(Phrases& out);
    Got afterWord(Phrases& out, StitchId stitch, std::size_t from);
    void run(Phrases& out, StitchId stitch, YarnId yarn, const Quantity& count);
    void remainder(Phrases& out);
    std::string wordOf(const Stretch& run) const;
    bool plainlyWorked(StitchId stitch) const;
    StitchId require(std::string_view word) const;
    Got toPlace(Phrases& out, std::size_t from);

    // row_made_of.cpp
    Got passOver(Phrases& out);
    Got gathered(Phrases& out, Phrases&& inside, std::size_t from);

    // row_reach.cpp
    std::optional<Reach> reach();
    Reach place(Quantity leaving);
    std::optional<YarnId> inYarn();

    // row_ends.cpp
    Got start(Phrases& out);
    Got finish(Phrases& out);
    Got marker(Phrases& out);
    Got yarn(Phrases& out);
    MarkerId markerName(bool mayBeNew);
    bool isStitch(std::size_t at);
    std::optional<YarnId> yarnName(bool mayBeNew);

    const Stitch& stitchOf(StitchId id) const { return m_words.catalogue().stitch(id); }

    NormalText m_text; // misspelt words are put right in it
    Cursor m_cursor;
    int m_mended = 0;
    Side m_side;
    Vocabulary& m_words;
    const std::vector<int>& m_choices;
    RowWords m_out;
    std::size_t m_nextDoubt = 0;
    int m_depth = 0;
    int m_starred = 0;           // within a starred repeat
    bool m_worked = false;       // a stitch was told
    YarnId m_inYarn;             // "with CC" in the middle of a row
    bool m_afterBindOff = false; // the loop that stays on the right needle is not told yet
    bool m_runIsWord = false;    // the run read last was told without a number of its own
    std::size_t m_endsWith = 0;  // phrases before the end of "rep from * across, ending with k1"; 0: none
    bool m_finished = false;
};

} // namespace shawlwright
