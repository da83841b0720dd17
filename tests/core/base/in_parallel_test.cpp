// Every item is worked once, whether by one thread or several, and what goes wrong in one is heard of.

#include "core/base/in_parallel.h"

#include <gtest/gtest.h>

#include <atomic>
#include <stdexcept>

namespace shawlwright {
namespace {

TEST(InParallel, WorksEachItemOnce)
{
    for (const std::size_t count : {0U, 1U, 63U, 64U, 1000U}) {
        std::vector<int> times(count, 0);
        inParallel(count, 64, [&](std::size_t i) { ++times[i]; });
        EXPECT_EQ(times, std::vector<int>(count, 1)) << count;
    }
}

TEST(InParallel, LeavesFewItemsToTheCaller)
{
    const std::thread::id caller = std::this_thread::get_id();
    std::atomic<int> elsewhere = 0;
    inParallel(63, 64, [&](std::size_t) { elsewhere += std::this_thread::get_id() == caller ? 0 : 1; });
    EXPECT_EQ(elsewhere, 0);
}

TEST(InParallel, ThrowsWhatTheWorkThrows)
{
    std::atomic<int> done = 0;
    const auto work = [&](std::size_t i) {
        if (i == 701)
            throw std::runtime_error("row 701");
        ++done;
    };
    EXPECT_THROW(inParallel(1000, 64, work), std::runtime_error);
    EXPECT_LT(done, 1000);
}

} // namespace
} // namespace shawlwright
