#include "core/pattern/grey_yarns.h"

#include "core/base/colour.h"

#include <algorithm>
#include <numeric>

namespace shawlwright {

std::vector<Yarn> inGrey(std::vector<Yarn> yarns)
{
    constexpr int darkest = 0x18, lightest = 0xD8;
    std::vector<std::size_t> order(yarns.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return relativeLuminance(yarns[a].colour) < relativeLuminance(yarns[b].colour);
    });
    const int steps = std::max(1, static_cast<int>(yarns.size()) - 1);
    for (std::size_t i = 0; i < order.size(); ++i) {
        const int level = darkest + (lightest - darkest) * static_cast<int>(i) / steps;
        yarns[order[i]].colour = static_cast<std::uint32_t>(level) * 0x010101u;
    }
    return yarns;
}

} // namespace shawlwright
