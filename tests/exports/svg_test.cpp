// SVG: well-formed (xmllint), of the size it says (rsvg-convert), a group per row, plain enough for page
// layout. Source: W3C, Scalable Vector Graphics 1.1; one CSS inch is 96 pixels, 25.4 mm (CSS Values and Units
// 3, 6.2).

#include "app/exports/export_file.h"
#include "tests/commandline/program.h"
#include "tests/exports/lace.h"
#include "tests/support/knit.h"

#include <QGuiApplication>
#include <QImage>
#include <QPalette>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace shawlwright::app {

using namespace tests;

namespace {

QByteArray svg(const Pattern& pattern, const ExportOptions& options = {})
{
    const auto made = exported(pattern, catalogue(), ExportKind::Svg, options);
    EXPECT_TRUE(made.ok());
    return made.ok() ? made.value() : QByteArray();
}

double millimetres(const QByteArray& bytes, const char* what)
{
    const QRegularExpression pattern(QStringLiteral("<svg[^>]* %1=\"([0-9.]+)mm\"").arg(QLatin1String(what)));
    return pattern.match(QString::fromUtf8(bytes)).captured(1).toDouble();
}

TEST(Svg, IsWellFormedAndSaysItsSizeTwice)
{
    const Folder folder;
    const QByteArray bytes = svg(lace(24, 10));
    const std::string file = folder.write("a.svg", text(bytes));
    const Ran lint = tool({"xmllint", "--noout", file});
    EXPECT_EQ(lint.code, 0) << lint.err;

    const double width = millimetres(bytes, "width"), height = millimetres(bytes, "height");
    EXPECT_GT(width, 24 * 5);
    EXPECT_GT(height, 10 * 5);
    const QRegularExpression box(QStringLiteral("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\""));
    const auto match = box.match(QString::fromUtf8(bytes));
    EXPECT_DOUBLE_EQ(match.captured(1).toDouble(), width);
    EXPECT_DOUBLE_EQ(match.captured(2).toDouble(), height);

    const Ran drawn = tool({"rsvg-convert", file, "-o", folder.at("a.png")});
    ASSERT_EQ(drawn.code, 0) << drawn.err;
    const QImage image(QString::fromStdString(folder.at("a.png")));
    EXPECT_NEAR(image.width(), width / 25.4 * 96, 1.01);
    EXPECT_NEAR(image.height(), height / 25.4 * 96, 1.01);
}

// A part of a section, as it is copied: without title and key, and nothing of what lies between its rectangles.
TEST(Svg, APartOfASectionIsDrawnAlone)
{
    const Folder folder;
    const Pattern pattern = lace(24, 10);
    ExportOptions options;
    options.section = pattern.sections.front().id;
    const auto groups = [](const QByteArray& bytes) { // of rows, not of their numbers or repeats
        int rows = 0;
        for (auto each = QRegularExpression(QStringLiteral("id=\"row-[0-9]+\"")).globalMatch(QString::fromUtf8(bytes));
             each.hasNext(); each.next())
            ++rows;
        return rows;
    };
    const QByteArray all = svg(pattern, options);
    options.part = {Area{2, 4, 3, 8}};
    const QByteArray one = svg(pattern, options);
    EXPECT_EQ(tool({"xmllint", "--noout", folder.write("part.svg", text(one))}).code, 0);
    EXPECT_NE(text(one).find("3 rows of 6 columns"), std::string::npos);
    EXPECT_EQ(groups(all), 10);
    EXPECT_EQ(groups(one), 3);
    EXPECT_EQ(text(one).find(pattern.sections.front().frame.title + "</text>"), std::string::npos);
    EXPECT_EQ(text(one).find("id=\"key"), std::string::npos);
    EXPECT_LT(millimetres(one, "width"), millimetres(all, "width"));
    options.part = {Area{2, 2, 3, 4}, Area{4, 4, 7, 8}};
    const QByteArray two = svg(pattern, options);
    EXPECT_NE(text(two).find("3 rows of 6 columns"), std::string::npos);
    EXPECT_LT(two.size(), one.size()); // fewer symbols in a frame of the same size
    EXPECT_DOUBLE_EQ(millimetres(two, "width"), millimetres(one, "width"));
    Pattern other = pattern; // between the two it makes no difference
    const At between[] = {{3, 5}};
    const auto painted = paint(other, catalogue(), *options.section, between, catalogue().require("s2kp"));
    ASSERT_TRUE(painted.ok());
    apply(other, painted.value());
    EXPECT_EQ(svg(other, options), two);
}

TEST(Svg, HasAGroupWithATitleForEachRowAndNoIdTwice)
{
    const QByteArray bytes = svg(smallShawl());
    std::set<QString> ids, titledRows;
    QXmlStreamReader xml(bytes);
    QString last;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        EXPECT_FALSE(xml.attributes().hasAttribute(QStringLiteral("transform")));
        EXPECT_FALSE(xml.attributes().hasAttribute(QStringLiteral("style")));
        EXPECT_NE(xml.name(), QStringLiteral("symbol"));
        EXPECT_NE(xml.name(), QStringLiteral("style"));
        const QString id = xml.attributes().value(QStringLiteral("id")).toString();
        if (!id.isEmpty()) {
            EXPECT_TRUE(ids.insert(id).second) << id.toStdString() << " twice";
        }
        if (xml.name() == QStringLiteral("title") && last.contains(QStringLiteral("row-")))
            titledRows.insert(last);
        last = id;
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    for (const int row : {1, 2, 3, 4, 5, 6})
        EXPECT_TRUE(titledRows.contains(QStringLiteral("section-1-row-%1").arg(row))) << row;
    for (const int row : {1, 2})
        EXPECT_TRUE(titledRows.contains(QStringLiteral("section-2-row-%1").arg(row))) << row;
    const std::string all = text(bytes);
    EXPECT_NE(all.find("role=\"img\""), std::string::npos);
    EXPECT_NE(all.find("Grüße &lt;&amp; Co&gt;"), std::string::npos);
    EXPECT_NE(all.find("sans-serif"), std::string::npos);
}

TEST(Svg, NumbersHaveAtMostFourDecimalsAndAPoint)
{
    ExportOptions options;
    options.cellMm = 4.7;
    const QString all = QString::fromUtf8(svg(lace(24, 6), options));
    EXPECT_FALSE(all.contains(QRegularExpression(QStringLiteral("[0-9]\\.[0-9]{5}"))));
    EXPECT_FALSE(all.contains(QRegularExpression(QStringLiteral("\"[^\"]*[0-9]e[-+]?[0-9]"))));
    EXPECT_FALSE(all.contains(QRegularExpression(QStringLiteral(" d=\"[^\"]*,"))));
}

TEST(Svg, OneSectionAloneHasPlainIds)
{
    Pattern pattern = smallShawl();
    ExportOptions options;
    options.section = pattern.sections.back().id;
    const std::string all = text(svg(pattern, options));
    EXPECT_NE(all.find("id=\"row-1\""), std::string::npos);
    EXPECT_EQ(all.find("Wing"), std::string::npos);
}

TEST(Svg, OutlinesNeedNoFont)
{
    ExportOptions options;
    options.lettering = Lettering::Outlines;
    const QByteArray bytes = svg(smallShawl(), options);
    EXPECT_EQ(text(bytes).find("<text"), std::string::npos);
    const Folder folder;
    EXPECT_EQ(tool({"xmllint", "--noout", folder.write("a.svg", text(bytes))}).code, 0);
    EXPECT_NE(text(svg(smallShawl())).find("<text"), std::string::npos);
}

// The two exports are painted by programs that know nothing of each other: ours, and librsvg.
TEST(Svg, LooksAsThePngDoes)
{
    const Pattern pattern = lace(24, 10);
    ExportOptions options;
    options.dpi = 96;
    options.lettering = Lettering::Outlines;
    const Folder folder;
    ASSERT_EQ(
        tool({"rsvg-convert", folder.write("a.svg", text(svg(pattern, options))), "-o", folder.at("a.png")})
            .code,
        0);
    const QImage theirs =
        QImage(QString::fromStdString(folder.at("a.png"))).convertToFormat(QImage::Format_Grayscale8);
    const auto made = exported(pattern, catalogue(), ExportKind::Png, options);
    ASSERT_TRUE(made.ok());
    const QImage ours = QImage::fromData(made.value()).convertToFormat(QImage::Format_Grayscale8);
    double difference = 0, ink = 0;
    const int width = std::min(ours.width(), theirs.width()),
              height = std::min(ours.height(), theirs.height());
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x) {
            const int a = qGray(ours.pixel(x, y)), b = qGray(theirs.pixel(x, y));
            difference += std::abs(a - b);
            ink += 255 - a;
        }
    EXPECT_GT(ink / (255.0 * width * height), 0.01) << "an empty picture proves nothing";
    EXPECT_LT(difference / ink, 0.25);
}

