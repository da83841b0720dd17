#include "core/derived/mends.h"

#include "core/edits/marks.h"
#include "core/edits/paint.h"
#include "core/edits/rows.h"

#include <algorithm>

namespace shawlwright {
namespace {

class Mending {
public:
    Mending(const Pattern& pattern, const Catalogue& catalogue, const Finding& finding, RunChoice choice)
        : m_pattern(pattern), m_catalogue(catalogue), m_finding(finding), m_mend(finding.mend),
          m_choice(choice)
    {
    }

    Result<Edit> edit()
    {
        const int section = sectionIndex(m_pattern, m_finding.section);
        if (m_mend.kind == MendKind::None)
            return Fault{{}, "", "for this there is no mend by itself; change the row"};
        if (section < 0 || m_finding.row < 0 ||
            m_finding.row >=
                static_cast<int>(m_pattern.sections[static_cast<std::size_t>(section)].rows.size()))
            return Fault{{}, "", "the row this was found in is no longer there; look at what is found now"};
        m_section = &m_pattern.sections[static_cast<std::size_t>(section)];
        m_where = placeInWords(m_pattern, section, m_finding.row);
        auto made = make();
        if (made.ok() && !m_mend.label.empty())
            made.value().name = undoName();
        return made;
    }

private:
    Result<Edit> make()
    {
        switch (m_mend.kind) {
        case MendKind::None:
            break;
        case MendKind::ReplaceCell:
            return replaceCell();
        case MendKind::SetBoxTimes:
            return setTimes();
        case MendKind::JoinYarn:
            return changed(m_finding.row, [](Row& row) { row.start.joins = true; });
        case MendKind::SetSide:
            return changed(m_finding.row,
                           [this](Row& row) { row.side = m_mend.number == 1 ? Side::WS : Side::RS; });
        case MendKind::SetStated:
            return changed(m_finding.row,
                           [this](Row& row) { row.stated = withNumber(row.stated.value_or(0)); });
        case MendKind::ShiftRow:
            return shiftRow(m_pattern, m_catalogue, m_section->id, m_finding.row, m_mend.number);
        case MendKind::RemoveMarkerFirst:
            return removeMarkerFirst();
        case MendKind::DeleteMarkerMove:
            return deleteMove();
        case MendKind::SetLabel:
            return changed(m_finding.row, [this](Row& row) { row.label = m_mend.text; });
        case MendKind::CarryYarn:
            return changed(m_finding.row, [](Row& row) { row.start.joins = false; });
        case MendKind::SlideBefore:
            return slideBefore();
        }
        return Fault{{}, m_where, "for this there is no mend by itself; change the row"};
    }

    const Row& row() const { return *m_section->rows[static_cast<std::size_t>(m_finding.row)]; }

    // "mend: purl the second loop"
    std::string undoName() const
    {
        std::string label = m_mend.label;
        const bool word = label.size() < 2 || !(label[1] >= 'A' && label[1] <= 'Z');
        if (word && label[0] >= 'A' && label[0] <= 'Z')
            label[0] = static_cast<char>(label[0] - 'A' + 'a');
        return "mend: " + label;
    }

    template <typename Act>
    Result<Edit> changed(int at, Act act)
    {
        if (at < 0)
            return Fault{{}, m_where, "there is no row before it in this section; change the section before"};
        Row now = *m_section->rows[static_cast<std::size_t>(at)];
        act(now);
        return setRow(m_pattern, m_section->id, at, std::move(now), "");
    }

    // The row knitted before, which need not be the one below in the chart.
    Result<Edit> slideBefore()
    {
        const auto knitted = knittedRows(m_pattern, m_choice.version, m_choice.size);
        if (m_finding.line < 1 || m_finding.line >= static_cast<int>(knitted.size()) ||
            knitted[static_cast<std::size_t>(m_finding.line)].ref->id != row().id)
            return Fault{{}, m_where, "the row before it is no longer there; look at what is found now"};
        const KnittedRow& before = knitted[static_cast<std::size_t>(m_finding.line) - 1];
        Row now = *before.ref;
        now.finish.kind = FinishKind::Slide;
        return setRow(m_pattern, m_pattern.sections[static_cast<std::size_t>(before.section)].id, before.row,
                      std::move(now), "");
    }

