// Whole rows made at once, in patterns of any shape: what is made comes out on the needle, or a fault says
// why not; taken back, the pattern is what it was.

#include "core/derived/increase_plan.h"
#include "core/derived/plain_rows.h"
#include "core/derived/short_row_arch.h"
#include "core/derived/short_row_wedge.h"
#include "core/derived/striped_rows.h"
#include "core/edits/replace_stitch.h"
#include "tests/support/knit.h"
#include "tests/support/random_pattern.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

class Bench {
public:
    explicit Bench(unsigned seed) : m_random(seed)
    {
        pattern = randomPattern(m_random, {});
        catalogue = Knit(1).catalogue().with(pattern.head.stitches);
        ledgers = all();
        section = upTo(static_cast<int>(pattern.sections.size()) - 1);
        rows = static_cast<int>(here().rows.size());
    }

    int upTo(int most) { return static_cast<int>(m_random() % static_cast<unsigned>(most + 1)); }
    const Section& here() const { return pattern.sections[static_cast<std::size_t>(section)]; }
    std::vector<Ledger> all() const
    {
        std::vector<Ledger> made;
        for (int version = 0; version < versionCount(pattern); ++version)
            for (int size = 0; size < sizeCount(pattern); ++size)
                made.push_back(run(pattern, catalogue, {version, size}));
        return made;
    }

    void perform(const Edit& edit)
    {
        const Pattern before = pattern;
        const Applied applied = apply(pattern, edit);
        EXPECT_TRUE(faultsOf(pattern, catalogue).empty());
        Pattern undone = pattern;
        apply(undone, applied.takeBack);
        EXPECT_EQ(undone, before);
    }

    // Findings of these kinds on these rows, in every version and size.
    std::string told(const std::set<RowId>& ids, const std::set<FindingKind>& kinds) const
    {
        std::string text;
        for (const Ledger& ledger : all())
            for (const Finding& finding : ledger.findings)
                if (finding.line >= 0 && kinds.count(finding.kind) > 0 &&
                    ids.count(ledger.rows[static_cast<std::size_t>(finding.line)].ref->id) > 0)
                    text += placeInWords(pattern, sectionIndex(pattern, finding.section), finding.row) +
                            ": " + finding.message + "\n";
        return text;
    }

    std::set<RowId> idsFrom(int at, std::size_t count) const
    {
        std::set<RowId> ids;
        for (std::size_t i = 0; i < count; ++i)
            ids.insert(here().rows[static_cast<std::size_t>(at) + i]->id);
        return ids;
    }

    std::mt19937 m_random;
    Pattern pattern;
    Catalogue catalogue;
    std::vector<Ledger> ledgers;
    int section = 0;
    int rows = 0;
};

const std::set<FindingKind> counts{FindingKind::TooFewStitches, FindingKind::StitchesLeftOver,
                                   FindingKind::RepeatDoesNotFit};
constexpr unsigned seeds = 1500;

} // namespace

TEST(ShapingLaws, PlainRowsComeOut)
{
    int made = 0;
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        SCOPED_TRACE(seed);
        Bench bench(seed);
        std::vector<int> rows;
        std::set<RowId> ids;
        for (int row = 0; row < bench.rows; ++row)
            if (bench.upTo(2) == 0) {
                rows.push_back(row);
                ids.insert(bench.here().rows[static_cast<std::size_t>(row)]->id);
            }
        const auto edit = plainRows(bench.pattern, bench.catalogue, bench.ledgers, 0, bench.here().id, rows,
                                    static_cast<PlainStitch>(bench.upTo(2)));
        if (!edit.ok()) {
            EXPECT_FALSE(edit.fault().message.empty());
            continue;
        }
        ++made;
        bench.perform(edit.value());
        ASSERT_EQ(bench.told(ids, counts), "");
    }
    EXPECT_GT(made, static_cast<int>(seeds) / 20);
}

TEST(ShapingLaws, WedgesComeOut)
{
    int made = 0;
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        SCOPED_TRACE(seed);
        Bench bench(seed);
        WedgeWishes wishes;
        wishes.at = static_cast<WedgeAt>(bench.upTo(2));
        wishes.growing = bench.upTo(1) == 0;
        wishes.step = 1 + bench.upTo(2);
        wishes.untilLeft = bench.upTo(3);
        wishes.method = static_cast<TurnMethod>(bench.upTo(5));
        wishes.stitches = static_cast<PlainStitch>(bench.upTo(2));
        wishes.slipFirst = bench.upTo(1) == 0;
        if (!bench.pattern.head.markers.empty())
            wishes.marker = bench.pattern.head.markers.front().id;
        const int at = bench.upTo(bench.rows);
        const auto wedge =
            shortRowWedge(bench.pattern, bench.catalogue, bench.ledgers, 0, bench.here().id, at, wishes);
        if (!wedge.ok()) {
            EXPECT_FALSE(wedge.fault().message.empty());
            continue;
        }
        ++made;
        bench.perform(wedge.value().edit);
        ASSERT_EQ(bench.told(bench.idsFrom(at, wedge.value().rows.size()), counts), "");
    }
    EXPECT_GT(made, static_cast<int>(seeds) / 20);
}

