#include "core/wording/own_words.h"

#include "core/base/text.h"
#include "core/wording/reader/reader.h"

#include <algorithm>

namespace shawlwright {
namespace {

// What is worked, as words can tell it: a stitch by what it is called on its side.
struct WorkedWord {
    std::string word;
    YarnId yarn;
    int column = 0;
};

std::vector<WorkedWord> workedWords(const Trace& trace, const Row& row, const Catalogue& catalogue)
{
    std::vector<WorkedWord> words;
    for (const WorkedCell& cell : trace.cells) {
        const Cell here = cellAt(row, cell.column);
        words.push_back({abbreviation(catalogue.stitch(here.stitch), row.side),
                         here.yarn == YarnId{} ? row.yarn : here.yarn, cell.column});
    }
    return words;
}

std::string finishInWords(const Finish& finish)
{
    switch (finish.kind) {
    case FinishKind::TurnEarly:
        return "an early turn";
    case FinishKind::Slide:
        return "a slide";
    case FinishKind::Round:
        return "a round";
    case FinishKind::BindOff:
        return "binding off";
    case FinishKind::Turn:
        break;
    }
    return "a turn at the end";
}

bool painted(const Row& row)
{
    return std::any_of(row.cells.begin(), row.cells.end(),
                       [](const Cell& cell) { return cell.stitch != noStitch; });
}

// A row of the words, worked.
struct WordsWorked {
    std::vector<WorkedWord> words;
    LedgerLine line;
    Row row;
};

class Comparison {
public:
    Comparison(const Pattern& pattern, const Catalogue& catalogue, const Ledger& ledger)
        : m_pattern(pattern), m_catalogue(catalogue), m_ledger(ledger)
    {
    }

    std::vector<Finding> all()
    {
        for (std::size_t s = 0; s < m_pattern.sections.size(); ++s) {
            const Section& section = m_pattern.sections[s];
            if (!section.frame.words.empty())
                sectionWords(static_cast<int>(s));
            for (std::size_t r = 0; r < section.rows.size(); ++r)
                if (!section.rows[r]->words.empty())
                    rowWords(static_cast<int>(s), static_cast<int>(r));
        }
        return std::move(m_findings);
    }

private:
    std::vector<int> linesOf(int section, int row) const // row -1: of all its rows
    {
        std::vector<int> lines;
        for (std::size_t i = 0; i < m_ledger.rows.size(); ++i)
            if (m_ledger.rows[i].section == section && (row < 0 || m_ledger.rows[i].row == row))
                lines.push_back(static_cast<int>(i));
        return lines;
    }

    // The words read on the needle ahead of a line, and what comes of them row by row.
    std::optional<std::vector<WordsWorked>> worked(const std::string& text, int line, std::string& why) const
    {
        const Needle& before = m_ledger.before[static_cast<std::size_t>(line)];
        const Row& row = *m_ledger.rows[static_cast<std::size_t>(line)].ref;
        Onward onward;
        onward.before = before;
        onward.columns = static_cast<int>(row.cells.size());
        onward.side = row.side;
        onward.yarn = row.yarn;
        const ReadText read = readText(text, m_catalogue, {m_pattern.head, onward});
        if (read.rowsNot > 0 || read.rowsRead == 0) {
            const auto error =
                std::find_if(read.notes.begin(), read.notes.end(), [](const ReadingNote& note) {
                    return note.weight == ReadingNote::Weight::Error;
                });
            why = error == read.notes.end() ? "no row in them" : sentence(*error);
            return std::nullopt;
        }
        const Catalogue catalogue = m_catalogue.with(read.pattern.head.stitches);
        std::vector<WordsWorked> rows;
        Needle needle = before;
        const KnittedRow& first = m_ledger.rows[static_cast<std::size_t>(line)];
        for (const KnittedRow& one :
             knittedRows(read.pattern, m_ledger.choice.version, m_ledger.choice.size)) {
            WordsWorked told;
            Trace trace;
            const RowContext context{catalogue, read.pattern.head, *one.boxes, m_ledger.choice.size,
                                     first.index == 1 && rows.empty()};
            told.line = workRow(needle, *one.ref, context, &trace);
            told.row = *one.ref;
            told.words = workedWords(trace, *one.ref, catalogue);
            rows.push_back(std::move(told));
        }
        return rows;
    }

    std::string yarnName(YarnId id) const
    {
        const Yarn* yarn = yarnOf(m_pattern.head, id);
        return !yarn ? "another yarn" : yarn->code.empty() ? yarn->name : yarn->code;
    }

