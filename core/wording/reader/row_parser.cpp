// Sentences, groups and repeats of a row.

#include "core/wording/reader/row_parser.h"

#include "core/base/text.h"
#include "core/wording/reader/count_words.h"

#include <algorithm>

namespace shawlwright {

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
    return std::move(m_out);
}

RowParser::Got RowParser::fault(std::size_t at, std::string found, std::string expected)
{
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
    if (!quantity.single() && m_words.sizes() == 1)
        for (std::size_t i = 0; i < quantity.values.size(); ++i)
            m_words.head().sizes.push_back("size " + toText(static_cast<int>(i) + 1));
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
        if (m_cursor.take(',') || m_cursor.take(';') || m_cursor.anyOf({"and then", "then", "and"}) || m_cursor.take('&'))
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
    return true;
}

// The rest of the text is printed with the row.
void RowParser::restIsNote()
{
    m_cursor.blanks();
    m_out.note = std::string(trimmed(std::string_view(m_cursor.text()).substr(m_cursor.at())));
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
        const Got got = item(out);
        if (got == Got::Something) {
            first = false;
            stopped = m_cursor.take('.');
            continue;
        }
        if (got == Got::Nothing && stopped) {
            m_cursor.blanks();
            remark(ReadingNote::Weight::Note, m_cursor.at(), m_cursor.upTo(".").substr(0, 60), "a note to the row");
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
    return m_out.understood;
}

RowParser::Got RowParser::item(Phrases& out)
{
    const bool owed = m_afterBindOff;
    const std::size_t size = out.size();
    m_cursor.blanks();
    const std::size_t from = m_cursor.at();
    m_afterBindOff = false;
    const Got got = itemItself(out);
    if (got == Got::Nothing)
        m_afterBindOff = owed;
    if (got == Got::Something && owed && out.size() > size)
        tellStitchLeft(out, size, from);
    return got;
}

// After binding off one stitch stands on the right needle, worked and not yet told. The number of a plain run that
// follows leaves it out.
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
                      {"the stitch on the right needle and " + said, said + ", the stitch on the right needle among them"},
                      false) == 0)
                ++run->count;
            return;
        }
    }
    remark(ReadingNote::Weight::Note, from, "binding off, then " + m_cursor.text().substr(from, std::min<std::size_t>(m_cursor.at() - from, 40)),
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
    for (const auto read : {&RowParser::finish, &RowParser::start, &RowParser::marker, &RowParser::repeatTo,
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

// "yo, k2tog, twice": of the last stitch or of both? The needle tells, if anything does.
bool RowParser::timesAfterComma(Phrases& out)
{
    const std::size_t from = m_cursor.at();
    m_cursor.take(',');
    m_cursor.blanks();
    const std::size_t at = m_cursor.at();
    const auto often = times();
    if (!often || m_cursor.word("more")) {
        m_cursor.to(from);
        return true;
    }
    const std::string found = m_cursor.text().substr(at, m_cursor.at() - at);
    std::vector<std::string> readings{"the last stitch only, " + found};
    const bool pair = out.size() > 1 && std::holds_alternative<Stretch>(out[out.size() - 2].is);
    if (pair)
        readings.push_back("the last two together, " + found);
    if (out.size() > 2)
        readings.push_back("all since the start of the row or bracket, " + found);
    const int chosen = doubt(at, found, readings, true);
    std::size_t taken = 1;
    if (chosen > 0)
        taken = chosen == 1 && pair ? 2 : out.size();
    Phrases inside(std::make_move_iterator(out.end() - static_cast<std::ptrdiff_t>(taken)), std::make_move_iterator(out.end()));
    out.erase(out.end() - static_cast<std::ptrdiff_t>(taken), out.end());
    out.push_back(group(std::move(inside), *often));
    return true;
}

// Up to the closing bracket, which is taken.
bool RowParser::inside(Phrases& out, char closer)
{
    if (++m_depth > mostNesting) {
        fault("repeats nested no deeper than " + toText(mostNesting));
        return false;
    }
    for (;;) {
        separator();
        if (m_cursor.take(closer))
            break;
        if (m_cursor.done() || m_cursor.peek() == ']' || m_cursor.peek() == ')') {
            fault(std::string("'") + closer + "'");
            return false;
        }
        const Got got = item(out);
        if (got == Got::Nothing)
            fault(std::string("a stitch or '") + closer + "'");
        if (got != Got::Something)
            return false;
    }
    --m_depth;
    m_afterBindOff = false;
    return true;
}

RowParser::Got RowParser::bracketed(Phrases& out)
{
    const std::size_t from = m_cursor.at();
    const char closer = m_cursor.peek() == '[' ? ']' : ')';
    // "(RS)" where it stands in the row itself.
    if (m_cursor.take('(')) {
        if (m_cursor.anyOf({"rs", "ws"}) && m_cursor.take(')'))
            return Got::Something;
        m_cursor.to(from);
    }
    m_cursor.to(from + 1);
    Phrases within;
    if (!inside(within, closer))
        return Got::Fault;
    if (within.empty())
        return fault(from, m_cursor.text().substr(from, 2), "stitches in the brackets");
    if (const Got got = gathered(out, std::move(within), from); got != Got::Nothing)
        return got;
    const auto often = times();
    if (often) {
        if (m_cursor.anyOf({"more", "more times"}))
            return fault("how often in all, without 'more'");
        out.push_back(group(std::move(within), *often));
        return Got::Something;
    }
    if (const auto to = reach()) {
        out.push_back(group(std::move(within), 1, *to));
        return Got::Something;
    }
    remark(ReadingNote::Weight::Warning, from, m_cursor.text().substr(from, std::min<std::size_t>(m_cursor.at() - from, 60)),
           "worked once: no number of times follows the bracket");
    out.insert(out.end(), std::make_move_iterator(within.begin()), std::make_move_iterator(within.end()));
    return Got::Something;
}

// "rep [yo, k2tog] to marker A"; "as Row 3".
RowParser::Got RowParser::repeatTo(Phrases& out)
{
    const std::size_t from = m_cursor.at();
    if (m_cursor.anyOf({"work as for", "work as", "as for", "as", "same as", "repeat", "rep", "work"}) &&
        m_cursor.anyOf({"row", "round", "rnd"})) {
        if (!out.empty())
            return fault(from, m_cursor.upTo(",;."), "a row that is like another to say only that");
        m_cursor.blanks();
        std::string label;
        while (Cursor::letterOrDigit(m_cursor.peek())) {
            label += m_cursor.peek();
            m_cursor.to(m_cursor.at() + 1);
        }
        m_out.sameAs = label;
        return label.empty() ? fault("the number of a row") : Got::Something;
    }
    m_cursor.to(from);
    if (!m_cursor.anyOf({"rep", "repeat", "work"}))
        return Got::Nothing;
    m_cursor.blanks();
    if (m_cursor.peek() != '[' && m_cursor.peek() != '(') {
        m_cursor.to(from);
        return Got::Nothing;
    }
    return bracketed(out);
}

RowParser::Got RowParser::starred(Phrases& out)
{
    const std::size_t from = m_cursor.at();
    std::size_t stars = 0;
    while (m_cursor.take('*'))
        ++stars;
    const std::string star(stars, '*');
    if (m_starred > 0)
        return fault(from, star, "the repeat from the asterisk before to end first");
    if (++m_depth > mostNesting)
        return fault(from, star, "repeats nested no deeper than " + toText(mostNesting));
    ++m_starred;
    Phrases within;
    bool closing = false;
    for (;;) {
        separator();
        m_cursor.take('.');
        separator();
        m_cursor.blanks();
        const std::size_t here = m_cursor.at();
        if (m_cursor.peek() == '*' && !closing) { // "*k2, p2*"
            closing = true;
            while (m_cursor.take('*'))
                ;
            m_cursor.blanks();
            const std::size_t after = m_cursor.at();
            const auto often = times();
            if (often && m_cursor.word("more") == false) {
                --m_depth;
                --m_starred;
                out.push_back(group(std::move(within), *often));
                return Got::Something;
            }
            m_cursor.to(after);
            separator();
        }
        const bool again = m_cursor.anyOf({"rep from", "repeat from", "rep between", "repeat between", "rep", "repeat"});
        m_cursor.blanks();
        if (again && (m_cursor.peek() == '[' || m_cursor.peek() == '(')) { // "rep [k1, p1] to marker" is a stitch repeat
            m_cursor.to(here);
        } else if (again) {
            std::size_t named = 0;
            while (m_cursor.take('*'))
                ++named;
            if (named > 0 && named != stars)
                return fault(here, "rep from " + std::string(named, '*'), "'rep from " + star + "'");
            m_cursor.anyOf({"to *", "to **", "s"});
            break;
        }
        if (closing)
            return fault("how often the stitches between asterisks are worked");
        if (m_cursor.done())
            return fault(from, star, "'rep from " + star + " to ...' later in the row");
        const Got got = item(within);
        if (got == Got::Nothing)
            fault("a stitch or 'rep from " + star + "'");
        if (got != Got::Something)
            return Got::Fault;
    }
    --m_depth;
    --m_starred;
    m_afterBindOff = false;
    if (within.empty())
        return fault(from, star, "stitches between the asterisk and its repeat");
    m_cursor.blanks();
    const std::size_t here = m_cursor.at();
    if (const auto to = reach()) {
        out.push_back(group(std::move(within), 1, *to));
        return Got::Something;
    }
    const std::size_t before = m_cursor.at();
    // "3 more times", "once more", "3 times more", "another 3 times"
    const bool another = m_cursor.word("another");
    auto more = m_cursor.quantity(m_words.sizes());
    if (more && m_cursor.anyOf({"more times", "more time", "times more", "time more"})) {
    } else {
        m_cursor.to(before);
        m_cursor.word("another");
        more = times();
        if (more && !another && !m_cursor.word("more")) {
            const std::string found = m_cursor.text().substr(here, m_cursor.at() - here);
            const int chosen = doubt(here, "rep from " + star + " " + found, {found + " more", found + " in all"}, true);
            if (chosen == 1)
                for (int& n : more->values)
                    --n;
        }
    }
    if (more) {
        *more = sized(*more);
        for (int& n : more->values)
            if (++n > mostRepeats)
                return fault(here, m_cursor.text().substr(here, 20), "at most " + toText(mostRepeats) + " times");
        out.push_back(group(std::move(within), *more));
        return Got::Something;
    }
    m_cursor.to(here);
    const char next = m_cursor.peek();
    if (m_cursor.done() || next == '.') {
        Reach end;
        end.place = BoxUntil::RowEnd;
        remark(ReadingNote::Weight::Note, here, "rep from " + star, "to the end of the row");
        out.push_back(group(std::move(within), 1, end));
        return Got::Something;
    }
    return fault("how far or how often it is repeated");
}

} // namespace shawlwright
