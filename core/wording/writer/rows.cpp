// The rows of a section: labels, words, counts and row repeats.

#include "core/base/text.h"
#include "core/wording/writer/phrase_text.h"
#include "core/wording/writer/quantity_words.h"
#include "core/wording/writer/row_phrases.h"
#include "core/wording/writer/writer.h"

#include <algorithm>
#include <optional>

namespace shawlwright {
namespace {

struct Repeat {
    int first, last;
    const Quantity* times;
};

// Counts in print (Kniterations, Indicating Stitch Count Changes; Craft Star Studios, On Stitch Counts): a
// row worked once has its total; one that is repeated, with another total each time, the change; the total
// follows the block.
class CountWriter {
public:
    CountWriter(const Ledger& ledger, const Style& style) : m_ledger(ledger), m_style(style) {}

    std::string ofRow(const Row& row, std::span<const int> lines) const
    {
        if (m_style.counts == CountsShown::Never)
            return {};
        if (row.stated)
            return "(" + stitchesInWords(*row.stated) + ")";
        if (lines.empty())
            return {};
        const bool always = m_style.counts == CountsShown::Always;
        const auto after = number(lines, [](const LedgerLine& l) { return l.after; });
        if (row.finish.kind == FinishKind::BindOff && after == 0)
            return {};
        const auto change = number(lines, [](const LedgerLine& l) { return l.after - l.before; });
        const auto worked = number(lines, [](const LedgerLine& l) { return l.worked; });
        const auto resting = number(lines, [](const LedgerLine& l) { return l.resting; });
        const bool early = row.finish.kind == FinishKind::TurnEarly;
        if (worked && resting.value_or(0) > 0 && (always || early || change != 0))
            return "(" + counted(*worked, "st") + " worked, " + toText(*resting) + " unworked)";
        if (!always && change == 0 && !endsShortRows(lines))
            return {};
        if (after)
            return total(*after);
        if (change && *change != 0)
            return "(" + counted(std::abs(*change), "st") + (*change > 0 ? " inc)" : " dec)");
        return {};
    }

    // After a row repeat: `ends` are the lines that end it.
    std::string ofRepeat(std::span<const int> lines, std::span<const int> ends) const
    {
        const auto after = number(ends, [](const LedgerLine& l) { return l.after; });
        const auto throughout = number(lines, [](const LedgerLine& l) { return l.after; });
        if (m_style.counts == CountsShown::Never || !after ||
            (throughout && m_style.counts != CountsShown::Always))
            return {};
        return total(*after);
    }

private:
    template <typename Number>
    std::optional<int> number(std::span<const int> lines, const Number& of) const
    {
        return agreed(m_ledger, lines, of);
    }

    // All live stitches are told once at the end of short rows (conventions of the trade: common practice, no
    // source).
    bool endsShortRows(std::span<const int> lines) const
    {
        return std::all_of(lines.begin(), lines.end(), [this](int line) {
            const auto at = static_cast<std::size_t>(line);
            return line > 0 && m_ledger.lines[at].resting == 0 && m_ledger.lines[at - 1].resting > 0;
        });
    }

    static std::string total(int count) { return "(" + counted(count, "st") + ")"; }

