// Opening, saving, exporting, and what is asked before work is lost.
#include "app/document/text.h"
#include "app/panels/new_shawl_dialog.h"
#include "app/window/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFileInfo>
#include <QMenu>
#include <QMimeData>
#include <QScopedValueRollback>
#include <QSettings>
#include <QUrl>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr int mostRecent = 10;
constexpr int mostZooms = 50;

// A title as a file's name: what file systems don't take becomes a hyphen.
QString fileName(QString title)
{
    static const QString refused = QStringLiteral("/\\:*?\"<>|");
    for (QChar& letter : title)
        if (refused.contains(letter) || letter < QLatin1Char(' '))
            letter = QLatin1Char('-');
    title = title.trimmed();
    return title.isEmpty() ? QStringLiteral("shawl") : title;
}

} // namespace

bool MainWindow::maySetAside()
{
    m_canvas->endStroke();
    if (!m_document.modified())
        return true;
    switch (m_ask.unsaved(m_document.displayName())) {
    case Unsaved::Save:
        return save();
    case Unsaved::DontSave:
        return true;
    case Unsaved::GoOnEditing:
        return false;
    }
    return false;
}

bool MainWindow::saveTo(const QString& path)
{
    m_canvas->endStroke();
    FileLock fresh;
    const bool held = m_fileLock.holds(path);
    if (!held && fresh.take(path) == Hold::TakenByAnother) {
        m_ask.failed(tr("The shawl is not saved."),
                     tr("%1 is open in another window. Save it under another name, or close the other window.")
                         .arg(QDir::toNativeSeparators(path)));
        return false;
    }
    if (m_earlierSaves)
        m_earlierSaves->keepWhatIsThere(path);
    if (const auto wrong = m_document.save(path)) {
        m_ask.failed(tr("The shawl is not saved."), *wrong);
        return false;
    }
    if (!held)
        m_fileLock = std::move(fresh);
    keepSave(path);
    rememberRecent(path);
    updateTitle();
    updateCounts();
    return true;
}

bool MainWindow::save()
{
    if (m_document.path().isEmpty() || m_document.readOnly())
        return saveAs();
    if (m_document.onDisk() == OnDisk::Changed) {
        switch (m_ask.changedOnDisk(m_document.displayName())) {
        case Overwrite::WriteOver:
            break;
        case Overwrite::SaveElsewhere:
            return saveAs();
        case Overwrite::GoOnEditing:
            return false;
        }
    }
    return saveTo(m_document.path());
}

bool MainWindow::saveAs()
{
    const QString suggested = m_document.path().isEmpty()
                                  ? fileName(m_document.displayName()) + QStringLiteral(".shawl")
                              : m_document.readOnly() ? QFileInfo(m_document.path()).absoluteDir().filePath(
                                                            tr("%1 (copy)").arg(QFileInfo(m_document.path()).completeBaseName()) +
                                                            QStringLiteral(".shawl"))
                                                      : m_document.path();
    const QString path = m_ask.savePath(suggested);
    return !path.isEmpty() && saveTo(path);
}

bool MainWindow::newShawl(const NewPattern& wishes)
{
    if (!maySetAside())
        return false;
    keepView();
    m_canvas->setPlainRowsHidden(false);
    m_document.startNew(newPattern(wishes));
    showSection(m_document.pattern().sections.front().id);
    refresh();
    m_canvas->setZoomPercent(100);
    m_canvas->fitSection();
    showCursor();
    m_canvas->setFocus();
    return true;
}

void MainWindow::startNewShawl()
{
    m_canvas->endStroke();
    NewShawlDialog dialog(this);
    if (dialog.exec() == QDialog::Accepted)
        newShawl(dialog.wishes());
}

// The last files each with its zoom: "120|/home/me/rockpool.shawl", the newest first; and those that hide plain rows.
void MainWindow::keepView() const
{
    if (m_document.path().isEmpty())
        return;
    QSettings settings;
    const QString whole = QFileInfo(m_document.path()).absoluteFilePath();
    QStringList zooms = settings.value(QStringLiteral("zooms")).toStringList();
    zooms.removeIf([&](const QString& one) { return one.section(QLatin1Char('|'), 1) == whole; });
    if (!m_canvas->sectionFits())
        zooms.prepend(QString::number(m_canvas->zoomPercent(), 'f', 1) + QLatin1Char('|') + whole);
    settings.setValue(QStringLiteral("zooms"), zooms.mid(0, mostZooms));
    QStringList hidden = settings.value(QStringLiteral("plainRowsHidden")).toStringList();
    hidden.removeAll(whole);
    if (m_canvas->plainRowsHidden())
        hidden.prepend(whole);
    settings.setValue(QStringLiteral("plainRowsHidden"), hidden.mid(0, mostZooms));
}

