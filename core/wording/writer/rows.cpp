// The rows of a section: labels, words, counts and row repeats.

#include "core/base/in_parallel.h"
#include "core/base/text.h"
#include "core/wording/writer/phrase_text.h"
#include "core/wording/writer/quantity_words.h"
#include "core/wording/writer/row_counts.h"
#include "core/wording/writer/row_labels.h"
#include "core/wording/writer/row_phrases.h"
#include "core/wording/writer/writer.h"

#include <algorithm>

namespace shawlwright {
namespace {

class SectionWriter {
public:
    SectionWriter(const Pattern& pattern, const Catalogue& catalogue, const Runs& runs, int section,
                  const Style& style)
        : m_catalogue(catalogue), m_facts(pattern, runs, section), m_style(style),
          m_counts(runs, pattern.head, style), m_labels(m_facts, style)
    {
    }

    // `kept` gives the row as it was where that is still true, else null.
    template <typename Kept>
    std::vector<WrittenRow> write(const Kept& kept) const
    {
        const std::size_t count = static_cast<std::size_t>(m_facts.rows());
        std::vector<WrittenRow> rows(count);
        std::vector<std::size_t> fresh;
        for (std::size_t at = 0; at < count; ++at) {
            if (WrittenRow* was = kept(static_cast<int>(at))) {
                was->label = m_labels.label(static_cast<int>(at));
                rows[at] = std::move(*was);
            } else {
                fresh.push_back(at);
            }
        }
        inParallel(fresh.size(), worthThreads,
                   [&](std::size_t i) { rows[fresh[i]] = writtenRow(static_cast<int>(fresh[i])); });

        const std::vector<RowRepeatFacts>& repeats = m_facts.repeats();
        std::vector<WrittenRow> out;
        out.reserve(count + repeats.size());
        for (std::size_t at = 0; at < count; ++at) {
            out.push_back(std::move(rows[at]));
            for (std::size_t r = repeats.size(); r-- > 0;)
                if (repeats[r].last == static_cast<int>(at))
                    out.push_back(writtenRepeat(r));
        }
        return out;
    }

    // A row says something of itself and of the row knitted before it.
    bool touched(int row, std::span<const Reworked> reworked) const
    {
        const auto again = [&](std::span<const int> lines, std::size_t run) {
            const Reworked& lately = reworked[std::min(run, reworked.size() - 1)];
            return lines.empty() || std::any_of(lines.begin(), lines.end(), [&](int line) {
                       return lately.first <= line && line <= lately.last;
                   });
        };
        if (const RunLines& all = m_facts.everyLines(row); !all.empty()) {
            for (std::size_t run = 0; run < all.size(); ++run)
                if (again(all[run], run))
                    return true;
            return false;
        }
        for (std::size_t run = 0; run < m_facts.runs(); ++run)
            if (again(m_facts.lines(run, row), run))
                return true;
        return false;
    }

    int rows() const { return m_facts.rows(); }

private:
    static constexpr std::size_t worthThreads = 64; // rows

    WrittenRow writtenRow(int at) const
    {
        const Row& row = m_facts.row(at);
        WrittenRow written;
        written.firstRow = written.lastRow = at;
        written.label = m_labels.label(at);
        written.phrases = phrases(at);
        written.text = inWords(written.phrases, {m_facts.pattern().head, m_catalogue, row.side, m_style});
        written.count = m_counts.ofRow(row, m_facts.lines(at), written.phrases);
        written.note = row.note;
        makeRoom(written);
        return written;
    }

    Phrases phrases(int at) const
    {
        std::optional<Phrases> shared = sharedPhrases(at);
        return shared ? std::move(*shared) : ownPhrases(at);
    }

    // What is true in each run of the pattern; none where runs differ in what may be said.
    std::optional<Phrases> sharedPhrases(int at) const
    {
        const RunLines& all = m_facts.everyLines(at);
        if (all.size() < 2)
            return std::nullopt;
        std::optional<Phrases> said;
        for (std::size_t run = 0; run < all.size(); ++run) {
            if (all[run].empty())
                continue;
            Phrases here = rowPhrases({m_facts.pattern(), m_catalogue, *m_facts.told().every[run],
                                       m_facts.sectionAt(), at, all[run], true, m_style.longRuns, m_style.markers});
            if (said && *said != here)
                return std::nullopt;
            said = std::move(here);
        }
        return said;
    }

