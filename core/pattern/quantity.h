// A number, or one number per size of the pattern.
//
// Shape:   one value (the same for every size), or as many as the pattern has sizes, in their order.
// Errors:  a size beyond the list gives the last value; a pattern's file is refused where the lengths disagree.
#pragma once

#include <vector>

namespace shawlwright {

struct Quantity {
    std::vector<int> values{0};

    Quantity() = default;
    Quantity(int same) : values{same} {}
    explicit Quantity(std::vector<int> perSize) : values(std::move(perSize)) {}

    bool single() const { return values.size() == 1; }
    int at(int size) const
    {
        const int last = static_cast<int>(values.size()) - 1;
        return values[static_cast<std::size_t>(size < 0 ? 0 : size > last ? last : size)];
    }
    bool operator==(const Quantity&) const = default;
};

} // namespace shawlwright
