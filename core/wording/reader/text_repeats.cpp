// "Rep Rows 3-6 nine more times."

#include "core/base/text.h"
#include "core/wording/reader/text_reader.h"

#include <algorithm>

namespace shawlwright {

std::optional<std::size_t> TextReader::rowLabelled(const std::string& label, std::size_t upTo) const
{
    for (std::size_t i = upTo; i-- > 0;)
        if (lowered(m_section.rows[i].label) == lowered(label))
            return i;
    return std::nullopt;
}

// The needle after rows are worked so many more times.
void TextReader::knitAgain(std::size_t first, std::size_t last, int times)
{
    // Repeats within are worked out again.
    std::vector<std::size_t> order;
    const auto add = [&](const auto& self, std::size_t from, std::size_t to, std::size_t repeats) -> void {
        for (std::size_t row = from; row <= to && order.size() < 200000;) {
            const Repeat* inner = nullptr;
            std::size_t at = 0;
            for (std::size_t r = repeats; r-- > 0;)
                if (!inner && m_section.repeats[r].first == row && m_section.repeats[r].last <= to) {
                    inner = &m_section.repeats[r];
                    at = r;
                }
            if (!inner) {
                order.push_back(row++);
                continue;
            }
            for (int n = 0; n < inner->times.at(0) && order.size() < 200000; ++n)
                self(self, inner->first, inner->last, at);
            row = inner->last + 1;
        }
    };
    add(add, first, last, m_section.repeats.size());
    for (int n = 0; n < times && mayWork(); ++n)
        for (const std::size_t row : order)
            if (mayWork())
                work(m_needle, m_section.rows[row].compact, false);
    if (!mayWork())
        m_sure = false;
}

// "(36 sts)" after a row that is worked again with more stitches is the count of the first time (common
// practice, no source); the model has one count for all times.
void TextReader::countsOfFirstTime(std::size_t first, std::size_t last, int times)
{
    const Needle before = m_needle;
    for (std::size_t at = first; at <= last && times > 1 && mayWork(); ++at) {
        DraftRow& row = m_section.rows[at];
        work(m_needle, row.compact, false);
        if (!row.base.stated || row.base.stated->at(0) != row.after || m_needle.count() == row.after)
            continue;
        say(ReadingNote::Weight::Note, row.at, "(" + counted(row.after, "st") + ")",
            "the change, where a row is worked again",
            "the count of the first time, " + toText(m_needle.count()) + " the second; not kept");
        row.base.stated.reset();
        row.compact.row.stated.reset();
    }
    m_needle = before;
}

void TextReader::repeatRows(const RowRepeat& repeat, Place at, const std::string& found)
{
    const auto refuse = [&](const std::string& expected) {
        say(ReadingNote::Weight::Error, at, found, expected, {});
        // Kept as a row of words, so that nothing is lost.
        if (!m_inSection)
            beginSection();
        beginNeedle();
        DraftRow row;
        row.base.id = RowId{++m_rowId};
        row.base.side = nextSide();
        row.base.yarn = m_yarn;
        row.words.text = found;
        row.words.at.assign(found.size() + 1, at);
        row.at = at;
        keepAsWords(row);
        m_section.rows.push_back(std::move(row));
        ++m_out.rowsNot;
        m_sure = false;
    };
    if (!m_inSection || m_section.rows.empty())
        return refuse("rows before the words that repeat them");
    if (const auto last = labelNumber(repeat.last))
        fillTo(*last + 1);
    std::optional<std::size_t> last, first;
    if (repeat.first.empty()) {
        last = m_section.rows.size() - 1;
        if (repeat.rows < 1 || static_cast<std::size_t>(repeat.rows) > m_section.rows.size())
            return refuse("no more rows than there are, " + toText(static_cast<int>(m_section.rows.size())));
        first = m_section.rows.size() - static_cast<std::size_t>(repeat.rows);
    } else {
        last = rowLabelled(repeat.last, m_section.rows.size());
        if (last)
            first = rowLabelled(repeat.first, *last + 1);
    }
    if (!first || !last)
        return refuse("rows of this section by their printed numbers");

    using Means = RowRepeat::Means;
    Quantity inAll = repeat.times; // times that the rows are worked from here on, those told before included
    const bool justWorked = *last + 1 == m_section.rows.size();
    Means means = repeat.means;
    const Needle before = m_needle;
    const auto addTo = [](Quantity quantity, int n) {
        for (int& value : quantity.values)
            value += n;
        return quantity;
    };
    if (means == Means::Unsaid) {
        const std::string often = toText(repeat.times.at(0));
        Means taken = repeat.work ? Means::InAll : Means::More;
        bool told = false;
        if (repeat.total && justWorked && m_sure && repeat.times.single()) {
            const int want = repeat.total->at(0);
            for (const Means one : {Means::More, Means::InAll}) {
                m_needle = before;
                knitAgain(*first, *last, repeat.times.at(0) - (one == Means::InAll ? 1 : 0));
                if (m_needle.count() == want && !told) {
                    taken = one;
                    told = true;
                }
            }
            m_needle = before;
        }
        means = taken;
        if (repeat.times.at(0) != 1 || repeat.work)
            say(ReadingNote::Weight::Warning, at, found.substr(0, 60),
                "'" + often + " more times' or 'a total of " + often + " times'",
                (taken == Means::More ? often + " more times" : often + " times in all") +
                    (told ? ", which gives the count that is stated" : ""));
        else
            say(ReadingNote::Weight::Note, at, found.substr(0, 60), {}, "once more");
    } else if (means == Means::UntilStitches) {
        int times = 0;
        const int want = repeat.times.at(0);
        while (times < 2000 && mayWork() && m_needle.count() != want) {
            knitAgain(*first, *last, 1);
            ++times;
        }
        const bool reached = m_needle.count() == want;
        m_needle = before;
        if (!reached || !m_sure)
            return refuse("how many times; the count of " + toText(want) + " isn't reached");
        inAll = times;
        means = Means::More;
        say(ReadingNote::Weight::Note, at, found.substr(0, 60), {}, toText(times) + " more times");
    }
    for (const int n : addTo(inAll, 1).values)
        if (n < 0 || n > mostRepeats)
            return refuse("at most " + toText(mostRepeats) + " times");

    if (justWorked) {
        if (means == Means::More)
            inAll = addTo(inAll, 1);
        countsOfFirstTime(*first, *last, inAll.at(0));
        knitAgain(*first, *last, std::max(0, inAll.at(0) - 1));
        if (inAll.at(0) == 0)
            m_sure = false;
        m_section.repeats.push_back({*first, *last, inAll});
    } else {
        // Rows told longer ago are worked anew: copies of them.
        const std::size_t begin = m_section.rows.size();
        const std::size_t count = *last - *first + 1;
        if (begin + count > static_cast<std::size_t>(mostRows))
            return refuse("no more than " + toText(mostRows) + " rows in a section");
        for (std::size_t i = *first; i <= *last; ++i) {
            DraftRow copy = m_section.rows[i];
            copy.base.id = copy.compact.row.id = RowId{++m_rowId};
            copy.label = toText(++m_lastNumber);
            copy.base.side = copy.compact.row.side;
            m_section.rows.push_back(std::move(copy));
            ++m_out.rowsRead;
        }
        const std::vector<Repeat> known = m_section.repeats;
        for (const Repeat& inner : known)
            if (inner.first >= *first && inner.last <= *last)
                m_section.repeats.push_back(
                    {inner.first - *first + begin, inner.last - *first + begin, inner.times});
        const int times = inAll.at(0);
        knitAgain(begin, begin + count - 1, times);
        if (!inAll.single() || times != 1)
            m_section.repeats.push_back({begin, begin + count - 1, inAll});
        say(ReadingNote::Weight::Note, at, found.substr(0, 60), {},
            "rows worked anew, as Rows " + m_section.rows[begin].label + "-" + m_section.rows.back().label);
    }
    m_yarn = m_section.rows.back().base.yarn;
    if (repeat.total && m_sure && mayWork() && m_needle.fault == RowId{} && m_words.sizes() == 1 &&
        repeat.total->at(0) != m_needle.count())
        say(ReadingNote::Weight::Warning, at, counted(repeat.total->at(0), "st") + " after the row repeat",
            toText(m_needle.count()) + ", as the rows come out", "no count");
    if (!repeat.rest.empty() && !m_section.rows.empty()) {
        Row& last_ = m_section.rows.back().base;
        last_.note += (last_.note.empty() ? "" : " ") + repeat.rest;
        m_section.rows.back().compact.row.note = last_.note;
        say(ReadingNote::Weight::Note, at, repeat.rest.substr(0, 60), "the end of the row repeat",
            "a note to the row before");
    }
}

} // namespace shawlwright
