#include "tests/support/knit.h"

#include "core/derived/derived.h"
#include "core/edits/paint.h"
#include "core/edits/sections.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

Knit twoVersions()
{
    Knit knit(10);
    knit.pattern().head.versions = {"garter", "lace"};
    knit.section("Plain", {"garter"}).rs("k*10").ws("k*10");
    knit.section("Holes", {"lace"}).rs("k [ yo k2tog ]*4 k").ws("[ p ]end");
    knit.section("Edge").rs("[ k ]end").ws("[ k ]end");
    knit.pattern().sections.erase(knit.pattern().sections.begin());
    return knit;
}

} // namespace

TEST(Derived, EachVersionIsRunOnItsOwn)
{
    Knit knit = twoVersions();
    const Pattern pattern = knit.done();
    Derived derived(knit.catalogue(), pattern);
    EXPECT_EQ(derived.ledger({0, 0}).rows.size(), 4u);
    EXPECT_EQ(derived.ledger({1, 0}).rows.size(), 4u);
    EXPECT_EQ(firstLineOf(derived.ledger({0, 0}), 1, 0), -1);
    EXPECT_EQ(firstLineOf(derived.ledger({1, 0}), 1, 0), 0);
    EXPECT_TRUE(derived.findings().empty());
}

TEST(Derived, DisagreementWhereVersionsMeetIsFoundAndGoesAgain)
{
    Knit knit = twoVersions();
    Pattern pattern = knit.done();
    Derived derived(knit.catalogue(), pattern);
    const At at[] = {{0, 1}};
    const Result<Edit> edit =
        paint(pattern, knit.catalogue(), pattern.sections[1].id, at, knit.catalogue().require("bo"));
    ASSERT_TRUE(edit.ok());
    const Edit back = apply(pattern, edit.value()).takeBack;
    derived.update(pattern);
    bool disagree = false;
    for (const Finding& finding : derived.findings())
        disagree = disagree || finding.kind == FindingKind::VersionsDisagree;
    EXPECT_TRUE(disagree);
    apply(pattern, back);
    derived.update(pattern);
    EXPECT_TRUE(derived.findings().empty());
}

TEST(Derived, WordsFollowAnEditAndTheShownVersion)
{
    Knit knit = twoVersions();
    Pattern pattern = knit.done();
    Derived derived(knit.catalogue(), pattern);
    derived.show(pattern, {1, 0});
    EXPECT_EQ(derived.choice().version, 1);
    const std::string before = derived.written(pattern, 1)[0].text;
    EXPECT_EQ(before, "With MC, k1, [yo, k2tog] 4 times, k1.");
    const At at[] = {{0, 4}};
    const Result<Edit> edit =
        paint(pattern, knit.catalogue(), pattern.sections[1].id, at, knit.catalogue().require("p"));
    ASSERT_TRUE(edit.ok());
    apply(pattern, edit.value());
    derived.update(pattern);
    EXPECT_EQ(derived.written(pattern, 1)[0].text, "With MC, k1, [yo, k2tog] 4 times, p1.");
    Derived scratch(knit.catalogue(), pattern);
    scratch.show(pattern, {1, 0});
    EXPECT_TRUE(derived == scratch);
}

TEST(Derived, AnotherListOfVersionsStartsAfresh)
{
    Knit knit = twoVersions();
    Pattern pattern = knit.done();
    Derived derived(knit.catalogue(), pattern);
    derived.show(pattern, {1, 0});
    PatternHead head = pattern.head;
    head.versions = {};
    for (Section& section : pattern.sections)
        section.frame.versions.clear();
    pattern.head = head;
    derived.update(pattern);
    EXPECT_EQ(derived.choice().version, 0);
    EXPECT_EQ(derived.ledger().rows.size(), 6u);
}
