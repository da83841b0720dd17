// Undo restores, kept values equal those made from scratch, and a file holds all of a pattern.

#include "tests/support/random_pattern.h"

#include "core/derived/derived.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"

#include <gtest/gtest.h>

using namespace shawlwright;
using namespace shawlwright::tests;

namespace {

std::string bytes(const Pattern& pattern)
{
    return writePattern(pattern, builtInCatalogue());
}

void expectKept(Derived& kept, const Pattern& pattern, const std::string& when)
{
    Derived scratch(builtInCatalogue(), pattern);
    scratch.show(pattern, kept.choice());
    ASSERT_TRUE(kept == scratch) << when;
    for (std::size_t s = 0; s < pattern.sections.size(); ++s)
        ASSERT_TRUE(kept.written(pattern, static_cast<int>(s)) == scratch.written(pattern, static_cast<int>(s))) << when;
}

} // namespace

TEST(EditsLaw, UndoneAndRedoneGiveTheSameBytesAndTheSameKeptValues)
{
    int done = 0;
    for (unsigned seed = 1; seed <= 150; ++seed) {
        std::mt19937 random(seed);
        Pattern pattern = randomPattern(random);
        Derived derived(builtInCatalogue(), pattern);
        std::vector<std::string> states{bytes(pattern)};
        std::vector<Edit> back;
        for (int i = 0; i < 12; ++i) {
            const Result<Edit> edit = randomEdit(random, pattern);
            if (!edit.ok() || edit.value().empty())
                continue;
            back.push_back(apply(pattern, edit.value()).takeBack);
            derived.update(pattern);
            states.push_back(bytes(pattern));
            expectKept(derived, pattern, "seed " + std::to_string(seed) + ", edit " + std::to_string(i) + ": " + edit.value().name);
            ASSERT_TRUE(faultsOf(pattern, derived.catalogue()).empty())
                << "seed " << seed << ", edit " << i << " (" << edit.value().name
                << "): " << toText(faultsOf(pattern, derived.catalogue()).front());
            ++done;
        }
        std::vector<Edit> forward;
        for (std::size_t i = back.size(); i-- > 0;) {
            forward.push_back(apply(pattern, back[i]).takeBack);
            derived.update(pattern);
            ASSERT_EQ(bytes(pattern), states[i]) << "seed " << seed << ", undo of edit " << i;
        }
        expectKept(derived, pattern, "all undone, seed " + std::to_string(seed));
        for (std::size_t i = 0; i < forward.size(); ++i) {
            apply(pattern, forward[forward.size() - 1 - i]);
            derived.update(pattern);
            ASSERT_EQ(bytes(pattern), states[i + 1]) << "seed " << seed << ", redo of edit " << i;
        }
        expectKept(derived, pattern, "all redone, seed " + std::to_string(seed));
    }
    EXPECT_GT(done, 1000);
}

TEST(FilesLaw, LoadingWhatWasSavedGivesThePattern)
{
    for (unsigned seed = 1; seed <= 400; ++seed) {
        std::mt19937 random(seed);
        const Pattern pattern = randomPattern(random);
        const std::string saved = bytes(pattern);
        const ReadPattern read = readPattern(saved, builtInCatalogue());
        ASSERT_TRUE(read.pattern.has_value()) << "seed " << seed << ": " << toText(read.faults.front());
        ASSERT_TRUE(*read.pattern == pattern) << "seed " << seed;
        ASSERT_EQ(bytes(*read.pattern), saved) << "seed " << seed;
    }
}