    // One number per size where there are sizes and theirs differ.
    Quantity withNumber(Quantity quantity) const
    {
        const auto sizes = static_cast<std::size_t>(sizeCount(m_pattern));
        if (sizes < 2)
            return Quantity(m_mend.number);
        if (quantity.single())
            quantity.values.assign(sizes, quantity.at(0));
        quantity.values[static_cast<std::size_t>(std::clamp(m_choice.size, 0, static_cast<int>(sizes) - 1))] =
            m_mend.number;
        const bool same = std::all_of(quantity.values.begin(), quantity.values.end(),
                                      [this](int value) { return value == m_mend.number; });
        return same ? Quantity(m_mend.number) : quantity;
    }

    Result<Edit> replaceCell()
    {
        const auto stitch =
            m_mend.text.empty() ? std::optional(m_mend.stitch) : m_catalogue.find(m_mend.text);
        if (!stitch)
            return Fault{{}, m_where, "there is no stitch '" + m_mend.text + "'; paint another one there"};
        const At cell[] = {{m_finding.row, m_mend.column}};
        return paint(m_pattern, m_catalogue, m_section->id, cell, *stitch, cellAt(row(), m_mend.column).yarn);
    }

    Result<Edit> setTimes()
    {
        for (Box box : m_section->frame.boxes)
            if (box.id == m_mend.box) {
                box.times = withNumber(box.times);
                return setBox(m_pattern, m_section->id, box);
            }
        return Fault{{}, m_where, "the stitch repeat is no longer there; look at what is found now"};
    }

    // Off before the stitch that would swallow the marker, on again after it.
    Result<Edit> removeMarkerFirst()
    {
        for (const Box& box : boxesOn(*m_section, m_finding.row))
            if (box.firstColumn <= m_mend.column && m_mend.column <= box.lastColumn)
                return Fault{
                    {},
                    m_where,
                    "the stitch lies in a stitch repeat, and the marker is not there each time it is worked; "
                    "move the marker or end the repeat before it"};
        const int right = m_mend.column - 1;
        const int left = right + std::max(1, m_mend.number);
        const bool rs = row().side == Side::RS;
        return changed(m_finding.row, [&](Row& now) {
            now.moves.push_back({m_mend.marker, rs ? right : left, MoveKind::Remove, MoveReach::Once});
            now.moves.push_back({m_mend.marker, rs != m_mend.before ? left : right, MoveKind::Place, MoveReach::Once});
        });
    }

    Result<Edit> deleteMove()
    {
        const auto& moves = row().moves;
        for (std::size_t i = 0; i < moves.size(); ++i)
            if (moves[i].marker == m_mend.marker && moves[i].boundary == m_mend.column && fits(moves[i].kind))
                return deleteMarkerMove(m_pattern, m_section->id, m_finding.row, static_cast<int>(i));
        return Fault{{}, m_where, "the marker is no longer moved there; look at what is found now"};
    }

    // A marker may be removed and placed at one boundary: which of them is at fault follows from what was
    // found.
    bool fits(MoveKind kind) const
    {
        switch (m_finding.kind) {
        case FindingKind::MarkerPlacedTwice:
        case FindingKind::MarkerInYarnOver:
            return kind == MoveKind::Place;
        case FindingKind::MarkerNotThere:
            return kind != MoveKind::Place;
        default:
            return true;
        }
    }

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    const Finding& m_finding;
    const Mend& m_mend;
    RunChoice m_choice;
    const Section* m_section = nullptr;
    std::string m_where;
};

} // namespace

Result<Edit> mendEdit(const Pattern& pattern, const Catalogue& catalogue, const Finding& finding,
                      RunChoice choice)
{
    return Mending(pattern, catalogue, finding, choice).edit();
}

} // namespace shawlwright
