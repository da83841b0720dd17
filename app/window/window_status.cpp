// What the window shows of the document: panels, titles, counts, and which actions can be used.
#include "app/document/text.h"
#include "app/window/elided_label.h"
#include "app/panels/count_thread.h"
#include "app/panels/findings_panel.h"
#include "app/panels/motifs_panel.h"
#include "app/panels/row_facts_panel.h"
#include "app/panels/sections_panel.h"
#include "app/panels/stitches_panel.h"
#include "app/panels/words_panel.h"
#include "app/window/main_window.h"
#include "app/window/tool_bar.h"
#include "core/wording/style.h"

#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QMenu>
#include <QPixmap>
#include <QSignalBlocker>

#include <algorithm>

namespace shawlwright::app {

void MainWindow::later()
{
    m_allStale = true;
    laterRow();
}

void MainWindow::laterRow()
{
    if (!m_later.isActive())
        m_later.start();
}

const Section* MainWindow::shownSection() const
{
    const int at = m_canvas->sectionIndex();
    return at < 0 ? nullptr : &m_document.pattern().sections[static_cast<std::size_t>(at)];
}

void MainWindow::follow(const Change& change)
{
    if (shownIndex() >= 0) {
        m_sectionAt = shownIndex();
    } else if (!m_document.pattern().sections.empty()) {
        // The section shown is gone: the one that took its place is shown.
        const int last = static_cast<int>(m_document.pattern().sections.size()) - 1;
        showSection(
            m_document.pattern().sections[static_cast<std::size_t>(std::clamp(m_sectionAt, 0, last))].id);
    }
    if (change.all || change.head) {
        m_headStale = true;
        updateTitle();
    }
}

void MainWindow::showRevisited(const Change& change)
{
    if (!change.rows.empty() && sectionIndex(m_document.pattern(), change.rows.front().section) >= 0)
        showSection(change.rows.front().section);
}

void MainWindow::showCursor()
{
    const At cursor = m_canvas->cursor();
    m_canvas->showCell(cursor.row, cursor.column);
}

void MainWindow::beginAnew()
{
    m_canvas->setTool(CanvasTool::Paint);
    m_canvas->setBrushYarn({});
    m_canvas->setMarker(std::nullopt);
    setBrush(m_document.catalogue().find("k").value_or(noStitch));
    later();
}

void MainWindow::showSection(SectionId section)
{
    if (m_canvas->section() != section || m_canvas->sectionIndex() < 0)
        m_canvas->setSection(section);
    m_sectionAt = std::max(0, m_canvas->sectionIndex());
    m_hover = {-1, 0};
    later();
}

void MainWindow::refresh()
{
    m_later.stop();
    m_allStale = false;
    const SectionId section = m_canvas->section();
    if (m_headStale) {
        fillBrushYarns();
        m_stitches->refresh();
        if (!m_document.catalogue().known(m_canvas->brush())) { // it was taken back: what it would paint is not "no stitch"
            const StitchId before = m_stitches->chosenBefore();
            m_canvas->setBrush(before);
            m_stitches->setChosen(before);
        }
        m_motifs->refresh();
        m_headStale = false;
    }
    fillVersions();
    m_sections->refresh();
    m_sections->setSection(section);
    m_words->setSection(section);
    m_findings->setSection(section);
    m_findings->refresh();
    m_thread->refresh();
    m_facts->setRow(section, m_canvas->cursor().row);
    m_facts->refresh();
    updateTitle();
    updateCounts();
    showEmptyHint();
    refreshRow();
}

void MainWindow::refreshRow()
{
    const SectionId section = m_canvas->section();
    const int row = m_canvas->cursor().row;
    m_words->setRow(row);
    lightPhrase();
    m_facts->setRow(section, row);
    m_thread->setRow(section, row);
    if (!m_toldTimer.isActive())
        updateCursorWords();
    enableActions();
    shareRightSide();
}

// Painting and rows are out of reach while the chart is as knitted; what is told of a click says why.
void MainWindow::showWhetherUnfolded()
{
    const bool out = m_canvas->unfolded();
    action(ActionId::AsKnitted)->setChecked(out);
    const PatternHead& head = m_document.pattern().head;
    const RunChoice choice = m_document.derived().choice();
    QStringList names;
    if (head.versions.size() > 1)
        names << toQt(head.versions[static_cast<std::size_t>(choice.version)]);
    if (head.sizes.size() > 1)
        names << tr("size %1").arg(toQt(head.sizes[static_cast<std::size_t>(choice.size)]));
    const QString which = names.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(names.join(QStringLiteral(", ")));
    m_lookOnly->setText(tr("As knitted%1, to look at only. Ctrl+U or Esc folds it back.").arg(which));
    if (out == m_lookOnly->isHidden()) { // the chart has less room now, or more
        m_lookOnly->setVisible(out);
        m_lookOnly->parentWidget()->layout()->activate();
        m_canvas->showCell(m_canvas->cursor().row, m_canvas->cursor().column);
    }
    enableActions();
}

void MainWindow::lightPhrase()
{
    const At cursor = m_canvas->cursor();
    const auto [row, column] = m_hover;
    m_words->lightCell(row >= 0 ? row : cursor.row, row >= 0 ? column : cursor.column);
}

QString MainWindow::lookOnly() const
{
    return m_canvas->unfolded() ? m_lookOnly->text() : QString();
}

void MainWindow::fillVersions()
{
    const Pattern& pattern = m_document.pattern();
    const RunChoice choice = m_document.derived().choice();
    const auto fill = [](QComboBox* chooser, QAction* action, const std::vector<std::string>& names,
                         int shown) {
        QStringList words;
        for (const std::string& name : names)
            words << toQt(name);
        QStringList had;
        for (int i = 0; i < chooser->count(); ++i)
            had << chooser->itemText(i);
        const QSignalBlocker quiet(chooser);
        if (had != words) {
            chooser->clear();
            chooser->addItems(words);
        }
        chooser->setCurrentIndex(shown);
        action->setVisible(names.size() > 1);
        return had != words;
    };
    const bool versions = fill(m_version, m_versionAction, pattern.head.versions, choice.version);
    const bool sizes = fill(m_size, m_sizeAction, pattern.head.sizes, choice.size);
    if (versions || sizes)
        m_bar->fit();
    if (m_canvas->unfolded())
        showWhetherUnfolded();
}

void MainWindow::fillBrushYarns()
{
    const QSignalBlocker quiet(m_brushYarn);
    const YarnId chosen = m_canvas->brushYarn();
    m_brushYarn->clear();
    m_brushYarn->addItem(tr("with the row's yarn"), 0);
    for (const Yarn& yarn : m_document.pattern().head.yarns) {
        QPixmap swatch(14, 14);
        swatch.fill(QColor(static_cast<QRgb>(yarn.colour)));
        m_brushYarn->addItem(QIcon(swatch), tr("always with %1").arg(toQt(yarn.code)), yarn.id.value);
        if (yarn.id == chosen)
            m_brushYarn->setCurrentIndex(m_brushYarn->count() - 1);
    }
    if (chosen != YarnId{} && m_brushYarn->currentIndex() == 0)
        m_canvas->setBrushYarn({}); // that yarn is gone
}

void MainWindow::fillToolMenus()
{
    m_markerMenu->clear();
    QAction* fresh = m_markerMenu->addAction(tr("A new marker each time"));
    connect(fresh, &QAction::triggered, this, [this] {
        m_canvas->setMarker(std::nullopt);
        action(ActionId::ToolMarker)->trigger();
    });
    for (const Marker& marker : m_document.pattern().head.markers) {
        QAction* one = m_markerMenu->addAction(tr("Marker %1").arg(toQt(marker.name)));
        connect(one, &QAction::triggered, this, [this, id = marker.id] {
            m_canvas->setMarker(id);
            action(ActionId::ToolMarker)->trigger();
        });
    }
    m_markerMenu->addSeparator();
    m_markerMenu->addAction(action(ActionId::Markers));
}

// By the keys: through the markers there are, then a new one each time.
void MainWindow::placeNextMarker()
{
    const std::vector<Marker>& markers = m_document.pattern().head.markers;
    const auto now = std::find_if(markers.begin(), markers.end(),
                                  [this](const Marker& marker) { return m_canvas->marker() == marker.id; });
    const auto next = !m_canvas->marker() ? markers.begin() : now == markers.end() ? now : now + 1;
    m_canvas->setMarker(next == markers.end() ? std::nullopt : std::optional(next->id));
    action(ActionId::ToolMarker)->trigger();
    tell(m_canvas->marker() ? tr("Places marker %1.").arg(toQt(next->name)) : tr("Places a new marker each time."));
}

void MainWindow::takeNextTurnMethod()
{
    const QList<QAction*> methods = m_turnMenu->actions();
    QAction* next = methods[(static_cast<int>(m_canvas->turnMethod()) + 1) % methods.size()];
    next->trigger();
    tell(tr("Turns by: %1.").arg(next->text()));
}

namespace {

bool changesTheChart(const ActionEntry& entry)
{
    using enum ActionId;
    switch (entry.menu) {
    case MenuId::Edit:
        return entry.id != Undo && entry.id != Redo && entry.id != Copy && entry.id != FindPlace;
    case MenuId::Row:
        return entry.id != CopyWords;
    case MenuId::Stitch:
        return entry.id != FindStitch;
    default:
        return false;
    }
}

} // namespace

void MainWindow::enableActions()
{
    const Section* section = shownSection();
    const int at = shownIndex();
    const int sections = static_cast<int>(m_document.pattern().sections.size());
    const int rows = section ? static_cast<int>(section->rows.size()) : 0;
    const Areas& selected = m_canvas->selected();
    const auto [first, last] = rowsMeant();
    int meant = 0;
    for (const IndexRun& run : rowRunsMeant())
        meant += run.last - run.first + 1;
    const QUndoStack& undo = m_document.undoStack();
    for (const ActionEntry& entry : actionTable()) {
        bool can = true;
        switch (entry.needs) {
        case Needs::Nothing:
            break;
        case Needs::UndoStep:
            can = undo.canUndo();
            break;
        case Needs::RedoStep:
            can = undo.canRedo();
            break;
        case Needs::Selection:
            can = !selected.empty();
            break;
        case Needs::SeveralSections:
            can = sections > 1;
            break;
        case Needs::SectionBefore:
            can = at > 0;
            break;
        case Needs::SectionAfter:
            can = at >= 0 && at + 1 < sections;
            break;
        case Needs::Row:
            can = rows > 0;
            break;
        case Needs::SeveralRows:
            can = rows > meant;
            break;
        case Needs::RowAbove:
            can = last + 1 < rows;
            break;
        case Needs::RowBelow:
            can = first > 0 && rows > 0;
            break;
        case Needs::OwnStitch:
            can =
                m_canvas->brush().value >= firstOwnStitch && m_document.catalogue().known(m_canvas->brush());
            break;
        case Needs::Markers:
            can = !m_document.pattern().head.markers.empty();
            break;
        case Needs::Motif:
            can = m_motifs->chosen().has_value();
            break;
        }
        if (m_canvas->unfolded() && changesTheChart(entry))
            can = false;
        if (entry.id != ActionId::PaperChart)
            action(entry.id)->setEnabled(can);
    }
    const auto named = [&](ActionId id, const QString& plain, const QString& step) {
        action(id)->setText(step.isEmpty() ? plain : plain + QStringLiteral(": ") + step);
        action(id)->setIconText(QString(plain).remove(QLatin1Char('&')));
        QString tip = step.isEmpty() ? QString(plain).remove(QLatin1Char('&'))
                                     : QString(plain).remove(QLatin1Char('&')) + QStringLiteral(": ") + step;
        action(id)->setToolTip(tip + QStringLiteral("  (") +
                               action(id)->shortcut().toString(QKeySequence::NativeText) + QLatin1Char(')'));
    };
    named(ActionId::Undo, tr("&Undo"), undo.undoText());
    named(ActionId::Redo, tr("&Redo"), undo.redoText());
    for (int place = 1; place <= 9; ++place) {
        const auto stitch = m_canvas->unfolded() ? std::nullopt : m_stitches->favourite(place);
        QAction* favourite =
            action(static_cast<ActionId>(static_cast<int>(ActionId::Favourite1) + place - 1));
        favourite->setEnabled(stitch.has_value());
        favourite->setText(stitch ? toQt(m_document.catalogue().stitch(*stitch).name)
                                  : tr("Favourite %1").arg(place));
    }
}

void MainWindow::updateTitle()
{
    QString name = m_document.displayName();
    if (m_document.readOnly())
        name = tr("%1 (read only)").arg(name);
    setWindowTitle(
        tr("%1%2 - Shawlwright").arg(name, m_document.modified() ? QStringLiteral(" *") : QString()));
}

void MainWindow::updateCounts()
{
    const Ledger& ledger = m_document.derived().ledger();
    const int stitches = ledger.before.empty() ? 0 : ledger.before.back().count();
    const int findings = m_findings->count();
    QStringList parts;
    if (const QString mirror = mirrorInWords(); !mirror.isEmpty())
        parts << mirror;
    parts << (ledger.before.empty() ? tr("no sts")
              : stitches == 0 ? tr("all bound off")
              : stitches == 1 ? tr("1 st at the end")
                              : tr("%1 sts at the end").arg(stitches));
    parts << (findings == 0   ? tr("no findings")
              : findings == 1 ? tr("1 finding")
                              : tr("%1 findings").arg(findings));
    parts << (m_document.readOnly()         ? tr("read only")
              : m_document.modified()       ? tr("not saved")
              : m_document.path().isEmpty() ? tr("new")
                                            : tr("saved"));
    m_right->setText(parts.join(QStringLiteral(" \u00B7 ")));
    m_headings.at(QStringLiteral("findings"))
        ->setText(findings == 0 ? tr("Findings") : tr("Findings: %1").arg(findings));
}

QString MainWindow::cellInWords(int row, int column) const
{
    const Section* section = shownSection();
    if (!section || row < 0 || row >= static_cast<int>(section->rows.size()) || column < 1)
        return {};
    const Row& of = *section->rows[static_cast<std::size_t>(row)];
    const Cell cell = cellAt(of, column);
    const Stitch& stitch = m_document.catalogue().stitch(cell.stitch);
    const QString place = tr("Row %1 (%2), stitch %3: ")
                              .arg(toQt(rowLabels(*section)[static_cast<std::size_t>(row)]),
                                   of.side == Side::RS ? tr("RS") : tr("WS"))
                              .arg(column);
    if (cell.stitch == noStitch) {
        const int line = firstLineOf(m_document.derived().ledger(), shownIndex(), row);
        if (line >= 0) {
            const std::vector<int> resting = restingColumns(m_document.derived().ledger(), line);
            if (std::find(resting.begin(), resting.end(), column) != resting.end())
                return place + tr("rests on the needle, not worked in this row");
        }
        return place + tr("no stitch");
    }
    QString words = place + toQt(abbreviation(stitch, of.side, styleOf(m_document.pattern().head).words)) +
                    tr(" \u2013 ") + workedInWords(stitch);
    if (const Yarn* yarn = yarnOf(m_document.pattern().head, cell.yarn))
        words += tr(", with %1").arg(toQt(yarn->code));
    return words;
}

void MainWindow::updateCursorWords()
{
    m_toldTimer.stop();
    const auto [row, column] = m_hover;
    m_left->showWords(row >= 0 ? cellInWords(row, column)
                          : cellInWords(m_canvas->cursor().row, m_canvas->cursor().column));
}

void MainWindow::tell(const QString& sentence)
{
    if (sentence.isEmpty())
        return updateCursorWords();
    m_left->say(sentence);
    m_toldTimer.start(std::max(8000, 70 * static_cast<int>(sentence.size()))); // time to read it
}

QString MainWindow::statusLeft() const
{
    return m_left->text();
}

QString MainWindow::statusRight() const
{
    return m_right->text();
}

} // namespace shawlwright::app
