#include "tests/support/knit_text.h"

#include "core/base/text.h"
#include "core/pattern/questions.h"

#include <algorithm>

namespace shawlwright::tests {
namespace {

class RowText {
public:
    RowText(const Pattern& pattern, const Section& section, int row, const Catalogue& catalogue)
        : m_pattern(pattern), m_row(*section.rows[static_cast<std::size_t>(row)]),
          m_boxes(boxesOn(section, row)), m_columns(section.frame.columns), m_rs(m_row.side == Side::RS),
          m_catalogue(catalogue)
    {
    }

    std::string text()
    {
        start();
        for (int at = 0; at <= m_columns; ++at) {
            for (auto box = m_boxes.rbegin(); box != m_boxes.rend(); ++box)
                if (endOf(*box) == at)
                    close(*box);
            for (const MarkerMove& move : m_row.moves)
                if ((m_rs ? move.boundary : m_columns - move.boundary) == at)
                    say(std::string(move.kind == MoveKind::Place    ? "|"
                                    : move.kind == MoveKind::Remove ? "-"
                                                                    : "~") +
                        name(move.marker) + (move.reach == MoveReach::EachTime ? "!" : ""));
            for (const Box& box : m_boxes)
                if (startOf(box) == at)
                    say("[");
            if (at < m_columns)
                cell(m_rs ? at + 1 : m_columns - at);
        }
        finish();
        flush();
        return m_text;
    }

private:
    int startOf(const Box& box) const { return m_rs ? box.firstColumn - 1 : m_columns - box.lastColumn; }
    int endOf(const Box& box) const { return m_rs ? box.lastColumn : m_columns - box.firstColumn + 1; }

    std::string name(MarkerId id) const
    {
        const Marker* marker = markerOf(m_pattern.head, id);
        return marker ? marker->name : toText(id.value);
    }

    void flush()
    {
        if (m_count > 0)
            m_text += (m_text.empty() ? "" : " ") + m_word + (m_count > 1 ? "*" + toText(m_count) : "");
        m_count = 0;
    }
    void say(std::string word)
    {
        flush();
        m_text += (m_text.empty() ? "" : " ") + word;
    }
    void cell(int column)
    {
        const Cell here = cellAt(m_row, column);
        if (here.part != (m_rs || here.stitch == noStitch ? 0 : m_catalogue.stitch(here.stitch).width() - 1))
            return;
        std::string word = ".";
        if (here.stitch != noStitch) {
            const Stitch& stitch = m_catalogue.stitch(here.stitch);
            word = abbreviation(stitch, m_row.side);
            if (word.find(' ') != std::string::npos || m_catalogue.worked(word, m_row.side) != here.stitch)
                word = stitch.key;
        }
        if (word != m_word)
            flush();
        m_word = word;
        ++m_count;
    }
    void close(const Box& box)
    {
        const std::string leaving = box.leaving.at(0) > 0 ? "-" + toText(box.leaving.at(0)) : "";
        switch (box.until) {
        case BoxUntil::Times:
            return say("]*" + toText(box.times.at(0)));
        case BoxUntil::RowEnd:
            return say("]end" + leaving);
        case BoxUntil::Marker:
            return say("]" + name(box.marker) + leaving);
        case BoxUntil::LastTurn:
            return say("]turn" + leaving);
        }
    }
    void start()
    {
        if (m_row.start.kind == StartKind::AfterSlipping)
            say("slip:" + toText(m_row.start.slip.at(0)));
        if (m_row.start.kind == StartKind::AtEdge)
            say("edge");
        if (m_row.start.joins)
            say("join");
    }
    void finish()
    {
        static const char* const methods[] = {"turn",    "turn:wt",  "turn:ds",
                                              "turn:yo", "turn:pin", "turn:twin"};
        switch (m_row.finish.kind) {
        case FinishKind::TurnEarly:
            say(methods[static_cast<int>(m_row.finish.method)]);
            break;
        case FinishKind::Slide:
            say("slide");
            break;
        case FinishKind::Round:
            say("round");
            break;
        case FinishKind::BindOff:
            say("bindoff");
            break;
        case FinishKind::Turn:
            break;
        }
        if (m_row.finish.breaksYarn)
            say("break");
    }

    const Pattern& m_pattern;
    const Row& m_row;
    std::vector<Box> m_boxes;
    int m_columns;
    bool m_rs;
    const Catalogue& m_catalogue;
    std::string m_text, m_word;
    int m_count = 0;
};

} // namespace

std::string asKnit(const Pattern& pattern, const Catalogue& catalogue)
{
    std::string text = "Knit knit(" + toText(pattern.head.castOn.stitches.at(0)) +
                       (pattern.head.castOn.firstSide == Side::WS ? ", Side::WS" : "") + ");\n";
    for (std::size_t s = 0; s < pattern.sections.size(); ++s) {
        const Section& section = pattern.sections[s];
        if (s > 0)
            text += "knit.section(\"" + section.frame.title + "\");\n";
        for (std::size_t r = 0; r < section.rows.size(); ++r) {
            const Row& row = *section.rows[r];
            const Yarn* yarn = yarnOf(pattern.head, row.yarn);
            text += std::string("knit.") + (row.side == Side::RS ? "rs" : "ws") + "(\"" +
                    RowText(pattern, section, static_cast<int>(r), catalogue).text() + "\"" +
                    (yarn ? ", \"" + yarn->code + "\"" : "") + ")";
            for (const Bracket& bracket : section.frame.brackets)
                if (bracket.lastRow == row.id)
                    text += ".times(" +
                            toText(static_cast<int>(r) - rowIndex(section, bracket.firstRow) + 1) + ", " +
                            toText(bracket.times.at(0)) + ")";
            if (row.stated)
                text += ".stated(" + toText(row.stated->at(0)) + ")";
            text += ";";
            const bool yarns = std::any_of(row.cells.begin(), row.cells.end(),
                                           [](const Cell& cell) { return cell.yarn != YarnId{}; });
            if (yarns)
                text += " // single cells in another yarn";
            if (!row.label.empty() || !row.note.empty())
                text += " // label '" + row.label + "', note '" + row.note + "'";
            text += "\n";
        }
    }
    return text;
}

} // namespace shawlwright::tests
