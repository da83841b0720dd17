// Lines that this program's own writer puts beside the rows.

#include "core/base/text.h"
#include "core/wording/reader/count_words.h"
#include "core/wording/reader/text_reader.h"

namespace shawlwright {

bool TextReader::ofThisWriter(const NormalText& line)
{
    if (m_abbreviations) { // their list ends with an empty line
        m_abbreviations = !line.blank();
        return m_abbreviations;
    }
    const std::string words(trimmed(line.text));
    if (words == "Abbreviations" && !m_rowHead) {
        m_abbreviations = true;
        return true;
    }
    const auto count = reachedWords(line, m_words.sizes());
    if (!count)
        return false;
    endRow();
    if (!m_inSection || m_section.rows.empty())
        return false;
    reached(*count, line);
    return true;
}

// What the knitter should have follows from the rows: it is compared, not kept.
void TextReader::reached(const CountWords& count, const NormalText& line)
{
    m_afterBlank = false;
    if (!m_waiting.empty() || !m_templates.empty() || !m_sure || !mayWork() || m_needle.owed.fault != RowId{} ||
        !count.total)
        return;
    const bool ofOneSize = m_words.sizes() > 1 && (count.total->single() || m_countsOfOneSize);
    if (!ofOneSize && count.total->at(0) != m_needle.count())
        say(ReadingNote::Weight::Warning, line.placeOf(line.text.find_first_not_of(' ')),
            "you have " + counted(count.total->at(0), "st"),
            toText(m_needle.count()) + ", as the rows come out", "no count");
}

} // namespace shawlwright