void MainWindow::viewAsKept()
{
    const QString whole = QFileInfo(m_document.path()).absoluteFilePath();
    for (const QString& one : QSettings().value(QStringLiteral("zooms")).toStringList())
        if (one.section(QLatin1Char('|'), 1) == whole)
            m_canvas->setZoomPercent(std::clamp(one.section(QLatin1Char('|'), 0, 0).toDouble(), 5.0, 800.0));
    const bool hides = QSettings().value(QStringLiteral("plainRowsHidden")).toStringList().contains(whole);
    m_canvas->setPlainRowsHidden(hides);
    showCursor();
}

bool MainWindow::openPath(const QString& path)
{
    if (!maySetAside())
        return false;
    keepView();
    const QFileInfo info(path);
    FileLock fresh;
    const bool held = m_fileLock.holds(path);
    const Hold hold = held || !info.isFile() ? Hold::Mine : fresh.take(path);
    if (hold == Hold::TakenByAnother) {
        switch (m_ask.openElsewhere(info.completeBaseName(), fresh.holder())) {
        case OpenElsewhere::ReadOnly:
            break;
        case OpenElsewhere::Copy:
            return openCopy(path, tr("%1 (copy)").arg(info.completeBaseName()));
        case OpenElsewhere::NotNow:
            return false;
        }
    }
    if (const auto wrong = m_document.load(path)) {
        QString words = *wrong;
        if (m_earlierSaves && info.isFile() && !m_earlierSaves->of(path).empty())
            words += QStringLiteral("\n\n") +
                     tr("What was saved before is kept: File, Earlier saves (Ctrl+Alt+S) opens it as a copy.");
        m_ask.failed(tr("%1 can't be opened.").arg(info.fileName()), words);
        return false;
    }
    if (!held)
        m_fileLock = std::move(fresh);
    m_document.setReadOnly(hold == Hold::TakenByAnother);
    rememberRecent(path);
    keepFolder(path);
    if (hold == Hold::Unlockable || !info.isWritable())
        tell(tr("Nothing may be written where %1 lies. Save what you change under another name.")
                 .arg(info.fileName()));
    if (!m_document.pattern().sections.empty())
        showSection(m_document.pattern().sections.front().id);
    refresh();
    viewAsKept();
    m_canvas->setFocus();
    return true;
}

void MainWindow::openAnother()
{
    const QString path = m_ask.openPath();
    if (!path.isEmpty())
        openFiles({path});
}

void MainWindow::openFiles(const QStringList& paths)
{
    for (qsizetype i = 1; i < paths.size(); ++i)
        Q_EMIT anotherWindowWanted(paths[i]);
    if (paths.isEmpty())
        return;
    if (paths.front().endsWith(QStringLiteral(".txt"), Qt::CaseInsensitive))
        readRowsOf(paths.front());
    else
        openPath(paths.front());
}

QStringList MainWindow::recent() const
{
    return QSettings().value(QStringLiteral("recent")).toStringList();
}

void MainWindow::rememberRecent(const QString& path)
{
    QStringList paths = recent();
    const QString whole = QFileInfo(path).absoluteFilePath();
    paths.removeAll(whole);
    paths.prepend(whole);
    keepRecent(paths.mid(0, mostRecent));
}

void MainWindow::keepRecent(const QStringList& paths)
{
    QSettings settings;
    settings.setValue(QStringLiteral("recent"), paths);
    settings.sync(); // a program that is killed still knows it
}

void MainWindow::fillRecent()
{
    m_recentMenu->clear();
    const QStringList paths = recent();
    for (const QString& path : paths) {
        QString name = QFileInfo(path).completeBaseName();
        QAction* action = m_recentMenu->addAction(name.replace(QLatin1Char('&'), QStringLiteral("&&")));
        action->setToolTip(QDir::toNativeSeparators(path));
        action->setEnabled(QFileInfo::exists(path));
        connect(action, &QAction::triggered, this, [this, path] { openPath(path); });
    }
    if (paths.isEmpty())
        m_recentMenu->addAction(tr("Nothing yet"))->setEnabled(false);
    m_recentMenu->setToolTipsVisible(true);
}

void MainWindow::startExport(ExportSubject subject)
{
    m_canvas->endStroke();
    const Section* section = shownSection();
    if (!section)
        return;
    ExportOptions options;
    options.choice = m_document.derived().choice();
    options.plainWsRows = !m_canvas->plainRowsHidden();
    ExportDialog dialog(subject, m_document.pattern(), options, section->id, this);
    if (dialog.exec() == QDialog::Accepted)
        exportAs(subject, dialog.kind(), dialog.options());
}

