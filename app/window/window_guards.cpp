// Files that other windows hold or other programs change, and what was saved before.
#include "app/window/earlier_saves_dialog.h"
#include "app/window/main_window.h"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QLocale>

namespace shawlwright::app {

namespace {

constexpr int millisecondsBetweenLooks = 2000;

} // namespace

void MainWindow::watchFile()
{
    m_watchTimer.setInterval(millisecondsBetweenLooks);
    connect(&m_watchTimer, &QTimer::timeout, this, [this] {
        // Asked of somebody who is here, and not in the middle of something.
        if (isActiveWindow() && !QApplication::activeModalWidget() && !QApplication::activePopupWidget() &&
            QGuiApplication::mouseButtons() == Qt::NoButton)
            lookAtFile();
    });
    m_watchTimer.start();
    connect(&m_document, &PatternDocument::pathChanged, this, [this] {
        if (m_document.path().isEmpty())
            m_fileLock.letGo();
    });
}

void MainWindow::lookAtFile()
{
    const auto now = m_fileWatch.look();
    if (!now)
        return;
    m_canvas->endStroke();
    if (m_document.readOnly() && *now == OnDisk::Changed) { // saved by the window that holds it
        readAgain();
        tell(tr("%1 was saved by the other window and is read again.").arg(m_document.displayName()));
        return;
    }
    switch (m_ask.differs(m_document.displayName(), *now, m_document.modified())) {
    case Differs::ReadAgain:
        readAgain();
        break;
    case Differs::KeepMine:
        m_document.keepMine();
        break;
    case Differs::SaveElsewhere:
        m_document.keepMine();
        saveAs();
        break;
    }
}

void MainWindow::readAgain()
{
    const SectionId shown = m_canvas->section();
    const At cursor = m_canvas->cursor();
    const bool readOnly = m_document.readOnly();
    if (const auto wrong = m_document.load(m_document.path())) {
        m_ask.failed(tr("%1 can't be read again. What you had is still open.").arg(m_document.displayName()),
                     *wrong);
        m_document.keepMine();
        return;
    }
    m_document.setReadOnly(readOnly);
    const auto& sections = m_document.pattern().sections;
    if (!sections.empty())
        showSection(sectionIndex(m_document.pattern(), shown) >= 0 ? shown : sections.front().id);
    if (m_canvas->section() == shown)
        m_canvas->setCursor(cursor);
    refresh();
}

bool MainWindow::openCopy(const QString& file, const QString& name)
{
    if (const auto wrong = m_document.loadCopy(file, name)) {
        m_ask.failed(tr("%1 can't be opened.").arg(name), *wrong);
        return false;
    }
    if (!m_document.pattern().sections.empty())
        showSection(m_document.pattern().sections.front().id);
    refresh();
    m_canvas->setFocus();
    return true;
}

void MainWindow::keepEarlierSaves(const QString& folder)
{
    m_earlierSaves = std::make_unique<shawlwright::app::EarlierSaves>(folder);
}

void MainWindow::keepSave(const QString& path)
{
    if (!m_earlierSaves)
        return;
    if (const auto wrong = m_earlierSaves->keep(path, m_document.bytes()))
        tell(tr("Saved, but no copy of this save can be kept: %1").arg(*wrong));
}

void MainWindow::openEarlierSaves()
{
    EarlierSavesDialog dialog(m_earlierSaves ? m_earlierSaves->all() : std::vector<ShawlSaves>{},
                              m_document.path(), this);
    if (dialog.exec() != QDialog::Accepted || !maySetAside())
        return;
    openCopy(dialog.chosen().copy,
             tr("%1, saved %2")
                 .arg(QFileInfo(dialog.shawl()).completeBaseName(),
                      QLocale().toString(dialog.chosen().saved.toLocalTime(), QLocale::ShortFormat)));
}

} // namespace shawlwright::app
