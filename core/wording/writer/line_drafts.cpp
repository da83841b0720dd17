#include "core/wording/writer/line_drafts.h"

#include "core/base/text.h"

#include <algorithm>
#include <map>

namespace shawlwright {
namespace {

constexpr int mostListed = 3; // "Rows 2, 4 and 6"

class Drafter {
public:
    Drafter(const SectionFacts& facts, const AlikeRows& rows) : m_facts(facts), m_alike(rows) {}

    std::vector<LineDraft> drafts(std::span<const SectionNode> nodes)
    {
        emit(nodes, fewestLines(m_facts, m_alike, nodes), {0});
        m_dropped.assign(m_drafts.size(), false);
        gatherSides();
        std::vector<LineDraft> told;
        for (std::size_t i = 0; i < m_drafts.size(); ++i)
            if (!m_dropped[i])
                told.push_back(std::move(m_drafts[i]));
        return told;
    }

private:
    // `shifts`: how far on the rows stand that these words tell too.
    void emit(std::span<const SectionNode> nodes, const std::vector<LinePlan>& items,
              const std::vector<int>& shifts)
    {
        for (const LinePlan& item : items) {
            const SectionNode& node = nodes[static_cast<std::size_t>(item.at)];
            switch (item.kind) {
            case LinePlan::Kind::Row:
            case LinePlan::Kind::Run: {
                LineDraft draft;
                for (int i = 0; i < item.length; ++i)
                    draft.label.rows.push_back(node.first + i);
                draft.label.form = item.length > 1 ? LabelledRows::Form::Run : LabelledRows::Form::List;
                draft.rows = shifted(draft.label.rows, shifts);
                m_drafts.push_back(std::move(draft));
                break;
            }
            case LinePlan::Kind::Own: {
                emit(node.inside, *item.block, shifts);
                LineDraft draft;
                draft.kind = WrittenLine::Kind::Repeat;
                draft.own = &m_alike.writtenRepeat(static_cast<std::size_t>(node.repeat));
                draft.ownCount = sameCounts(node, shifts);
                draft.first = node.first;
                draft.last = node.last;
                m_drafts.push_back(std::move(draft));
                break;
            }
            case LinePlan::Kind::Repeat:
                emitRepeat(nodes, item, shifts);
                break;
            }
        }
    }

    void emitRepeat(std::span<const SectionNode> nodes, const LinePlan& item, const std::vector<int>& shifts)
    {
        const int first = nodes[static_cast<std::size_t>(item.at)].first;
        const int last = nodes[static_cast<std::size_t>(item.at + item.length) - 1].last;
        const int rows = last - first + 1;
        std::vector<int> further;
        for (const int shift : shifts)
            for (int n = 0; n < item.times; ++n)
                further.push_back(shift + n * rows);
        emit(nodes, *item.block, further);
        LineDraft draft;
        draft.kind = WrittenLine::Kind::Repeat;
        draft.first = first;
        draft.last = last;
        draft.times = item.times;
        for (int row = first + rows; row < first + item.times * rows; ++row)
            draft.rows.push_back(row);
        draft.rows = shifted(draft.rows, shifts);
        draft.ends = m_facts.lines(shifted({first + item.times * rows - 1}, shifts));
        m_drafts.push_back(std::move(draft));
    }

    static std::vector<int> shifted(const std::vector<int>& rows, const std::vector<int>& shifts)
    {
        std::vector<int> all;
        for (const int shift : shifts)
            for (const int row : rows)
                all.push_back(row + shift);
        std::sort(all.begin(), all.end());
        return all;
    }

    // A row repeat that stands in several places keeps its count where it is the same at all of them.
    bool sameCounts(const SectionNode& node, const std::vector<int>& shifts) const
    {
        const auto& repeats = m_facts.repeats();
        const std::string& count = m_alike.writtenRepeat(static_cast<std::size_t>(node.repeat)).count;
        for (const int shift : shifts)
            for (std::size_t r = 0; r < repeats.size(); ++r)
                if (repeats[r].first == node.first + shift && repeats[r].last == node.last + shift &&
                    repeats[r].times->values ==
                        repeats[static_cast<std::size_t>(node.repeat)].times->values &&
                    m_alike.writtenRepeat(r).count != count)
                    return false;
        return true;
    }

    // Nobody looks for a row behind one that binds off, so that one is always told.
    bool alternates(int row) const
    {
        if (m_facts.row(row - 1).finish.kind == FinishKind::BindOff)
            return false;
        const bool rounds = m_facts.round(row) && m_facts.round(row - 1);
        return m_alike.counted(row) && !m_facts.surprises(row) &&
               m_facts.round(row) == m_facts.round(row - 1) &&
               (rounds || m_facts.row(row).side != m_facts.row(row - 1).side);
    }

