// Of several sizes every number that differs is told for all of them, the smallest first in front of parentheses (Craft
// Star Studios; The Knitter), or the whole export is of one size: never a mixture.
#include "app/exports/export_file.h"
#include "tests/commandline/program.h"
#include "tests/exports/lace.h"
#include "tests/support/knit.h"

#include <gtest/gtest.h>

#include <initializer_list>

namespace shawlwright::app {

using namespace tests;

namespace {

Pattern twoSizes()
{
    Knit knit(20);
    knit.pattern().head.title = "Two widths";
    knit.pattern().head.versions = {"Lace", "Plain"};
    knit.pattern().head.sizes = {"Small", "Large"};
    knit.pattern().head.castOn.stitches = Quantity(std::vector<int>{20, 28});
    knit.pattern().sections.front().frame.title = "Body";
    knit.rs("k*3 [ yo k2tog ]*7 k*3").ws("[ p ]end").rs("k yo [ k ]end");
    Pattern pattern = knit.done();
    pattern.sections[0].frame.boxes.front().times = Quantity(std::vector<int>{7, 11});
    return pattern;
}

std::string words(ExportKind kind, const ExportOptions& options)
{
    const auto made = exported(twoSizes(), catalogue(), kind, options);
    EXPECT_TRUE(made.ok());
    if (!made.ok() || kind != ExportKind::Pdf)
        return made.ok() ? text(made.value()) : std::string();
    const Folder folder;
    return squeezed(tool({"pdftotext", "-layout", folder.write("a.pdf", text(made.value())), "-"}).out);
}

bool has(const std::string& in, const std::string& part)
{
    return in.find(part) != std::string::npos;
}

void expectAll(const std::string& in, std::initializer_list<const char*> parts)
{
    for (const char* part : parts)
        EXPECT_TRUE(has(in, part)) << part << "\n" << in.substr(0, 4000);
}

} // namespace

TEST(Sizes, AllOfThemTogether)
{
    ExportOptions options;
    options.everySize = true;
    const std::string pdf = words(ExportKind::Pdf, options);
    expectAll(pdf, {"Small (Large)", "Cast on 20 (28) sts with MC", "7 (11) times", "(21 (29) sts)", "Version Lace"});
    const std::string svg = words(ExportKind::Svg, options);
    expectAll(svg, {"Body – Lace, sizes Small (Large)", ">21 (29)<", "begin with 20 (28) sts", "× 7 (11)"});
    const std::string txt = words(ExportKind::Text, options);
    expectAll(txt, {"Sizes: Small (Large)", "Cast on 20 (28) sts", "7 (11) times", "(21 (29) sts)"});
}

TEST(Sizes, OneAlone)
{
    ExportOptions options;
    options.choice = {1, 1};
    const std::string pdf = words(ExportKind::Pdf, options);
    expectAll(pdf, {"Size Large", "Cast on 28 sts with MC", "11 times", "(29 sts)", "Version Plain"});
    const std::string svg = words(ExportKind::Svg, options);
    expectAll(svg, {"Body – Plain, size Large", ">29<", "begin with 28 sts", "× 11"});
    const std::string txt = words(ExportKind::Text, options);
    expectAll(txt, {"Size: Large", "Cast on 28 sts", "11 times", "(29 sts)"});
    for (const std::string& all : {pdf, svg, txt})
        for (const char* part : {"Small", "7 (11)", "20 (28)", "21 (29)", "(21 sts)"})
            EXPECT_FALSE(has(all, part)) << part;
}

// A row repeat worked no times in a size leaves that size's stitches as they are.
TEST(Sizes, ARowThatOneSizeDoesNotWorkLeavesItsCount)
{
    Knit knit(10);
    knit.pattern().head.sizes = {"Small", "Large"};
    knit.pattern().sections.front().frame.title = "Body";
    knit.rs("k*2 yo [ k ]end").ws("[ k ]end").times(2, Quantity(std::vector<int>{0, 3})).rs("[ k ]end");
    ExportOptions options;
    options.everySize = true;
    const auto made = exported(knit.done(), catalogue(), ExportKind::Svg, options);
    ASSERT_TRUE(made.ok());
    const std::string svg = text(made.value());
    EXPECT_TRUE(has(svg, "begin with 10 sts"));
    EXPECT_TRUE(has(svg, ">10 (11)–10 (13)<"));
    EXPECT_TRUE(has(svg, ">10 (13)<"));
}

} // namespace shawlwright::app
