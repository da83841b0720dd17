// The big shawl as words: writing them, reading them again, and reading in proportion to copying the text.

#include "tests/bench/benches.h"
#include "tests/bench/measure.h"
#include "tests/support/big_shawl.h"

#include "core/files/builtin_catalogue.h"
#include "core/wording/reader/reader.h"
#include "core/wording/writer/writer.h"

#include <cstdlib>

namespace shawlwright::tests {

void benchWords()
{
    const Catalogue& catalogue = builtInCatalogue();
    const Pattern pattern = bigShawl();
    const Ledger ledger = run(pattern, catalogue);
    std::string text;
    tell("write-words.median",
         median(timed(7, [&](int) { text = writtenPattern(pattern, catalogue, ledger, Style{}); })), "ms");
    const double megabytes = static_cast<double>(text.size()) / 1e6;
    tell("words", megabytes * 1000, "kB");
    const auto reads = timed(7, [&](int) {
        if (readText(text, catalogue).rowsNot > 0)
            std::abort();
    });
    tell("read-words.median", median(reads), "ms");
    tell("read-words", megabytes / median(reads) * 1000, "MB/s");
    // Rows alone, not worked on a needle.
    const std::string row =
        "k2, *yo, k2tog; rep from * to 3 sts before marker, k1, sm, [ssk, yo] 4 times, k to end.";
    const auto rows = timed(7, [&](int) {
        for (int i = 0; i < 1000; ++i)
            if (!readRow(row, Side::RS, catalogue, pattern.head).understood)
                std::abort();
    });
    tell("read-row.median", median(rows), "us each");
}

} // namespace shawlwright::tests
