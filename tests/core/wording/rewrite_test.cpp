// Rows that are kept after an edit are the rows written from scratch.

#include "core/files/builtin_catalogue.h"
#include "core/wording/writer/writer.h"
#include "tests/support/random_pattern.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

// Another stitch of the same width, another yarn or another finish somewhere.
void changeSomething(Pattern& pattern, std::mt19937& random)
{
    Section& section = pattern.sections[random() % pattern.sections.size()];
    if (section.rows.empty())
        return;
    RowRef& ref = section.rows[random() % section.rows.size()];
    Row row = *ref;
    const StitchId k = builtInCatalogue().require("k");
    const StitchId yo = builtInCatalogue().require("yo");
    switch (random() % 3) {
    case 0:
        for (Cell& cell : row.cells)
            if (random() % 4 == 0 && (cell.stitch == k || cell.stitch == yo || cell.stitch == noStitch))
                cell.stitch = cell.stitch == k ? yo : k;
        break;
    case 1:
        row.yarn = pattern.head.yarns[random() % pattern.head.yarns.size()].id;
        break;
    default:
        row.finish.kind = row.finish.kind == FinishKind::TurnEarly ? FinishKind::Turn : FinishKind::TurnEarly;
    }
    ref = std::make_shared<const Row>(std::move(row));
}

} // namespace

TEST(Rewrite, GivesWhatWritingFromScratchGives)
{
    int keptSome = 0;
    for (unsigned seed = 1; seed <= 80; ++seed) {
        std::mt19937 random(seed);
        Pattern pattern = randomPattern(random);
        const Catalogue catalogue = builtInCatalogue().with(pattern.head.stitches);
        const Style style{Words::US, CountsShown::Always, RepeatForm::Asterisk};
        Ledger ledger = run(pattern, catalogue);
        std::vector<std::vector<WrittenRow>> kept;
        for (std::size_t s = 0; s < pattern.sections.size(); ++s)
            kept.push_back(writtenRows(pattern, catalogue, ledger, static_cast<int>(s), style));
        for (int edit = 0; edit < 8; ++edit) {
            changeSomething(pattern, random);
            const Reworked reworked = rework(ledger, pattern, catalogue, pattern.head);
            keptSome += reworked.last - reworked.first < static_cast<int>(ledger.lines.size()) ? 1 : 0;
            for (std::size_t s = 0; s < pattern.sections.size(); ++s) {
                rewrite(kept[s], pattern, catalogue, ledger, static_cast<int>(s), style,
                        std::span(&reworked, 1));
                const auto fresh = writtenRows(pattern, catalogue, ledger, static_cast<int>(s), style);
                ASSERT_EQ(kept[s].size(), fresh.size()) << "seed " << seed;
                for (std::size_t r = 0; r < fresh.size(); ++r)
                    ASSERT_EQ(kept[s][r], fresh[r])
                        << "seed " << seed << ", edit " << edit << ", section " << s << ":\n"
                        << toText(kept[s][r]) << "\n"
                        << toText(fresh[r]);
            }
        }
    }
    EXPECT_GT(keptSome, 100);
}