    void gatherSides()
    {
        std::map<int, std::size_t> alone; // row: its draft
        for (std::size_t d = 0; d < m_drafts.size(); ++d)
            if (m_drafts[d].kind == WrittenLine::Kind::Rows && m_drafts[d].label.rows.size() == 1)
                alone[m_drafts[d].label.rows.front()] = d;
        int allUntil = -1; // rows to here are told by "and all"
        for (const auto& [row, at] : alone) {
            if (m_dropped[at] || !m_facts.number(row))
                continue;
            int last = row;
            while (last + 2 < m_facts.rows() && alternates(last + 1) && alternates(last + 2) &&
                   m_alike.sameWords(last + 2, row))
                last += 2;
            std::vector<int> here{row};
            for (int other = row + 2; other <= last; other += 2)
                if (const auto found = alone.find(other);
                    found != alone.end() && !m_dropped[found->second] && !mustStay(found->second))
                    here.push_back(other);
            if (here.size() < 2)
                continue;
            LineDraft& draft = m_drafts[at];
            const bool listed = static_cast<int>(here.size()) <= mostListed && isList(here, alone);
            if (!listed && row <= allUntil)
                continue;
            draft.label.rows = here;
            if (!listed) {
                while (last > here.back() && inRun(last)) // told once
                    last -= 2;
                const int end = m_facts.rows() - 1;
                const bool toEnd =
                    last == end || (last == end - 1 && m_facts.row(end).finish.kind == FinishKind::BindOff);
                draft.label.form = toEnd ? LabelledRows::Form::Following : LabelledRows::Form::UpTo;
                draft.label.rows = {row, last};
                allUntil = last;
            }
            for (std::size_t i = 1; i < here.size(); ++i) {
                const LineDraft& other = m_drafts[alone[here[i]]];
                m_dropped[alone[here[i]]] = true;
                draft.rows.insert(draft.rows.end(), other.rows.begin(), other.rows.end());
            }
            std::sort(draft.rows.begin(), draft.rows.end());
        }
    }

    // "Rows 18 and 19: knit."
    bool inRun(int row) const
    {
        return std::any_of(m_drafts.begin(), m_drafts.end(), [row](const LineDraft& draft) {
            return draft.label.form == LabelledRows::Form::Run &&
                   std::find(draft.label.rows.begin(), draft.label.rows.end(), row) != draft.label.rows.end();
        });
    }

    // A last row behind a row repeat: unsaid it could be one of those repeated.
    bool mustStay(std::size_t draft) const
    {
        return draft + 1 == m_drafts.size() && draft > 0 &&
               m_drafts[draft - 1].kind == WrittenLine::Kind::Repeat;
    }

    // Every other row, with no row repeat between.
    bool isList(const std::vector<int>& rows, const std::map<int, std::size_t>& alone) const
    {
        for (std::size_t i = 1; i < rows.size(); ++i)
            if (rows[i] != rows[i - 1] + 2)
                return false;
        for (std::size_t d = alone.at(rows.front()); d < alone.at(rows.back()); ++d)
            if (m_drafts[d].kind != WrittenLine::Kind::Rows)
                return false;
        return true;
    }

    const SectionFacts& m_facts;
    const AlikeRows& m_alike;
    std::vector<LineDraft> m_drafts;
    std::vector<bool> m_dropped; // told by another
};

} // namespace

std::vector<LineDraft> gatheredLines(const SectionFacts& facts, const AlikeRows& rows,
                                     std::span<const SectionNode> nodes)
{
    return Drafter(facts, rows).drafts(nodes);
}

std::vector<LineDraft> rowByRow(const SectionFacts& facts, const AlikeRows& alike)
{
    std::vector<LineDraft> drafts;
    const auto& repeats = facts.repeats();
    std::size_t next = 0;
    for (int row = 0; row < facts.rows(); ++row) {
        LineDraft draft;
        draft.label.rows = draft.rows = {row};
        drafts.push_back(std::move(draft));
        for (std::size_t r = repeats.size(); r-- > 0;)
            if (repeats[r].last == row && next < alike.writtenRepeats().size()) {
                LineDraft again;
                again.kind = WrittenLine::Kind::Repeat;
                again.own = alike.writtenRepeats()[next++];
                again.first = repeats[r].first;
                again.last = row;
                drafts.push_back(std::move(again));
            }
    }
    return drafts;
}

} // namespace shawlwright