    // What every told size's needle has true. Where sizes differ in what may be said, the row is told from its
    // cells alone.
    Phrases ownPhrases(int at) const
    {
        const Runs& runs = m_facts.told();
        const auto of = [&](std::size_t run, std::span<const int> lines) {
            return rowPhrases(
                {m_facts.pattern(), m_catalogue, *runs.bySize[run], m_facts.sectionAt(), at, lines, false,
                 m_style.longRuns, m_style.markers});
        };
        std::optional<Phrases> said;
        for (std::size_t run = 0; run < m_facts.runs(); ++run) {
            const std::vector<int>& lines = m_facts.lines(run, at);
            if (lines.empty())
                continue;
            Phrases here = of(run, lines);
            if (said && *said != here)
                return of(0, {});
            said = std::move(here);
        }
        return said ? std::move(*said) : of(0, {});
    }

    WrittenRow writtenRepeat(std::size_t at) const
    {
        const RowRepeatFacts& repeat = m_facts.repeats()[at];
        WrittenRow written;
        written.firstRow = repeat.first;
        written.lastRow = repeat.last;
        written.repeat = true;
        const std::string range =
            m_labels.range(repeat.first, repeat.last) + (holdsOthers(at) ? " (repeats included)" : "");
        written.text = rowRepeatInWords(range, *repeat.times, m_style);
        std::vector<int> before(static_cast<std::size_t>(repeat.last) + 1);
        for (std::size_t i = 0; i < before.size(); ++i)
            before[i] = static_cast<int>(i);
        const RunLines ends = m_facts.endingLines(at);
        const bool garter = isGarter(m_facts.told(), m_facts.lines(before), ends);
        written.count = m_counts.inMarks(m_counts.ofRepeat(m_facts.lines(repeat.last), ends, garter));
        makeRoom(written);
        return written;
    }

    // "k to end - 23 sts.": the full stop ends both.
    void makeRoom(WrittenRow& written) const
    {
        if (m_style.countMarks == CountMarks::Dash && !written.count.empty() && written.text.ends_with('.'))
            written.text.pop_back();
    }

    // Another repeat, told before, lies within.
    bool holdsOthers(std::size_t at) const
    {
        const std::vector<RowRepeatFacts>& repeats = m_facts.repeats();
        return std::any_of(repeats.begin() + static_cast<std::ptrdiff_t>(at) + 1, repeats.end(),
                           [&](const RowRepeatFacts& other) {
                               return repeats[at].first <= other.first && other.last <= repeats[at].last;
                           });
    }

    const Catalogue& m_catalogue;
    SectionFacts m_facts;
    const Style& m_style;
    RowCounts m_counts;
    RowLabels m_labels;
};

} // namespace

std::vector<WrittenRow> writtenRows(const Pattern& pattern, const Catalogue& catalogue, const Runs& runs,
                                    int section, const Style& style)
{
    return SectionWriter(pattern, catalogue, runs, section, style).write([](int) -> WrittenRow* {
        return nullptr;
    });
}

void rewrite(std::vector<WrittenRow>& rows, const Pattern& pattern, const Catalogue& catalogue,
             const Runs& runs, int section, const Style& style, std::span<const Reworked> reworked)
{
    const SectionWriter writer(pattern, catalogue, runs, section, style);
    std::vector<WrittenRow> was;
    for (WrittenRow& row : rows)
        if (!row.repeat)
            was.push_back(std::move(row));
    const bool same = static_cast<int>(was.size()) == writer.rows();
    rows = writer.write([&](int row) {
        return same && !writer.touched(row, reworked) ? &was[static_cast<std::size_t>(row)] : nullptr;
    });
}

std::string rowRepeatInWords(const std::string& range, const Quantity& times, const Style& style)
{
    if (std::any_of(times.values.begin(), times.values.end(), [](int n) { return n < 1; }))
        // "Work Rows 1-4 a total of 6 times": common practice, no source.
        return "Work " + range + " a total of " + inWords(times) + " times.";
    // "n more times", never a bare "n times": Josephine Kush, Row Repeats.
    Quantity more = times;
    for (int& n : more.values)
        --n;
    const std::string often = moreTimesInWords(more, style.times);
    const bool figures = often.front() >= '0' && often.front() <= '9';
    return (style.repeatWord == RepeatWord::Repeat ? "Repeat " : "Rep ") + range + (figures ? ", " : " ") +
           often + ".";
}

std::string toText(const WrittenRow& row)
{
    std::string text = row.label.empty() ? row.text : row.label + " " + row.text;
    for (const std::string& part : {row.count, row.note})
        if (!part.empty())
            text += " " + part;
    return text;
}

} // namespace shawlwright
