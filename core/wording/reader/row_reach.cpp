// How far a stretch or a repeat goes, and in which yarn.

#include "core/wording/reader/row_parser.h"

namespace shawlwright {

std::optional<Reach> RowParser::reach()
{
    const std::size_t from = m_cursor.at();
    Reach end;
    end.place = BoxUntil::RowEnd;
    if (m_cursor.anyOf({"across row", "across", "around", "rem sts", "remaining sts", "remaining stitches",
                        "rem stitches"}))
        return end;
    if (m_cursor.word("until")) {
        const auto leaving = quantity();
        if (leaving && m_cursor.anyOf({"sts", "st", "stitches", "stitch"})) {
            if (m_cursor.anyOf({"rem", "remain", "remains", "remaining", "left", "are left"})) {
                end.leaving = *leaving;
                return end;
            }
            if (m_cursor.word("before"))
                return place(*leaving);
        }
        m_cursor.to(from);
        return std::nullopt;
    }
    if (!m_cursor.word("to")) {
        m_cursor.to(from);
        return std::nullopt;
    }
    const bool within = m_cursor.word("within");
    const std::size_t after = m_cursor.at();
    if (m_cursor.word("last")) {
        if (m_cursor.anyOf({"st", "stitch"})) {
            end.leaving = 1;
            return end;
        }
        if (const auto leaving = quantity()) {
            m_cursor.anyOf({"sts", "st", "stitches", "stitch"});
            end.leaving = *leaving;
            return end;
        }
        m_cursor.to(after);
    }
    if (const auto leaving = quantity()) {
        m_cursor.anyOf({"sts", "st", "stitches", "stitch"});
        if (m_cursor.anyOf({"before", "from"}) || (within && m_cursor.word("of"))) {
            const Reach to = place(*leaving);
            if (to.place != BoxUntil::Times)
                return to;
        }
        m_cursor.to(after); // "to A": no number, a marker's name
    }
    const Reach to = place(Quantity(0));
    if (to.place != BoxUntil::Times)
        return to;
    m_cursor.to(from);
    return std::nullopt;
}

// The place itself; Times where none is named.
Reach RowParser::place(Quantity leaving)
{
    Reach to;
    to.leaving = std::move(leaving);
    m_cursor.word("the");
    if (m_cursor.anyOf({"end of row", "end of the row", "end of rnd", "end of round", "end of the round",
                        "end of needle", "end"})) {
        to.place = BoxUntil::RowEnd;
        return to;
    }
    const std::size_t from = m_cursor.at();
    m_cursor.anyOf({"last", "previous", "prev"});
    if (m_cursor.anyOf(
            {"turn", "gap", "turning gap", "turning point", "wrapped st", "wrapped stitch", "wrap"})) {
        to.place = BoxUntil::LastTurn;
        to.countsDoubleStitch = m_cursor.word("(counting the ds)");
        return to;
    }
    if (m_cursor.anyOf({"ds", "double stitch", "double st"})) {
        to.place = BoxUntil::LastTurn;
        to.countsDoubleStitch = true;
        for (int& n : to.leaving.values)
            ++n;
        remark(ReadingNote::Weight::Note, from, "before the double stitch",
               "the double stitch and those before it are left; it stands before the gap of the turn");
        return to;
    }
    m_cursor.to(from);
    m_cursor.anyOf({"next", "first", "last"});
    const std::size_t at = m_cursor.at();
    if (m_cursor.anyOf({"marker", "mkr", "mk", "m"})) {
        to.place = BoxUntil::Marker;
        to.marker = markerName(false);
        return to;
    }
    m_cursor.blanks();
    const std::string word = m_cursor.upTo(" ,;.[]()*");
    if (word.size() > 1 && (word[0] == 'm' || word[0] == 'M'))
        if (const auto known = m_words.knownMarker(word.substr(1))) {
            m_cursor.to(m_cursor.at() + word.size());
            to.place = BoxUntil::Marker;
            to.marker = *known;
            return to;
        }
    // "to 2 sts before A": a letter alone is a name where it can't be the article.
    const auto capital = [](char c) { return c >= 'A' && c <= 'Z'; };
    const std::size_t end = m_cursor.at() + word.size();
    const bool named = word.size() > 1 || (word.size() == 1 && (capital(word[0]) || end >= m_cursor.text().size() ||
                                                                 m_cursor.text()[end] != ' '));
    if (const auto known = m_words.knownMarker(word); known && named) {
        m_cursor.to(m_cursor.at() + word.size());
        to.place = BoxUntil::Marker;
        to.marker = *known;
        return to;
    }
    m_cursor.to(at);
    return to;
}

std::optional<YarnId> RowParser::inYarn()
{
    const std::size_t from = m_cursor.at();
    if (m_cursor.word("in"))
        if (const auto yarn = yarnName(true))
            return yarn;
    m_cursor.to(from);
    return std::nullopt;
}

} // namespace shawlwright
