// Types into the program that Qt loads it into, and writes down what it did before and after each key.
//
// Shape:   set by the environment: TYPIST_LOG is the file of the log, TYPIST_SEED decides what is typed,
// TYPIST_SAVE is one in how many edits is followed by a save (0: none), TYPIST_EDITS after how many edits the
// window is saved and closed. The log has a line per act: a letter, the number of edits so far, and the time
// in nanoseconds of the clock that all processes share: "e" an edit begins, "E" it is done, "s" and "S" a save.
// The n-th edit paints stitchOf(seed, n) at the n-th place along the rows, to and fro, from the lower right.
#pragma once

#include <cstdint>

inline bool purls(std::uint32_t seed, int edit) // else it knits
{
    std::uint32_t x = seed * 2654435761u + static_cast<std::uint32_t>(edit) * 40503u + 12345u;
    x ^= x >> 13;
    x *= 2246822519u;
    x ^= x >> 16;
    return x & 1u;
}
