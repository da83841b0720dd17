// Where a row repeats itself: all its maximal repetitions of at least two times.
//
// Shape:   tokens are the phrases of a row in the order worked; a run of n alike stitches is one token
//          of n places, anything else one of one place. A repetition is a stretch of places [from, to)
//          in which each place is as the one `period` places on; it may begin and end within runs: "k1,
//          yo, k2, yo, k2, yo, k1" is one from its first place to its last with period 3. It is as long
//          as it can be.
// Units:   places.
// Method:  for each period of tokens up to mostPeriod, one walk along the row compares each token with
//          the one a period on: tokens x mostPeriod comparisons of one number.
#pragma once

#include <cstdint>
#include <vector>

namespace shawlwright {

inline constexpr int mostPeriod = 60; // tokens of one time round

struct Token {
    std::uint32_t kind = 0; // equal kinds are worked alike
    int places = 1;
    bool isRun = false; // may be cut
    bool apart = false; // never part of a found repeat: a place on the needle, a marker placed
    int height = 0;     // repeats in repeats that it holds already
    int begins = 0;     // its first place
};

struct Repetition {
    int from = 0, to = 0;
    int period = 0;
    int tokens = 0; // of one period
    int height = 0; // of its highest token
};

// By tokens of a period, the fewest first; none whose period is itself a repetition.
std::vector<Repetition> repetitions(const std::vector<Token>& tokens);

} // namespace shawlwright
