#include "app/painting/grey_theme.h"

namespace shawlwright::app {

Theme greyTheme()
{
    Theme theme = lightTheme();
    theme.window = QColor(0xF6F6F6);
    theme.paper = QColor(0xFFFFFF);
    theme.ink = QColor(0x111111);
    theme.softInk = QColor(0x5E5E5E);
    theme.line = QColor(0xD4D4D4);
    theme.tenthLine = QColor(0xA8A8A8);
    theme.accent = QColor(0x333333);
    theme.wash = QColor(0xE8E8E8);
    theme.noStitch = QColor(0xC6C6C6);
    theme.error = QColor(0x010101);
    theme.warning = QColor(0x444444);
    theme.note = QColor(0x555555);
    return theme;
}

} // namespace shawlwright::app
