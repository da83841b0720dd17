#include "app/painting/theme.h"

#include "core/pattern/questions.h"

namespace shawlwright::app {

Theme lightTheme()
{
    return {QColor(0xF7F5F2),
            QColor(0xFFFFFF),
            QColor(0x23211F),
            QColor(0x6B655D),
            QColor(0xDDD8D0),
            QColor(0xB9B2A7),
            QColor(0x8C857B),
            QColor(0x0F6B66),
            QColor(0xE3F0EE),
            QColor(0xD9D2C7),
            QColor(0xB3261E),
            QColor(0x9A6700),
            QColor(0x3E5C76),
            false};
}

Theme darkTheme()
{
    return {QColor(0x1F1E1C),
            QColor(0x2A2826),
            QColor(0xEDE9E3),
            QColor(0xA9A298),
            QColor(0x3B3835),
            QColor(0x5A554F),
            QColor(0x79746D),
            QColor(0x5CC2BA),
            QColor(0x17403D),
            QColor(0x46423D),
            QColor(0xFF8A80),
            QColor(0xF2C14E),
            QColor(0x9CB8D3),
            true};
}

Theme themeFor(const QPalette& palette)
{
    const bool dark =
        palette.color(QPalette::Window).lightnessF() < palette.color(QPalette::WindowText).lightnessF();
    return dark ? darkTheme() : lightTheme();
}

QColor mixed(const QColor& over, const QColor& ground, double share)
{
    const auto part = [share](int a, int b) { return static_cast<int>(share * a + (1 - share) * b + 0.5); };
    return QColor(part(over.red(), ground.red()), part(over.green(), ground.green()),
                  part(over.blue(), ground.blue()));
}

QColor yarnColour(const PatternHead& head, YarnId yarn)
{
    const Yarn* known = yarnOf(head, yarn);
    return known ? QColor(static_cast<QRgb>(known->colour)) : QColor(0x999999);
}

QColor colourOf(const Theme& theme, chart::Ink ink, const PatternHead& head, YarnId yarn)
{
    constexpr double tint = 0.2;
    switch (ink) {
    case chart::Ink::Paper:
        return theme.paper;
    case chart::Ink::GridLine: // seen on a yarn's tint too
        return mixed(theme.ink, theme.paper, 0.24);
    case chart::Ink::TenthLine:
        return mixed(theme.ink, theme.paper, 0.5);
    case chart::Ink::Resting:
        return mixed(theme.softInk, theme.paper, 0.8); // 3 : 1 on its ground
    case chart::Ink::Symbol:
    case chart::Ink::Label:
        return theme.ink;
    case chart::Ink::NoStitch:
        return theme.noStitch;
    case chart::Ink::BoxLine:
    case chart::Ink::TurnMark:
        return theme.accent;
    case chart::Ink::BracketLine:
    case chart::Ink::SoftLabel:
        return theme.softInk;
    case chart::Ink::MarkerLine:
        return theme.note;
    case chart::Ink::YarnTint:
        return mixed(yarnColour(head, yarn), theme.paper, tint);
    case chart::Ink::YarnFull:
        return yarnColour(head, yarn);
    case chart::Ink::FaultMark:
        return theme.error;
    }
    return theme.ink;
}

} // namespace shawlwright::app
