// Contrast of the window's colours. Source: WCAG 2.2, 1.4.3 (text 4.5 : 1) and 1.4.11 (edges of controls and marks 3 : 1).
#include "app/painting/theme.h"
#include "core/base/colour.h"

#include <gtest/gtest.h>

namespace shawlwright::app {

namespace {

double contrast(const QColor& a, const QColor& b)
{
    return contrastRatio(a.rgb() & 0xFFFFFF, b.rgb() & 0xFFFFFF);
}

} // namespace

TEST(Themes, TextAndMarksAreSeenOnTheirGrounds)
{
    for (const Theme& theme : {lightTheme(), darkTheme()})
        for (const QColor& ground : {theme.window, theme.paper}) {
            for (const QColor& text : {theme.ink, theme.softInk, theme.accent, theme.error})
                EXPECT_GE(contrast(text, ground), 4.5) << text.name().toStdString() << " on " << ground.name().toStdString();
            for (const QColor& mark : {theme.edge, theme.warning, theme.note})
                EXPECT_GE(contrast(mark, ground), 3) << mark.name().toStdString() << " on " << ground.name().toStdString();
        }
}

} // namespace shawlwright::app
