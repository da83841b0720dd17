// Groups and repeats of a row: brackets, asterisks, "rep [yo, k2tog] to marker A", "as Row 3".

#include "core/wording/reader/row_parser.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

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
    Phrases inside(std::make_move_iterator(out.end() - static_cast<std::ptrdiff_t>(taken)),
                   std::make_move_iterator(out.end()));
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
    remark(ReadingNote::Weight::Warning, from,
           m_cursor.text().substr(from, std::min<std::size_t>(m_cursor.at() - from, 60)),
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
        const bool again =
            m_cursor.anyOf({"rep from", "repeat from", "rep between", "repeat between", "rep", "repeat"});
        m_cursor.blanks();
        if (again && (m_cursor.peek() == '[' ||
                      m_cursor.peek() == '(')) { // "rep [k1, p1] to marker" is a stitch repeat
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
        const std::size_t after = m_cursor.at();
        separator();
        const bool plain = to->place == BoxUntil::RowEnd && to->leaving == Quantity(0) && m_depth == 0;
        if (plain && m_cursor.anyOf({"ending with", "end with", "ending", "end"}) && !m_cursor.word("last"))
            m_endsWith = out.size();
        else
            m_cursor.to(after);
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
            const int chosen =
                doubt(here, "rep from " + star + " " + found, {found + " more", found + " in all"}, true);
            if (chosen == 1)
                for (int& n : more->values)
                    --n;
        }
    }
    if (more) {
        *more = sized(*more);
        for (int& n : more->values)
            if (++n > mostRepeats)
                return fault(here, m_cursor.text().substr(here, 20),
                             "at most " + toText(mostRepeats) + " times");
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
    return fault("how far or how often it is repeated, such as 'to last 2 sts', 'to marker A', 'twice more'");
}

} // namespace shawlwright
