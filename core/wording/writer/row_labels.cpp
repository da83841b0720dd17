#include "core/wording/writer/row_labels.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {
namespace {

bool beginsWithFigure(const std::string& label)
{
    return !label.empty() && label.front() >= '0' && label.front() <= '9';
}

std::string ordinal(int n)
{
    const int ten = n / 10 % 10;
    const char* tail = ten == 1 ? "th" : n % 10 == 1 ? "st" : n % 10 == 2 ? "nd" : n % 10 == 3 ? "rd" : "th";
    return toText(n) + tail;
}

const char* shortSide(Side side)
{
    return side == Side::RS ? "RS" : "WS";
}

} // namespace

RowLabels::RowLabels(const SectionFacts& facts, const Style& style)
    : m_facts(facts), m_form(style.labels), m_sides(style.sides)
{
    for (int row = 1; row < facts.rows() && !m_surprises; ++row)
        m_surprises = facts.surprises(row);
}

bool RowLabels::tellsSide(int row) const
{
    const Side side = m_facts.row(row).side;
    if (m_facts.round(row)) // worked on RS where nothing is said
        return side == Side::WS || (row > 0 && m_facts.surprises(row));
    if (m_sides == SidesShown::EveryRow || m_facts.surprises(row))
        return true;
    // A first row on WS is taken for RS, a side told later makes one count back to the first row.
    if (row == 0)
        return m_sides == SidesShown::WhereDoubtful || side == Side::WS || m_surprises;
    return row == 1 && m_sides == SidesShown::WhereDoubtful;
}

std::string RowLabels::listed(const std::vector<int>& rows, bool round) const
{
    std::string text;
    const bool plain =
        std::all_of(rows.begin(), rows.end(), [this](int row) { return m_facts.number(row).has_value(); });
    const bool ordinals = m_form == LabelForm::Ordinal && plain;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (i > 0)
            text += i + 1 == rows.size() ? " and " : ", ";
        text += ordinals ? ordinal(*m_facts.number(rows[i])) : m_facts.label(rows[i]);
    }
    const bool many = rows.size() > 1;
    if (ordinals)
        return text + (round ? " rnd" : " row") + (many ? "s" : "");
    if (m_form == LabelForm::Short && !round && beginsWithFigure(text))
        return "R" + text;
    return std::string(round ? "Rnd" : "Row") + (many ? "s " : " ") + text;
}

std::string RowLabels::range(int first, int last) const
{
    bool round = true;
    for (int row = first; row <= last; ++row)
        round = round && m_facts.round(row);
    if (first == last)
        return listed({first}, round);
    const bool plain = m_facts.number(first) && m_facts.number(last);
    if (m_form == LabelForm::Ordinal && plain)
        return ordinal(*m_facts.number(first)) + "-" + ordinal(*m_facts.number(last)) +
               (round ? " rnds" : " rows");
    const std::string both = m_facts.label(first) + "-" + m_facts.label(last);
    if (m_form == LabelForm::Short && !round && beginsWithFigure(both))
        return "R" + both;
    return (round ? "Rnds " : "Rows ") + both;
}

std::string RowLabels::label(const LabelledRows& what) const
{
    using Form = LabelledRows::Form;
    const int first = what.rows.front();
    const bool round =
        std::all_of(what.rows.begin(), what.rows.end(), [this](int row) { return m_facts.round(row); });
    const Side side = m_facts.row(first).side;
    std::string text;
    switch (what.form) {
    case Form::List: {
        text = listed(what.rows, round);
        const bool told =
            std::any_of(what.rows.begin(), what.rows.end(), [this](int row) { return tellsSide(row); });
        if (told)
            text += std::string(" (") + shortSide(side) + ")";
        break;
    }
    case Form::Run:
        text = what.rows.size() == 2 ? listed(what.rows, round) : range(first, what.rows.back());
        // Sides take turns; the first of them is said where the others hang on it.
        if (round && side == Side::WS)
            text += " (WS)";
        else if (!round && tellsSide(first) && (first == 0 || m_facts.surprises(first)))
            text += std::string(" (") + shortSide(side) + " first)";
        break;
    case Form::Following:
    case Form::UpTo: {
        text = listed({first}, round) + (what.form == Form::Following ? " and all following " : " and all ");
        if (round || (m_sides == SidesShown::Never && !tellsSide(first)))
            text += *m_facts.number(first) % 2 == 0 ? "even" : "odd";
        else
            text += shortSide(side);
        text += round ? " rnds" : " rows";
        if (what.form == Form::UpTo)
            text += " to " + listed({what.rows.back()}, round);
        if (round && side == Side::WS)
            text += " (WS)";
        break;
    }
    }
    return text + (m_form == LabelForm::FullStop ? "." : ":");
}

} // namespace shawlwright
