#include "core/wording/writer/row_counts.h"

#include "core/wording/writer/phrase_text.h"
#include "core/wording/writer/quantity_words.h"

#include <algorithm>

namespace shawlwright {
namespace {

bool any(const std::optional<Quantity>& quantity, bool (*holds)(int))
{
    return quantity && std::any_of(quantity->values.begin(), quantity->values.end(), holds);
}

bool positive(int n)
{
    return n > 0;
}
bool negative(int n)
{
    return n < 0;
}
bool notNone(int n)
{
    return n != 0;
}

int ridgesOf(const LedgerLine& line)
{
    int all = 0;
    for (const int ridges : line.ridges)
        all += ridges;
    return all;
}

// "turn, leaving 6 sts unworked"; 0: nothing of it.
int toldUnworked(const Phrases& said)
{
    for (const Phrase& phrase : said)
        if (const auto* finish = std::get_if<FinishPhrase>(&phrase.is))
            return finish->restingAhead;
    return 0;
}

std::string ridgesInWords(const Quantity& ridges)
{
    return inWords(ridges) + (everyValueIs(ridges, 1) ? " garter ridge" : " garter ridges");
}

} // namespace

RowCounts::RowCounts(const Runs& runs, const PatternHead& head, const Style& style)
    : m_runs(runs), m_head(head), m_shown(style.counts), m_marks(style.countMarks)
{
}

template <typename Number>
std::optional<Quantity> RowCounts::number(const RunLines& lines, const Number& of) const
{
    std::vector<int> values;
    bool knitted = false;
    for (std::size_t run = 0; run < lines.size(); ++run) {
        std::optional<int> value;
        for (const int line : lines[run]) {
            const int here = of(m_runs.bySize[run]->lines[static_cast<std::size_t>(line)]);
            if (value && *value != here)
                return std::nullopt;
            value = here;
        }
        knitted = knitted || value;
        values.push_back(value.value_or(0));
    }
    if (!knitted)
        return std::nullopt;
    return values.size() == 1 ? Quantity(values.front()) : Quantity(std::move(values));
}

std::optional<Quantity> RowCounts::change(const RunLines& lines) const
{
    return number(lines, [](const LedgerLine& l) { return l.after - l.before; });
}

std::string RowCounts::ofRow(const Row& row, const RunLines& lines, const Phrases& said,
                             const std::string& each) const
{
    if (m_shown == CountsShown::Never)
        return {};
    if (row.stated)
        return marked(stitchesInWords(*row.stated));
    if (std::all_of(lines.begin(), lines.end(), [](const auto& some) { return some.empty(); }))
        return {};
    const bool always = m_shown == CountsShown::Always;
    const auto after = number(lines, [](const LedgerLine& l) { return l.after; });
    if (row.finish.kind == FinishKind::BindOff && after && everyValueIs(*after, 0))
        return {};
    const auto more = change(lines);
    const auto worked = number(lines, [](const LedgerLine& l) { return l.worked; });
    const auto resting = number(lines, [](const LedgerLine& l) { return l.resting; });
    const bool early = row.finish.kind == FinishKind::TurnEarly;
    const bool changes = !more || any(more, notNone);
    if (worked && any(resting, positive) && (always || early || changes))
        return marked(stitchesInWords(*worked) + " worked" +
                      (everyValueIs(*resting, toldUnworked(said)) ? "" : ", " + inWords(*resting) + " unworked"));
    if (!always && !changes && !endsShortRows(lines))
        return {};
    if (after)
        return marked(stitchesInWords(*after));
    if (!any(more, notNone) || (any(more, positive) && any(more, negative)))
        return {};
    Quantity many = *more;
    for (int& n : many.values)
        n = std::abs(n);
    return marked(stitchesInWords(many) + (any(more, positive) ? " inc" : " dec") + each);
}

Reached RowCounts::ofRepeat(const RunLines& lines, const RunLines& ends, bool garter) const
{
    Reached reached = atEnd(ends, garter);
    const auto throughout = number(lines, [](const LedgerLine& l) { return l.after; });
    if (throughout && m_shown != CountsShown::Always)
        reached.stitches.reset();
    return reached;
}

Reached RowCounts::atEnd(const RunLines& ends, bool garter) const
{
    Reached reached;
    if (m_shown == CountsShown::Never)
        return reached;
    reached.stitches = number(ends, [](const LedgerLine& l) { return l.after; });
    if (any(number(ends, [](const LedgerLine& l) { return l.resting; }), positive)) {
        reached.betweenTurns = number(ends, [](const LedgerLine& l) { return l.betweenTurns; });
        if (any(reached.betweenTurns, negative) || !any(reached.betweenTurns, positive))
            reached.betweenTurns.reset();
    }
    if (garter)
        addRidges(reached, ends);
    return reached;
}

void RowCounts::addRidges(Reached& reached, const RunLines& ends) const
{
    for (const Yarn& yarn : m_head.yarns) {
        const std::size_t at = yarn.id.value - 1u;
        const auto ridges =
            number(ends, [at](const LedgerLine& l) { return at < l.ridges.size() ? l.ridges[at] : 0; });
        if (any(ridges, positive))
            reached.ridges.emplace_back(yarn.id, *ridges);
    }
}

// All live stitches are told once at the end of short rows: common practice, no source.
bool RowCounts::endsShortRows(const RunLines& lines) const
{
    for (std::size_t run = 0; run < lines.size(); ++run)
        for (const int line : lines[run]) {
            const auto at = static_cast<std::size_t>(line);
            const std::vector<LedgerLine>& all = m_runs.bySize[run]->lines;
            if (line == 0 || all[at].resting > 0 || all[at - 1].resting == 0)
                return false;
        }
    return true;
}

std::string RowCounts::marked(const std::string& words) const
{
    switch (m_marks) {
    case CountMarks::Brackets:
        return "[" + words + "]";
    case CountMarks::Dash:
        return "- " + words + ".";
    case CountMarks::None:
        return words + ".";
    case CountMarks::Parentheses:
        break;
    }
    return "(" + words + ")";
}

std::vector<std::string> RowCounts::parts(const Reached& reached) const
{
    std::vector<std::string> out;
    if (reached.stitches)
        out.push_back(stitchesInWords(*reached.stitches));
    if (reached.betweenTurns)
        out.push_back(stitchesInWords(*reached.betweenTurns) + " between the turns");
    for (std::size_t i = 0; i < reached.ridges.size(); ++i) { // "12 garter ridges in MC, 6 in CC"
        const auto& [yarn, ridges] = reached.ridges[i];
        out.push_back((i == 0 ? ridgesInWords(ridges) : inWords(ridges)) +
                      (m_head.yarns.size() > 1 ? " in " + yarnInWords(m_head, yarn) : std::string()));
    }
    return out;
}

std::string RowCounts::inMarks(const Reached& reached) const
{
    std::string words;
    for (const std::string& part : parts(reached))
        words += (words.empty() ? "" : ", ") + part;
    return words.empty() ? words : marked(words);
}

std::string RowCounts::inSentence(const Reached& reached) const
{
    const std::vector<std::string> all = parts(reached);
    std::string words;
    for (std::size_t i = 0; i < all.size(); ++i)
        words += (i == 0 ? "" : i + 1 == all.size() ? " and " : ", ") + all[i];
    return words.empty() ? words : "You have " + words + ".";
}

bool isGarter(const Runs& runs, const RunLines& lines, const RunLines& ends)
{
    for (std::size_t run = 0; run < ends.size(); ++run)
        for (const int end : ends[run])
            if (const int ridges = ridgesOf(runs.bySize[run]->lines[static_cast<std::size_t>(end)]);
                ridges > 1 && 4 * ridges >= static_cast<int>(lines[run].size()))
                return true;
    return false;
}

} // namespace shawlwright
