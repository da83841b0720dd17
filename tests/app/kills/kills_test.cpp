// The program is killed while somebody edits and saves, without warning (SIGKILL), at random moments. What is
// promised: the saved file is whole, a state that was there, no older than the last save that was done; and
// with the rescue copy at most five seconds of work are missing.
#include "core/edits/paint.h"
#include "core/edits/sections.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "tests/app/kills/typist.h"
#include "tests/commandline/program.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <mutex>
#include <random>
#include <sstream>
#include <sys/wait.h>
#include <thread>
#include <time.h>
#include <unistd.h>

namespace shawlwright::tests {
namespace {

constexpr int columns = 40; // as the typist has it
constexpr long long second = 1'000'000'000LL;
constexpr long long mostMissing = 5 * second;

long long now()
{
    timespec time{};
    ::clock_gettime(CLOCK_MONOTONIC, &time);
    return static_cast<long long>(time.tv_sec) * second + time.tv_nsec;
}

int fromEnvironment(const char* name, int otherwise)
{
    const char* text = std::getenv(name);
    return text ? std::atoi(text) : otherwise;
}

Pattern emptyChart()
{
    NewPattern wishes;
    wishes.title = "Killed";
    wishes.rows = 60;
    wishes.columns = columns;
    wishes.castOn.stitches = columns;
    return newPattern(wishes);
}

struct Act {
    char what;
    int edits;
    long long at;
};

std::vector<Act> actsIn(const std::string& log)
{
    std::vector<Act> acts;
    std::istringstream lines(log);
    for (Act act{}; lines >> act.what >> act.edits >> act.at;)
        acts.push_back(act);
    return acts;
}

// After how many edits the pattern is this one; -1: after none of them.
int editsIn(const Pattern& pattern, std::uint32_t seed, int most)
{
    const Catalogue& catalogue = builtInCatalogue();
    const StitchId knit = catalogue.require("k"), purl = catalogue.require("p");
    Pattern state = emptyChart();
    int found = state == pattern ? 0 : -1;
    for (int edit = 0; edit < most; ++edit) {
        const int row = edit / columns, along = edit % columns;
        const At place[] = {At{row, row % 2 == 0 ? along + 1 : columns - along}};
        const auto painted = paint(state, catalogue, state.sections.front().id, place,
                                   purls(seed, edit) ? purl : knit);
        if (!painted.ok())
            std::abort(); // the table is wrong, not the program
        apply(state, painted.value());
        if (state == pattern)
            found = edit + 1;
    }
    return found;
}

struct Killed {
    std::vector<Act> acts;
    long long at = 0;
    int status = 0;
    std::string file;   // as it lies there afterwards
    std::string rescue; // the same; empty: there is none
};

struct Trial {
    int number;
    std::uint32_t seed;
    int saveOneIn;
    long long after; // the first edit, in nanoseconds
    int edits = 0;   // then it is closed; 0: it is killed
};

pid_t started(const Folder& folder, const Trial& trial)
{
    const std::vector<std::string> environment = {
        "QT_QPA_PLATFORM=offscreen", "HOME=" + folder.at("home"), "XDG_CONFIG_HOME=" + folder.at("home"),
        "XDG_DATA_HOME=" + folder.at("home"), "QT_QPA_GENERIC_PLUGINS=typist",
        "QT_PLUGIN_PATH=" TYPIST_PLUGINS, "TYPIST_LOG=" + folder.at("log"),
        "TYPIST_SEED=" + std::to_string(trial.seed), "TYPIST_SAVE=" + std::to_string(trial.saveOneIn),
        "TYPIST_EDITS=" + std::to_string(trial.edits), "ASAN_OPTIONS=detect_leaks=0", "LC_ALL=C.UTF-8",
        "PATH=/usr/bin:/bin"};
    std::vector<char*> envp;
    for (const std::string& one : environment)
        envp.push_back(const_cast<char*>(one.c_str()));
    envp.push_back(nullptr);
    const std::string file = folder.at("killed.shawl"), said = folder.at("said");
    char* const argv[] = {const_cast<char*>(SHAWLWRIGHT_BUILD "/app/shawlwright"),
                          const_cast<char*>(file.c_str()), nullptr};
    const pid_t child = ::fork();
    if (child == 0) {
        if (!std::freopen(said.c_str(), "w", stderr))
            ::_exit(126);
        ::execve(argv[0], argv, envp.data());
        ::_exit(127);
    }
    return child;
}

std::string rescued(const Folder& folder)
{
    std::error_code ignored;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder.at("home"), ignored))
        if (entry.path().parent_path().filename() == "rescue" && entry.path().extension() == ".shawl")
            return bytesOf(entry.path().string());
    return {};
}

