// Words of the lines: labels, texts and counts of what is told together, and what the knitter has at the end
// of stretches.

#include "core/wording/writer/gather.h"

#include "core/base/text.h"
#include "core/wording/writer/line_drafts.h"
#include "core/wording/writer/quantity_words.h"

#include <algorithm>

namespace shawlwright {
namespace {

constexpr int fewRows = 4; // a shorter section needs no line that says what it comes to

class LineWriter {
public:
    LineWriter(const Pattern& pattern, const Runs& runs, int section, const Style& style,
               std::span<const WrittenRow> rows)
        : m_facts(pattern, runs, section), m_style(style), m_counts(runs, pattern.head, style),
          m_labels(m_facts, style), m_alike(m_facts, m_counts, style, rows)
    {
    }

    std::vector<WrittenLine> lines()
    {
        if (!m_alike.complete())
            return {};
        const auto nodes = m_style.gathering == Gathering::RowByRow ? std::nullopt : m_alike.nodes();
        m_drafts = nodes ? gatheredLines(m_facts, m_alike, *nodes) : rowByRow(m_facts, m_alike);
        return told();
    }

private:
    std::vector<WrittenLine> told()
    {
        std::vector<WrittenLine> out;
        Reached said;
        Reached before; // told last
        std::size_t toldAt = 0;
        for (const LineDraft& draft : m_drafts) {
            said = {};
            if (draft.kind == WrittenLine::Kind::Repeat)
                out.push_back(draft.own ? ownRepeat(draft, said) : foundRepeat(draft, said));
            else
                out.push_back(rowsLine(draft, said));
            if (!said.ridges.empty())
                before.ridges = said.ridges;
            if (said.stitches) {
                before.stitches = said.stitches;
                toldAt = out.size();
            }
            if (draft.label.form == LabelledRows::Form::Run) {
                if (&draft != &m_drafts.back())
                    addReached(out, afterRun(draft), draft.label.rows.back());
                if (out.back().kind == WrittenLine::Kind::Reached) {
                    said = afterRun(draft);
                    before.stitches = said.stitches;
                    toldAt = out.size();
                }
            }
        }
        said.ridges = before.ridges;
        if (before.stitches && out.size() - toldAt <= 1)
            said.stitches = before.stitches; // the line before told it
        addReached(out, atEnd(said), m_facts.rows() - 1);
        return out;
    }

    WrittenLine rowsLine(const LineDraft& draft, Reached& said) const
    {
        const int first = draft.label.rows.front();
        const WrittenRow& written = m_alike.written(first);
        WrittenLine line;
        line.rows = draft.rows;
        line.firstRow = first;
        line.lastRow = draft.label.rows.back();
        line.note = written.note;
        line.text = written.text;
        line.count = written.count;
        line.label = draft.label.rows.size() == 1 ? written.label : m_labels.label(draft.label);
        if (draft.rows.size() > 1) {
            const RunLines lines = m_facts.lines(draft.rows);
            const char* each = draft.label.rows.size() < 2 ? ""
                               : m_facts.round(first)      ? " each rnd"
                                                           : " each row";
            line.count = m_counts.ofRow(m_facts.row(first), lines, written.phrases, each);
            line.text =
                withoutStop(written) + (written.text.ends_with('.') || !written.count.empty() ? "." : "");
            makeRoom(line);
        }
        Reached total;
        total.stitches = m_counts.atEnd(m_facts.lines(draft.rows.back()), false).stitches;
        if (total.stitches && m_counts.inMarks(total) == line.count)
            said = total;
        return line;
    }

    void makeRoom(WrittenLine& line) const
    {
        if (m_style.countMarks == CountMarks::Dash && !line.count.empty() && line.text.ends_with('.'))
            line.text.pop_back();
    }

    WrittenLine ownRepeat(const LineDraft& draft, Reached& said) const
    {
        WrittenLine line;
        line.kind = WrittenLine::Kind::Repeat;
        line.firstRow = draft.first;
        line.lastRow = draft.last;
        line.text = draft.own->text;
        if (draft.ownCount)
            line.count = draft.own->count;
        else if (!line.text.ends_with('.'))
            line.text += ".";
        for (std::size_t r = 0; r < m_facts.repeats().size() && draft.ownCount && !line.count.empty(); ++r)
            if (m_facts.repeats()[r].first == draft.first && m_facts.repeats()[r].last == draft.last) {
                const Reached all = m_counts.ofRepeat(m_facts.lines(draft.last), m_facts.endingLines(r),
                                                      garterTo(draft.last, m_facts.endingLines(r)));
                if (m_counts.inMarks(all) == line.count)
                    said = all;
            }
        return line;
    }

