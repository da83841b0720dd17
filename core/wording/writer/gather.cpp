// Rows that say the same, told together.
//
// A section is a list of nodes, a row or a row repeat of the designer's with nodes of its own. Two nodes are
// alike where the same words tell them. By dynamic programming over the list the fewest letters are found: a
// node alone, a run of rows alike ("Rows 3-8: knit."), or a block and how often it is worked again ("Rep Rows
// 3-6 nine more times."), the block gathered within itself, three deep. Then rows on one side that stay alike
// while those between differ are told where the first of them stands ("Row 4 and all following WS rows:
// purl.").
//
// A swallowed row must be found by counting from the rows that are told, so no label in it may be typed.

#include "core/wording/writer/gather.h"

#include "core/base/text.h"
#include "core/wording/writer/quantity_words.h"
#include "core/wording/writer/row_counts.h"
#include "core/wording/writer/row_labels.h"

#include <algorithm>
#include <unordered_map>

namespace shawlwright {
namespace {

constexpr int longestBlock = 400; // rows
constexpr int deepest = 3;        // found repeats within found repeats
constexpr int fewRows = 4;        // a shorter section needs no line that says what it comes to
constexpr int mostListed = 3;     // "Rows 2, 4 and 6"

struct Node {
    int first = 0, last = 0; // rows
    int key = 0;             // the same for nodes that are alike
    int repeat = -1;         // the designer's
    std::vector<Node> inside;
};

struct Item {
    enum class Kind { Row, Run, Repeat, Own } kind = Kind::Row;
    int at = 0;              // node
    int length = 1;          // Run: rows; Repeat: nodes of the block
    int times = 1;           // Repeat: in all
    std::vector<Item> block; // Repeat and Own
};
struct Solved {
    std::vector<Item> items;
    int letters = 0;
};

class Gatherer {
public:
    Gatherer(const Pattern& pattern, const Runs& runs, int section, const Style& style,
             std::span<const WrittenRow> rows)
        : m_facts(pattern, runs, section), m_style(style), m_counts(runs, pattern.head, style),
          m_labels(m_facts, style)
    {
        for (const WrittenRow& row : rows)
            (row.repeat ? m_repeats : m_rows).push_back(&row);
    }

    std::vector<WrittenLine> lines()
    {
        if (static_cast<int>(m_rows.size()) != m_facts.rows())
            return {};
        numberRows();
        if (m_style.gathering == Gathering::RowByRow || !placeRepeats())
            asTheyAre();
        else {
            const std::vector<Node> nodes = nodesOf(0, m_facts.rows() - 1, 0);
            emit(nodes, solved(nodes), {0});
            gatherSides();
        }
        return told();
    }

private:
    // A line to be: what it tells before words are joined.
    struct Draft {
        WrittenLine::Kind kind = WrittenLine::Kind::Rows;
        LabelledRows label;
        std::vector<int> rows;           // all that it speaks of
        const WrittenRow* own = nullptr; // a row repeat of the designer's
        bool ownCount = true;
        int first = 0, last = 0, times = 1; // of a found repeat
        RunLines ends;
        bool dropped = false;
    };

    // --- what is alike

    void numberRows()
    {
        std::unordered_map<std::string, int> words, whole;
        for (int at = 0; at < m_facts.rows(); ++at) {
            const WrittenRow& written = *m_rows[static_cast<std::size_t>(at)];
            const Row& row = m_facts.row(at);
            std::string key = withoutCount(written) + "\n" + written.note + "\n";
            key += m_facts.round(at) ? 'o' : '-';
            if (row.stated)
                key += "=" + inWords(*row.stated);
            else if (m_style.counts != CountsShown::Never) {
                const auto more = m_counts.change(m_facts.lines(at));
                key += more ? "+" + inWords(*more) : "?" + toText(at);
            }
            m_words.push_back(words.emplace(key, static_cast<int>(words.size())).first->second);
            key += row.side == Side::RS ? "r" : "w";
            key += toText(row.yarn.value);
            m_alike.push_back(whole.emplace(key, static_cast<int>(whole.size())).first->second);
        }
    }

