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
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>
#include <optional>
#include <vector>

namespace shawlwright::app {

namespace {

struct Group {
    QString heading;
    std::vector<std::pair<QString, QString>> lines; // what stands left and right
};

QString nativeKeys(const ActionEntry& entry)
{
    QStringList words;
    for (const QString& one : QString::fromLatin1(entry.keys).split(QStringLiteral("; ")))
        words << QKeySequence(one, QKeySequence::PortableText).toString(QKeySequence::NativeText);
    return words.join(QStringLiteral(", "));
}

std::vector<Group> groupsOfKeys()
{
    const auto plain = [](const ActionEntry& entry) {
        QString words = actionWords(entry.text).remove(QLatin1Char('&')).remove(QStringLiteral("..."));
        return isPanel(entry.id) ? ShortcutSheet::tr("Panel: %1").arg(words) : words;
    };
    std::vector<Group> groups;
    Group chart{ShortcutSheet::tr("In the chart"), {}};
    std::optional<MenuId> menu;
    for (const ActionEntry& entry : actionTable()) {
        if (belongsToChart(entry)) {
            chart.lines.emplace_back(plain(entry), nativeKeys(entry));
            continue;
        }
        if (menu != entry.menu)
            groups.push_back({menuTitle(entry.menu).remove(QLatin1Char('&')), {}});
        menu = entry.menu;
        groups.back().lines.emplace_back(plain(entry), nativeKeys(entry));
    }
    for (const ChartKey& key : chartKeys())
        chart.lines.emplace_back(actionWords(key.keys), actionWords(key.does));
    groups.push_back(std::move(chart));
    return groups;
}

} // namespace

ShortcutSheet::ShortcutSheet(QWidget* parent) : QDialog(parent)
{
    setWindowTitle(tr("Keys"));
    const QSize room = screen()->availableSize();
    resize(std::min(room.width() - 40, 1560 * fontInfo().pixelSize() / 13), height());
    constexpr int beside = 16, between = 40; // of the two texts of a line, of columns
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(20, 16, 20, 16);
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName(QStringLiteral("panel"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff); // as many columns as there is room for
    auto* sheet = new QWidget;
    auto* columns = new QHBoxLayout(sheet);
    columns->setContentsMargins(16, 12, 16, 12);
    columns->setSpacing(between);
    scroll->setWidget(sheet);
    outer->addWidget(scroll, 1);

    const int letter = fontMetrics().averageCharWidth();
    const int whole = width() - 40 - 32 - 8 - scroll->verticalScrollBar()->sizeHint().width() + between;
    const int most = std::clamp(whole / (38 * letter + beside + between), 1, 4);
    const int share = std::min(38 * letter, whole / most - beside - between);
    const int does = share * 20 / 38, keys = share - does; // at least
    QGridLayout* grid = nullptr;
    const auto openColumn = [&] {
        auto* column = new QVBoxLayout;
        grid = new QGridLayout;
        grid->setHorizontalSpacing(beside);
        grid->setVerticalSpacing(4);
        grid->setColumnStretch(0, 3);
        grid->setColumnStretch(1, 2);
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
    const auto line = [&](const QString& left, const QString& right) {
        const int row = grid->rowCount();
        auto* first = new QLabel(left, sheet);
        first->setWordWrap(true);
        first->setMinimumWidth(std::min(does, first->fontMetrics().horizontalAdvance(left)));
        grid->addWidget(first, row, 0, Qt::AlignTop);
        QLabel* second = softLabel(right, sheet);
        second->setMinimumWidth(std::min(keys, second->fontMetrics().horizontalAdvance(right)));
        grid->addWidget(second, row, 1, Qt::AlignTop);
    };
    const std::vector<Group> groups = groupsOfKeys();
    std::size_t all = 0, placed = 0;
    for (const Group& group : groups)
        all += group.lines.size() + 1;
    int opened = 0;
    for (const Group& group : groups) {
        // A column is full once half of this group would stand below its share.
        const std::size_t lines = group.lines.size() + 1;
        if (opened == 0 || (opened < most && placed + lines / 2 >= all * static_cast<std::size_t>(opened) / static_cast<std::size_t>(most))) {
            openColumn();
            ++opened;
        }
        head(group.heading);
        for (const auto& [left, right] : group.lines)
            line(left, right);
        placed += lines;
    }

    auto* buttons = new QDialogButtonBox(this);
    buttons->addButton(tr("Close"), QDialogButtonBox::RejectRole);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    outer->addWidget(buttons);
    const int around = 32 + outer->spacing() + buttons->sizeHint().height();
    resize(width(), std::min(room.height() - 80, sheet->sizeHint().height() + around)); // read without scrolling where it can be
}

} // namespace shawlwright::app
