// Times and their order statistics; a line per figure: name value unit.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <vector>

namespace shawlwright::tests {

template <typename Act>
double milliseconds(Act act)
{
    const auto from = std::chrono::steady_clock::now();
    act();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - from).count();
}

template <typename Act>
std::vector<double> timed(int times, Act act)
{
    std::vector<double> all;
    for (int i = 0; i < times; ++i)
        all.push_back(milliseconds([&] { act(i); }));
    std::sort(all.begin(), all.end());
    return all;
}

inline double share(const std::vector<double>& sorted, double part)
{
    return sorted[static_cast<std::size_t>(part * static_cast<double>(sorted.size() - 1))];
}
inline double median(const std::vector<double>& sorted)
{
    return share(sorted, 0.5);
}

inline void tell(const std::string& name, double value, const char* unit)
{
    std::printf("%s %.3f %s\n", name.c_str(), value, unit);
    std::fflush(stdout);
}

} // namespace shawlwright::tests