TEST(Svg, KnowsNothingOfTheScreensColours)
{
    const QByteArray before = svg(smallShawl());
    const QPalette old = QGuiApplication::palette();
    QGuiApplication::setPalette(QPalette(Qt::white, Qt::black));
    EXPECT_EQ(svg(smallShawl()), before);
    QGuiApplication::setPalette(old);
}

TEST(Svg, LeavesPlainRowsOutWhereAskedAndSaysSo)
{
    tests::Knit knit(6);
    knit.rs("k yo k2tog k*3").ws("p*6").rs("k*3 ssk yo k").ws("p*6");
    ExportOptions options;
    const QString whole = QString::fromUtf8(svg(knit.done(), options));
    options.plainWsRows = false;
    const QByteArray bytes = svg(knit.done(), options);
    const QString fewer = QString::fromUtf8(bytes);
    for (const char* id : {"id=\"row-1\"", "id=\"row-3\""})
        EXPECT_TRUE(fewer.contains(QLatin1String(id))) << id;
    for (const char* id : {"id=\"row-2\"", "id=\"row-4\""}) {
        EXPECT_TRUE(whole.contains(QLatin1String(id))) << id;
        EXPECT_FALSE(fewer.contains(QLatin1String(id))) << id;
    }
    EXPECT_TRUE(fewer.contains(QStringLiteral("WS rows not shown: purl.")));
    EXPECT_FALSE(whole.contains(QStringLiteral("not shown")));
    EXPECT_TRUE(fewer.contains(QStringLiteral("2 rows of 6 columns")));
    EXPECT_LT(millimetres(bytes, "height"), millimetres(svg(knit.done()), "height"));
}

TEST(Svg, APatternWithoutAChartIsTold)
{
    Pattern pattern = smallShawl();
    pattern.sections.clear();
    const auto made = exported(pattern, catalogue(), ExportKind::Svg, {});
    ASSERT_FALSE(made.ok());
    EXPECT_NE(made.fault().message.find("no chart"), std::string::npos);
}

} // namespace

} // namespace shawlwright::app
