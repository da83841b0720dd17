// Motifs kept in the pattern and stamped; and painting on both sides of a line.
#include "app/document/text.h"
#include "app/panels/motifs_panel.h"
#include "app/window/main_window.h"
#include "core/edits/motifs.h"

#include <QMenu>

namespace shawlwright::app {

void MainWindow::actsOnMotifs()
{
    using enum ActionId;
    on(SaveMotif, [this] { saveMotif(); });
    on(RenameMotif, [this] { renameMotif(); });
    on(DeleteMotif, [this] {
        if (const auto motif = m_motifs->chosen())
            m_document.performOrTell(deleteMotif(m_document.pattern(), *motif));
        refresh();
    });
    on(MotifMirrored, [this] { takeStamp(); });
    connect(m_motifs, &MotifsPanel::motifChosen, this, &MainWindow::takeStamp);
    connect(m_motifs, &MotifsPanel::motifTaken, this, [this] {
        takeStamp();
        action(ToolMotif)->trigger();
    });
    connect(m_motifs, &MotifsPanel::contextWanted, this, [this](const QPoint& at) {
        QMenu menu;
        for (const ActionId id : {ToolMotif, MotifMirrored, RenameMotif, DeleteMotif})
            menu.addAction(action(id));
        openMenu(menu, at);
    });
    on(PaintMirrored, [this] {
        m_canvas->setPaintMirror(action(PaintMirrored)->isChecked() ? std::optional(m_canvas->mirrorHere())
                                                                    : std::nullopt);
        if (m_canvas->paintMirror())
            tell(tr("Everything is painted %1, too.").arg(mirrorInWords()));
    });
    connect(m_canvas, &Canvas::paintMirrorChanged, this, [this] {
        action(PaintMirrored)->setChecked(m_canvas->paintMirror().has_value());
        updateCounts();
    });
    takeStamp();
}

void MainWindow::takeStamp()
{
    const auto at = m_motifs->chosen();
    if (!at) {
        m_canvas->setStamp(std::nullopt);
        return;
    }
    const Motif& motif = m_document.pattern().head.motifs[*at];
    m_canvas->setStamp(action(ActionId::MotifMirrored)->isChecked() ? mirroredMotif(motif, m_document.catalogue())
                                                                    : motif);
    laterRow();
}

void MainWindow::saveMotif()
{
    const auto area = oneRectangle(tr("A motif"));
    if (!area)
        return;
    const Pattern& pattern = m_document.pattern();
    const QString proposed = tr("Motif %1").arg(pattern.head.motifs.size() + 1);
    const QString name = m_ask.words(tr("Name of the motif"), proposed);
    if (name.trimmed().isEmpty())
        return;
    auto motif = motifOf(pattern, m_document.catalogue(), m_canvas->section(), *area, fromQt(name));
    if (!motif.ok())
        return m_document.tell(toQt(toText(motif.fault())));
    if (m_document.performOrTell(addMotif(pattern, std::move(motif).take())))
        tell(tr("%1 is kept among the motifs; with the tool Motif (O) it is stamped.").arg(name.trimmed()));
    refresh();
}

void MainWindow::renameMotif()
{
    const auto motif = m_motifs->chosen();
    if (!motif)
        return;
    const QString name = m_ask.words(tr("Name of the motif"), toQt(m_document.pattern().head.motifs[*motif].name));
    if (!name.trimmed().isEmpty())
        m_document.performOrTell(shawlwright::renameMotif(m_document.pattern(), *motif, fromQt(name)));
    refresh();
}

QString MainWindow::mirrorInWords() const
{
    const auto mirror = m_canvas->paintMirror();
    if (!mirror)
        return {};
    if (mirror->marker) {
        const Marker* marker = markerOf(m_document.pattern().head, *mirror->marker);
        return tr("mirrored about marker %1").arg(marker ? toQt(marker->name) : QString());
    }
    return mirror->sum % 2 == 0
               ? tr("mirrored about column %1").arg(mirror->sum / 2)
               : tr("mirrored between columns %1 and %2").arg(mirror->sum / 2).arg(mirror->sum / 2 + 1);
}

} // namespace shawlwright::app
