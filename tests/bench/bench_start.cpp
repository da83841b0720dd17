// From the start of the program to the first key that did something, on the real program without a display. The keys come
// from the typist of tests/app/kills, who looks every 25 ms whether the window is there.

#include "tests/bench/benches.h"
#include "tests/bench/measure.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <time.h>
#include <unistd.h>

namespace shawlwright::tests {

void benchStart()
{
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() / ("shawlwright-start-" + std::to_string(::getpid()));
    std::vector<double> starts;
    for (int i = 0; i < 7; ++i) {
        std::filesystem::remove_all(folder);
        std::filesystem::create_directories(folder);
        std::filesystem::copy_file(SHAWLWRIGHT_SOURCE "/samples/rockpool.shawl", folder / "a.shawl");
        const std::string home = folder.string();
        const std::string command =
            "env HOME=" + home + " XDG_CONFIG_HOME=" + home + " XDG_DATA_HOME=" + home +
            " QT_QPA_PLATFORM=offscreen QT_QPA_GENERIC_PLUGINS=typist QT_PLUGIN_PATH=" TYPIST_PLUGINS " TYPIST_LOG=" +
            home + "/log TYPIST_SEED=1 TYPIST_SAVE=0 TYPIST_EDITS=1 " SHAWLWRIGHT_BUILD "/app/shawlwright " + home +
            "/a.shawl";
        timespec from{};
        ::clock_gettime(CLOCK_MONOTONIC, &from);
        if (std::system(command.c_str()) != 0)
            std::abort();
        std::ifstream log(folder / "log");
        char what = 0;
        long long edits = 0, at = 0;
        while (log >> what >> edits >> at && what != 'E') {
        }
        starts.push_back(static_cast<double>(at - (from.tv_sec * 1'000'000'000LL + from.tv_nsec)) / 1e6);
    }
    std::filesystem::remove_all(folder);
    std::sort(starts.begin(), starts.end());
    tell("start-to-first-key.median", median(starts), "ms");
    tell("start-to-first-key.worst", starts.back(), "ms");
}

} // namespace shawlwright::tests
