// The cast-on, or what stands for it.

#include "core/base/text.h"
#include "core/wording/reader/text_reader.h"

#include <algorithm>

namespace shawlwright {

void TextReader::beginNeedle()
{
    if (m_needleBegun)
        return;
    m_needleBegun = true;
    CastOn& start = m_words.head().castOn;
    if (m_words.head().yarns.empty())
        m_words.yarn("MC");
    if (start.yarn == YarnId{})
        start.yarn = m_words.head().yarns.front().id;
    m_yarn = start.yarn;
    m_needle = shawlwright::castOn(std::min(start.stitches.at(0), mostCount), start.yarn, start.firstSide);
    m_section.start = m_needle;
}

void TextReader::castOn(const CastOnWords& words, Place at)
{
    if (m_haveCastOn || m_needleBegun) {
        say(ReadingNote::Weight::Warning, at, "a second cast-on", "stitches cast on within a row: 'co 28'",
            "words only");
        return;
    }
    m_haveCastOn = true;
    m_words.nameSizes(words.stitches);
    CastOn& start = m_words.head().castOn;
    start.stitches = words.stitches;
    start.method = words.method;
    if (!words.yarn.empty())
        start.yarn = m_words.yarn(words.yarn);
    if (words.wrongSideFaces)
        m_firstSide = Side::WS;
    if (m_firstSide)
        start.firstSide = *m_firstSide;
    for (const int after : words.markersAfter)
        m_castOnMarkers.push_back({after, MarkerId{}});
    if (words.markersAfter.size() > 1) {
        std::string places;
        for (const int after : words.markersAfter)
            places += (places.empty() ? "" : ", ") + toText(after);
        say(ReadingNote::Weight::Note, at, "pm after " + places + " sts", {},
            "counted from the start of the first row each, and placed in that row");
    }
    if (!words.rest.empty())
        say(ReadingNote::Weight::Warning, at, words.rest.substr(0, 60), "the end of the cast-on", "a note");
    if (!words.rest.empty())
        m_words.head().notes += (m_words.head().notes.empty() ? "" : "\n") + words.rest;
}

// Without a cast-on: as many stitches as the first row works, if it says so.
void TextReader::guessCastOn(const NormalText& text, Side side)
{
    m_haveCastOn = true;
    if (m_firstSide)
        m_words.head().castOn.firstSide = *m_firstSide;
    int takes = 0;
    const auto count = [&](const auto& self, const Phrases& phrases) -> bool {
        int here = 0;
        for (const Phrase& phrase : phrases) {
            if (const auto* run = std::get_if<Stretch>(&phrase.is)) {
                if (run->count == 0)
                    return false;
                here += run->count * m_words.catalogue().stitch(run->stitch).takesUp;
            } else if (const auto* group = std::get_if<Group>(&phrase.is)) {
                const int before = takes;
                takes = 0;
                if (group->to.place != BoxUntil::Times || !self(self, group->inside))
                    return false;
                here += std::min(takes, mostCount / mostRepeats) * group->times.at(0);
                takes = before;
            }
            if (here > mostCount)
                return false;
        }
        takes = here;
        return true;
    };
    const RowWords row = rowWords(text, side);
    const bool known = row.understood && count(count, row.phrases);
    if (known)
        m_words.head().castOn.stitches = takes;
    say(ReadingNote::Weight::Warning, text.placeOf(0), "a first row without a cast-on",
        "'Cast on n sts' before it",
        counted(m_words.head().castOn.stitches.at(0), "stitch", "stitches") +
            (known ? ", as this row works" : ""));
}

} // namespace shawlwright
