// PNG: size and dots per inch, and pictures too large refused before memory is asked for.

#include "app/exports/export_file.h"
#include "app/exports/png_export.h"
#include "tests/exports/lace.h"

#include <QGuiApplication>
#include <QImage>
#include <QPalette>

#include <gtest/gtest.h>

namespace shawlwright::app {

using namespace tests;

namespace {

TEST(Png, HasTheSizeOfItsDotsPerInch)
{
    ExportOptions options;
    QSize sizes[2];
    const int dots[] = {100, 300};
    for (int i = 0; i < 2; ++i) {
        options.dpi = dots[i];
        const auto made = pngOf(lace(24, 10), catalogue(), options);
        ASSERT_TRUE(made.ok());
        const QImage image = QImage::fromData(made.value(), "PNG");
        ASSERT_FALSE(image.isNull());
        // Source: PNG 1.2, pHYs holds pixels per metre; an inch is 0.0254 m.
        EXPECT_EQ(image.dotsPerMeterX(), qRound(dots[i] / 0.0254));
        EXPECT_EQ(image.dotsPerMeterY(), qRound(dots[i] / 0.0254));
        sizes[i] = image.size();
    }
    EXPECT_NEAR(sizes[1].width(), 3 * sizes[0].width(), 3);
    EXPECT_NEAR(sizes[1].height(), 3 * sizes[0].height(), 3);
    EXPECT_GT(sizes[1].width(), 24 * 5 / 25.4 * 300);
}

TEST(Png, FortyThousandPixelsAreRefusedWithNumbers)
{
    ExportOptions options;
    options.cellMm = 20;
    options.dpi = 600;
    const auto made = pngOf(lace(90, 4), catalogue(), options); // 90 x 20 mm at 600 dots: over 42,000 pixels
    ASSERT_FALSE(made.ok());
    const std::string& said = made.fault().message;
    EXPECT_NE(said.find("32,767"), std::string::npos) << said;
    EXPECT_NE(said.find("600 dots per inch"), std::string::npos) << said;
    const auto fits = said.find(" dots per inch fit");
    ASSERT_NE(fits, std::string::npos) << said;
    const int told = std::stoi(said.substr(said.rfind(' ', fits - 1) + 1));
    const auto by = said.find(" by ");
    std::string digits = said.substr(said.rfind(' ', by - 1) + 1, by);
    std::erase(digits, ',');
    const double width = std::stod(digits);
    EXPECT_GT(width, 90 * 20 / 25.4 * 600);
    EXPECT_LE(width * told / 600, 32767);       // it does fit,
    EXPECT_GT(width * (told + 2) / 600, 32766); // and hardly more would
}

TEST(Png, KnowsNothingOfTheScreensColours)
{
    const QByteArray before = pngOf(smallShawl(), catalogue(), {}).value();
    const QPalette old = QGuiApplication::palette();
    QGuiApplication::setPalette(QPalette(Qt::white, Qt::black));
    EXPECT_EQ(pngOf(smallShawl(), catalogue(), {}).value(), before);
    QGuiApplication::setPalette(old);
    EXPECT_EQ(QImage::fromData(before).pixelColor(1, 1), QColor(Qt::white));
}

} // namespace

} // namespace shawlwright::app
