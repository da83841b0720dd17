// Stitches of a row and how far they go on.

#include "core/wording/reader/row_parser.h"

#include "core/base/text.h"
#include "core/wording/writer/stitch_words.h"

#include <algorithm>

namespace shawlwright {

namespace {

// "k" matches "k3" and "K 3", not "kfb". Gives the end, or npos.
std::size_t lettersEnd(const std::string& text, std::size_t at, const std::string& letters)
{
    for (const char c : letters) {
        if (at >= text.size())
            return std::string::npos;
        if (c == ' ') {
            if (text[at] != ' ')
                return std::string::npos;
            while (at < text.size() && text[at] == ' ')
                ++at;
            continue;
        }
        const char here = text[at];
        const char low = here >= 'A' && here <= 'Z' ? static_cast<char>(here - 'A' + 'a') : here;
        const char want = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        if (low != want)
            return std::string::npos;
        ++at;
    }
    return at;
}

bool ends(const std::string& text, std::size_t at)
{
    if (at >= text.size())
        return true;
    if (Cursor::letterOrDigit(text[at]))
        return false;
    return !((text[at] == '-' || text[at] == '/' || text[at] == '&') && at + 1 < text.size() &&
             Cursor::letterOrDigit(text[at + 1]));
}

constexpr int mostRunCells = 400; // a longer run is told as a repeat of one cell

} // namespace

bool RowParser::plainlyWorked(StitchId stitch) const
{
    return shawlwright::plainlyWorked(stitchOf(stitch), m_side);
}

StitchId RowParser::require(std::string_view word) const
{
    return m_words.worked(word, m_side).value_or(noStitch);
}

std::string RowParser::wordOf(const Stretch& run) const
{
    const StitchWord word = stitchWord(stitchOf(run.stitch), m_side, Words::US);
    return word.form == CountForm::Other ? word.word : word.times("1");
}

RowParser::Got RowParser::stitch(Phrases& out)
{
    if (m_finished)
        return Got::Nothing;
    m_cursor.blanks();
    const std::size_t from = m_cursor.at();
    const auto whole = m_words.literal(m_cursor.text(), from, m_side);
    const Got number = numbered(out);
    if (number != Got::Nothing && (!whole || m_cursor.at() >= whole->end || number == Got::Fault))
        return number;
    if (whole) {
        if (number == Got::Something)
            out.pop_back();
        m_cursor.to(whole->end);
        m_runIsWord = true;
        m_afterBindOff = false;
        if (!whole->remark.empty())
            remark(ReadingNote::Weight::Note, from, m_cursor.text().substr(from, whole->end - from),
                   whole->remark);
        return afterWord(out, whole->stitch, from);
    }
    m_cursor.to(from);
    if (m_cursor.word("sp2p")) // "slip one, purl two together, pass over"
        return afterWord(out, m_words.own("sp2p", m_side, 3, 1, "slip one, purl two together, pass over"),
                         from);
    return Got::Nothing;
}

RowParser::Got RowParser::numbered(Phrases& out)
{
    const std::string& text = m_cursor.text();
    const std::size_t from = m_cursor.at();
    struct Fit {
        std::size_t end = 0;
        StitchId stitch;
        std::optional<Quantity> count;
        bool edge = false;
    } best;
    for (const Vocabulary::Numbered& one : m_words.numbered(m_side)) {
        const std::size_t letters = lettersEnd(text, from, one.letters);
        if (letters == std::string::npos)
            continue;
        m_cursor.to(letters);
        std::optional<Quantity> count;
        if (letters < text.size() && (text[letters] == ' ' || (text[letters] >= '0' && text[letters] <= '9')))
            count = m_cursor.quantity(m_words.sizes());
        if (count) {
            const std::size_t after = m_cursor.at();
            const bool named = stitchOf(one.stitch).manner == Manner::Dropped
                                   ? m_cursor.anyOf({"wraps", "wrap"}) // "drop 1 st" is another
                                   : m_cursor.anyOf({"sts", "st", "stitches", "stitch"});
            if (!named)
                m_cursor.to(after);
        } else {
            m_cursor.to(letters);
        }
        const std::size_t end = lettersEnd(text, m_cursor.at(), one.tail);
        if (end != std::string::npos && ends(text, end) && end > best.end)
            best = {end, one.stitch, count, one.edge};
    }
    if (best.end == 0)
        return Got::Nothing;
    m_cursor.to(best.end);
    if (!best.count) {
        m_runIsWord = true;
        if (best.edge) {
            YarnId yarn = m_inYarn;
            if (const auto named = inYarn())
                yarn = *named;
            if (const auto to = reach()) {
                m_worked = true;
                out.push_back({Stretch{best.stitch, yarn, 0, *to}, 0, 0});
                remainder(out);
                return Got::Something;
            }
            return fault(from, m_cursor.text().substr(from, best.end - from), "how many stitches");
        }
        return afterWord(out, best.stitch, from);
    }
    const Quantity count = sized(*best.count);
    YarnId yarn = m_inYarn;
    if (const auto named = inYarn())
        yarn = *named;
    const std::size_t after = m_cursor.at();
    if (const auto often = times()) { // "k1 tbl twice"
        out.push_back(group({{Stretch{best.stitch, yarn, std::max(1, count.at(0)), {}}, 0, 0}}, *often));
        return Got::Something;
    }
    m_cursor.to(after);
    run(out, best.stitch, yarn, count);
    remainder(out);
    return toPlace(out, from);
}

// "k2, p2 to end": the stitches that are repeated up to there are not marked.
RowParser::Got RowParser::toPlace(Phrases& out, std::size_t from)
{
    const std::size_t here = m_cursor.at();
    const auto to = reach();
    if (!to) {
        m_cursor.to(here);
        return Got::Something;
    }
    const auto counted = [&](std::size_t back) {
        const auto* run = out.size() >= back ? std::get_if<Stretch>(&out[out.size() - back].is) : nullptr;
        return run && run->count > 0;
    };
    std::size_t start = out.size();
    while (start > 0 && counted(out.size() - start + 1))
        --start;
    const std::string found = m_cursor.text().substr(from, m_cursor.at() - from);
    std::vector<std::string> readings;
    std::vector<std::size_t> taken;
    const auto reading = [&](std::size_t phrases, std::string words) {
        if (out.size() - start >= phrases && std::find(taken.begin(), taken.end(), phrases) == taken.end()) {
            taken.push_back(phrases);
            readings.push_back(std::move(words));
        }
    };
    if (out.size() - start > 1)
        reading(2, "the last two, repeated to there");
    reading(1, "the last of them, repeated to there");
    reading(out.size() - start, "all of them, repeated to there");
    const std::size_t phrases =
        taken[static_cast<std::size_t>(doubt(from, found, std::move(readings), true))];
    Phrases inside(std::make_move_iterator(out.end() - static_cast<std::ptrdiff_t>(phrases)),
                   std::make_move_iterator(out.end()));
    out.erase(out.end() - static_cast<std::ptrdiff_t>(phrases), out.end());
    out.push_back(group(std::move(inside), 1, *to));
    return Got::Something;
}

void RowParser::run(Phrases& out, StitchId stitch, YarnId yarn, const Quantity& count)
{
    m_worked = true;
    if (count.single() && count.at(0) > 0 && count.at(0) <= mostRunCells)
        out.push_back({Stretch{stitch, yarn, count.at(0), {}}, 0, 0});
    else
        out.push_back(group({{Stretch{stitch, yarn, 1, {}}, 0, 0}}, count));
}

// "(st on right needle counts as next st)" after binding off.
void RowParser::remainder(Phrases& out)
{
    const Phrase& last = out.back();
    const auto* run = std::get_if<Stretch>(&last.is);
    if (const auto* group = std::get_if<Group>(&last.is); group && group->inside.size() == 1)
        run = std::get_if<Stretch>(&group->inside.front().is);
    if (!run || stitchOf(run->stitch).manner != Manner::BoundOff)
        return;
    const std::size_t from = m_cursor.at();
    const bool said = m_cursor.anyOf({"(st on right needle counts as next st)",
                                      "(stitch on right needle counts as next stitch)",
                                      "(st on right needle counts as first st)"});
    if (!said)
        m_cursor.to(from);
    m_afterBindOff = !said;
}

// After a word that holds no number: a yarn, how often, how far.
RowParser::Got RowParser::afterWord(Phrases& out, StitchId stitch, std::size_t from)
{
    if (stitch == noStitch)
        return fault(from, m_cursor.upTo(",;."), "fewer stitches of the pattern's own");
    m_worked = true;
    YarnId yarn = m_inYarn;
    if (const auto named = inYarn())
        yarn = *named;
    const std::size_t after = m_cursor.at();
    if (const auto to = reach()) {
        out.push_back({Stretch{stitch, yarn, 0, *to}, 0, 0});
        remainder(out);
        return Got::Something;
    }
    m_cursor.to(after);
    const auto often = times();
    if (!often) {
        m_cursor.to(after);
        out.push_back({Stretch{stitch, yarn, 1, {}}, 0, 0});
        remainder(out);
        return Got::Something;
    }
    const Stitch& what = stitchOf(stitch);
    // "yo twice" is one double yarn over; "yo 4 times" so many loops at one place.
    if (what.key == "yo" && often->single() && often->at(0) > 1) {
        if (const auto wide = m_words.catalogue().find("yo" + toText(often->at(0)))) {
            out.push_back({Stretch{*wide, yarn, 1, {}}, 0, 0});
            return Got::Something;
        }
        run(out, stitch, yarn, *often);
        return Got::Something;
    }
    // "yo, k2tog 3 times" without brackets: the word beside it, unless only the group comes out.
    // A run before it ("k4, k2tog twice") is no pair.
    const bool pair = !out.empty() && std::holds_alternative<Stretch>(out.back().is) &&
                      std::get<Stretch>(out.back().is).count == 1;
    const std::string said = m_cursor.text().substr(from, m_cursor.at() - from);
    if (pair && doubt(from, said, {said + " alone", "both it and the stitch before it"}, false) == 1) {
        Phrases inside;
        inside.push_back(std::move(out.back()));
        inside.push_back({Stretch{stitch, yarn, 1, {}}, 0, 0});
        out.pop_back();
        out.push_back(group(std::move(inside), *often));
        return Got::Something;
    }
    run(out, stitch, yarn, *often);
    return Got::Something;
}

// "knit", "purl", "k across", "knit the knits and purl the purls".
RowParser::Got RowParser::wholeRow(Phrases& out)
{
    if (m_finished)
        return Got::Nothing;
    const std::size_t from = m_cursor.at();
    if (m_cursor.anyOf(
            {"work even", "work 1 row even", "work one row even", "work row even", "work straight"})) {
        m_cursor.anyOf({"in pattern", "across", "to end"});
        remark(ReadingNote::Weight::Warning, from, m_cursor.text().substr(from, m_cursor.at() - from),
               std::string(asTheyFace) + ", as the stitches show");
        out.push_back({OwnWords{asTheyFace}, 0, 0});
        m_worked = true;
        return Got::Something;
    }
    if (m_cursor.anyOf({"knit the knits and purl the purls", "k the k sts and p the p sts",
                        "k the knits and p the purls", "knit the knits, purl the purls",
                        "k the knits, p the purls", "knit knits and purl purls", "k the ks and p the ps",
                        "knit the knit and purl the purl stitches", "knit the knit and purl the purl sts",
                        "knit the knit sts and purl the purl sts",
                        "knit the knit stitches and purl the purl stitches", "work sts as they appear",
                        "work all sts as they appear", "work the stitches as they appear",
                        "work in pattern as established"})) {
        if (m_cursor.text().compare(from, 15, "work in pattern") == 0)
            return fault(from, "work in pattern as established",
                         "what is worked, or the row that it is like");
        out.push_back({OwnWords{asTheyFace}, 0, 0});
        m_worked = true;
        return Got::Something;
    }
    const bool knit = m_cursor.anyOf({"knit", "k"});
    if (!knit && !m_cursor.anyOf({"purl", "p"}))
        return Got::Nothing;
    const std::size_t word = m_cursor.at();
    const bool inFull = word - from > 1;
    const auto ended = [&] {
        m_cursor.blanks();
        const char next = m_cursor.peek();
        // A count: "purl - 26 sts", "purl [26 sts]".
        const char after = m_cursor.peek(1);
        const bool count =
            (next == '-' && (after == ' ' || after == '-')) || (next == '[' && after >= '0' && after <= '9');
        return m_cursor.done() || next == '.' || next == ',' || next == ';' || next == '(' || count;
    };
    const bool all =
        m_cursor.anyOf({"all sts", "all stitches", "all", "across row", "across", "every st", "every stitch",
                        "every row", "each st", "row", "round", "rnd", "1 row", "one row", "around", "even"});
    const bool alone = !m_worked && m_depth == 0 && ended();
    if (!all && !(alone && (inFull || m_cursor.done() || m_cursor.peek() == '.' || m_cursor.peek() == '-')))
        return Got::Nothing;
    m_worked = true;
    Reach end;
    end.place = BoxUntil::RowEnd;
    out.push_back({Stretch{require(knit ? "k" : "p"), m_inYarn, 0, end}, 0, 0});
    return Got::Something;
}

} // namespace shawlwright