    const Ledger& m_ledger;
    const Style& m_style;
};

class SectionWriter {
public:
    SectionWriter(const Pattern& pattern, const Catalogue& catalogue, const Ledger& ledger, int section,
                  const Style& style)
        : m_pattern(pattern), m_catalogue(catalogue), m_ledger(ledger), m_sectionAt(section),
          m_section(pattern.sections[static_cast<std::size_t>(section)]), m_style(style),
          m_counts(ledger, style), m_labels(rowLabels(m_section)), m_lines(m_section.rows.size())
    {
        const auto sectionOf = [](const KnittedRow& row, int at) { return row.section < at; };
        auto knitted = std::lower_bound(ledger.rows.begin(), ledger.rows.end(), section, sectionOf);
        for (; knitted != ledger.rows.end() && knitted->section == section; ++knitted)
            if (knitted->row < rows())
                m_lines[static_cast<std::size_t>(knitted->row)].push_back(
                    static_cast<int>(knitted - ledger.rows.begin()));
        std::map<RowId, int> at;
        for (int row = 0; row < rows(); ++row)
            at.emplace(ref(row).id, row);
        for (const Bracket& bracket : m_section.frame.brackets) {
            const auto first = at.find(bracket.firstRow);
            const auto last = at.find(bracket.lastRow);
            if (first != at.end() && last != at.end() && first->second <= last->second)
                m_repeats.push_back({first->second, last->second, &bracket.times});
        }
        // As they are worked out when knitting: outer ones first, of equal ones the earlier.
        std::stable_sort(m_repeats.begin(), m_repeats.end(), [](const Repeat& a, const Repeat& b) {
            return a.last - a.first > b.last - b.first;
        });
    }

    // `kept` gives the row as it was where that is still true, else null.
    template <typename Kept>
    std::vector<WrittenRow> write(const Kept& kept) const
    {
        std::vector<WrittenRow> out;
        for (int row = 0; row < rows(); ++row) {
            if (WrittenRow* was = kept(row)) {
                was->label = label(row);
                out.push_back(std::move(*was));
            } else {
                out.push_back(writtenRow(row));
            }
            for (std::size_t r = m_repeats.size(); r-- > 0;)
                if (m_repeats[r].last == row && !everyValueIs(*m_repeats[r].times, 1))
                    out.push_back(writtenRepeat(r));
        }
        return out;
    }

    // A row says something of itself and of the row knitted before it.
    bool touched(int row, int firstLine, int lastLine) const
    {
        const std::vector<int>& lines = linesOf(row);
        return lines.empty() || std::any_of(lines.begin(), lines.end(),
                                            [&](int line) { return firstLine <= line && line <= lastLine; });
    }

    int rows() const { return static_cast<int>(m_section.rows.size()); }

private:
    const Row& ref(int row) const { return *m_section.rows[static_cast<std::size_t>(row)]; }
    const std::vector<int>& linesOf(int row) const { return m_lines[static_cast<std::size_t>(row)]; }

    // In the round: the row is one, or ends with binding off a tube.
    bool isRound(int row) const
    {
        const FinishKind kind = ref(row).finish.kind;
        return kind == FinishKind::Round ||
               (kind == FinishKind::BindOff && row > 0 && ref(row - 1).finish.kind == FinishKind::Round);
    }

    std::string label(int row) const
    {
        const bool round = isRound(row);
        const Side side = ref(row).side;
        const std::string number = (round ? "Rnd " : "Row ") + m_labels[static_cast<std::size_t>(row)];
        return round && side == Side::RS ? number : number + (side == Side::RS ? " (RS)" : " (WS)");
    }

    WrittenRow writtenRow(int at) const
    {
        const Row& row = ref(at);
        WrittenRow written;
        written.firstRow = written.lastRow = at;
        written.label = label(at);
        written.phrases = rowPhrases({m_pattern, m_catalogue, m_ledger, m_sectionAt, at, linesOf(at)});
        written.text = inWords(written.phrases, {m_pattern.head, m_catalogue, row.side, m_style});
        written.count = m_counts.ofRow(row, linesOf(at));
        written.note = row.note;
        return written;
    }

    WrittenRow writtenRepeat(std::size_t at) const
    {
        const Repeat& repeat = m_repeats[at];
        WrittenRow written;
        written.firstRow = repeat.first;
        written.lastRow = repeat.last;
        written.repeat = true;
        const std::string range = rangeInWords(repeat) + (holdsOthers(at) ? " (repeats included)" : "");
        const auto& times = repeat.times->values;
        if (std::any_of(times.begin(), times.end(), [](int n) { return n < 1; })) {
            // "Work Rows 1-4 a total of 6 times": common practice, no source.
            written.text = "Work " + range + " a total of " + inWords(*repeat.times) + " times.";
        } else {
            // "n more times", never a bare "n times": Josephine Kush, Row Repeats.
            Quantity more = *repeat.times;
            for (int& n : more.values)
                --n;
            const std::string often = moreTimesInWords(more);
            const bool figures = often.front() >= '0' && often.front() <= '9';
            written.text = "Rep " + range + (figures ? ", " : " ") + often + ".";
        }
        written.count = m_counts.ofRepeat(linesOf(repeat.last), endingLines(at));
        return written;
    }

