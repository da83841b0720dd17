// The same work for many items, on as many processors as there are.
//
// Shape:   work(i) for each i of 0 .. count-1, in any order and at the same time; it changes nothing but what belongs
//          to its own item. Fewer than `worthIt` items are done by the caller alone.
// Errors:  what work throws is thrown again, once all parts have ended.
#pragma once

#include <algorithm>
#include <future>
#include <thread>
#include <vector>

namespace shawlwright {

template <typename Work>
void inParallel(std::size_t count, std::size_t worthIt, const Work& work)
{
    const std::size_t processors = std::max(1U, std::thread::hardware_concurrency());
    const std::size_t parts = count < worthIt ? 1 : std::min({processors, count, std::size_t{8}});
    const auto part = [&](std::size_t which) { // neighbours cost alike: each part takes some of everywhere
        for (std::size_t i = which; i < count; i += parts)
            work(i);
    };
    std::vector<std::future<void>> others;
    for (std::size_t which = 1; which < parts; ++which)
        others.push_back(std::async(std::launch::async, part, which));
    part(0);
    for (std::future<void>& other : others)
        other.get();
}

} // namespace shawlwright
