#include "app/window/start_page.h"

#include "app/panels/form_dialog.h"

#include <QDir>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QToolButton>
#include <QVBoxLayout>

namespace shawlwright::app {

namespace {

constexpr int pathRole = Qt::UserRole;
constexpr int thereRole = Qt::UserRole + 1;

// As high as what is in it at the width it has; the page scrolls, not the list.
class FileList : public QListWidget {
public:
    using QListWidget::QListWidget;
    QSize sizeHint() const override { return {QListWidget::sizeHint().width(), contentHeight()}; }
    QSize minimumSizeHint() const override { return {QListWidget::minimumSizeHint().width(), contentHeight()}; }

protected:
    void resizeEvent(QResizeEvent* event) override
    {
        QListWidget::resizeEvent(event);
        if (event->size().width() != event->oldSize().width())
            updateGeometry();
    }

private:
    int contentHeight() const
    {
        const_cast<FileList*>(this)->executeDelayedItemsLayout(); // lines wrap at the present width
        const int low = count() > 0 ? visualItemRect(item(count() - 1)).bottom() + 1 + verticalOffset() : 0;
        return low + spacing() + 2 * frameWidth();
    }
};

QListWidget* fileList(const QString& name, QWidget* parent)
{
    auto* list = new FileList(parent);
    list->setAccessibleName(name);
    list->setWordWrap(true);
    list->setSpacing(2);
    list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    return list;
}

// "rockpool-shawl" is a file's way of writing it.
QString titleOf(const QString& path)
{
    QString title = QFileInfo(path).completeBaseName();
    title.replace(QLatin1Char('-'), QLatin1Char(' '));
    if (!title.isEmpty())
        title[0] = title[0].toUpper();
    return title;
}

} // namespace

StartPage::StartPage(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("startPage"));
    setAttribute(Qt::WA_StyledBackground);
    setAutoFillBackground(true);
    setAccessibleName(tr("Start page"));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName(QStringLiteral("panel"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    outer->addWidget(scroll);
    auto* ground = new QWidget(scroll);
    scroll->setWidget(ground);
    auto* page = new QWidget(ground); // on a wide screen lines that long are hard to read
    page->setMaximumWidth(1240 * fontInfo().pixelSize() / 13);
    auto* middle = new QHBoxLayout(ground);
    middle->setContentsMargins(0, 0, 0, 0);
    middle->addWidget(page);
    auto* columns = new QHBoxLayout(page);
    columns->setContentsMargins(64, 48, 64, 48);
    columns->setSpacing(48);

    auto* begin = new QVBoxLayout;
    begin->setSpacing(12);
    auto* name = new QLabel(tr("What will you knit?"), page);
    name->setObjectName(QStringLiteral("dialogHeading"));
    begin->addWidget(name);
    QLabel* about = softLabel(
        tr("Draw the chart, and every row is knitted on a needle of loops as you go: the counts beside it are "
           "true, and the words say what the chart says."),
        page);
    begin->addWidget(about);
    begin->addSpacing(8);
    const auto button = [&](const QString& words, const QString& what, void (StartPage::*wanted)()) {
        auto* one = new QPushButton(words, page);
        one->setMinimumWidth(260);
        one->setToolTip(what);
        one->setAccessibleDescription(what);
        connect(one, &QPushButton::clicked, this, wanted);
        begin->addWidget(one);
        begin->addWidget(softLabel(what, page));
        begin->addSpacing(4);
        return one;
    };
    QPushButton* fresh = button(tr("&Cast on a new shawl"), tr("An empty chart in the size you choose"),
                                &StartPage::newWanted);
    button(tr("O&pen a shawl..."), tr("A pattern file, or a text of written rows"), &StartPage::openWanted);
    button(tr("Read rows i&n words..."), tr("Type or paste written instructions; they become a chart"),
           &StartPage::wordsWanted);
    begin->addStretch();
    auto* leave = new QPushButton(tr("&Go to the chart"), page);
    leave->setFlat(true);
    connect(leave, &QPushButton::clicked, this, &StartPage::left);
    begin->addWidget(leave, 0, Qt::AlignLeft);
    columns->addLayout(begin, 2);

    auto* lists = new QVBoxLayout;
    lists->setSpacing(8);
    auto* line = new QHBoxLayout;
    auto* recentHeading = new QLabel(tr("Open latel&y"), page);
    recentHeading->setObjectName(QStringLiteral("strong"));
    line->addWidget(recentHeading, 1);
    m_forget = new QToolButton(page);
    m_forget->setObjectName(QStringLiteral("quiet"));
    m_forget->setText(tr("Take off the list"));
    m_forget->setToolTip(tr("The file itself stays where it is"));
    m_forget->setAutoRaise(true);
    connect(m_forget, &QToolButton::clicked, this, &StartPage::forgetCurrent);
    line->addWidget(m_forget);
    lists->addLayout(line);
    m_nothingYet = softLabel(tr("Nothing yet. What you save and open is listed here."), page);
    lists->addWidget(m_nothingYet);
    m_recent = fileList(tr("Open lately"), page);
    m_recent->setObjectName(QStringLiteral("recent"));
    m_recent->installEventFilter(this);
    recentHeading->setBuddy(m_recent);
    lists->addWidget(m_recent);
    auto* sampleHeading = new QLabel(tr("Sa&mples, to look at and to change as you like"), page);
    sampleHeading->setObjectName(QStringLiteral("strong"));
    lists->addSpacing(8);
    lists->addWidget(sampleHeading);
    m_noSamples = softLabel(tr("No samples were found where the program is installed."), page);
    lists->addWidget(m_noSamples);
    m_samples = fileList(tr("Samples"), page);
    m_samples->setObjectName(QStringLiteral("samples"));
    sampleHeading->setBuddy(m_samples);
    lists->addWidget(m_samples);
    lists->addStretch(1);
    columns->addLayout(lists, 3);

    connect(m_recent, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) {
        if (item->data(thereRole).toBool())
            Q_EMIT fileWanted(item->data(pathRole).toString());
    });
    connect(m_recent, &QListWidget::currentRowChanged, this, [this](int row) { m_forget->setEnabled(row >= 0); });
    connect(m_samples, &QListWidget::itemActivated, this,
            [this](QListWidgetItem* item) { Q_EMIT sampleWanted(item->data(pathRole).toString()); });
    for (QListWidget* list : {m_recent, m_samples}) {
        connect(list, &QListWidget::currentRowChanged, this, [scroll, ground, list](int row) {
            if (row < 0 || !list->hasFocus())
                return;
            const QRect entry = list->visualItemRect(list->item(row));
            const QPoint at = list->viewport()->mapTo(ground, entry.center());
            scroll->ensureVisible(at.x(), at.y(), 0, entry.height());
        });
        connect(list, &QListWidget::itemClicked, this, [list](QListWidgetItem* item) {
            if (item->data(thereRole).toBool())
                Q_EMIT list->itemActivated(item);
        });
    }
    setFocusProxy(fresh);
    setRecent({});
}

void StartPage::setRecent(const QStringList& paths)
{
    m_recent->clear();
    for (const QString& path : paths) {
        const QFileInfo info(path);
        const bool there = info.isFile();
        const QString folder = QDir::toNativeSeparators(info.path());
        auto* item = new QListWidgetItem(
            there ? tr("%1\n%2, saved %3")
                        .arg(info.completeBaseName(), folder,
                             QLocale().toString(info.lastModified(), QLocale::ShortFormat))
                  : tr("%1\nno longer in %2").arg(info.completeBaseName(), folder),
            m_recent);
        item->setData(pathRole, path);
        item->setData(thereRole, there);
        item->setToolTip(QDir::toNativeSeparators(path));
        if (!there) // greyed, but it can still be chosen and taken off the list
            item->setForeground(palette().color(QPalette::Disabled, QPalette::Text));
    }
    const bool any = !paths.isEmpty();
    m_recent->updateGeometry();
    m_recent->setVisible(any);
    m_nothingYet->setVisible(!any);
    m_forget->setVisible(any);
    m_forget->setEnabled(m_recent->currentRow() >= 0);
}

void StartPage::setSamples(const QStringList& paths)
{
    m_samples->clear();
    m_samples->setVisible(!paths.isEmpty());
    m_noSamples->setVisible(paths.isEmpty());
    for (const QString& path : paths) {
        auto* item = new QListWidgetItem(titleOf(path), m_samples);
        item->setData(pathRole, path);
        item->setData(thereRole, true);
    }
    m_samples->updateGeometry();
}

void StartPage::forgetCurrent()
{
    if (const QListWidgetItem* item = m_recent->currentItem())
        Q_EMIT forgetWanted(item->data(pathRole).toString());
}

void StartPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        QWidget::keyPressEvent(event);
}

bool StartPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_recent && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        forgetCurrent();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace shawlwright::app
