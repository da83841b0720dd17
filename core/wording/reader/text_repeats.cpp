// "Rep Rows 3-6 nine more times."

#include "core/base/text.h"
#include "core/wording/reader/text_reader.h"
#include "core/wording/writer/quantity_words.h"

#include <algorithm>

namespace shawlwright {

std::optional<std::size_t> TextReader::rowLabelled(const std::string& label, std::size_t upTo) const
{
    for (std::size_t i = upTo; i-- > 0;)
        if (lowered(m_section.rows[i].label) == lowered(label))
            return i;
    if (const auto number = readInt(label))
        for (const auto& painted : m_section.painted)
            if (painted.from <= *number && *number <= painted.to) {
                const std::size_t row = painted.first + static_cast<std::size_t>(*number - painted.from) % painted.rows;
                if (row < upTo)
                    return row;
            }
    return std::nullopt;
}

// The needle after rows are worked so many more times.
void TextReader::knitAgain(std::size_t first, std::size_t last, int times)
{
    if (!mayWork()) {
        m_sure = false;
        return;
    }
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

// "(36 sts)" after a row that is worked again with more stitches is the count of the first time, "(36, 38, 40
// sts)" those of each (common practice, no source). The model has one count for all times: such counts are
// compared and kept as a note.
void TextReader::countsOfFirstTime(std::size_t first, std::size_t last, int times)
{
    const Needle before = m_needle;
    const bool able = m_sure && m_needle.owed.fault == RowId{};
    int listed = 2;
    for (std::size_t at = first; at <= last; ++at)
        listed = std::max(listed, static_cast<int>(m_section.rows[at].eachTime.size()));
    std::vector<std::vector<int>> counts(last - first + 1);
    for (std::size_t at = first; at <= last; ++at)
        counts[at - first].push_back(m_section.rows[at].after);
    for (int time = 2; time <= std::min(times, listed); ++time)
        for (std::size_t at = first; at <= last && mayWork(); ++at) {
            work(m_needle, m_section.rows[at].compact, false);
            counts[at - first].push_back(m_needle.count());
        }
    m_needle = before;
    for (std::size_t at = first; at <= last && times > 1 && able && mayWork(); ++at) {
        DraftRow& row = m_section.rows[at];
        const std::vector<int>& is = counts[at - first];
        std::string kept;
        if (!row.eachTime.empty()) {
            for (std::size_t n = 0; n < row.eachTime.size(); ++n) {
                kept += (n > 0 ? ", " : "") + toText(row.eachTime[n]);
                const std::string time = "the count of time " + toText(static_cast<int>(n) + 1);
                if (n >= is.size())
                    say(ReadingNote::Weight::Warning, row.at, time + ", " + counted(row.eachTime[n], "st"),
                        "counts for the " + toText(times) + " times the row is worked", "a note to the row");
                else if (n > 0 && is[n] != row.eachTime[n])
                    say(ReadingNote::Weight::Warning, row.at, time + ", " + counted(row.eachTime[n], "st"),
                        toText(is[n]) + ", as the row comes out", "a note to the row");
            }
            kept += " sts";
        } else if (row.base.stated && row.base.stated->at(0) == row.after && is.size() > 1 &&
                   is[1] != row.after) {
            kept = stitchesInWords(*row.base.stated) + " the first time";
            say(ReadingNote::Weight::Note, row.at, "(" + stitchesInWords(*row.base.stated) + ")",
                "a count that holds each time, since the row is worked again: '" +
                    counted(std::abs(is[1] - is[0]), "st") + (is[1] < is[0] ? " dec'" : " inc'"),
                "that of the first time (" + toText(is[1]) + " the second), and kept as a note");
        }
        if (kept.empty())
            continue;
        row.base.stated.reset();
        row.base.note += (row.base.note.empty() ? "(" : " (") + kept + ")";
        row.compact.row.stated.reset();
        row.compact.row.note = row.base.note;
        row.eachTime.clear();
    }
}

// The row told next has a number that such rows would have: they were not numbered.
void TextReader::forgetPainted()
{
    m_section.ends.erase(*m_paintedTo);
    std::erase_if(m_section.painted, [&](const auto& painted) { return painted.to == *m_paintedTo; });
}

// "Rep Rows 9-16" of which some are times of a row repeat: as many rows of the chart as numbers, or all of them.
bool TextReader::numbersAreRows(const RowRepeat& told, std::size_t first, std::size_t last) const
{
    const auto from = readInt(told.first);
    const auto to = readInt(told.last);
    const bool chart = readInt(m_section.rows[first].label) == from && readInt(m_section.rows[last].label) == to;
    return !from || !to || chart || *to - *from == static_cast<int>(last - first) ||
           (m_section.ends.contains(*to) && readInt(m_section.rows[first].label) == from);
}

// Whether a row repeat works its rows more than once in all.
bool TextReader::worksAgain(const RowRepeat& repeat)
{
    using Means = RowRepeat::Means;
    const int once = repeat.means == Means::InAll || (repeat.means == Means::Unsaid && repeat.work) ? 1 : 0;
    return repeat.means == Means::UntilStitches || repeat.times.at(0) > once;
}

// Reads the words of rows again on the needle as it is now.
void TextReader::workAnew(std::size_t first, std::size_t last)
{
    m_section.numberedOnFrom = std::min(m_section.numberedOnFrom, m_section.rows.size());
    for (std::size_t i = first; i <= last; ++i) {
        const DraftRow row = m_section.rows[i];
        const Yarn* yarn = yarnOf(m_words.head(), row.base.yarn);
        const std::size_t notes = m_out.notes.size();
        oneRow(row.label, row.base.side, row.base.finish.kind == FinishKind::Round,
               yarn ? (yarn->code.empty() ? yarn->name : yarn->code) : std::string(), row.words);
        forgetTwice(notes);
    }
}

// Where rows painted out would end: the row told next may count on from there.
void TextReader::paintedOut(const RowRepeat& told, const Quantity& inAll, std::size_t last)
{
    m_paintedTo.reset();
    const auto from = labelNumber(told.first);
    const auto to = labelNumber(told.last);
    if (!from || !to || !inAll.single() || inAll.at(0) < 2)
        return;
    const long long end = *to + (inAll.at(0) - 1LL) * std::max(1, *to - *from + 1);
    if (end > mostCount)
        return;
    m_paintedTo = static_cast<int>(end);
    m_section.ends.emplace(static_cast<int>(end), last);
    const auto rows = static_cast<std::size_t>(std::max(1, *to - *from + 1));
    if (last + 1 >= rows)
        m_section.painted.push_back({*to + 1, static_cast<int>(end), last + 1 - rows, rows});
}

void TextReader::repeatRows(const RowRepeat& told, Place at, const std::string& found)
{
    const auto refuse = [&](const std::string& expected) {
        say(ReadingNote::Weight::Error, at, found, expected, {});
        if (!m_inSection)
            beginSection();
        beginNeedle();
        NormalText words;
        words.text = found;
        words.at.assign(found.size() + 1, at);
        keepUnread({}, std::move(words), at);
    };
    if (!m_inSection || m_section.rows.empty())
        return refuse("rows before the words that repeat them");
    const auto lastNumber = labelNumber(told.last);
    const auto painted = lastNumber ? m_section.ends.find(*lastNumber) : m_section.ends.end();
    if (lastNumber && painted == m_section.ends.end()) {
        if (m_paintedTo && *lastNumber > *m_paintedTo)
            m_lastNumber = std::max(m_lastNumber, *m_paintedTo);
        fillTo(*lastNumber + 1);
    }
    std::optional<std::size_t> last, first;
    if (told.first.empty()) {
        last = m_section.rows.size() - 1;
        if (told.rows < 1 || static_cast<std::size_t>(told.rows) > m_section.rows.size())
            return refuse("no more rows than there are, " + toText(static_cast<int>(m_section.rows.size())));
        first = m_section.rows.size() - static_cast<std::size_t>(told.rows);
    } else {
        last = rowLabelled(told.last, m_section.rows.size());
        if (!last && painted != m_section.ends.end())
            last = painted->second;
        if (last)
            first = rowLabelled(told.first, *last + 1);
    }
    if (!first || !last || *first > *last)
        return refuse("rows of this section by their printed numbers");
    if (!numbersAreRows(told, *first, *last))
        return refuse("the rows by the numbers they have in the chart; some of these are times of a row repeat");

    const bool justWorked = *last + 1 == m_section.rows.size();
    RowRepeat repeat = told;
    // A first row that places the markers of the cast-on does so once; the rows are told anew before they are
    // repeated.
    const bool splits = justWorked && *first == 0 && m_section.rows[0].placesCastOn && worksAgain(told);
    if (splits) {
        const std::size_t rows = *last + 1;
        workAnew(*first, *last);
        first = rows;
        last = m_section.rows.size() - 1;
        if (repeat.means != RowRepeat::Means::UntilStitches)
            for (int& n : repeat.times.values)
                --n;
        say(ReadingNote::Weight::Note, at, found.substr(0, 60), {},
            "the first time told by itself, since it places the markers of the cast-on; rows after it are "
            "numbered on");
    }

    using Means = RowRepeat::Means;
    Quantity inAll = repeat.times; // times that the rows are worked from here on, those told before included
    Means means = repeat.means;
    const Needle before = m_needle;
    const auto addTo = [](Quantity quantity, int n) {
        for (int& value : quantity.values)
            value += n;
        return quantity;
    };
    if (means == Means::Unsaid) {
        const std::string often = toText(told.times.at(0));
        Means taken = repeat.work ? Means::InAll : Means::More;
        bool byCount = false;
        if (repeat.total && justWorked && m_sure && repeat.times.single()) {
            const int want = repeat.total->at(0);
            for (const Means one : {Means::More, Means::InAll}) {
                m_needle = before;
                knitAgain(*first, *last, repeat.times.at(0) - (one == Means::InAll ? 1 : 0));
                if (m_needle.count() == want && !byCount) {
                    taken = one;
                    byCount = true;
                }
            }
            m_needle = before;
        }
        means = taken;
        if (told.times.at(0) != 1 || told.work)
            say(ReadingNote::Weight::Warning, at, found.substr(0, 60),
                "'" + often + " more times' or 'a total of " + often + " times'",
                (taken == Means::More ? often + " more times" : often + " times in all") +
                    (byCount ? ", which gives the count that is stated" : ""));
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
        if (!splits || !inAll.single() || inAll.at(0) != 1)
            m_section.repeats.push_back({*first, *last, inAll});
        paintedOut(told, inAll, *last);
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
            if (inner.first >= *first && inner.last <= *last && (inner.first > *first || inner.last < *last))
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
    if (repeat.total && m_sure && mayWork() && m_needle.owed.fault == RowId{} && m_words.sizes() == 1 &&
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

// "Rows 17-20: Rep Rows 15 and 16 twice.", "Rows 17-20: as Rows 15 and 16.": the numbers of the rows say how often.
bool TextReader::repeatsUnder(const RowHead& head, const NormalText& words)
{
    const int here = static_cast<int>(head.labels.size());
    if (here < 2)
        return false;
    auto told = rowRepeat(words, m_words.sizes(), true);
    if (!told || told->means == RowRepeat::Means::UntilStitches)
        return false;
    std::size_t first = 0, last = 0;
    if (told->first.empty()) {
        last = m_section.rows.size();
        first = last - std::min(last, static_cast<std::size_t>(std::max(1, told->rows)));
    } else {
        const auto end = rowLabelled(told->last, m_section.rows.size());
        const auto begin = end ? rowLabelled(told->first, *end + 1) : std::nullopt;
        if (!begin || *begin > *end || !numbersAreRows(*told, *begin, *end))
            return false;
        first = *begin;
        last = *end + 1;
        told->first = m_section.rows[first].label;
        told->last = m_section.rows[*end].label;
    }
    const int rows = static_cast<int>(last - first);
    const Place at = words.placeOf(0);
    const std::string range = "Rows " + head.labels.front() + "-" + head.labels.back();
    const std::string found(trimmed(words.text));
    if (rows == 0 || here % rows != 0) {
        say(ReadingNote::Weight::Error, at, found.substr(0, 60),
            range + " to be a whole number of times " + counted(rows, "row") + "; they are " + toText(here), {});
        for (const std::string& label : head.labels)
            keepUnread(label, words, at);
        m_lastNumber = labelNumber(head.labels.back()).value_or(m_lastNumber + here);
        return true;
    }
    const int times = here / rows;
    const bool unsaid = told->means == RowRepeat::Means::Unsaid && told->times.at(0) == 1;
    if (!unsaid && (!told->times.single() || told->times.at(0) != times))
        say(ReadingNote::Weight::Warning, at, found.substr(0, 60),
            counted(times, "time") + ": " + range + " are " + toText(here) + " rows", counted(times, "time"));
    told->means = RowRepeat::Means::More;
    told->times = times;
    repeatRows(*told, at, found);
    return true;
}

} // namespace shawlwright