    struct Difference {
        int column = 0;
        std::string message;
    };
    std::optional<Difference> difference(const WordsWorked& said, int line) const
    {
        const KnittedRow& knitted = m_ledger.rows[static_cast<std::size_t>(line)];
        const Row& row = *knitted.ref;
        const LedgerLine& is = m_ledger.lines[static_cast<std::size_t>(line)];
        if (said.row.side != row.side)
            return Difference{0, std::string("tell a ") + (said.row.side == Side::RS ? "RS" : "WS") +
                                     " row, the chart has a " + (row.side == Side::RS ? "RS" : "WS") +
                                     " row"};
        const auto chart = workedWords(traceOf(m_ledger, m_pattern, m_catalogue, line), row, m_catalogue);
        const std::string counts = said.line.after == is.after
                                       ? std::string()
                                       : "; they come to " + counted(said.line.after, "stitch", "stitches") +
                                             ", the chart to " + toText(is.after);
        for (std::size_t i = 0; i < std::min(said.words.size(), chart.size()); ++i) {
            const WorkedWord& a = said.words[i];
            const WorkedWord& b = chart[i];
            const std::string at = " at column " + toText(b.column);
            if (a.word != b.word)
                return Difference{b.column, "say " + a.word + " where the chart has " + b.word + at + counts};
            if (a.yarn != b.yarn)
                return Difference{b.column, "work " + a.word + " with " + yarnName(a.yarn) +
                                                ", the chart with " + yarnName(b.yarn) + at};
        }
        if (said.words.size() > chart.size())
            return Difference{chart.empty() ? 0 : chart.back().column,
                              "go on with " + said.words[chart.size()].word + " where the chart's row ends" +
                                  counts};
        if (said.words.size() < chart.size()) {
            const WorkedWord& next = chart[said.words.size()];
            return Difference{next.column, "end where the chart goes on with " + next.word + " at column " +
                                               toText(next.column) + counts};
        }
        if (said.line.after != is.after)
            return Difference{0, "come to " + counted(said.line.after, "stitch", "stitches") +
                                     ", the chart to " + toText(is.after)};
        if (said.row.finish.kind != row.finish.kind)
            return Difference{0, "end with " + finishInWords(said.row.finish) + ", the chart with " +
                                     finishInWords(row.finish)};
        if (said.line.resting != is.resting)
            return Difference{0, "leave " + counted(said.line.resting, "stitch", "stitches") +
                                     " unworked, the chart " + toText(is.resting)};
        if (said.line.segments != is.segments)
            return Difference{0, "leave " + numbers(said.line.segments) + " between the markers, the chart " +
                                     numbers(is.segments)};
        if (said.row.stated && said.row.stated->at(m_ledger.choice.size) != is.after)
            return Difference{
                0, "state " + counted(said.row.stated->at(m_ledger.choice.size), "stitch", "stitches") +
                       ", the needle has " + toText(is.after) + " after it"};
        return std::nullopt;
    }

    static std::string numbers(const std::vector<int>& all)
    {
        std::vector<std::string> parts;
        for (const int n : all)
            parts.push_back(toText(n));
        return joined(parts) + (all.size() == 1 && all.front() == 1 ? " stitch" : " stitches");
    }

    void tell(Severity severity, int section, int row, int line, int column, std::string message)
    {
        Finding finding;
        finding.severity = severity;
        finding.kind = FindingKind::OwnWordsDiffer;
        finding.section = m_pattern.sections[static_cast<std::size_t>(section)].id;
        finding.row = row;
        finding.line = line;
        finding.column = column;
        finding.message = std::move(message);
        const LedgerLine& at = m_ledger.lines[static_cast<std::size_t>(line)];
        // What the chart itself has wrong is told there.
        if (severity == Severity::Error && at.restsOn != RowId{})
            for (std::size_t i = 0; i < m_ledger.rows.size(); ++i)
                if (m_ledger.rows[i].ref->id == at.restsOn && static_cast<int>(i) <= line)
                    finding.followsFrom = static_cast<int>(i);
        m_findings.push_back(std::move(finding));
    }

    static std::string oneLine(std::string words)
    {
        std::replace(words.begin(), words.end(), '\n', ' ');
        return words;
    }

    void rowWords(int section, int row)
    {
        const Row& chart =
            *m_pattern.sections[static_cast<std::size_t>(section)].rows[static_cast<std::size_t>(row)];
        if (!painted(chart)) // kept as words: nothing to compare
            return;
        const std::string head = std::string(chart.finish.kind == FinishKind::Round ? "Rnd 1 (" : "Row 1 (") +
                                 (chart.side == Side::RS ? "RS): " : "WS): ");
        for (const int line : linesOf(section, row)) {
            std::string why;
            const auto said = worked(head + oneLine(chart.words), line, why);
            if (!said) {
                tell(Severity::Warning, section, row, line, 0,
                     "own words can't be read (" + why + "), so they are not compared with the chart");
                return;
            }
            if (said->size() != 1) {
                tell(Severity::Error, section, row, line, 0,
                     "own words tell " + counted(static_cast<int>(said->size()), "row") + ", the chart 1");
                return;
            }
            if (const auto differs = difference(said->front(), line)) {
                tell(Severity::Error, section, row, line, differs->column,
                     "own words " + differs->message + "; mend the words or the chart");
                return;
            }
        }
    }

    void sectionWords(int section)
    {
        const std::vector<int> lines = linesOf(section, -1);
        if (lines.empty())
            return;
        const auto rowAt = [&](std::size_t line) {
            return m_ledger.rows[static_cast<std::size_t>(lines[line])].row;
        };
        std::string why;
        const auto said =
            worked(m_pattern.sections[static_cast<std::size_t>(section)].frame.words, lines.front(), why);
        if (!said) {
            tell(Severity::Warning, section, -1, lines.front(), 0,
                 "own words of the section can't be read (" + why +
                     "), so they are not compared with the chart");
            return;
        }
        for (std::size_t i = 0; i < std::min(said->size(), lines.size()); ++i)
            if (const auto differs = difference((*said)[i], lines[i])) {
                tell(Severity::Error, section, rowAt(i), lines[i], differs->column,
                     "own words of the section " + differs->message + "; mend the words or the chart");
                return;
            }
        if (said->size() != lines.size())
            tell(Severity::Error, section, -1, lines.front(), 0,
                 "own words of the section tell " + counted(static_cast<int>(said->size()), "row") +
                     ", the chart " + toText(static_cast<int>(lines.size())) +
                     ", repeats worked out; mend the words or the chart");
    }

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    const Ledger& m_ledger;
    std::vector<Finding> m_findings;
};

} // namespace

std::vector<Finding> ownWordsFindings(const Pattern& pattern, const Catalogue& catalogue,
                                      const Ledger& ledger)
{
    return Comparison(pattern, catalogue, ledger).all();
}

} // namespace shawlwright
