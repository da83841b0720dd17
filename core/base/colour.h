// How far two colours are apart, for eyes that see all of them and for those that don't.
//
// Units:   0xRRGGBB, sRGB. Luminance 0 (black) to 1 (white); contrast 1 to 21; colour difference CIEDE2000, where about
//          1 can just be seen side by side.
// Source:  luminance and contrast: WCAG 2.2, "relative luminance" and "contrast ratio".
//          Colour vision deficiencies: Machado, Oliveira and Fernandes, "A physiologically-based model for simulation of
//          color vision deficiency", IEEE TVCG 15(6), 2009, the matrices for severity 1.0, applied to linear RGB; their
//          numbers are from memory.
//          CIELAB: CIE 15, white D65; sRGB: IEC 61966-2-1. CIEDE2000: Sharma, Wu and Dalal, "The CIEDE2000
//          color-difference formula", Color Research and Application 30(1), 2005.
#pragma once

#include <cstdint>

namespace shawlwright {

double relativeLuminance(std::uint32_t colour);
double contrastRatio(std::uint32_t a, std::uint32_t b);

enum class ColourVision { Full, NoRed, NoGreen, NoBlue }; // protanopia, deuteranopia, tritanopia
std::uint32_t seenWith(ColourVision vision, std::uint32_t colour);

struct Lab {
    double l = 0, a = 0, b = 0;
};
Lab labOf(std::uint32_t colour);
double colourDifference(const Lab& one, const Lab& two); // CIEDE2000
double colourDifference(std::uint32_t one, std::uint32_t two);

} // namespace shawlwright