Killed run(const Trial& trial)
{
    const Folder folder;
    std::filesystem::create_directory(folder.at("home"));
    folder.write("killed.shawl", writePattern(emptyChart(), builtInCatalogue()));
    const pid_t child = started(folder, trial);
    Killed killed;
    const long long since = now(), patience = 60 * second;
    bool ended = false;
    long long first = 0;
    while (!ended && (first == 0 || trial.edits > 0 || now() < first + trial.after)) {
        if (now() - since > patience)
            break;
        std::this_thread::sleep_for(first == 0 ? std::chrono::milliseconds(5) : std::chrono::milliseconds(1));
        if (first == 0 && std::filesystem::exists(folder.at("log")))
            if (const auto acts = actsIn(bytesOf(folder.at("log"))); !acts.empty())
                first = acts.front().at;
        ended = ::waitpid(child, &killed.status, WNOHANG) == child;
    }
    if (!ended) {
        ::kill(child, SIGKILL);
        killed.at = now();
        ::waitpid(child, &killed.status, 0);
    }
    killed.acts = actsIn(bytesOf(folder.at("log")));
    killed.file = bytesOf(folder.at("killed.shawl"));
    killed.rescue = rescued(folder);
    return killed;
}

// What is wrong with what a killed program left; empty: nothing. `missing`: the age of the oldest lost edit.
std::string wrongWith(const Trial& trial, const Killed& killed, long long& missing)
{
    if (killed.acts.empty())
        return "it never came up";
    if (!WIFSIGNALED(killed.status) || WTERMSIG(killed.status) != SIGKILL)
        return "it ended by itself";
    const int most = killed.acts.back().edits + 1;
    int savedAt = 0; // edits in the last save that was done
    for (const Act& act : killed.acts)
        if (act.what == 'S')
            savedAt = act.edits;
    const auto edits = [&](const std::string& bytes) {
        const ReadPattern read = readPattern(bytes, builtInCatalogue());
        return read.pattern ? editsIn(*read.pattern, trial.seed, most) : -2;
    };
    const int inFile = edits(killed.file);
    if (inFile == -2)
        return "the saved file can't be opened";
    if (inFile == -1)
        return "the saved file is no state that was ever there";
    if (inFile < savedAt)
        return "the saved file has " + std::to_string(inFile) + " edits, " + std::to_string(savedAt) +
               " were saved";
    const int inRescue = killed.rescue.empty() ? 0 : edits(killed.rescue);
    if (inRescue < 0)
        return "the rescue copy is no state that was ever there";
    const int kept = std::max(inFile, inRescue);
    for (const Act& act : killed.acts)
        if (act.what == 'E' && act.edits > kept) {
            missing = killed.at - act.at;
            break;
        }
    if (missing > mostMissing)
        return "edits of " + std::to_string(missing / 1'000'000) + " ms are lost";
    return {};
}

TEST(Kills, WhatIsTypedIsWhatTheTableSays)
{
    const Trial trial{0, 7, 5, 0, 95};
    const Killed ended = run(trial);
    ASSERT_TRUE(WIFEXITED(ended.status)) << ended.status;
    EXPECT_EQ(WEXITSTATUS(ended.status), 0);
    const ReadPattern read = readPattern(ended.file, builtInCatalogue());
    ASSERT_TRUE(read.pattern.has_value());
    EXPECT_EQ(editsIn(*read.pattern, trial.seed, 100), 95);
    EXPECT_EQ(ended.rescue, "") << "a clean end leaves no rescue copy";
}

TEST(Kills, NothingSavedIsDamagedAndAtMostFiveSecondsAreLost)
{
    const int trials = fromEnvironment("SHAWLWRIGHT_KILLS", 200);
    const auto seed = static_cast<std::uint32_t>(fromEnvironment("SHAWLWRIGHT_SEED", 2611));
    std::printf("seed %u, %d kills\n", seed, trials);
    std::mutex guard;
    std::atomic<int> next = 1;
    int saving = 0, rescues = 0;
    long long worst = 0;
    const auto work = [&] {
        for (int number = next++; number <= trials; number = next++) {
            std::mt19937 random(seed + static_cast<std::uint32_t>(number));
            // Most save at every other edit, so that many are killed within a save; the others hardly ever
            // do and go on for longer than a rescue copy may be old.
            const bool rescueOnly = number % 8 == 0;
            const Trial trial{number, static_cast<std::uint32_t>(random() % 1'000'000), rescueOnly ? 400 : 2,
                              (static_cast<long long>(random() % 1000) * (rescueOnly ? 8 : 1) + (rescueOnly ? 2000 : 0)) *
                                  1'000'000};
            const Killed killed = run(trial);
            long long missing = 0;
            const std::string wrong = wrongWith(trial, killed, missing);
            const std::lock_guard lock(guard);
            EXPECT_EQ(wrong, "") << "kill " << number << ", seed " << seed;
            worst = std::max(worst, missing);
            saving += !killed.acts.empty() && killed.acts.back().what == 's';
            rescues += !killed.rescue.empty();
        }
    };
    std::vector<std::thread> workers;
    for (int i = 0; i < 6; ++i)
        workers.emplace_back(work);
    for (std::thread& worker : workers)
        worker.join();
    std::printf("%d were killed within a save, %d left a rescue copy, at most %lld ms were lost\n", saving,
                rescues, worst / 1'000'000);
    EXPECT_GE(saving, trials / 50); // else the moments were badly chosen
    EXPECT_GE(rescues, trials / 25);
}

} // namespace
} // namespace shawlwright::tests
