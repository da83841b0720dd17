// Versions and sizes in one text. The smallest size first, the others in parentheses: The Knitter, 2018-04;
// Craft Star Studios. Versions section by section: common practice, no source.

#include "core/wording/reader/reader.h"
#include "tests/core/wording/written.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

Knit twoVersions()
{
    Knit knit(4);
    knit.pattern().head.yarns.resize(1);
    knit.pattern().head.versions = {"ridged", "holey"};
    knit.rs("k*4").ws("k*4").rs("p*4");
    knit.section("Ridges", {"ridged"}).ws("p*2 p*2").rs("p*4");
    knit.section("Holes", {"holey"}).ws("p*4").rs("yo k2tog yo k2tog");
    knit.section("Edge").ws("bindoff");
    return knit;
}

std::string textOfAll(Knit& knit, VersionsTold told)
{
    const Pattern pattern = knit.done();
    Style style;
    style.versions = told;
    const ToldRuns runs = runsToTell(pattern, knit.catalogue(), std::nullopt, std::nullopt);
    return writtenVersions(pattern, knit.catalogue(), runs.versions, style);
}

int times(const std::string& text, const std::string& part)
{
    int n = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++n;
    return n;
}

} // namespace

TEST(Versions, WhatTheyShareIsSaidOnce)
{
    Knit knit = twoVersions();
    const std::string text = textOfAll(knit, VersionsTold::SideBySide);
    EXPECT_NE(text.find("Versions: ridged, holey\n"), std::string::npos) << text;
    EXPECT_EQ(times(text, "\nBody\n"), 1) << text;
    EXPECT_NE(text.find("\nRidges\nVersion: ridged\n"), std::string::npos) << text;
    EXPECT_NE(text.find("\nHoles\nVersion: holey\n"), std::string::npos) << text;
    EXPECT_EQ(times(text, "\nEdge\n"), 1) << text;
}

TEST(Versions, PlacesTrueInAllOfThemAreSaid)
{
    Knit shared(6);
    shared.pattern().head.yarns.resize(1);
    shared.pattern().head.versions = {"ridged", "holey"};
    shared.rs("k*6").ws("k*2 p*4").rs("k*6");
    const std::string text = textOfAll(shared, VersionsTold::SideBySide);
    EXPECT_NE(text.find("Rows 1 and 3 (RS): knit."), std::string::npos) << text;

    // Where one version comes with more stitches the rows are told as they are painted.
    Knit apart(6);
    apart.pattern().head.yarns.resize(1);
    apart.pattern().head.versions = {"ridged", "holey"};
    apart.rs("k*6");
    apart.section("Holes", {"holey"}).ws("k*6 yo");
    apart.section("End").rs("[ k ]end").ws("k*6");
    const std::string other = textOfAll(apart, VersionsTold::SideBySide);
    EXPECT_NE(other.find(": k6."), std::string::npos) << other;
}

TEST(Versions, OneAfterTheOther)
{
    Knit knit = twoVersions();
    const std::string text = textOfAll(knit, VersionsTold::Apart);
    EXPECT_EQ(times(text, "\nBody\n"), 2) << text;
    EXPECT_EQ(times(text, "Version from the cast-on to the end: "), 2) << text;
}

TEST(Versions, BothTextsReadBackToTheSameRuns)
{
    Knit knit = twoVersions();
    const Pattern pattern = knit.done();
    for (const VersionsTold told : {VersionsTold::SideBySide, VersionsTold::Apart}) {
        const std::string text = textOfAll(knit, told);
        const ReadText read = readText(text, knit.catalogue());
        EXPECT_EQ(read.rowsNot, 0) << text;
        ASSERT_EQ(read.pattern.head.versions, pattern.head.versions);
        for (int version = 0; version < 2; ++version)
            EXPECT_EQ(afterEach(run(read.pattern, knit.catalogue(), {version, 0})),
                      afterEach(run(pattern, knit.catalogue(), {version, 0})))
                << text;
    }
}

TEST(Versions, CountsOfEverySize)
{
    Knit knit(45);
    knit.pattern().head.yarns.resize(1);
    knit.pattern().head.sizes = {"S", "M", "L"};
    knit.pattern().head.castOn.stitches = Quantity(std::vector{44, 50, 56});
    knit.rs("yo [ k ]end");
    const Pattern pattern = knit.done();
    const ToldRuns all = runsToTell(pattern, knit.catalogue(), std::nullopt, std::nullopt);
    const std::string text = writtenVersions(pattern, knit.catalogue(), all.versions, {});
    EXPECT_NE(text.find("yo, k to end. (45 (51, 57) sts)"), std::string::npos) << text;
    EXPECT_EQ(text.find("Counts after rows"), std::string::npos);
    const ReadText read = readText(text, knit.catalogue());
    ASSERT_EQ(read.pattern.sections.size(), 1u);
    EXPECT_EQ(read.pattern.sections[0].rows[0]->stated, Quantity(std::vector{45, 51, 57}));
    const ToldRuns one = runsToTell(pattern, knit.catalogue(), std::nullopt, 1);
    EXPECT_NE(writtenVersions(pattern, knit.catalogue(), one.versions, {}).find("(51 sts)"),
              std::string::npos);
}
