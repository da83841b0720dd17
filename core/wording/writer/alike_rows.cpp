#include "core/wording/writer/alike_rows.h"

#include "core/base/text.h"
#include "core/wording/writer/quantity_words.h"

namespace shawlwright {

AlikeRows::AlikeRows(const SectionFacts& facts, const RowCounts& counts, const Style& style,
                     std::span<const WrittenRow> rows)
    : m_facts(facts)
{
    for (const WrittenRow& row : rows)
        (row.repeat ? m_repeats : m_rows).push_back(&row);
    if (complete())
        numberRows(counts, style);
}

bool AlikeRows::complete() const
{
    return static_cast<int>(m_rows.size()) == m_facts.rows();
}

void AlikeRows::numberRows(const RowCounts& counts, const Style& style)
{
    std::unordered_map<std::string, int> words, whole;
    for (int at = 0; at < m_facts.rows(); ++at) {
        const WrittenRow& written = this->written(at);
        const Row& row = m_facts.row(at);
        std::string key = withoutStop(written) + "\n" + written.note + "\n";
        key += m_facts.round(at) ? 'o' : '-';
        if (row.stated)
            key += "=" + inWords(*row.stated);
        else if (style.counts != CountsShown::Never) {
            const auto more = counts.change(m_facts.lines(at));
            key += more ? "+" + inWords(*more) : "?" + toText(at);
        }
        m_words.push_back(words.emplace(key, static_cast<int>(words.size())).first->second);
        key += row.side == Side::RS ? "r" : "w";
        key += toText(row.yarn.value);
        m_alike.push_back(whole.emplace(key, static_cast<int>(whole.size())).first->second);
    }
}

bool AlikeRows::counted(int row) const
{
    const auto before = m_facts.number(row - 1);
    const auto here = m_facts.number(row);
    return !typed(row) && before && here && *here == *before + 1;
}

// Which written repeat is which; false where repeats cross.
bool AlikeRows::placeRepeats()
{
    const auto& repeats = m_facts.repeats();
    if (m_repeats.size() != repeats.size())
        return false;
    m_place.assign(repeats.size(), 0);
    std::size_t next = 0;
    for (int row = 0; row < m_facts.rows(); ++row)
        for (std::size_t r = repeats.size(); r-- > 0;)
            if (repeats[r].last == row)
                m_place[r] = next++;
    for (std::size_t a = 0; a < repeats.size(); ++a)
        for (std::size_t b = a + 1; b < repeats.size(); ++b) {
            const bool apart = repeats[a].last < repeats[b].first || repeats[b].last < repeats[a].first;
            const bool within = repeats[a].first <= repeats[b].first && repeats[b].last <= repeats[a].last;
            if (!apart && !within)
                return false;
        }
    return true;
}

std::optional<std::vector<SectionNode>> AlikeRows::nodes()
{
    if (!complete() || !placeRepeats())
        return std::nullopt;
    return nodesOf(0, m_facts.rows() - 1, 0);
}

std::vector<SectionNode> AlikeRows::nodesOf(int first, int last, std::size_t from)
{
    std::vector<SectionNode> nodes;
    const auto& repeats = m_facts.repeats();
    for (int row = first; row <= last;) {
        std::size_t r = from;
        while (r < repeats.size() && !(repeats[r].first == row && repeats[r].last <= last))
            ++r;
        if (r == repeats.size()) {
            nodes.push_back({row, row, m_alike[static_cast<std::size_t>(row)], -1, {}});
            ++row;
            continue;
        }
        SectionNode node{row, repeats[r].last, 0, static_cast<int>(r), nodesOf(row, repeats[r].last, r + 1)};
        std::string key = inWords(*repeats[r].times) + ":";
        for (const SectionNode& inside : node.inside)
            key += toText(inside.key) + " ";
        // Keys of repeats are apart from those of rows.
        node.key = -1 - m_repeatKeys.emplace(key, static_cast<int>(m_repeatKeys.size())).first->second;
        row = node.last + 1;
        nodes.push_back(std::move(node));
    }
    return nodes;
}

std::string withoutStop(const WrittenRow& written)
{
    return written.text.ends_with('.') ? written.text.substr(0, written.text.size() - 1) : written.text;
}

} // namespace shawlwright
