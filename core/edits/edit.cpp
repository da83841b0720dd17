#include "core/edits/edit.h"

#include <algorithm>
#include <cassert>

namespace shawlwright {
namespace {

Section& sectionOf(Pattern& pattern, SectionId id)
{
    const int at = sectionIndex(pattern, id);
    assert(at >= 0);
    return pattern.sections[static_cast<std::size_t>(at)];
}

// The one entry for a section, with an empty range where there was none yet.
Change::Rows& touched(Change& change, SectionId section)
{
    for (Change::Rows& rows : change.rows)
        if (rows.section == section)
            return rows;
    Change::Rows fresh;
    fresh.section = section;
    change.rows.push_back(fresh);
    return change.rows.back();
}

void widen(Change::Rows& rows, int first, int last)
{
    if (rows.last < rows.first && !rows.spliced) {
        rows.first = first;
        rows.last = last;
    } else {
        rows.first = std::min(rows.first, first);
        rows.last = std::max(rows.last, last);
    }
}

class Applying {
public:
    Applying(Pattern& pattern, Change& change) : m_pattern(pattern), m_change(change) {}

    EditStep operator()(const SwapRows& step)
    {
        Section& section = sectionOf(m_pattern, step.section);
        SwapRows back{step.section, {}};
        for (const auto& [at, row] : step.rows) {
            assert(at >= 0 && at < static_cast<int>(section.rows.size()) && row);
            RowRef& stands = section.rows[static_cast<std::size_t>(at)];
            back.rows.emplace(at, stands);
            stands = row;
            widen(touched(m_change, step.section), at, at);
        }
        return back;
    }

    EditStep operator()(const SpliceRows& step)
    {
        Section& section = sectionOf(m_pattern, step.section);
        assert(step.at >= 0 && step.removed >= 0 &&
               step.at + step.removed <= static_cast<int>(section.rows.size()));
        const auto from = section.rows.begin() + step.at;
        SpliceRows back{
            step.section, step.at, static_cast<int>(step.added.size()), {from, from + step.removed}};
        section.rows.insert(section.rows.erase(from, from + step.removed), step.added.begin(),
                            step.added.end());

        Change::Rows& rows = touched(m_change, step.section);
        if (rows.last >= step.at) // what was touched above has moved
            rows.last = std::max(step.at - 1, rows.last + back.removed - step.removed);
        widen(rows, step.at, step.at + back.removed - 1);
        rows.spliced = true;
        return back;
    }

    EditStep operator()(const SwapFrame& step)
    {
        Section& section = sectionOf(m_pattern, step.section);
        SwapFrame back{step.section, std::move(section.frame)};
        section.frame = step.frame;
        touched(m_change, step.section).frame = true;
        return back;
    }

    EditStep operator()(const SpliceSections& step)
    {
        auto& sections = m_pattern.sections;
        assert(step.at >= 0 && step.removed >= 0 &&
               step.at + step.removed <= static_cast<int>(sections.size()));
        const auto from = sections.begin() + step.at;
        SpliceSections back{step.at, static_cast<int>(step.added.size()), {from, from + step.removed}};
        sections.insert(sections.erase(from, from + step.removed), step.added.begin(), step.added.end());
        m_change.all = true;
        return back;
    }

    EditStep operator()(const SwapHead& step)
    {
        SwapHead back{std::move(m_pattern.head)};
        m_pattern.head = step.head;
        m_change.head = true;
        return back;
    }

private:
    Pattern& m_pattern;
    Change& m_change;
};

bool splices(const EditStep& step)
{
    return std::holds_alternative<SpliceRows>(step) || std::holds_alternative<SpliceSections>(step);
}

// Puts `later` into `step` where both set the same thing; what `later` sets stands in the end.
bool merged(EditStep& step, const EditStep& later)
{
    if (auto* rows = std::get_if<SwapRows>(&step))
        if (const auto* more = std::get_if<SwapRows>(&later); more && more->section == rows->section) {
            for (const auto& [at, row] : more->rows)
                rows->rows[at] = row;
            return true;
        }
    if (auto* frame = std::get_if<SwapFrame>(&step))
        if (const auto* more = std::get_if<SwapFrame>(&later); more && more->section == frame->section) {
            *frame = *more;
            return true;
        }
    if (auto* head = std::get_if<SwapHead>(&step))
        if (const auto* more = std::get_if<SwapHead>(&later)) {
            *head = *more;
            return true;
        }
    return false;
}

} // namespace

Applied apply(Pattern& pattern, const Edit& edit)
{
    Applied applied;
    applied.takeBack.name = edit.name;
    Applying applying(pattern, applied.change);
    for (const EditStep& step : edit.steps)
        applied.takeBack.steps.push_back(std::visit(applying, step));
    std::reverse(applied.takeBack.steps.begin(), applied.takeBack.steps.end());
    return applied;
}

Edit composed(Edit earlier, Edit later)
{
    if (earlier.name.empty())
        earlier.name = later.name;
    for (EditStep& step : later.steps) {
        // Swaps of different things may change places; nothing may pass rows or sections that come and go.
        bool done = false;
        for (auto before = earlier.steps.rbegin(); before != earlier.steps.rend() && !done; ++before) {
            if (splices(*before) || splices(step))
                break;
            done = merged(*before, step);
        }
        if (!done)
            earlier.steps.push_back(std::move(step));
    }
    return earlier;
}

} // namespace shawlwright
