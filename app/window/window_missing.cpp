// What a command lacks that is asked for by its key and can't be done: said, instead of nothing happening.
#include "app/window/main_window.h"

#include <QAction>
#include <QKeyEvent>

namespace shawlwright::app {

namespace {

bool aboutSectionsOrSteps(Needs needs)
{
    using enum Needs;
    return needs == UndoStep || needs == RedoStep || needs == SeveralSections || needs == SectionBefore ||
           needs == SectionAfter;
}

} // namespace

QString MainWindow::whatIsMissing(const ActionEntry& entry) const
{
    const auto keys = [this](ActionId id) { return m_actions.at(id)->shortcut().toString(QKeySequence::NativeText); };
    switch (entry.needs) {
    case Needs::UndoStep:
        return tr("nothing was done that could be undone.");
    case Needs::RedoStep:
        return tr("nothing was undone that could be done again.");
    case Needs::Selection:
        return tr("select stitches first, by a click or by dragging with the tool Select (%1), or by Shift "
                  "with the arrows.").arg(keys(ActionId::ToolSelect));
    case Needs::SeveralSections:
        return tr("a shawl keeps one section; add another first (%1).").arg(keys(ActionId::AddSection));
    case Needs::SectionBefore:
        return tr("there is no section before this one.");
    case Needs::SectionAfter:
        return tr("there is no section after this one.");
    case Needs::Row:
        return tr("this section has no rows yet; insert one first (%1).").arg(keys(ActionId::RowAbove));
    case Needs::SeveralRows:
        return shownSection() && shownSection()->rows.empty() ? tr("this section has no rows.")
                                                           : tr("a section keeps one row, and these are all it has.");
    case Needs::RowAbove:
        return tr("there is no row above it.");
    case Needs::RowBelow:
        return tr("there is no row below it.");
    case Needs::OwnStitch:
        return tr("choose a stitch of your own first, on the left.");
    case Needs::Markers:
        return tr("there are no markers yet; place one with the tool Marker (%1).").arg(keys(ActionId::ToolMarker));
    case Needs::Motif:
        return tr("there is no motif yet; select stitches and save them as one (%1).").arg(keys(ActionId::SaveMotif));
    case Needs::Nothing:
        break;
    }
    return {};
}

bool MainWindow::tellWhatIsMissing(const QKeyEvent& event)
{
    const QKeySequence keys(event.keyCombination());
    for (const ActionEntry& entry : actionTable()) {
        const QAction* action = m_actions.at(entry.id);
        if (action->isEnabled() || !action->shortcuts().contains(keys))
            continue;
        if (m_canvas->unfolded() && !aboutSectionsOrSteps(entry.needs)) {
            tell(lookOnly());
            return true;
        }
        const QString missing = whatIsMissing(entry);
        if (missing.isEmpty())
            return false;
        const QString words = actionWords(entry.text).remove(QLatin1Char('&')).remove(QStringLiteral("..."));
        tell(tr("%1: %2").arg(words, missing));
        return true;
    }
    return false;
}

} // namespace shawlwright::app