bool MainWindow::exportAs(ExportSubject subject, ExportKind kind, const ExportOptions& options)
{
    const QString ending = kind == ExportKind::Svg   ? QStringLiteral("svg")
                           : kind == ExportKind::Png ? QStringLiteral("png")
                           : kind == ExportKind::Pdf ? QStringLiteral("pdf")
                                                     : QStringLiteral("txt");
    QString name = fileName(toQt(m_document.pattern().head.title));
    if (options.section) {
        const int at = sectionIndex(m_document.pattern(), *options.section);
        if (at >= 0)
            name += QStringLiteral(" - ") +
                    fileName(toQt(m_document.pattern().sections[static_cast<std::size_t>(at)].frame.title));
    }
    const PatternHead& head = m_document.pattern().head;
    if (versionCount(m_document.pattern()) > 1 && !options.everyVersion)
        name += QStringLiteral(" - ") + fileName(toQt(versionName(m_document.pattern(), options.choice.version)));
    if (sizeCount(m_document.pattern()) > 1 && !options.everySize)
        name += QStringLiteral(" - ") + fileName(toQt(head.sizes[static_cast<std::size_t>(options.choice.size)]));
    const QString filter = QStringLiteral("%1 (*.%2)").arg(ending.toUpper(), ending);
    name += QLatin1Char('.') + ending;
    const QString path = m_ask.exportPath(
        m_document.path().isEmpty() ? name : QFileInfo(m_document.path()).absoluteDir().filePath(name), filter); // beside the shawl
    if (path.isEmpty())
        return false;
    if (const auto wrong =
            exportTo(path, m_document.path(), m_document.pattern(), m_document.catalogue(), options)) {
        m_ask.failed(subject == ExportSubject::Words   ? tr("The words are not written.")
                     : subject == ExportSubject::Chart ? tr("The chart is not written.")
                                                       : tr("The pattern is not written."),
                     *wrong);
        return false;
    }
    tell(tr("Written to %1").arg(QDir::toNativeSeparators(path)));
    return true;
}

void MainWindow::keepRescueCopies(const QString& folder)
{
    m_rescue = std::make_unique<RescueCopy>(m_document, folder);
    connect(m_rescue.get(), &RescueCopy::told, this, &MainWindow::tell);
}

void MainWindow::offerRescued()
{
    if (!m_rescue)
        return;
    for (const LeftBehind& left : m_rescue->leftBehind()) {
        switch (m_ask.rescued(left.name, left.written)) {
        case Rescued::ThrowAway:
            m_rescue->throwAway(left);
            break;
        case Rescued::AskAgain:
            break;
        case Rescued::OpenIt:
            if (!maySetAside())
                return;
            {
                const QString openHere = m_document.path();
                if (const auto wrong = m_rescue->open(left)) {
                    m_ask.failed(tr("The rescue copy can't be opened."), *wrong);
                    break;
                }
                if (!openHere.isEmpty() && m_document.path() != openHere) { // it was asked for too
                    m_fileLock.letGo();
                    Q_EMIT anotherWindowWanted(openHere);
                }
            }
            showSection(m_document.pattern().sections.front().id);
            refresh();
            return; // the others are offered at the next start
        }
    }
}

namespace {

QStringList filesIn(const QMimeData* dropped)
{
    QStringList paths;
    for (const QUrl& url : dropped->urls()) {
        const QFileInfo file(url.toLocalFile());
        const QString ending = file.suffix().toLower();
        if (url.isLocalFile() && (ending == QStringLiteral("shawl") || ending == QStringLiteral("txt")))
            paths << file.absoluteFilePath();
    }
    return paths;
}

} // namespace

// Any file is taken: of one that can't be opened the drop says so.
void MainWindow::dragEnterEvent(QDragEnterEvent* event)
{
    if (event->mimeData()->hasUrls())
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event)
{
    const QStringList paths = filesIn(event->mimeData());
    if (paths.isEmpty()) {
        const QList<QUrl> urls = event->mimeData()->urls();
        if (!urls.isEmpty())
            tell(tr("%1 can't be opened here. Drop shawls (.shawl) or texts of written rows (.txt).")
                     .arg(urls.front().fileName()));
        return;
    }
    event->acceptProposedAction();
    // Questions are asked after the drag is over; the program it came from waits for it.
    QTimer::singleShot(0, this, [this, paths] { openFiles(paths); });
}

bool MainWindow::mayCloseForAll()
{
    if (QApplication::activeModalWidget()) { // a dialog is open here, and what is in it counts too
        QApplication::activeModalWidget()->raise();
        QApplication::activeModalWidget()->activateWindow();
        return false;
    }
    if (m_document.modified()) {
        raise();
        activateWindow();
    }
    m_setAside = maySetAside() ? std::optional(m_document.changes()) : std::nullopt;
    return m_setAside.has_value();
}

bool MainWindow::closeForAll()
{
    const QScopedValueRollback answered(m_answered, m_setAside == m_document.changes());
    return close();
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    if (!m_answered && !maySetAside()) {
        event->ignore();
        return;
    }
    keepSettings();
    m_watchTimer.stop();
    m_fileLock.letGo();
    if (m_rescue)
        m_rescue->letGo();
    event->accept();
}

} // namespace shawlwright::app
