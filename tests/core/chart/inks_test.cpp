#include "core/chart/inks.h"

#include <gtest/gtest.h>

namespace shawlwright::chart {
namespace {

// WCAG 2.2: black on white is 21 : 1 (definition of contrast ratio); #777777 on white is 4.48 : 1, the
// well-known grey that just fails 1.4.3 (from memory).
TEST(Inks, ContrastIsTheStandardsOne)
{
    EXPECT_NEAR(contrast(0x000000, 0xFFFFFF), 21, 0.001);
    EXPECT_NEAR(contrast(0xFFFFFF, 0x777777), 4.48, 0.005);
}

// WCAG 2.2, 1.4.3 for text and 1.4.11 for marks.
TEST(Inks, AreReadable)
{
    for (const Paper paper : {Paper::Light, Paper::Dark}) {
        const auto ground = inkColour(Ink::Paper, 0, paper);
        for (const Ink text : {Ink::Label, Ink::SoftLabel, Ink::Symbol})
            EXPECT_GE(contrast(inkColour(text, 0, paper), ground), 4.5) << static_cast<int>(text);
        for (const Ink mark :
             {Ink::BoxLine, Ink::BracketLine, Ink::MarkerLine, Ink::TurnMark, Ink::FaultMark, Ink::TenthLine,
              Ink::Resting})
            EXPECT_GE(contrast(inkColour(mark, 0, paper), ground), 3) << static_cast<int>(mark);
    }
}

TEST(Inks, SymbolsAreReadableOnEveryTint)
{
    for (const std::uint32_t yarn : {0x000000u, 0xFFFFFFu, 0xFF0000u, 0x00FF00u, 0x0000FFu, 0x35557Fu})
        EXPECT_GE(contrast(inkColour(Ink::Symbol), inkColour(Ink::YarnTint, yarn)), 7) << yarn;
}

TEST(Inks, TintIsAFifthOfTheYarn)
{
    EXPECT_EQ(inkColour(Ink::YarnTint, 0x000000), 0xCCCCCCu);
    EXPECT_EQ(inkColour(Ink::YarnTint, 0xFF0000), 0xFFCCCCu);
    EXPECT_EQ(inkColour(Ink::YarnFull, 0x123456), 0x123456u);
}

} // namespace
} // namespace shawlwright::chart
