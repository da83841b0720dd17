#include "core/base/colour.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace shawlwright {
namespace {

using Linear = std::array<double, 3>;

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

Linear linearOf(std::uint32_t colour)
{
    const auto channel = [colour](int shift) { return linear(((colour >> shift) & 0xFF) / 255.0); };
    return {channel(16), channel(8), channel(0)};
}

std::uint32_t encoded(double value)
{
    const double inside = std::clamp(value, 0.0, 1.0);
    const double channel = inside <= 0.0031308 ? 12.92 * inside : 1.055 * std::pow(inside, 1 / 2.4) - 0.055;
    return static_cast<std::uint32_t>(std::lround(255 * channel));
}

double degrees(double radians)
{
    return radians * 180 / std::numbers::pi;
}

double radians(double degrees)
{
    return degrees * std::numbers::pi / 180;
}

double hue(double b, double a)
{
    if (a == 0 && b == 0)
        return 0;
    const double angle = degrees(std::atan2(b, a));
    return angle < 0 ? angle + 360 : angle;
}

double seventh(double value)
{
    const double power = std::pow(value, 7);
    return std::sqrt(power / (power + std::pow(25.0, 7)));
}

} // namespace

double relativeLuminance(std::uint32_t colour)
{
    const Linear rgb = linearOf(colour);
    return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
}

double contrastRatio(std::uint32_t a, std::uint32_t b)
{
    const double one = relativeLuminance(a), two = relativeLuminance(b);
    return (std::max(one, two) + 0.05) / (std::min(one, two) + 0.05);
}

std::uint32_t seenWith(ColourVision vision, std::uint32_t colour)
{
    static constexpr double matrices[3][3][3] = {
        {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}},
        {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}},
        {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};
    if (vision == ColourVision::Full)
        return colour;
    const auto& matrix = matrices[static_cast<int>(vision) - 1];
    const Linear rgb = linearOf(colour);
    std::uint32_t seen = 0;
    for (const auto& row : matrix)
        seen = (seen << 8) | encoded(row[0] * rgb[0] + row[1] * rgb[1] + row[2] * rgb[2]);
    return seen;
}

Lab labOf(std::uint32_t colour)
{
    const Linear rgb = linearOf(colour);
    const double x = (0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.9505;
    const double y = 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
    const double z = (0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.0890;
    const auto f = [](double t) {
        constexpr double edge = 6.0 / 29;
        return t > edge * edge * edge ? std::cbrt(t) : t / (3 * edge * edge) + 4.0 / 29;
    };
    return {116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))};
}

double colourDifference(const Lab& one, const Lab& two)
{
    const double chroma = (std::hypot(one.a, one.b) + std::hypot(two.a, two.b)) / 2;
    const double g = 0.5 * (1 - seventh(chroma));
    const double a1 = (1 + g) * one.a, a2 = (1 + g) * two.a;
    const double c1 = std::hypot(a1, one.b), c2 = std::hypot(a2, two.b);
    const double h1 = hue(one.b, a1), h2 = hue(two.b, a2);
    const bool grey = c1 * c2 == 0;
    double turn = 0; // of the hue
    if (!grey) {
        turn = h2 - h1;
        turn += turn > 180 ? -360 : turn < -180 ? 360 : 0;
    }
    const double dl = two.l - one.l, dc = c2 - c1;
    const double dh = 2 * std::sqrt(c1 * c2) * std::sin(radians(turn) / 2);
    const double l = (one.l + two.l) / 2, c = (c1 + c2) / 2;
    double h = h1 + h2;
    if (!grey)
        h = std::abs(h1 - h2) <= 180 ? h / 2 : h < 360 ? (h + 360) / 2 : (h - 360) / 2;
    const double t = 1 - 0.17 * std::cos(radians(h - 30)) + 0.24 * std::cos(radians(2 * h)) +
                     0.32 * std::cos(radians(3 * h + 6)) - 0.20 * std::cos(radians(4 * h - 63));
    const double rotation = 30 * std::exp(-std::pow((h - 275) / 25, 2));
    const double sl = 1 + 0.015 * std::pow(l - 50, 2) / std::sqrt(20 + std::pow(l - 50, 2));
    const double sc = 1 + 0.045 * c, sh = 1 + 0.015 * c * t;
    const double rt = -std::sin(radians(2 * rotation)) * 2 * seventh(c);
    return std::sqrt(std::pow(dl / sl, 2) + std::pow(dc / sc, 2) + std::pow(dh / sh, 2) + rt * (dc / sc) * (dh / sh));
}

double colourDifference(std::uint32_t one, std::uint32_t two)
{
    return colourDifference(labOf(one), labOf(two));
}

} // namespace shawlwright
