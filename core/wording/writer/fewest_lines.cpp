#include "core/wording/writer/fewest_lines.h"

#include "core/wording/writer/phrase_text.h"

#include <algorithm>
#include <map>

namespace shawlwright {
namespace {

constexpr int longestBlock = 400; // rows
constexpr int deepest = 3;        // found repeats within found repeats

struct Solved {
    std::shared_ptr<const std::vector<LinePlan>> items;
    int letters = 0;
};

class Solver {
public:
    Solver(const SectionFacts& facts, const AlikeRows& rows) : m_facts(facts), m_rows(rows)
    {
        for (int row = 0; row < facts.rows(); ++row) {
            const WrittenRow& written = rows.written(row);
            m_typedUpTo.push_back(m_typedUpTo.back() + (rows.typed(row) ? 1 : 0));
            m_undrawnUpTo.push_back(m_undrawnUpTo.back() + (notDrawn(written.phrases) ? 1 : 0));
            m_letters.push_back(static_cast<int>(written.label.size() + written.text.size() + written.count.size() +
                                                 written.note.size()) +
                                2);
        }
    }

    Solved solved(std::span<const SectionNode> nodes)
    {
        std::map<std::pair<int, int>, Solved> known;
        return solved(nodes, 0, static_cast<int>(nodes.size()), 0, known);
    }

private:
    int lettersOf(int row) const { return m_letters[static_cast<std::size_t>(row)]; }

    static bool none(const std::vector<int>& upTo, int first, int last)
    {
        return first > last || upTo[static_cast<std::size_t>(last) + 1] == upTo[static_cast<std::size_t>(first)];
    }

    // No label is typed, so each follows from the one before.
    bool countable(const SectionNode& node) const
    {
        return none(m_typedUpTo, node.first, node.last);
    }

    // Labels within go up one by one, no slide joins its ends to other rows, and each row is drawn.
    bool isBlock(std::span<const SectionNode> nodes, int from, int to) const
    {
        const int first = nodes[static_cast<std::size_t>(from)].first;
        const int last = nodes[static_cast<std::size_t>(to) - 1].last;
        const auto slides = [this](int row) { return m_facts.row(row).finish.kind == FinishKind::Slide; };
        if (first == last || slides(last) || (first > 0 && slides(first - 1)))
            return false;
        return none(m_typedUpTo, first + 1, last) && none(m_undrawnUpTo, first, last);
    }

    // The row goes on with the words of the row before it.
    bool goesOn(const SectionNode& before, const SectionNode& node) const
    {
        return node.repeat < 0 && before.repeat < 0 && m_rows.counted(node.first) &&
               !m_facts.surprises(node.first) && m_rows.sameWords(node.first, before.first);
    }

    Solved solved(std::span<const SectionNode> nodes, int from, int to, int depth,
                  std::map<std::pair<int, int>, Solved>& known)
    {
        struct Choice {
            int letters = 0;
            int next = 0;
            LinePlan item;
        };
        const auto find = [&](int i) -> const SectionNode& { return nodes[static_cast<std::size_t>(i)]; };
        std::vector<Choice> best(static_cast<std::size_t>(to - from) + 1);
        const int longest = depth < deepest ? std::min(longestBlock, (to - from) / 2) : 0;
        // By period: how many nodes from here on are alike those a period on.
        std::vector<int> same(static_cast<std::size_t>(longest) + 1);
        int run = 1;
        for (int at = to; at-- > from;) {
            const auto after = [&](int next) { return best[static_cast<std::size_t>(next - from)].letters; };
            Choice& choice = best[static_cast<std::size_t>(at - from)];
            const SectionNode& node = find(at);
            run = at + 1 < to && goesOn(node, find(at + 1)) ? run + 1 : 1;
            if (node.repeat >= 0) {
                Solved inside = solved(node.inside);
                choice = {inside.letters + 30 + after(at + 1), at + 1,
                          LinePlan{LinePlan::Kind::Own, at, 1, 1, std::move(inside.items)}};
            } else {
                choice = {lettersOf(node.first) + after(at + 1), at + 1,
                          LinePlan{LinePlan::Kind::Row, at, 1, 1, {}}};
                for (int length = run; length >= 2; length = length > 8 ? 8 : length - 1) {
                    const int letters = lettersOf(node.first) + 4 + after(at + length);
                    if (letters <= choice.letters)
                        choice = {letters, at + length, LinePlan{LinePlan::Kind::Run, at, length, 1, {}}};
                }
            }
            std::vector<std::pair<int, int>> found; // periods with the nodes they go on for
            for (int period = 1; period <= longest && at + period < to; ++period) {
                int& alike = same[static_cast<std::size_t>(period)];
                const SectionNode& other = find(at + period);
                alike = node.key == other.key && countable(other) ? alike + 1 : 0;
                if (alike < period || (period == 1 && node.repeat < 0) || !isBlock(nodes, at, at + period))
                    continue;
                if (std::any_of(found.begin(), found.end(), [period](const auto& shorter) {
                        return period % shorter.first == 0 && shorter.second >= 2 * period;
                    }))
                    continue;
                const int times = alike / period + 1;
                found.emplace_back(period, times * period);
                auto block = known.find({at, period});
                if (block == known.end())
                    block =
                        known.emplace(std::pair(at, period), solved(nodes, at, at + period, depth + 1, known))
                            .first;
                const int letters = block->second.letters + 26 + after(at + period * times);
                if (letters <= choice.letters)
                    choice = {letters, at + period * times,
                              LinePlan{LinePlan::Kind::Repeat, at, period, times, block->second.items}};
            }
        }
        std::vector<LinePlan> items;
        for (int at = from; at < to;) {
            Choice& choice = best[static_cast<std::size_t>(at - from)];
            items.push_back(std::move(choice.item));
            at = choice.next;
        }
        return {std::make_shared<const std::vector<LinePlan>>(std::move(items)), best.front().letters};
    }

    const SectionFacts& m_facts;
    const AlikeRows& m_rows;
    std::vector<int> m_typedUpTo{0}, m_undrawnUpTo{0}; // by row + 1: how many up to and with it
    std::vector<int> m_letters;                        // by row, told alone
};

} // namespace

std::vector<LinePlan> fewestLines(const SectionFacts& facts, const AlikeRows& rows,
                                  std::span<const SectionNode> nodes)
{
    return *Solver(facts, rows).solved(nodes).items;
}

} // namespace shawlwright
