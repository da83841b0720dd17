#include "core/wording/writer/shortest_text.h"

#include <algorithm>

namespace shawlwright {
namespace {

// Letters first, then groups, then groups that begin within a run.
constexpr int letter = 8192;
constexpr int oneGroup = 32;
constexpr int beginsWithin = 1;
constexpr int cutRun = 4 * letter; // "k4, yo" rather than "k3, [k1, yo ..."

} // namespace

ShortestText::ShortestText(const std::vector<Token>& tokens, Letters letters,
                           const std::vector<bool>& mayBegin, const TextLength& length)
    : m_tokens(tokens), m_letters(std::move(letters)), m_mayBegin(mayBegin), m_length(length),
      m_repetitions(repetitions(tokens)), m_inside(m_repetitions.size())
{
    for (std::size_t i = 0; i < tokens.size(); ++i)
        m_tokenAt.insert(m_tokenAt.end(), static_cast<std::size_t>(tokens[i].places), static_cast<int>(i));
}

int ShortestText::endOf(int token) const
{
    const Token& at = m_tokens[static_cast<std::size_t>(token)];
    return at.begins + at.places;
}

bool ShortestText::cuts(int place) const
{
    return m_tokens[static_cast<std::size_t>(tokenAt(place))].begins != place;
}

std::vector<Piece> ShortestText::pieces(int depth)
{
    std::vector<Piece> all;
    solve(0, static_cast<int>(m_tokenAt.size()), depth, &all);
    return all;
}

int ShortestText::insideCost(int repetition, int from, int depth)
{
    const Repetition& at = m_repetitions[static_cast<std::size_t>(repetition)];
    auto& known = m_inside[static_cast<std::size_t>(repetition)];
    const int offset = (from - at.from) % at.period;
    for (const Inside& one : known)
        if (one.offset == offset && one.depth == depth)
            return one.cost;
    const int cost = solve(from, from + at.period, depth, nullptr);
    known.push_back({offset, depth, cost});
    return cost;
}

// The groups that lie within [from, to). Starts in the first period are enough: a later one only has fewer
// times.
void ShortestText::addGroups(std::vector<Edge>& edges, int from, int to, int depth)
{
    const int tokens = from < to ? tokenAt(to - 1) - tokenAt(from) + 1 : 0;
    for (std::size_t r = 0; r < m_repetitions.size() && m_steps < mostSearched; ++r) {
        const Repetition at = m_repetitions[r];
        if (2 * at.tokens - 1 > tokens)
            break; // those that follow have more
        ++m_steps;
        const int first = std::max(at.from, from);
        const int last = std::min(at.to, to);
        if (last - first < 2 * at.period || at.height + 1 > depth)
            continue;
        for (int start = first; start < first + at.period; start = endOf(tokenAt(start))) {
            const int times = (last - start) / at.period;
            if (times < 2)
                break;
            if (!m_mayBegin[static_cast<std::size_t>(start)])
                continue;
            const int inside = insideCost(static_cast<int>(r), start, depth - 1);
            const int seams = cuts(start + at.period) ? cutRun : 0;
            const int begins = cuts(start) ? beginsWithin : 0;
            edges.push_back({start, start + times * at.period, static_cast<int>(r),
                             inside + seams + begins + letter * m_length.group(0, times) + oneGroup, times});
        }
    }
}

int ShortestText::solve(int from, int to, int depth, std::vector<Piece>* pieces)
{
    std::vector<Edge> edges;
    if (depth > 0)
        addGroups(edges, from, to, depth);
    // Where something may begin or end, and what it costs from there on.
    struct Stop {
        int at;
        bool begins; // a group does
        int cost;
        Edge best;
    };
    std::vector<Stop> places;
    for (int at = from; at < to; at = endOf(tokenAt(at)))
        places.push_back({at, false, 0, {}});
    for (const Edge& edge : edges) {
        places.push_back({edge.from, true, 0, {}});
        places.push_back({edge.to, false, 0, {}});
    }
    std::sort(places.begin(), places.end(), [](const Stop& a, const Stop& b) {
        return a.at != b.at ? a.at < b.at : a.begins && !b.begins;
    });
    places.erase(
        std::unique(places.begin(), places.end(), [](const Stop& a, const Stop& b) { return a.at == b.at; }),
        places.end());
    if (places.empty() || places.back().at != to)
        places.push_back({to, false, 0, {}});
    places.back().cost = -letter * TextLength::comma;
    std::stable_sort(edges.begin(), edges.end(),
                     [](const Edge& a, const Edge& b) { return a.from > b.from; });

    std::size_t nextEdge = 0;
    const auto costAt = [&](int at) {
        return std::lower_bound(places.begin(), places.end(), at,
                                [](const Stop& place, int where) { return place.at < where; })
            ->cost;
    };
    for (std::size_t i = places.size() - 1; i-- > 0;) {
        Stop& here = places[i];
        here.cost = -1;
        const auto consider = [&](const Edge& edge, int rest) {
            const int cost =
                edge.cost + letter * TextLength::comma + (edge.to < to && cuts(edge.to) ? cutRun : 0) + rest;
            if (here.cost < 0 || cost < here.cost) {
                here.cost = cost;
                here.best = edge;
            }
        };
        for (; nextEdge < edges.size() && edges[nextEdge].from == here.at; ++nextEdge)
            consider(edges[nextEdge], costAt(edges[nextEdge].to));
        const int token = tokenAt(here.at);
        const int end = std::min(endOf(token), to);
        for (std::size_t next = i + 1; places[next].at <= end; ++next) {
            ++m_steps;
            if (places[next].at == end || places[next].begins) {
                const int cost = letter * m_letters(token, places[next].at - here.at);
                consider({here.at, places[next].at, -1, cost, 1}, places[next].cost);
            }
            if (places[next].at == end)
                break;
        }
    }
    const int cost = places.front().cost;
    if (!pieces)
        return cost;
    for (std::size_t i = 0; i + 1 < places.size();) {
        const Edge& edge = places[i].best;
        Piece piece{edge.from, edge.to, edge.times, 0, {}};
        if (edge.repetition >= 0) {
            piece.period = m_repetitions[static_cast<std::size_t>(edge.repetition)].period;
            solve(edge.from, edge.from + piece.period, depth - 1, &piece.inside);
        }
        pieces->push_back(std::move(piece));
        while (places[i].at != edge.to)
            ++i;
    }
    return cost;
}

} // namespace shawlwright
