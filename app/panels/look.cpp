#include "app/panels/look.h"

#include <QApplication>
#include <QFontDatabase>
#include <QFontInfo>
#include <QPainter>
#include <QProxyStyle>
#include <QStyle>
#include <QStyleFactory>
#include <QStyleOption>
#include <QToolTip>
#include <QWidget>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr int plainPixels = 13;

// Of what can't be used at the moment.
QColor faintInk(const Theme& theme)
{
    return theme.dark ? QColor(0x7A746B) : QColor(0xA39C92);
}

// The style's own box is drawn a little darker than its ground, which on a dark one can't be seen.
class OwnBoxes : public QProxyStyle {
public:
    OwnBoxes() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion")))
    {
        setObjectName(QStringLiteral("fusion"));
    }

    int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget, QStyleHintReturn* more) const override
    {
        // A menu higher than the screen scrolls; in two columns it may be wider than the screen.
        return hint == SH_Menu_Scrollable ? 1 : QProxyStyle::styleHint(hint, option, widget, more);
    }

    int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override
    {
        return metric == PM_ToolBarExtensionExtent ? 20 : QProxyStyle::pixelMetric(metric, option, widget);
    }

    void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                       const QWidget* widget) const override
    {
        if (element != PE_IndicatorCheckBox) {
            QProxyStyle::drawPrimitive(element, option, painter, widget);
            return;
        }
        const Theme theme = themeFor(option->palette);
        const bool can = option->state.testFlag(State_Enabled);
        const bool on = option->state.testFlag(State_On), part = option->state.testFlag(State_NoChange);
        const bool near = option->state.testFlag(State_MouseOver) || option->state.testFlag(State_HasFocus);
        const QRectF box = QRectF(option->rect).adjusted(1, 1, -1, -1);
        const QColor frame = !can ? theme.line : on || part || near ? theme.accent : theme.softInk;
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setPen(QPen(frame, 1));
        painter->setBrush(on || part ? frame : theme.dark ? theme.window : theme.paper);
        painter->drawRoundedRect(box, 3, 3);
        painter->setPen(QPen(can ? (theme.dark ? theme.window : theme.paper) : faintInk(theme), 1.8, Qt::SolidLine,
                             Qt::RoundCap, Qt::RoundJoin));
        const auto at = [&](double x, double y) {
            return QPointF(box.left() + x * box.width(), box.top() + y * box.height());
        };
        if (on)
            painter->drawPolyline(QPolygonF({at(0.22, 0.52), at(0.42, 0.72), at(0.78, 0.28)}));
        else if (part)
            painter->drawLine(at(0.25, 0.5), at(0.75, 0.5));
        painter->restore();
    }
};

} // namespace

Theme themeOf(const QWidget& widget)
{
    return themeFor(widget.palette());
}

QPalette paletteOf(const Theme& theme)
{
    QPalette palette;
    palette.setColor(QPalette::Window, theme.window);
    palette.setColor(QPalette::WindowText, theme.ink);
    palette.setColor(QPalette::Base, theme.paper);
    palette.setColor(QPalette::AlternateBase, theme.window);
    palette.setColor(QPalette::Text, theme.ink);
    palette.setColor(QPalette::PlaceholderText, theme.softInk);
    palette.setColor(QPalette::Button, theme.dark ? theme.paper : theme.window);
    palette.setColor(QPalette::ButtonText, theme.ink);
    palette.setColor(QPalette::BrightText, theme.error);
    palette.setColor(QPalette::ToolTipBase, theme.paper);
    palette.setColor(QPalette::ToolTipText, theme.ink);
    palette.setColor(QPalette::Highlight, theme.accent);
    palette.setColor(QPalette::HighlightedText, theme.dark ? theme.window : theme.paper);
    palette.setColor(QPalette::Link, theme.accent);
    palette.setColor(QPalette::LinkVisited, theme.accent);
    palette.setColor(QPalette::Light, theme.paper);
    palette.setColor(QPalette::Midlight, theme.line);
    palette.setColor(QPalette::Mid, theme.line);
    palette.setColor(QPalette::Dark, theme.tenthLine);
    palette.setColor(QPalette::Shadow, theme.tenthLine);
    const QColor faint = faintInk(theme);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, faint);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, theme.line);
    return palette;
}