    std::string rangeInWords(const Repeat& repeat) const
    {
        bool round = true;
        for (int row = repeat.first; row <= repeat.last; ++row)
            round = round && isRound(row);
        const std::string what = round ? "Rnd" : "Row";
        const std::string& first = m_labels[static_cast<std::size_t>(repeat.first)];
        if (repeat.first == repeat.last)
            return what + " " + first;
        return what + "s " + first + "-" + m_labels[static_cast<std::size_t>(repeat.last)];
    }

    // Another repeat, told before, lies within.
    bool holdsOthers(std::size_t at) const
    {
        return std::any_of(m_repeats.begin() + static_cast<std::ptrdiff_t>(at) + 1, m_repeats.end(),
                           [&](const Repeat& other) {
                               return m_repeats[at].first <= other.first &&
                                      other.last <= m_repeats[at].last && !everyValueIs(*other.times, 1);
                           });
    }

    // The lines after which a repeat is done.
    std::vector<int> endingLines(std::size_t at) const
    {
        const Repeat& repeat = m_repeats[at];
        std::vector<std::pair<std::size_t, int>> last; // pass of each bracket from this one inwards
        std::size_t depth = 0;
        for (std::size_t r = 0; r < m_repeats.size(); ++r)
            if (m_repeats[r].first <= repeat.last && repeat.last <= m_repeats[r].last) {
                if (r >= at)
                    last.emplace_back(depth, m_repeats[r].times->at(m_ledger.choice.size));
                ++depth;
            }
        std::vector<int> ends;
        for (const int line : linesOf(repeat.last)) {
            const Passes& passes = m_ledger.rows[static_cast<std::size_t>(line)].passes;
            if (std::all_of(last.begin(), last.end(), [&](const auto& l) {
                    return l.first < passes.size() && passes[l.first] == l.second;
                }))
                ends.push_back(line);
        }
        return ends;
    }

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    const Ledger& m_ledger;
    int m_sectionAt;
    const Section& m_section;
    const Style& m_style;
    CountWriter m_counts;
    std::vector<std::string> m_labels;
    std::vector<std::vector<int>> m_lines; // of the ledger, by row
    std::vector<Repeat> m_repeats;         // outer ones first
};

} // namespace

std::vector<WrittenRow> writtenRows(const Pattern& pattern, const Catalogue& catalogue, const Ledger& ledger,
                                    int section, const Style& style)
{
    return SectionWriter(pattern, catalogue, ledger, section, style).write([](int) -> WrittenRow* {
        return nullptr;
    });
}

void rewrite(std::vector<WrittenRow>& rows, const Pattern& pattern, const Catalogue& catalogue,
             const Ledger& ledger, int section, const Style& style, int firstLine, int lastLine)
{
    const SectionWriter writer(pattern, catalogue, ledger, section, style);
    std::vector<WrittenRow> was;
    for (WrittenRow& row : rows)
        if (!row.repeat)
            was.push_back(std::move(row));
    const bool same = static_cast<int>(was.size()) == writer.rows();
    rows = writer.write([&](int row) {
        return same && !writer.touched(row, firstLine, lastLine) ? &was[static_cast<std::size_t>(row)]
                                                                 : nullptr;
    });
}

std::string toText(const WrittenRow& row)
{
    std::string text = row.label.empty() ? row.text : row.label + ": " + row.text;
    for (const std::string& part : {row.count, row.note})
        if (!part.empty())
            text += " " + part;
    return text;
}

} // namespace shawlwright
