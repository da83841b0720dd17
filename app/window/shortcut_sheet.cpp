#include "app/window/shortcut_sheet.h"

#include "app/panels/form_dialog.h"
#include "app/window/actions.h"

#include <QDialogButtonBox>
#include <QGridLayout>
#include <QKeySequence>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

ShortcutSheet::ShortcutSheet(QWidget* parent) : QDialog(parent)
{
    setWindowTitle(tr("Keys"));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(20, 16, 20, 16);
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName(QStringLiteral("panel"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    auto* sheet = new QWidget;
    auto* columns = new QHBoxLayout(sheet);
    columns->setContentsMargins(16, 12, 16, 12);
    columns->setSpacing(40);
    scroll->setWidget(sheet);
    outer->addWidget(scroll, 1);

    QGridLayout* grid = nullptr;
    const auto openColumn = [&] {
        auto* column = new QVBoxLayout;
        grid = new QGridLayout;
        grid->setHorizontalSpacing(16);
        grid->setVerticalSpacing(4);
        column->addLayout(grid);
        column->addStretch();
        columns->addLayout(column, 1);
    };
    const auto head = [&](const QString& words) {
        auto* label = new QLabel(words, sheet);
        label->setObjectName(QStringLiteral("strong"));
        label->setContentsMargins(0, grid->rowCount() > 1 ? 10 : 0, 0, 0);
        grid->addWidget(label, grid->rowCount(), 0, 1, 2);
    };
    const auto line = [&](const QString& does, const QString& keys) {
        const int row = grid->rowCount();
        auto* first = new QLabel(does, sheet);
        first->setWordWrap(true);
        first->setMinimumWidth(std::min(20 * first->fontMetrics().averageCharWidth(), first->fontMetrics().horizontalAdvance(does)));
        grid->addWidget(first, row, 0);
        QLabel* label = softLabel(keys, sheet);
        label->setMinimumWidth(std::min(18 * label->fontMetrics().averageCharWidth(), label->fontMetrics().horizontalAdvance(keys)));
        grid->addWidget(label, row, 1);
        grid->setColumnStretch(0, 3);
        grid->setColumnStretch(1, 2);
    };
    const auto nativeKeys = [](const char* keys) {
        QStringList words;
        for (const QString& one : QString::fromLatin1(keys).split(QStringLiteral("; ")))
            words << QKeySequence(one, QKeySequence::PortableText).toString(QKeySequence::NativeText);
        return words.join(QStringLiteral(", "));
    };
    MenuId menu = MenuId::Help;
    openColumn();
    for (const ActionEntry& entry : actionTable()) {
        if (entry.keys[0] == '\0' || belongsToChart(entry))
            continue;
        if (entry.menu != menu) {
            menu = entry.menu;
            if (menu == MenuId::Section)
                openColumn();
            head(menuTitle(menu).remove(QLatin1Char('&')));
        }
        line(actionWords(entry.text).remove(QLatin1Char('&')).remove(QStringLiteral("...")), nativeKeys(entry.keys));
    }
    openColumn();
    head(tr("In the chart"));
    for (const ActionEntry& entry : actionTable())
        if (belongsToChart(entry))
            line(actionWords(entry.text).remove(QLatin1Char('&')), nativeKeys(entry.keys));
    for (const ChartKey& key : chartKeys())
        line(actionWords(key.keys), actionWords(key.does));

    auto* buttons = new QDialogButtonBox(this);
    buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    outer->addWidget(buttons);
    const QSize room = screen()->availableSize();
    resize(std::min(room.width() - 40, 1160 * fontInfo().pixelSize() / 13), std::min(room.height() - 80, 760));
}

} // namespace shawlwright::app
