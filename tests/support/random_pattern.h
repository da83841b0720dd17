// Random patterns and edits for the laws: every one can be named by its seed.
#pragma once

#include "core/edits/edit.h"

#include <random>

namespace shawlwright::tests {

struct RandomWishes {
    int sections = 2;
    int rows = 12;
    int columns = 10;
    bool oneSize = false;
};

// A pattern of any shape the model can hold: boxes, brackets, markers, turns of every method, slides, slips, yarns,
// versions, sizes. Its shape is sound (no faultsOf); whether it comes out on the needle is left to chance.
Pattern randomPattern(std::mt19937& random, const RandomWishes& wishes = {});

// An edit a person could make; may be a fault or empty, as it may for a person.
Result<Edit> randomEdit(std::mt19937& random, const Pattern& pattern);

} // namespace shawlwright::tests
