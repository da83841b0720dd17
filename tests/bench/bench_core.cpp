// The needle, edits, words and files on a shawl of 600 stitches and 500 rows.

#include "tests/bench/benches.h"
#include "tests/bench/measure.h"
#include "tests/support/big_shawl.h"

#include "core/derived/derived.h"
#include "core/edits/paint.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"

#include <random>

namespace shawlwright::tests {

void benchCore()
{
    const Catalogue& catalogue = builtInCatalogue();
    Pattern pattern = bigShawl();
    const Ledger ledger = run(pattern, catalogue);
    tell("shawl.findings", static_cast<double>(ledger.findings.size()), "findings");

    const auto copies = timed(21, [&](int) {
        std::vector<std::vector<Loop>> rows;
        rows.reserve(ledger.before.size());
        for (const Needle& needle : ledger.before)
            rows.push_back(needle.loops);
        if (rows.back().empty())
            std::abort();
    });
    const auto runs = timed(21, [&](int) {
        if (run(pattern, catalogue).lines.empty())
            std::abort();
    });
    tell("copy-loops.median", median(copies), "ms");
    tell("run.median", median(runs), "ms");
    tell("run/copy-loops", median(runs) / median(copies), "times");

    Derived derived(catalogue, pattern);
    const SectionId section = pattern.sections[0].id;
    derived.written(pattern, 0);
    std::mt19937 random(7);
    const StitchId stitches[] = {catalogue.require("k"), catalogue.require("p")};
    std::vector<double> needleOnly;
    const auto edits = timed(300, [&](int i) {
        const At at[] = {{static_cast<int>(random() % 500), 1 + static_cast<int>(random() % 600)}};
        const Result<Edit> edit = paint(pattern, catalogue, section, at, stitches[i % 2]);
        if (!edit.ok() || edit.value().empty())
            return;
        apply(pattern, edit.value());
        derived.update(pattern);
        derived.written(pattern, 0);
    });
    tell("edit.median", median(edits), "ms");
    tell("edit.p95", share(edits, 0.95), "ms");
    tell("edit.p95/run", share(edits, 0.95) / median(runs), "times");

    const auto writes = timed(7, [&](int) { derived.show(pattern, {}); derived.written(pattern, 0); });
    tell("words-of-all-rows.median", median(writes), "ms");

    std::string bytes;
    tell("save.median", median(timed(7, [&](int) { bytes = writePattern(pattern, catalogue); })), "ms");
    tell("file", static_cast<double>(bytes.size()) / 1e6, "MB");
    tell("open.median", median(timed(7, [&](int) {
             if (!readPattern(bytes, catalogue).pattern)
                 std::abort();
         })),
         "ms");
}

} // namespace shawlwright::tests
