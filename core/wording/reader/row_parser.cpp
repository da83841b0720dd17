// Sentences of a row, and what they are made of.

#include "core/wording/reader/row_parser.h"

#include "core/base/text.h"
#include "core/wording/reader/shaping_words.h"

#include <algorithm>

namespace shawlwright {

std::string noteOf(const RowWords& words)
{
    return words.closing.empty() || words.note.empty() ? words.closing + words.note : words.closing + ". " + words.note;
}

RowWords readRowWords(const NormalText& text, Side side, Vocabulary& words, const std::vector<int>& choices)
{
    return RowParser(text, side, words, choices).row();
}

RowWords RowParser::row()
{
    Phrases phrases;
    if (!sentences(phrases))
        m_out.understood = false;
    m_out.phrases = std::move(phrases);
    m_out.steps = m_cursor.steps() + static_cast<long long>(m_text.text.size());
    return std::move(m_out);
}

RowParser::Got RowParser::fault(std::size_t at, std::string found, std::string expected)
{
    if (const auto triple = shapingInWords(found))
        expected = "the rows written out: " + *triple;
    if (m_out.understood) {
        m_cursor.to(at);
        m_out.notes.push_back(
            {ReadingNote::Weight::Error, m_cursor.place(), found.substr(0, 60), std::move(expected), {}});
        m_out.understood = false;
    }
    return Got::Fault;
}

RowParser::Got RowParser::fault(std::string expected)
{
    m_cursor.blanks();
    std::string found = m_cursor.upTo(",;[]().");
    if (found.empty())
        found = m_cursor.done() ? "the end of the row" : std::string(1, m_cursor.peek());
    return fault(m_cursor.at(), std::move(found), std::move(expected));
}

int RowParser::doubt(std::size_t at, std::string found, std::vector<std::string> readings, bool alwaysSay)
{
    const int chosen = m_nextDoubt < m_choices.size() ? m_choices[m_nextDoubt] : 0;
    ++m_nextDoubt;
    const std::size_t here = m_cursor.at();
    m_cursor.to(at);
    m_out.doubts.push_back({m_cursor.place(), std::move(found), std::move(readings), alwaysSay});
    m_cursor.to(here);
    return chosen;
}

void RowParser::remark(ReadingNote::Weight weight, std::size_t at, std::string found, std::string chosen)
{
    const std::size_t here = m_cursor.at();
    m_cursor.to(at);
    m_out.notes.push_back({weight, m_cursor.place(), std::move(found), {}, std::move(chosen)});
    m_cursor.to(here);
}

// Numbers in parentheses tell that there are sizes, where that wasn't said before.
Quantity RowParser::sized(Quantity quantity)
{
    m_words.nameSizes(quantity);
    return quantity;
}

std::optional<Quantity> RowParser::quantity()
{
    auto number = m_cursor.quantity(m_words.sizes());
    if (number)
        number = sized(*number);
    return number;
}

std::optional<Quantity> RowParser::times()
{
    const std::size_t from = m_cursor.at();
    auto number = m_cursor.times(m_words.sizes());
    if (!number)
        return number;
    for (const int n : number->values)
        if (n > mostRepeats) {
            m_cursor.to(from);
            return std::nullopt;
        }
    return sized(*number);
}

Phrase RowParser::group(Phrases&& inside, Quantity times, Reach to) const
{
    return {Group{std::move(inside), std::move(times), std::move(to)}, 0, 0};
}

bool RowParser::separator()
{
    bool any = false;
    for (;;) {
        m_cursor.blanks();
        if (m_cursor.take(',') || m_cursor.take(';') || m_cursor.take('"') ||
            m_cursor.anyOf({"and then", "then", "and"}) || m_cursor.take('&'))
            any = true;
        else
            return any;
    }
}

bool RowParser::countHere()
{
    const std::size_t from = m_cursor.at();
    const auto count = countWords(m_cursor, m_words.sizes());
    if (!count)
        return false;
    // "3 sts before ..." is no count: what stands in the row itself ends it.
    m_cursor.blanks();
    const char next = m_cursor.peek();
    if (next == ',' || next == ';') {
        m_cursor.to(from);
        return false;
    }
    if (count->total)
        m_out.stated = sized(*count->total);
    m_out.counts = *count;
    return true;
}

// The rest of the text is printed with the row.
void RowParser::restIsNote()
{
    m_cursor.blanks();
    m_out.note = std::string(trimmed(std::string_view(m_cursor.text()).substr(m_cursor.at())));
}

// "knit, picking up wraps as you come to them": the needle closes turns by itself, so it is for the knitter to read. Only
// as the end of a sentence, and of the closing loops themselves: what tells stitches or a turn is none of it.
bool RowParser::closingOfTurns()
{
    m_cursor.blanks();
    const std::size_t from = m_cursor.at();
    const bool told = m_cursor.anyOf({"picking up", "pick up", "lifting", "lift", "working", "work", "knitting", "purling",
                                      "hiding", "hide", "closing", "close"});
    if (told)
        m_cursor.anyOf({"all the", "all", "any", "the", "every"});
    if (!told || !m_cursor.anyOf({"wraps", "wrap", "wrapped sts", "wrapped stitches", "twins", "twin sts", "twin stitches",
                                  "twin st", "double sts", "double stitches", "pinned yarns", "pinned yarn", "pinned sts",
                                  "pinned stitches"})) {
        m_cursor.to(from);
        return false;
    }
    m_cursor.blanks();
    const std::string how = m_cursor.upTo(".,;([");
    const std::size_t end = m_cursor.at() + how.size();
    const std::string& text = m_cursor.text();
    const bool endsSentence = end >= text.size() || text[end] == '.' || text[end] == '(';
    const bool onlyHow =
        trimmed(how).empty() || m_cursor.anyOf({"as", "tog", "together", "with", "along", "when", "where"});
    m_cursor.to(from);
    if (!endsSentence || !onlyHow || how.find_first_of("0123456789*") != std::string::npos ||
        how.find("turn") != std::string::npos)
        return false;
    const std::string clause(trimmed(std::string_view(text).substr(from, end - from)));
    remark(ReadingNote::Weight::Note, from, clause.substr(0, 60), "a note to the row");
    m_out.closing = clause;
    m_cursor.to(end);
    return true;
}

// "rep from * across, ending with k1" is "rep from * to last st, k1".
void RowParser::leaveRoomForEnd(Phrases& out)
{
    int takes = 0;
    for (std::size_t i = m_endsWith; i < out.size(); ++i)
        if (const auto* run = std::get_if<Stretch>(&out[i].is); run && run->count > 0)
            takes += run->count * stitchOf(run->stitch).takesUp;
        else if (std::holds_alternative<Stretch>(out[i].is) || std::holds_alternative<Group>(out[i].is))
            takes = mostCount + 1;
    if (takes > mostCount)
        fault(0, "ending with", "single stitches after it, or 'to last n sts'");
    else
        std::get<Group>(out[m_endsWith - 1].is).to.leaving = takes;
}

bool RowParser::sentences(Phrases& out)
{
    bool first = true;
    bool stopped = false; // by a full stop
    for (;;) {
        separator();
        if (m_cursor.done())
            break;
        if (!first && m_cursor.take('.')) {
            stopped = true;
            continue;
        }
        if (!first && countHere()) {
            restIsNote();
            break;
        }
        if (!first && closingOfTurns()) {
            stopped = m_cursor.take('.');
            continue;
        }
        const Got got = item(out);
        if (got == Got::Something) {
            first = false;
            stopped = m_cursor.take('.');
            continue;
        }
        if (got == Got::Nothing && stopped) {
            m_cursor.blanks();
            remark(ReadingNote::Weight::Note, m_cursor.at(), m_cursor.upTo(".").substr(0, 60),
                   "a note to the row");
            restIsNote();
            break;
        }
        if (got == Got::Nothing)
            fault(m_finished ? "nothing more after the end of the row"
                             : "a stitch, a marker, a repeat or the end of the row");
        return false;
    }
    if (first)
        fault("what is worked in this row");
    if (m_endsWith > 0 && m_out.understood)
        leaveRoomForEnd(out);
    return m_out.understood;
}

RowParser::Got RowParser::item(Phrases& out)
{
    const bool owed = m_afterBindOff;
    const std::size_t size = out.size();
    m_cursor.blanks();
    const std::size_t from = m_cursor.at();
    m_afterBindOff = false;
    Got got = itemItself(out);
    if (got == Got::Nothing && mendWord())
        got = itemItself(out);
    if (got == Got::Nothing)
        m_afterBindOff = owed;
    if (got == Got::Something && owed && out.size() > size)
        tellStitchLeft(out, size, from);
    return got;
}

// Puts right the word that stands here, if it can only be meant for one.
bool RowParser::mendWord()
{
    constexpr int most = 50; // in one row
    m_cursor.blanks();
    const std::size_t at = m_cursor.at();
    const std::string word = m_cursor.upTo(" ,;.[]()*");
    if (m_finished || m_mended >= most)
        return false;
    const auto meant = m_words.meantBy(word, m_side);
    if (!meant)
        return false;
    ++m_mended;
    remark(ReadingNote::Weight::Warning, at, word, "'" + *meant + "'");
    const std::vector<Place> places(meant->size(), m_text.at[at]);
    const auto from = m_text.at.begin() + static_cast<std::ptrdiff_t>(at);
    m_text.at.insert(m_text.at.erase(from, from + static_cast<std::ptrdiff_t>(word.size())), places.begin(),
                     places.end());
    m_text.text.replace(at, word.size(), *meant);
    return true;
}

// After binding off one stitch stands on the right needle, worked and not yet told. The number of a plain run
// that follows leaves it out.
void RowParser::tellStitchLeft(Phrases& out, std::size_t at, std::size_t from)
{
    if (std::holds_alternative<FinishPhrase>(out[at].is) || std::holds_alternative<YarnPhrase>(out[at].is))
        return;
    if (auto* run = std::get_if<Stretch>(&out[at].is)) {
        if (run->count == 0 || stitchOf(run->stitch).manner == Manner::BoundOff)
            return;
        if (plainlyWorked(run->stitch) && !m_runIsWord) {
            const std::string said = m_cursor.text().substr(from, m_cursor.at() - from);
            if (doubt(from, said + " after binding off",
                      {"the stitch on the right needle and " + said,
                       said + ", the stitch on the right needle among them"},
                      false) == 0)
                ++run->count;
            return;
        }
    }
    remark(ReadingNote::Weight::Note, from,
           "binding off, then " +
               m_cursor.text().substr(from, std::min<std::size_t>(m_cursor.at() - from, 40)),
           "one knit stitch on the right needle before it");
    const Phrase left{Stretch{require("k"), {}, 1, {}}, 0, 0};
    out.insert(out.begin() + static_cast<std::ptrdiff_t>(at), left);
}

RowParser::Got RowParser::itemItself(Phrases& out)
{
    m_runIsWord = false;
    if (m_cursor.peek() == '*')
        return starred(out);
    if (m_cursor.peek() == '[' || m_cursor.peek() == '(')
        return bracketed(out);
    const std::size_t size = out.size();
    for (const auto read :
         {&RowParser::finish, &RowParser::start, &RowParser::marker, &RowParser::repeatTo,
          &RowParser::passOver, &RowParser::wholeRow, &RowParser::yarn, &RowParser::stitch}) {
        const std::size_t from = m_cursor.at();
        const Got got = (this->*read)(out);
        if (got == Got::Fault)
            return got;
        if (got == Got::Something) {
            if (out.size() > size && m_cursor.peek() == ',')
                return timesAfterComma(out) ? Got::Something : Got::Fault;
            return got;
        }
        m_cursor.to(from);
    }
    return Got::Nothing;
}

} // namespace shawlwright
