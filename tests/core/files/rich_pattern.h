// A pattern that has everything a pattern file can hold.
#pragma once

#include "core/pattern/pattern.h"

namespace shawlwright::tests {

Pattern richPattern(); // our own invention; nobody should knit it
Row rowOf(std::uint32_t id, Side side, std::vector<Cell> cells, int columns = 24); // worked with yarn 1

std::vector<Cell> cellsOf(const char* key, int times = 1,
                          YarnId yarn = {}); // whole stitches, each of its width

std::vector<Cell> operator+(std::vector<Cell> a, const std::vector<Cell>& b);

} // namespace shawlwright::tests
