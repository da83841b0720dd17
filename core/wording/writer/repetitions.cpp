#include "core/wording/writer/repetitions.h"

#include <algorithm>

namespace shawlwright {
namespace {

constexpr std::uint64_t never = ~std::uint64_t{0};

std::uint64_t keyOf(const Token& token)
{
    return (static_cast<std::uint64_t>(token.kind) << 32U) | static_cast<std::uint32_t>(token.places);
}

class Search {
public:
    explicit Search(const std::vector<Token>& tokens)
        : m_tokens(tokens), m_count(static_cast<int>(tokens.size()))
    {
        for (const Token& token : tokens)
            m_keys.push_back(token.apart ? never : keyOf(token));
    }

    std::vector<Repetition> take()
    {
        for (int period = 2; period <= std::min(mostPeriod, m_count / 2 + 1); ++period)
            for (int i = 0; i + period < m_count; ++i) {
                const int first = i;
                while (i + period < m_count && same(i, i + period))
                    ++i;
                if (i - first >= period - 1)
                    add(first, i, period);
            }
        return std::move(m_found);
    }

private:
    bool same(int a, int b) const
    {
        const std::uint64_t key = m_keys[static_cast<std::size_t>(a)];
        return key != never && key == m_keys[static_cast<std::size_t>(b)];
    }
    const Token& token(int i) const { return m_tokens[static_cast<std::size_t>(i)]; }
    int beginOf(int i) const
    {
        return i < m_count ? token(i).begins : m_tokens.back().begins + m_tokens.back().places;
    }

    // What two runs of one stitch have in common at their ends.
    int shared(int a, int b) const
    {
        if (a < 0 || b >= m_count || !token(a).isRun || !token(b).isRun || token(a).kind != token(b).kind)
            return 0;
        return std::min(token(a).places, token(b).places);
    }

    // Tokens [first, last) are each as the one a period on.
    void add(int first, int last, int period)
    {
        const int length = beginOf(first + period) - beginOf(first);
        const int from = beginOf(first) - shared(first - 1, first - 1 + period);
        const int to = beginOf(last + period) + shared(last, last + period);
        if (to - from < 2 * length || repeatsItself(first, period))
            return;
        int height = 0;
        for (int i = first; i < first + period; ++i)
            height = std::max(height, token(i).height);
        m_found.push_back({from, to, length, period, height});
    }

    bool repeatsItself(int first, int period) const
    {
        for (int part = 1; part <= period / 2; ++part) {
            if (period % part != 0)
                continue;
            int i = first;
            while (i + part < first + period && same(i, i + part))
                ++i;
            if (i + part == first + period)
                return true;
        }
        return false;
    }

    const std::vector<Token>& m_tokens;
    int m_count;
    std::vector<std::uint64_t> m_keys;
    std::vector<Repetition> m_found;
};

} // namespace

std::vector<Repetition> repetitions(const std::vector<Token>& tokens)
{
    return Search(tokens).take();
}

} // namespace shawlwright
