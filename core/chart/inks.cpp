#include "core/chart/inks.h"

#include "core/base/colour.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::chart {

namespace {

constexpr int inkCount = static_cast<int>(Ink::FaultMark) + 1;

// In the order of Ink. Symbols, boxes and markers are dark enough for a black-and-white printer on their own;
// colour is added to their shapes and never the only difference.
constexpr std::uint32_t colours[2][inkCount] = {
    {0xFFFFFF, 0xCFC9BF, 0x8E867A, 0x16150F, 0xE0DAD1, 0x8E867A, 0x16150F, 0x3A3733, 0x1F4E79, 0x0B5A55,
     0x23211F, 0x5F5A53, 0, 0, 0xB3261E},
    {0x2A2826, 0x4A4642, 0x7A746C, 0xEDE9E3, 0x413D39, 0x8A837A, 0xEDE9E3, 0xC9C2B8, 0x8FB8E0, 0x5CC2BA,
     0xEDE9E3, 0xA9A298, 0, 0, 0xFF8A80},
};

std::uint32_t mixed(std::uint32_t over, std::uint32_t under, double share)
{
    std::uint32_t result = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
        const double a = (over >> shift) & 0xFF, b = (under >> shift) & 0xFF;
        result |= static_cast<std::uint32_t>(std::lround(a * share + b * (1 - share))) << shift;
    }
    return result;
}

} // namespace

std::uint32_t inkColour(Ink ink, std::uint32_t yarn, Paper paper)
{
    const auto& table = colours[static_cast<int>(paper)];
    if (ink == Ink::YarnFull)
        return yarn & 0xFFFFFF;
    if (ink == Ink::YarnTint)
        return mixed(yarn, table[static_cast<int>(Ink::Paper)], 0.2);
    return table[static_cast<int>(ink)];
}

double contrast(std::uint32_t a, std::uint32_t b)
{
    return contrastRatio(a, b);
}

} // namespace shawlwright::chart
