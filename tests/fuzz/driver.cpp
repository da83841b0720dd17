// Stands in for libFuzzer where the compiler has none: changes the seeds a fixed number of times, the same
// way each time.
//
//     fuzz_text RUNS FOLDER...       all runs
//     fuzz_text -one RUN FOLDER...   one of them, which is written to standard output first

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

std::vector<std::string> seedsIn(char** folders, int count)
{
    std::vector<std::filesystem::path> paths;
    for (int i = 0; i < count; ++i)
        for (const auto& entry : std::filesystem::recursive_directory_iterator(folders[i]))
            if (entry.is_regular_file() && entry.file_size() < 1u << 16)
                paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<std::string> seeds;
    for (const auto& path : paths) {
        std::ifstream in(path, std::ios::binary);
        seeds.emplace_back(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
    }
    return seeds;
}

std::string changed(const std::vector<std::string>& seeds, unsigned run)
{
    std::mt19937 random(run);
    const auto below = [&](std::size_t n) { return n == 0 ? 0 : static_cast<std::size_t>(random()) % n; };
    std::string text = seeds[below(seeds.size())];
    const std::string& other = seeds[below(seeds.size())];
    static const char* const pieces[] = {"*",           "**",
                                         "[",           "]",
                                         "(",           ")",
                                         "rep from * ", "to end",
                                         "999999",      "0",
                                         "-1",          "sm",
                                         "pm",          "turn",
                                         "\"",          "{",
                                         "}",           ",",
                                         ":",           "\n",
                                         "\xC3",        "\xE2\x80\x99",
                                         "Row ",        "Rep Rows 1-2 ",
                                         "more times",  "yo twice",
                                         "psso",        "bo 5",
                                         "null"};
    for (std::size_t changes = 1 + below(8); changes > 0; --changes) {
        const std::size_t at = below(text.size() + 1);
        const std::size_t length = std::min(below(40), text.size() - at);
        switch (below(7)) {
        case 0:
            text.erase(at, length);
            break;
        case 1:
            text.insert(at, pieces[below(std::size(pieces))]);
            break;
        case 2:
            if (at < text.size())
                text[at] = static_cast<char>(random() % 256);
            break;
        case 3:
            text.insert(at, text.substr(at, length));
            break;
        case 4: {
            const std::size_t from = below(other.size() + 1);
            text.insert(at, other.substr(from, below(80)));
            break;
        }
        case 5:
            text.resize(at);
            break;
        default:
            for (std::size_t i = at; i < text.size(); ++i)
                if (text[i] >= '0' && text[i] <= '9') {
                    text[i] = static_cast<char>('0' + random() % 10);
                    break;
                }
            break;
        }
    }
    return text;
}

} // namespace

int main(int argc, char** argv)
{
    const bool one = argc > 1 && std::string(argv[1]) == "-one";
    const int number = one ? 2 : 1;
    if (argc <= number + 1) {
        std::fputs("fuzz: [-one] RUNS FOLDER...\n", stderr);
        return 2;
    }
    const std::vector<std::string> seeds = seedsIn(argv + number + 1, argc - number - 1);
    if (seeds.empty())
        return 2;
    const unsigned runs = static_cast<unsigned>(std::atol(argv[number]));
    for (unsigned run = one ? runs : 1; run <= runs; ++run) {
        const std::string text = changed(seeds, run);
        if (one)
            std::fwrite(text.data(), 1, text.size(), stdout);
        if (run % 5000 == 0)
            std::fprintf(stderr, "run %u\n", run);
        LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
    }
    std::printf("%u runs from %zu seeds\n", one ? 1 : runs, seeds.size());
    return 0;
}