    WrittenLine foundRepeat(const LineDraft& draft, Reached& said) const
    {
        WrittenLine line;
        line.kind = WrittenLine::Kind::Repeat;
        line.rows = draft.rows;
        line.firstRow = draft.first;
        line.lastRow = draft.last;
        bool holds = false;
        for (const LineDraft& other : m_drafts) {
            if (&other == &draft)
                break;
            holds = holds || (other.kind == WrittenLine::Kind::Repeat && draft.first <= other.first &&
                              other.last <= draft.last);
        }
        line.text =
            rowRepeatInWords(m_labels.range(draft.first, draft.last) + (holds ? " (repeats included)" : ""),
                             draft.times, m_style);
        std::vector<int> lastRows{draft.last};
        for (const int row : draft.rows)
            if ((row - draft.last) % (draft.last - draft.first + 1) == 0)
                lastRows.push_back(row);
        said =
            m_counts.ofRepeat(m_facts.lines(lastRows), draft.ends, garterTo(draft.rows.back(), draft.ends));
        line.count = m_counts.inMarks(said);
        makeRoom(line);
        return line;
    }

    bool garterTo(int row, const RunLines& ends) const
    {
        std::vector<int> rows(static_cast<std::size_t>(row) + 1);
        for (std::size_t i = 0; i < rows.size(); ++i)
            rows[i] = static_cast<int>(i);
        return isGarter(m_facts.told(), m_facts.lines(rows), ends);
    }

    // Rows alike that change the count: what they come to.
    Reached afterRun(const LineDraft& draft) const
    {
        const auto more = m_counts.change(m_facts.lines(draft.label.rows.front()));
        if (m_facts.row(draft.label.rows.front()).stated || (more && everyValueIs(*more, 0)))
            return {};
        std::vector<int> ends;
        const int length = draft.label.rows.back() - draft.label.rows.front();
        for (const int row : draft.rows)
            if (std::binary_search(draft.rows.begin(), draft.rows.end(), row - length))
                ends.push_back(row);
        return m_counts.atEnd(m_facts.lines(ends), false);
    }

    Reached atEnd(const Reached& said) const
    {
        RunLines ends(m_facts.runs());
        std::size_t most = 0;
        for (std::size_t run = 0; run < ends.size(); ++run) {
            int last = -1;
            std::size_t lines = 0;
            for (int row = 0; row < m_facts.rows(); ++row) {
                const std::vector<int>& here = m_facts.lines(run, row);
                lines += here.size();
                if (!here.empty())
                    last = std::max(last, here.back());
            }
            most = std::max(most, lines);
            if (last >= 0)
                ends[run].push_back(last);
        }
        if (most < static_cast<std::size_t>(fewRows))
            return {};
        Reached reached = m_counts.atEnd(ends, garterTo(m_facts.rows() - 1, ends));
        if (reached.stitches && everyValueIs(*reached.stitches, 0))
            return {};
        if (reached.stitches == said.stitches)
            reached.stitches.reset();
        if (reached.betweenTurns == said.betweenTurns)
            reached.betweenTurns.reset();
        if (reached.ridges == said.ridges)
            reached.ridges.clear();
        return reached;
    }

    void addReached(std::vector<WrittenLine>& out, const Reached& reached, int row) const
    {
        if (reached.none())
            return;
        WrittenLine line;
        line.kind = WrittenLine::Kind::Reached;
        line.firstRow = line.lastRow = row;
        line.text = m_counts.inSentence(reached);
        out.push_back(std::move(line));
    }

    SectionFacts m_facts;
    const Style& m_style;
    RowCounts m_counts;
    RowLabels m_labels;
    AlikeRows m_alike;
    std::vector<LineDraft> m_drafts;
};

} // namespace

std::vector<WrittenLine> gathered(const Pattern& pattern, const Runs& runs, int section, const Style& style,
                                  std::span<const WrittenRow> rows)
{
    return LineWriter(pattern, runs, section, style, rows).lines();
}

int lineTelling(std::span<const WrittenLine> lines, int row)
{
    for (std::size_t at = 0; at < lines.size(); ++at)
        if (lines[at].kind == WrittenLine::Kind::Rows &&
            std::binary_search(lines[at].rows.begin(), lines[at].rows.end(), row))
            return static_cast<int>(at);
    return -1;
}

std::string toText(const WrittenLine& line)
{
    std::string text = line.label.empty() ? line.text : line.label + " " + line.text;
    for (const std::string& part : {line.count, line.note})
        if (!part.empty())
            text += " " + part;
    return text;
}

} // namespace shawlwright