QString styleSheetOf(const Theme& theme, const QFont& font)
{
    QString sheet = QStringLiteral(R"(
QMainWindow { background: @window; }
#rowWords { background: @wash; border: 1px solid @accent; border-radius: 5px; }
QDialogButtonBox { dialogbuttonbox-buttons-have-icons: 0; }
QMainWindow::separator { background: @window; width: 4px; height: 4px; }
QMainWindow::separator:hover { background: @line; }
QMenuBar { background: @window; padding: 2px 8px; }
QMenuBar::item { padding: 4px 8px; border-radius: 4px; background: transparent; }
QMenuBar::item:selected { background: @wash; color: @ink; }
QMenu { background: @paper; border: 1px solid @line; padding: 4px; }
QMenu::item { padding: 5px 28px 5px 24px; border-radius: 4px; }
QMenu::item:selected { background: @wash; color: @ink; }
QMenu::item:disabled { color: @faint; }
QMenu::separator { height: 1px; background: @line; margin: 4px 8px; }
QMenu::indicator { width: 14px; height: 14px; left: 6px; }
QToolBar { background: @paper; border: none; border-bottom: 1px solid @line; padding: 5px 8px; spacing: 1px; }
QToolBar::separator { background: @line; width: 1px; margin: 4px 6px; }
QToolBar QToolButton { padding: 4px 7px; border: 1px solid transparent; border-radius: 5px; background: transparent; }
QToolBar QToolButton:hover { background: @window; }
QToolBar QToolButton:pressed { background: @wash; }
QToolBar QToolButton:checked { background: @wash; border-color: @accent; color: @accent; font-weight: 600; }
QToolBar QToolButton:disabled { color: @faint; }
QToolBar QToolButton:focus { border-color: @accent; }
QToolBar QToolButton[popupMode="1"] { padding-right: 18px; }
QToolBar QToolButton::menu-button { border: none; width: 16px; }
QToolBar QToolButton#qt_toolbar_ext_button { padding: 0; background: @wash; }
QToolBar QToolButton#moreTools { padding-right: 20px; background: @wash; }
QToolBar QToolButton#moreTools::menu-indicator { subcontrol-origin: padding; subcontrol-position: right center; right: 6px; }
QStatusBar { background: @window; border-top: 1px solid @line; }
QStatusBar::item { border: none; }
QStatusBar QLabel { padding: 3px 8px; }
QToolTip { background: @paper; color: @ink; border: 1px solid @tenth; padding: 4px 6px; }
QDockWidget > QWidget { background: @paper; }
QWidget#panel, QWidget#panelTitle, QWidget#startPage, QScrollArea#panel, QScrollArea#panel > QWidget > QWidget { background: @paper; }
QLabel#panelHeading { color: @soft; font-weight: 600; }
QLabel#soft { color: @soft; }
QLabel#fault, QLabel[wrong="true"] { color: @error; }
QLabel#lookOnly { background: @wash; color: @ink; font-weight: 600; padding: 6px 16px; border-bottom: 1px solid @accent; }
QLabel#emptyHint { background: @paper; color: @ink; border: 1px solid @tenth; border-radius: 6px; padding: 14px 20px; }
QLabel#saidWhole { background: @paper; color: @ink; border: 1px solid @accent; border-radius: 6px; padding: 8px 12px; }
QToolBar#firstSteps { background: @wash; }
QToolBar#firstSteps QLabel { padding: 2px 8px; }
QFrame#hairline { border: none; border-top: 1px solid @line; max-height: 1px; }
QLabel#strong, QLabel#dialogHeading { font-weight: 600; }
QLabel#dialogHeading { font-size: @headingpx; }
QToolButton#quiet { border: 1px solid transparent; border-radius: 4px; padding: 1px 4px; color: @accent; font-weight: 600; }
QToolButton#quiet:hover { background: @wash; }
QToolButton#quiet:focus { background: @wash; border-color: @accent; }
QScrollArea#panel { border: 1px solid transparent; }
QScrollArea#panel:focus { border-color: @accent; }
QToolButton#quiet:disabled { color: @faint; }
QToolButton#more, QToolButton#less { border: none; background: transparent; padding: 0; }
QLineEdit, QPlainTextEdit, QTextEdit, QAbstractSpinBox, QComboBox {
    background: @field; border: 1px solid @edge; border-radius: 4px; padding: 3px 7px; min-height: @fieldpx;
    selection-background-color: @accent; selection-color: @onaccent; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QAbstractSpinBox:focus, QComboBox:focus { border-color: @accent; }
QLineEdit:disabled, QAbstractSpinBox:disabled, QComboBox:disabled { color: @faint; background: @window; }
QLineEdit[wrong="true"] { border-color: @error; }
QAbstractSpinBox { padding-right: 18px; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { border: none; width: 18px; background: transparent; }
QAbstractSpinBox::up-arrow { width: 0; height: 0; border-left: 4px solid @field; border-right: 4px solid @field;
    border-bottom: 4px solid @soft; }
QAbstractSpinBox::down-arrow { width: 0; height: 0; border-left: 4px solid @field; border-right: 4px solid @field;
    border-top: 4px solid @soft; }
QAbstractSpinBox::up-arrow:off, QAbstractSpinBox::up-arrow:disabled { border-bottom-color: @line; }
QAbstractSpinBox::down-arrow:off, QAbstractSpinBox::down-arrow:disabled { border-top-color: @line; }
QComboBox::drop-down { border: none; width: 22px; }
QComboBox::down-arrow { width: 0; height: 0; border-left: 4px solid @field; border-right: 4px solid @field;
    border-top: 5px solid @soft; }
QComboBox::down-arrow:disabled { border-left-color: @window; border-right-color: @window; border-top-color: @line; }
QComboBox QAbstractItemView { background: @paper; border: 1px solid @line; selection-background-color: @wash;
    selection-color: @ink; outline: none; padding: 2px; }
QPushButton { background: @field; border: 1px solid @edge; border-radius: 5px; padding: 5px 14px; min-height: @buttonpx; }
QPushButton:hover { border-color: @soft; }
QPushButton:focus { border-color: @accent; }
QPushButton:default { background: @accent; color: @onaccent; border-color: @accent; font-weight: 600; }
QPushButton:default:focus { border: 2px solid @ink; padding: 4px 13px; }
QPushButton:default:hover { background: @accenthover; }
QPushButton:default:disabled { background: @line; border-color: @line; color: @faint; }
QPushButton:disabled { color: @faint; }
QPushButton#swatch { min-height: 0; padding: 0; }
QFrame#notes, QListWidget { padding: 4px; }
QListWidget::item { padding: 3px 6px; border-radius: 4px; }
QListWidget::item:selected { background: @wash; color: @ink; }
QListWidget::item:selected:focus { border: 1px solid @accent; padding: 2px 5px; }
QWidget#findBar { background: @paper; border-top: 1px solid @line; }
QListView, QTableView, QTreeView { background: @paper; border: none; outline: none; }
QListWidget { border: 1px solid @line; border-radius: 4px; }
QDialog QListWidget { background: @field; border-color: @edge; }
QListWidget:focus, QDialog QListWidget:focus { border-color: @accent; }
QTableView { border: 1px solid @line; border-radius: 4px; gridline-color: @line;
    selection-background-color: @wash; selection-color: @ink; }
QHeaderView::section { background: @window; color: @soft; border: none; border-bottom: 1px solid @line; padding: 4px 6px; }
QAbstractScrollArea::corner { background: transparent; border: none; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 10px; margin: 0; }
QScrollBar::handle { background: @tenth; border-radius: 3px; margin: 2px; }
QScrollBar::handle:vertical { min-height: 24px; }
QScrollBar::handle:horizontal { min-width: 24px; }
QScrollBar::handle:hover { background: @soft; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QTabWidget::pane { border: none; border-top: 1px solid @line; }
QTabBar::tab { padding: 6px 12px; border: none; border-bottom: 2px solid transparent; color: @soft; }
QTabBar::tab:selected { color: @ink; border-bottom-color: @accent; font-weight: 600; }
)");
    const std::pair<const char*, QString> names[] = {
        {"@headingpx", QString::number(font.pixelSize() * 16 / plainPixels) + QStringLiteral("px")},
        {"@fieldpx", QString::number(font.pixelSize() * 20 / plainPixels) + QStringLiteral("px")},
        {"@buttonpx", QString::number(font.pixelSize() * 18 / plainPixels) + QStringLiteral("px")},
        {"@accenthover", theme.accent.lighter(theme.dark ? 112 : 118).name()},
        {"@onaccent", (theme.dark ? theme.window : theme.paper).name()},
        {"@field", (theme.dark ? theme.window : theme.paper).name()},
        {"@faint", faintInk(theme).name()},
        {"@window", theme.window.name()},
        {"@paper", theme.paper.name()},
        {"@ink", theme.ink.name()},
        {"@soft", theme.softInk.name()},
        {"@line", theme.line.name()},
        {"@tenth", theme.tenthLine.name()},
        {"@edge", theme.edge.name()},
        {"@accent", theme.accent.name()},
        {"@wash", theme.wash.name()},
        {"@error", theme.error.name()},
    };
    for (const auto& [name, colour] : names)
        sheet.replace(QLatin1String(name), colour);
    return sheet;
}

QFont windowFont(int textPercent)
{
    static const QFont desktops = QApplication::font(); // before ours is set
    QFont font = desktops;
    const QStringList families = QFontDatabase::families();
    if (families.contains(QStringLiteral("Inter")))
        font.setFamily(QStringLiteral("Inter"));
    font.setPixelSize(std::max(plainPixels, QFontInfo(desktops).pixelSize()) * textPercent / 100);
    return font;
}

QFont smaller(QFont font)
{
    font.setPixelSize(std::max(1, QFontInfo(font).pixelSize() * 11 / plainPixels));
    return font;
}

QFont heading(QFont font)
{
    font.setWeight(QFont::DemiBold);
    return font;
}

void dress(const Theme& theme, int textPercent)
{
    if (QApplication::style()->objectName().compare(QLatin1String("fusion"), Qt::CaseInsensitive) != 0)
        QApplication::setStyle(new OwnBoxes);
    // The style sheet keeps a later change of the font from widgets that are there already, so it comes
    // first.
    const QFont font = windowFont(textPercent);
    if (QApplication::font() != font) {
        qApp->setStyleSheet({});
        QApplication::setFont(font);
    }
    QToolTip::setFont(font);
    QApplication::setPalette(paletteOf(theme));
    QToolTip::setPalette(paletteOf(theme));
    qApp->setStyleSheet(styleSheetOf(theme, font));
}

} // namespace shawlwright::app