    // The full stop goes where a dash leads to a count.
    static std::string withoutCount(const WrittenRow& written)
    {
        return written.text.ends_with('.') ? written.text.substr(0, written.text.size() - 1) : written.text;
    }

    bool typed(int row) const { return !m_facts.row(row).label.empty(); }
    // The row's number follows from the one before it.
    bool counted(int row) const
    {
        const auto before = m_facts.number(row - 1);
        const auto here = m_facts.number(row);
        return !typed(row) && before && here && *here == *before + 1;
    }

    // Which written repeat is which; false where repeats cross.
    bool placeRepeats()
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
                const bool within =
                    repeats[a].first <= repeats[b].first && repeats[b].last <= repeats[a].last;
                if (!apart && !within)
                    return false;
            }
        return true;
    }

    std::vector<Node> nodesOf(int first, int last, std::size_t from)
    {
        std::vector<Node> nodes;
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
            Node node{row, repeats[r].last, 0, static_cast<int>(r), nodesOf(row, repeats[r].last, r + 1)};
            std::string key = inWords(*repeats[r].times) + ":";
            for (const Node& inside : node.inside)
                key += toText(inside.key) + " ";
            // Keys of repeats are apart from those of rows.
            node.key = -1 - m_repeatKeys.emplace(key, static_cast<int>(m_repeatKeys.size())).first->second;
            row = node.last + 1;
            nodes.push_back(std::move(node));
        }
        return nodes;
    }

    // --- the fewest letters

    int lettersOf(int row) const
    {
        const WrittenRow& written = *m_rows[static_cast<std::size_t>(row)];
        return static_cast<int>(written.label.size() + written.text.size() + written.count.size() +
                                written.note.size()) +
               2;
    }

    // No label is typed, so each follows from the one before.
    bool countable(const Node& node) const
    {
        for (int row = node.first; row <= node.last; ++row)
            if (typed(row))
                return false;
        return true;
    }

    // Labels within go up one by one, and no slide joins its ends to other rows.
    bool isBlock(const std::vector<Node>& nodes, int from, int to) const
    {
        const int first = nodes[static_cast<std::size_t>(from)].first;
        const int last = nodes[static_cast<std::size_t>(to) - 1].last;
        const auto slides = [this](int row) { return m_facts.row(row).finish.kind == FinishKind::Slide; };
        if (first == last || slides(last) || (first > 0 && slides(first - 1)))
            return false;
        for (int row = first + 1; row <= last; ++row)
            if (typed(row))
                return false;
        return true;
    }

    // The row goes on with the words of the row before it.
    bool goesOn(const Node& before, const Node& node) const
    {
        return node.repeat < 0 && before.repeat < 0 && counted(node.first) &&
               !m_facts.surprises(node.first) &&
               m_words[static_cast<std::size_t>(node.first)] ==
                   m_words[static_cast<std::size_t>(before.first)];
    }

    Solved solved(const std::vector<Node>& nodes)
    {
        std::map<std::pair<int, int>, Solved> known;
        Solved all = solved(nodes, 0, static_cast<int>(nodes.size()), 0, known);
        return all;
    }

    Solved solved(const std::vector<Node>& nodes, int from, int to, int depth,
                  std::map<std::pair<int, int>, Solved>& known)
    {
        struct Choice {
            int letters = 0;
            int next = 0;
            Item item;
        };
        const auto find = [&](int i) -> const Node& { return nodes[static_cast<std::size_t>(i)]; };
        std::vector<Choice> best(static_cast<std::size_t>(to - from) + 1);
        const int longest = depth < deepest ? std::min(longestBlock, (to - from) / 2) : 0;
        // By period: how many nodes from here on are alike those a period on.
        std::vector<int> same(static_cast<std::size_t>(longest) + 1);
        int run = 1;
        for (int at = to; at-- > from;) {
            const auto after = [&](int next) { return best[static_cast<std::size_t>(next - from)].letters; };
            Choice& choice = best[static_cast<std::size_t>(at - from)];
            const Node& node = find(at);
            run = at + 1 < to && goesOn(node, find(at + 1)) ? run + 1 : 1;
            if (node.repeat >= 0) {
                Solved inside = solved(node.inside);
                choice = {inside.letters + 30 + after(at + 1), at + 1,
                          Item{Item::Kind::Own, at, 1, 1, std::move(inside.items)}};
            } else {
                choice = {lettersOf(node.first) + after(at + 1), at + 1, Item{Item::Kind::Row, at, 1, 1, {}}};
                for (int length = run; length >= 2; length = length > 8 ? 8 : length - 1) {
                    const int letters = lettersOf(node.first) + 4 + after(at + length);
                    if (letters <= choice.letters)
                        choice = {letters, at + length, Item{Item::Kind::Run, at, length, 1, {}}};
                }
            }
            std::vector<std::pair<int, int>> found; // periods with the nodes they go on for
            for (int period = 1; period <= longest && at + period < to; ++period) {
                int& alike = same[static_cast<std::size_t>(period)];
                const Node& other = find(at + period);
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
                              Item{Item::Kind::Repeat, at, period, times, block->second.items}};
            }
        }
        Solved solution;
        solution.letters = best.front().letters;
        for (int at = from; at < to;) {
            Choice& choice = best[static_cast<std::size_t>(at - from)];
            solution.items.push_back(std::move(choice.item));
            at = choice.next;
        }
        return solution;
    }

    // --- lines to be

    // `shifts`: how far on the rows stand that these words tell too.
    void emit(const std::vector<Node>& nodes, const Solved& what, const std::vector<int>& shifts)
    {
        emit(nodes, what.items, shifts);
    }

    void emit(const std::vector<Node>& nodes, const std::vector<Item>& items, const std::vector<int>& shifts)
    {
        for (const Item& item : items) {
            const Node& node = nodes[static_cast<std::size_t>(item.at)];
            switch (item.kind) {
            case Item::Kind::Row:
            case Item::Kind::Run: {
                Draft draft;
                for (int i = 0; i < item.length; ++i)
                    draft.label.rows.push_back(node.first + i);
                draft.label.form = item.length > 1 ? LabelledRows::Form::Run : LabelledRows::Form::List;
                draft.rows = shifted(draft.label.rows, shifts);
                m_drafts.push_back(std::move(draft));
                break;
            }
            case Item::Kind::Own: {
                emit(node.inside, item.block, shifts);
                Draft draft;
                draft.kind = WrittenLine::Kind::Repeat;
                draft.own = m_repeats[m_place[static_cast<std::size_t>(node.repeat)]];
                draft.ownCount = sameCounts(node, shifts);
                draft.first = node.first;
                draft.last = node.last;
                m_drafts.push_back(std::move(draft));
                break;
            }
            case Item::Kind::Repeat:
                emitRepeat(nodes, item, shifts);
                break;
            }
        }
    }

    void emitRepeat(const std::vector<Node>& nodes, const Item& item, const std::vector<int>& shifts)
    {
        const int first = nodes[static_cast<std::size_t>(item.at)].first;
        const int last = nodes[static_cast<std::size_t>(item.at + item.length) - 1].last;
        const int rows = last - first + 1;
        std::vector<int> further;
        for (const int shift : shifts)
            for (int n = 0; n < item.times; ++n)
                further.push_back(shift + n * rows);
        emit(nodes, item.block, further);
        Draft draft;
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
    bool sameCounts(const Node& node, const std::vector<int>& shifts) const
    {
        const auto& repeats = m_facts.repeats();
        const std::string& count = m_repeats[m_place[static_cast<std::size_t>(node.repeat)]]->count;
        for (const int shift : shifts)
            for (std::size_t r = 0; r < repeats.size(); ++r)
                if (repeats[r].first == node.first + shift && repeats[r].last == node.last + shift &&
                    repeats[r].times->values ==
                        repeats[static_cast<std::size_t>(node.repeat)].times->values &&
                    m_repeats[m_place[r]]->count != count)
                    return false;
        return true;
    }

    void asTheyAre()
    {
        const auto& repeats = m_facts.repeats();
        std::size_t next = 0;
        for (int row = 0; row < m_facts.rows(); ++row) {
            Draft draft;
            draft.label.rows = draft.rows = {row};
            m_drafts.push_back(std::move(draft));
            for (std::size_t r = repeats.size(); r-- > 0;)
                if (repeats[r].last == row && next < m_repeats.size()) {
                    Draft again;
                    again.kind = WrittenLine::Kind::Repeat;
                    again.own = m_repeats[next++];
                    again.first = repeats[r].first;
                    again.last = row;
                    m_drafts.push_back(std::move(again));
                }
        }
    }

    // --- "Row 4 and all following WS rows"

    bool alternates(int row) const
    {
        const bool rounds = m_facts.round(row) && m_facts.round(row - 1);
        return counted(row) && !m_facts.surprises(row) && m_facts.round(row) == m_facts.round(row - 1) &&
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
            if (m_drafts[at].dropped || !m_facts.number(row))
                continue;
            int last = row;
            while (last + 2 < m_facts.rows() && alternates(last + 1) && alternates(last + 2) &&
                   m_words[static_cast<std::size_t>(last) + 2] == m_words[static_cast<std::size_t>(row)])
                last += 2;
            std::vector<int> here{row};
            for (int other = row + 2; other <= last; other += 2)
                if (const auto found = alone.find(other);
                    found != alone.end() && !m_drafts[found->second].dropped && !mustStay(found->second))
                    here.push_back(other);
            if (here.size() < 2)
                continue;
            Draft& draft = m_drafts[at];
            const bool listed = static_cast<int>(here.size()) <= mostListed && isList(here, alone);
            if (!listed && row <= allUntil)
                continue;
            draft.label.rows = here;
            if (!listed) {
                const int end = m_facts.rows() - 1;
                const bool toEnd =
                    last == end || (last == end - 1 && m_facts.row(end).finish.kind == FinishKind::BindOff);
                draft.label.form = toEnd ? LabelledRows::Form::Following : LabelledRows::Form::UpTo;
                draft.label.rows = {row, last};
                allUntil = last;
            }
            for (std::size_t i = 1; i < here.size(); ++i) {
                Draft& other = m_drafts[alone[here[i]]];
                other.dropped = true;
                draft.rows.insert(draft.rows.end(), other.rows.begin(), other.rows.end());
            }
            std::sort(draft.rows.begin(), draft.rows.end());
        }
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

    // --- words

    std::vector<WrittenLine> told()
    {
        std::vector<WrittenLine> out;
        Reached said;
        Reached before; // told last
        std::size_t toldAt = 0;
        for (const Draft& draft : m_drafts) {
            if (draft.dropped)
                continue;
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

    WrittenLine rowsLine(const Draft& draft, Reached& said) const
    {
        const int first = draft.label.rows.front();
        const WrittenRow& written = *m_rows[static_cast<std::size_t>(first)];
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
            line.count = m_counts.ofRow(m_facts.row(first), lines, each);
            line.text =
                withoutCount(written) + (written.text.ends_with('.') || !written.count.empty() ? "." : "");
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

    WrittenLine ownRepeat(const Draft& draft, Reached& said) const
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

    WrittenLine foundRepeat(const Draft& draft, Reached& said) const
    {
        WrittenLine line;
        line.kind = WrittenLine::Kind::Repeat;
        line.rows = draft.rows;
        line.firstRow = draft.first;
        line.lastRow = draft.last;
        bool holds = false;
        for (const Draft& other : m_drafts) {
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
    Reached afterRun(const Draft& draft) const
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
    std::vector<const WrittenRow*> m_rows, m_repeats;
    std::vector<std::size_t> m_place;  // of the facts' repeats in m_repeats
    std::vector<int> m_words, m_alike; // by row: the same words; on the same side in the same yarn too
    std::unordered_map<std::string, int> m_repeatKeys;
    std::vector<Draft> m_drafts;
};

} // namespace

std::vector<WrittenLine> gathered(const Pattern& pattern, const Runs& runs, int section, const Style& style,
                                  std::span<const WrittenRow> rows)
{
    return Gatherer(pattern, runs, section, style, rows).lines();
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
