// Whole charts as text beside the expected text. Where they differ the new one is left beside it, as
// *.new.txt; run with SHAWLWRIGHT_ACCEPT=1 after looking at it.
#include "core/chart/chart.h"
#include "core/files/builtin_catalogue.h"
#include "tests/drawn/sample.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace shawlwright::chart {
namespace {

std::string read(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

void write(const std::filesystem::path& path, const std::string& text)
{
    std::ofstream(path, std::ios::binary) << text;
}

void expectDrawn(const std::string& name, const std::string& drawn)
{
    const std::filesystem::path folder =
        std::filesystem::path(SHAWLWRIGHT_SOURCE) / "tests" / "drawn" / "expected";
    const auto expected = folder / (name + ".txt"), fresh = folder / (name + ".new.txt");
    const char* accept = std::getenv("SHAWLWRIGHT_ACCEPT");
    if (accept && std::string(accept) == "1") {
        std::filesystem::create_directories(folder);
        write(expected, drawn);
        std::filesystem::remove(fresh);
        return;
    }
    const std::string before = read(expected);
    if (before == drawn) {
        std::filesystem::remove(fresh);
        return;
    }
    write(fresh, drawn);
    std::istringstream a(before), b(drawn);
    std::string lineA, lineB;
    int number = 0;
    do {
        ++number;
        lineA = lineB = "(end)";
        std::getline(a, lineA);
        std::getline(b, lineB);
    } while (lineA == lineB && (a || b));
    ADD_FAILURE() << name << " differs in line " << number << "\nexpected: " << lineA
                  << "\ndrawn:    " << lineB << "\nThe new drawing is in " << fresh
                  << "; look at it, then run with SHAWLWRIGHT_ACCEPT=1.";
}

std::string drawnChart(const Sample& sample, const ChartOptions& options = {})
{
    return dump(chartOf({sample.section, sample.head, builtInCatalogue(), sample.facts}, options));
}

TEST(Drawn, Wedge)
{
    expectDrawn("wedge", drawnChart(wedgeSample(builtInCatalogue())));
}

TEST(Drawn, Lace)
{
    expectDrawn("lace", drawnChart(laceSample(builtInCatalogue())));
}

TEST(Drawn, PageOfTheWedge)
{
    ChartOptions options;
    options.firstRow = 2;
    options.lastRow = 7;
    options.firstColumn = 4;
    options.lastColumn = 17;
    options.cellHeight = 0.75;
    options.key = false;
    expectDrawn("wedge_page", drawnChart(wedgeSample(builtInCatalogue()), options));
}

TEST(Drawn, TurnMarks)
{
    std::string text;
    for (const Side side : {Side::RS, Side::WS})
        for (int m = 0; m <= static_cast<int>(TurnMethod::TwinStitch); ++m) {
            text += std::string(side == Side::RS ? "RS " : "WS ") + std::to_string(m) + "\n";
            for (const Shape& shape : turnMark(static_cast<TurnMethod>(m), side).shapes)
                text += "  " + dump(shape) + "\n";
        }
    expectDrawn("turn_marks", text);
}

} // namespace
} // namespace shawlwright::chart
