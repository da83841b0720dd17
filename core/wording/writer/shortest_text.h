// The shortest way to tell a row with brackets: which of its repetitions are told as groups, from where
// and how often, and which places are told one by one.
//
// Shape:   pieces in order, without gaps, from the first place to the last. A piece is a part of one
//          token, or `times` times `period` places, told once by the pieces inside it.
// Units:   places; letters (text_length.h).
// Method:  dynamic programming from the last place to the first. From each place where a token or a
//          repetition begins, the least of: the token there and the best of what follows; each
//          repetition that begins there, as a group of as many times as there are, and the best of what
//          follows. What a group has inside is minimised in the same way, once for each place of its
//          period where it may begin; groups lie at most `deepest` deep. Minimised is the number of
//          letters, four more for each run of one stitch that is cut in two ("k4, yo" is "k3, [k1, yo"
//          only where that saves more). Of equal texts the one with fewer groups, of these one whose
//          groups begin where a run does ("k4, *yo, k2; ..., k6"), then whose group begins first.
// Errors:  where the search would take more than mostSearched steps, what is left is told without
//          groups.
#pragma once

#include "core/wording/writer/repetitions.h"
#include "core/wording/writer/text_length.h"

#include <functional>

namespace shawlwright {

inline constexpr int deepest = 3;           // groups in groups in groups
inline constexpr int mostSearched = 400000; // steps

struct Piece {
    int from = 0, to = 0;
    int times = 1; // 1: part of one token
    int period = 0;
    std::vector<Piece> inside; // of a group: its first time
};

class ShortestText {
public:
    // The letters of so many places of a token.
    using Letters = std::function<int(int token, int places)>;

    // `mayBegin`: no group begins at a place for which it is false.
    ShortestText(const std::vector<Token>& tokens, Letters letters, const std::vector<bool>& mayBegin,
                 const TextLength& length);

    std::vector<Piece> pieces(int depth);

private:
    struct Edge {
        int from, to;
        int repetition; // -1: part of a token
        int cost;
        int times;
    };
    struct Inside {
        int offset, depth;
        int cost;
    };

    int tokenAt(int place) const { return m_tokenAt[static_cast<std::size_t>(place)]; }
    int endOf(int token) const;
    bool cuts(int place) const; // a run of one stitch
    int solve(int from, int to, int depth, std::vector<Piece>* pieces);
    void addGroups(std::vector<Edge>& edges, int from, int to, int depth);
    int insideCost(int repetition, int from, int depth);

    const std::vector<Token>& m_tokens;
    Letters m_letters;
    const std::vector<bool>& m_mayBegin;
    const TextLength& m_length;
    std::vector<int> m_tokenAt; // by place
    std::vector<Repetition> m_repetitions;
    std::vector<std::vector<Inside>> m_inside; // known costs, by repetition
    int m_steps = 0;
};

} // namespace shawlwright
