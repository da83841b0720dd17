// Published worked values of the colour formulas.

#include "core/base/colour.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace shawlwright;

// WCAG 2.2: black on white is 21 : 1. The two greys on either side of 4.5 : 1 on white, #767676 and #777777, are common
// knowledge of the trade; their ratios from memory.
TEST(Colour, ContrastOfWcag)
{
    EXPECT_DOUBLE_EQ(contrastRatio(0x000000, 0xFFFFFF), 21);
    EXPECT_DOUBLE_EQ(contrastRatio(0x336699, 0x336699), 1);
    EXPECT_NEAR(contrastRatio(0x767676, 0xFFFFFF), 4.54, 0.005);
    EXPECT_NEAR(contrastRatio(0x777777, 0xFFFFFF), 4.48, 0.005);
    EXPECT_NEAR(contrastRatio(0xFFFFFF, 0xFF0000), 4.00, 0.005);
    EXPECT_NEAR(relativeLuminance(0x00FF00), 0.7152, 1e-6);
}

// Sharma, Wu and Dalal 2005, table 1: the 34 pairs that implementations are tested with. From memory; that the formula
// gives each of them to four places bears them out.
TEST(Colour, DifferenceOfSharmaWuAndDalal)
{
    struct Pair {
        Lab one, two;
        double difference;
    };
    const Pair pairs[] = {
        {{50, 2.6772, -79.7751}, {50, 0, -82.7485}, 2.0425},
        {{50, 3.1571, -77.2803}, {50, 0, -82.7485}, 2.8615},
        {{50, 2.8361, -74.0200}, {50, 0, -82.7485}, 3.4412},
        {{50, -1.3802, -84.2814}, {50, 0, -82.7485}, 1.0000},
        {{50, -1.1848, -84.8006}, {50, 0, -82.7485}, 1.0000},
        {{50, -0.9009, -85.5211}, {50, 0, -82.7485}, 1.0000},
        {{50, 0, 0}, {50, -1, 2}, 2.3669},
        {{50, -1, 2}, {50, 0, 0}, 2.3669},
        {{50, 2.4900, -0.0010}, {50, -2.4900, 0.0009}, 7.1792},
        {{50, 2.4900, -0.0010}, {50, -2.4900, 0.0010}, 7.1792},
        {{50, 2.4900, -0.0010}, {50, -2.4900, 0.0011}, 7.2195},
        {{50, 2.4900, -0.0010}, {50, -2.4900, 0.0012}, 7.2195},
        {{50, -0.0010, 2.4900}, {50, 0.0009, -2.4900}, 4.8045},
        {{50, -0.0010, 2.4900}, {50, 0.0010, -2.4900}, 4.8045},
        {{50, -0.0010, 2.4900}, {50, 0.0011, -2.4900}, 4.7461},
        {{50, 2.5, 0}, {50, 0, -2.5}, 4.3065},
        {{50, 2.5, 0}, {73, 25, -18}, 27.1492},
        {{50, 2.5, 0}, {61, -5, 29}, 22.8977},
        {{50, 2.5, 0}, {56, -27, -3}, 31.9030},
        {{50, 2.5, 0}, {58, 24, 15}, 19.4535},
        {{50, 2.5, 0}, {50, 3.1736, 0.5854}, 1.0000},
        {{50, 2.5, 0}, {50, 3.2972, 0}, 1.0000},
        {{50, 2.5, 0}, {50, 1.8634, 0.5757}, 1.0000},
        {{50, 2.5, 0}, {50, 3.2592, 0.3350}, 1.0000},
        {{60.2574, -34.0099, 36.2677}, {60.4626, -34.1751, 39.4387}, 1.2644},
        {{63.0109, -31.0961, -5.8663}, {62.8187, -29.7946, -4.0864}, 1.2630},
        {{61.2901, 3.7196, -5.3901}, {61.4292, 2.2480, -4.9620}, 1.8731},
        {{35.0831, -44.1164, 3.7933}, {35.0232, -40.0716, 1.5901}, 1.8645},
        {{22.7233, 20.0904, -46.6940}, {23.0331, 14.9730, -42.5619}, 2.0373},
        {{36.4612, 47.8580, 18.3852}, {36.2715, 50.5065, 21.2231}, 1.4146},
        {{90.8027, -2.0831, 1.4410}, {91.1528, -1.6435, 0.0447}, 1.4441},
        {{90.9257, -0.5406, -0.9208}, {88.6381, -0.8985, -0.7239}, 1.5381},
        {{6.7747, -0.2908, -2.4247}, {5.8714, -0.0985, -2.2286}, 0.6377},
        {{2.0776, 0.0795, -1.1350}, {0.9033, -0.0636, -0.5514}, 0.9082},
    };
    int number = 0;
    for (const Pair& pair : pairs) {
        EXPECT_NEAR(colourDifference(pair.one, pair.two), pair.difference, 0.00006) << "pair " << ++number;
        EXPECT_NEAR(colourDifference(pair.two, pair.one), pair.difference, 0.00006) << "pair " << number;
    }
}

// IEC 61966-2-1 and CIE 15: white and black, and red within the roundings of published tables (53.2, 80.1, 67.2).
TEST(Colour, LabOfThePrimaries)
{
    EXPECT_NEAR(labOf(0xFFFFFF).l, 100, 0.001);
    EXPECT_NEAR(labOf(0x000000).l, 0, 0.001);
    EXPECT_NEAR(labOf(0xFF0000).l, 53.2, 0.1);
    EXPECT_NEAR(labOf(0xFF0000).a, 80.1, 0.2);
    EXPECT_NEAR(labOf(0xFF0000).b, 67.2, 0.2);
}

// What the model of Machado, Oliveira and Fernandes holds: greys stay what they are, since each row of a matrix adds up
// to 1; red and green of the same lightness come together without red or green, not without blue.
TEST(Colour, DeficienciesOfMachado)
{
    for (const auto vision : {ColourVision::NoRed, ColourVision::NoGreen, ColourVision::NoBlue})
        for (const std::uint32_t grey : {0x000000u, 0x808080u, 0xFFFFFFu})
            EXPECT_LT(colourDifference(seenWith(vision, grey), grey), 0.6);
    const std::uint32_t green = 0x6B8E3A, brown = 0xA87A3A;
    const double apart = colourDifference(green, brown);
    EXPECT_LT(colourDifference(seenWith(ColourVision::NoGreen, green), seenWith(ColourVision::NoGreen, brown)), apart / 2);
    EXPECT_GT(colourDifference(seenWith(ColourVision::NoBlue, green), seenWith(ColourVision::NoBlue, brown)), apart / 2);
    EXPECT_EQ(seenWith(ColourVision::Full, green), green);
}