TEST(ShapingLaws, ArchesComeOut)
{
    int made = 0;
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        SCOPED_TRACE(seed);
        Bench bench(seed);
        ArchWishes wishes;
        wishes.width = 1 + bench.upTo(8);
        wishes.step = 1 + bench.upTo(2);
        wishes.widening = bench.upTo(1) == 0;
        wishes.rows = 2 + bench.upTo(4);
        wishes.method = static_cast<TurnMethod>(bench.upTo(5));
        wishes.stitches = static_cast<PlainStitch>(bench.upTo(2));
        wishes.slipFirst = bench.upTo(1) == 0;
        if (bench.upTo(2) == 0) {
            wishes.places[0].at = ArchPlace::At::Marker;
            wishes.places[0].marker = bench.pattern.head.markers.front().id;
        } else if (bench.upTo(2) == 0) {
            wishes.places[0].at = ArchPlace::At::Stitch;
            wishes.places[0].stitch = 1 + bench.upTo(30);
        }
        const int at = bench.upTo(bench.rows);
        auto arches =
            shortRowArches(bench.pattern, bench.catalogue, bench.ledgers, 0, bench.here().id, at, wishes);
        if (!arches.ok()) {
            EXPECT_FALSE(arches.fault().message.empty());
            continue;
        }
        ++made;
        bench.perform(arches.value().edit);
        ASSERT_EQ(bench.told(bench.idsFrom(at, arches.value().rows.size()), counts), "");
    }
    EXPECT_GT(made, static_cast<int>(seeds) / 20);
}

TEST(ShapingLaws, IncreasesComeOut)
{
    int made = 0;
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        SCOPED_TRACE(seed);
        Bench bench(seed);
        IncreaseWishes wishes;
        for (int places = bench.upTo(3); places >= 0; --places) {
            IncreasePlace place;
            place.at = static_cast<IncreasePlace::At>(bench.upTo(6));
            place.marker = bench.pattern.head.markers.front().id;
            place.stitch = 1 + bench.upTo(20);
            place.beside = bench.upTo(3);
            place.every = 1 + bench.upTo(3);
            wishes.places.push_back(place);
        }
        if (bench.upTo(4) == 0)
            wishes.spread = 1 + bench.upTo(9);
        wishes.increase = static_cast<Increase>(bench.upTo(3));
        wishes.lean = static_cast<LeanOf>(bench.upTo(1));
        wishes.times = 1 + bench.upTo(5);
        wishes.stitches = static_cast<PlainStitch>(bench.upTo(2));
        const int at = bench.upTo(bench.rows);
        auto plan = increasePlan(bench.pattern, bench.catalogue, bench.ledgers, 0, bench.here().id, at, wishes);
        if (!plan.ok()) {
            EXPECT_FALSE(plan.fault().message.empty());
            continue;
        }
        ++made;
        bench.perform(plan.value().edit);
        ASSERT_EQ(bench.told(bench.idsFrom(at, plan.value().rows.size()), counts), "");
    }
    EXPECT_GT(made, static_cast<int>(seeds) / 20);
}

TEST(ShapingLaws, StripesAreJoined)
{
    int made = 0;
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        SCOPED_TRACE(seed);
        Bench bench(seed);
        std::vector<Stripe> stripes;
        for (int i = bench.upTo(2); i >= 0; --i)
            stripes.push_back({1 + bench.upTo(2),
                               bench.pattern.head
                                   .yarns[static_cast<std::size_t>(
                                       bench.upTo(static_cast<int>(bench.pattern.head.yarns.size()) - 1))]
                                   .id});
        const int first = bench.upTo(bench.rows - 1), last = first + bench.upTo(bench.rows - 1 - first);
        std::set<RowId> ids;
        for (int row = first; row <= last; ++row)
            ids.insert(bench.here().rows[static_cast<std::size_t>(row)]->id);
        const auto edit =
            stripedRows(bench.pattern, bench.catalogue, bench.ledgers, bench.here().id, first, last, stripes);
        ASSERT_TRUE(edit.ok()) << toText(edit.fault());
        made += edit.value().empty() ? 0 : 1;
        bench.perform(edit.value());
        ASSERT_EQ(bench.told(ids, {FindingKind::YarnNotJoined, FindingKind::YarnElsewhere}), "");
    }
    EXPECT_GT(made, static_cast<int>(seeds) / 2);
}

TEST(ShapingLaws, AStitchIsReplacedWhereverItStands)
{
    for (unsigned seed = 1; seed <= 300; ++seed) {
        SCOPED_TRACE(seed);
        Bench bench(seed);
        const auto there = stitchesIn(bench.here(), {});
        if (there.empty())
            continue;
        const StitchId from = there[static_cast<std::size_t>(bench.upTo(static_cast<int>(there.size()) - 1))];
        const StitchId to{static_cast<std::uint16_t>(1 + bench.upTo(20))};
        const auto replaced = replaceStitch(bench.pattern, bench.catalogue, bench.here().id, {}, from, to);
        if (!replaced.ok() || from == to)
            continue;
        bench.perform(replaced.value().edit);
        const auto now = stitchesIn(bench.here(), {});
        EXPECT_EQ(std::count(now.begin(), now.end(), from), 0);
        EXPECT_EQ(std::count(now.begin(), now.end(), to), 1);
    }
}
