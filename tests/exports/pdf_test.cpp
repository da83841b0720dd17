// PDF, checked by qpdf and poppler: sound, fonts embedded, the size of the paper, every written row found
// once. Source: ISO 216, A4 is 210 by 297 mm; ANSI Letter is 8.5 by 11 inches. A point is 1/72 inch.

#include "app/exports/export_file.h"
#include "core/wording/writer/gather.h"
#include "tests/commandline/program.h"
#include "tests/exports/lace.h"
#include "tests/support/knit.h"

#include <QRegularExpression>

#include <gtest/gtest.h>

#include <sstream>

namespace shawlwright::app {

using namespace tests;

namespace {

struct Printed {
    Folder folder;
    std::string file;

    explicit Printed(const Pattern& pattern, const ExportOptions& options = {})
    {
        const auto made = exported(pattern, catalogue(), ExportKind::Pdf, options);
        EXPECT_TRUE(made.ok());
        if (made.ok())
            file = folder.write("a.pdf", text(made.value()));
    }

    std::string info(const char* name) const
    {
        const Ran ran = tool({"pdfinfo", file});
        const QRegularExpression line(QStringLiteral("^%1: *(.*)$").arg(QLatin1String(name)),
                                      QRegularExpression::MultilineOption);
        return line.match(QString::fromStdString(ran.out)).captured(1).toStdString();
    }

    std::string words() const { return squeezed(tool({"pdftotext", file, "-"}).out); }
};

TEST(Pdf, IsSoundAndItsFontsAreInIt)
{
    const Printed printed(lace(24, 20));
    const Ran check = tool({"qpdf", "--check", printed.file});
    EXPECT_EQ(check.code, 0) << check.out << check.err;
    const Ran fonts = tool({"pdffonts", printed.file});
    std::istringstream lines(fonts.out);
    std::string line;
    std::getline(lines, line);
    const auto column = line.find("emb");
    ASSERT_NE(column, std::string::npos);
    std::getline(lines, line);
    int count = 0;
    for (; std::getline(lines, line); ++count)
        EXPECT_EQ(line.substr(column, 3), "yes") << line;
    EXPECT_GT(count, 0);
    EXPECT_EQ(printed.info("Title"), "Fir Cone Shawl <&>");
}

TEST(Pdf, HasTheSizeOfThePaper)
{
    struct Case {
        Paper paper;
        double width, height;
    };
    for (const Case& c :
         {Case{Paper::A4, 210 / 25.4 * 72, 297 / 25.4 * 72}, Case{Paper::Letter, 8.5 * 72, 11.0 * 72}}) {
        ExportOptions options;
        options.paper = c.paper;
        std::istringstream size(Printed(smallShawl(), options).info("Page size"));
        double width = 0, height = 0;
        std::string by;
        size >> width >> by >> height;
        EXPECT_NEAR(width, c.width, 0.5);
        EXPECT_NEAR(height, c.height, 0.5);
    }
}

void everyRowOnce(const Pattern& pattern, const ExportOptions& options)
{
    const Printed printed(pattern, options);
    const std::string words = printed.words();
    const Ledger ledger = run(pattern, catalogue(), options.choice);
    int rows = 0;
    const Style style = styleOf(pattern.head);
    for (int section = 0; section < static_cast<int>(pattern.sections.size()); ++section) {
        const auto written = writtenRows(pattern, catalogue(), ledger, section, style);
        for (const WrittenLine& line : gathered(pattern, ledger, section, style, written)) {
            EXPECT_EQ(occurrences(words, squeezed(toText(line))), 1) << toText(line);
            ++rows;
        }
    }
    EXPECT_GT(rows, 1);
}

TEST(Pdf, EveryWrittenRowIsFoundOnce)
{
    everyRowOnce(lace(24, 20), {});
    ExportOptions letter;
    letter.paper = Paper::Letter;
    everyRowOnce(lace(30, 60), letter);
}

TEST(Pdf, PagesAreNumberedAndAllThere)
{
    const Printed printed(lace(70, 110));
    const int pages = std::stoi(printed.info("Pages"));
    EXPECT_GT(pages, 6);
    const std::string words = printed.words();
    for (int page = 1; page <= pages; ++page)
        EXPECT_EQ(occurrences(words, "page " + std::to_string(page) + " of " + std::to_string(pages)), 1)
            << page;
    EXPECT_NE(words.find("Continues to the left on page"), std::string::npos);
    EXPECT_NE(words.find("upwards on page"), std::string::npos);
}

TEST(Pdf, LettersCanBeSearched)
{
    const std::string words = Printed(lace(24, 4)).words();
    EXPECT_NE(words.find("A shawl that flows, with fine filigree."), std::string::npos)
        << words.substr(0, 400);
}

TEST(Pdf, OneSectionAlone)
{
    Pattern pattern = smallShawl();
    ExportOptions options;
    options.section = pattern.sections.back().id;
    const std::string words = Printed(pattern, options).words();
    EXPECT_NE(words.find("Border"), std::string::npos);
    EXPECT_EQ(words.find("Wing"), std::string::npos);
}

TEST(Pdf, SaysWhichRowsItLeavesOut)
{
    tests::Knit knit(6);
    knit.rs("k yo k2tog k*3").ws("p*6").rs("k*3 ssk yo k").ws("k*6");
    ExportOptions options;
    EXPECT_EQ(Printed(knit.done(), options).words().find("not shown"), std::string::npos);
    options.plainWsRows = false;
    const std::string words = Printed(knit.done(), options).words();
    for (const char* sentence : {"WS row 2 not shown: purl.", "WS row 4 not shown: knit."})
        EXPECT_NE(words.find(sentence), std::string::npos) << words;
}

TEST(Pdf, APatternWithoutSectionsHasItsCover)
{
    Pattern pattern = smallShawl();
    pattern.sections.clear();
    EXPECT_EQ(Printed(pattern).info("Pages"), "1");
}

} // namespace

} // namespace shawlwright::app
