// What fills or makes whole rows at once: asked first, then one edit.
#include "app/document/text.h"
#include "app/panels/plain_rows_dialog.h"
#include "app/panels/replace_stitch_dialog.h"
#include "app/panels/stripes_dialog.h"
#include "app/panels/wedge_dialog.h"
#include "app/window/main_window.h"
#include "core/edits/replace_stitch.h"

#include <algorithm>

namespace shawlwright::app {

namespace {

QString rowsInWords(const Section& section, std::pair<int, int> rows)
{
    const auto labels = rowLabels(section);
    const QString from = toQt(labels[static_cast<std::size_t>(rows.first)]);
    return rows.first == rows.second ? MainWindow::tr("row %1").arg(from)
                                     : MainWindow::tr("rows %1 to %2")
                                           .arg(from, toQt(labels[static_cast<std::size_t>(rows.second)]));
}

QString rowsInWords(const Section& section, const std::vector<IndexRun>& runs)
{
    QStringList words;
    for (const IndexRun& run : runs)
        words << rowsInWords(section, {run.first, run.last});
    return words.join(QStringLiteral(", "));
}

bool nothingPainted(const Row& row)
{
    return std::all_of(row.cells.begin(), row.cells.end(),
                       [](const Cell& cell) { return cell.stitch == noStitch; });
}

QString wedgeInWords(const Pattern& pattern, SectionId id, int at, const Wedge& wedge)
{
    Pattern with = pattern;
    apply(with, wedge.edit);
    const Section& section = with.sections[static_cast<std::size_t>(sectionIndex(with, id))];
    QString rows = rowsInWords(section, {at, at + static_cast<int>(wedge.rows.size()) - 1});
    rows[0] = rows[0].toUpper();
    QString words = MainWindow::tr("%1: %2, the last short row works %3 and %4 rest.")
                        .arg(rows, wedge.turns == 1 ? MainWindow::tr("1 turn")
                                                    : MainWindow::tr("%1 turns").arg(wedge.turns))
                        .arg(wedge.lastWorked)
                        .arg(wedge.resting);
    if (wedge.lead > 0)
        words += QLatin1Char(' ') +
                 (wedge.lead == 1
                      ? MainWindow::tr("The first row leads to the edge it starts from.")
                      : MainWindow::tr("The first %1 rows lead to the edge it starts from.").arg(wedge.lead));
    if (wedge.filled > 0)
        words += QLatin1Char(' ') + (wedge.filled == 1
                                         ? MainWindow::tr("1 empty row is filled.")
                                         : MainWindow::tr("%1 empty rows are filled.").arg(wedge.filled));
    return words;
}

} // namespace

void MainWindow::actsOnShaping()
{
    on(ActionId::PlainRows, [this] { fillPlainRows(); });
    on(ActionId::StripedRows, [this] { stripeRows(); });
    on(ActionId::ShortRowWedge, [this] { makeWedge(); });
    on(ActionId::ReplaceStitch, [this] { replaceAStitch(); });
}

void MainWindow::fillPlainRows()
{
    const Section* section = shownSection();
    if (!section || section->rows.empty())
        return;
    const SectionId id = section->id;
    const std::vector<IndexRun> meant = rowRunsMeant();
    const std::vector<int> empty = emptyRows(*section, Side::WS);
    PlainRowsDialog dialog(rowsInWords(*section, meant), static_cast<int>(empty.size()), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    std::vector<int> rows;
    if (dialog.allEmptyWrongSide())
        rows = empty;
    else
        for (const IndexRun& run : meant)
            for (int row = run.first; row <= run.last; ++row)
                rows.push_back(row);
    const Derived& derived = m_document.derived();
    m_document.performOrTell(plainRows(m_document.pattern(), m_document.catalogue(), derived.ledgers(),
                                       derived.shownLedger(), id, rows, dialog.how()));
}

void MainWindow::stripeRows()
{
    const Section* section = shownSection();
    if (!section || section->rows.empty())
        return;
    const SectionId id = section->id;
    const bool selected = !m_canvas->selected().empty();
    const auto together = rowsTogether(tr("Stripes"));
    if (!together)
        return;
    const std::pair<int, int> all{0, static_cast<int>(section->rows.size()) - 1};
    const auto meant = selected ? *together : all;
    StripesDialog dialog(selected ? rowsInWords(*section, meant) : QString(), m_document.pattern().head.yarns,
                         stripesOf(*section, meant.first, meant.second), this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const auto rows = dialog.wholeSection() ? all : meant;
    m_document.performOrTell(stripedRows(m_document.pattern(), m_document.catalogue(),
                                         m_document.derived().ledgers(), id, rows.first, rows.second,
                                         dialog.stripes()));
}

void MainWindow::makeWedge()
{
    const Section* section = shownSection();
    if (!section || section->rows.empty())
        return;
    const SectionId id = section->id;
    const int row = std::clamp(m_canvas->cursor().row, 0, static_cast<int>(section->rows.size()) - 1);
    const Row& here = *section->rows[static_cast<std::size_t>(row)];
    const QString label = rowsInWords(*section, {row, row});
    // A painted row stays: the wedge comes after it, or before.
    const bool empty = nothingPainted(here);
    const std::vector<int> starts = empty ? std::vector<int>{row} : std::vector<int>{row + 1, row};
    const QStringList places = empty ? QStringList{tr("at %1").arg(label)}
                                     : QStringList{tr("after %1").arg(label), tr("before %1").arg(label)};
    WedgeWishes first;
    first.method = m_canvas->turnMethod();
    first.yarns = {here.yarn};
    const auto made = [&, id](int place, const WedgeWishes& wishes) {
        const Derived& derived = m_document.derived();
        return shortRowWedge(m_document.pattern(), m_document.catalogue(), derived.ledgers(),
                             derived.shownLedger(), id, starts[static_cast<std::size_t>(std::max(0, place))],
                             wishes);
    };
    WedgeWishes most = first; // what is proposed fits
    most.untilLeft = first.step;
    if (const auto wedge = made(0, most); wedge.ok())
        first.turns = std::min(first.turns, wedge.value().turns);
    const auto preview = [&](int place, const WedgeWishes& wishes) {
        const auto wedge = made(place, wishes);
        if (!wedge.ok())
            return WedgePreview{false, toQt(toText(wedge.fault()))};
        return WedgePreview{true, wedgeInWords(m_document.pattern(), id,
                                               starts[static_cast<std::size_t>(std::max(0, place))],
                                               wedge.value())};
    };
    WedgeDialog dialog(places, m_document.pattern().head, first, preview, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const auto wedge = made(dialog.place(), dialog.wishes());
    if (!wedge.ok()) {
        m_document.tell(toQt(toText(wedge.fault())));
        return;
    }
    const int at = starts[static_cast<std::size_t>(std::max(0, dialog.place()))];
    const QString words = wedgeInWords(m_document.pattern(), id, at, wedge.value());
    m_document.perform(wedge.value().edit);
    goTo(id, at);
    tell(words);
}

void MainWindow::replaceAStitch()
{
    const Section* section = shownSection();
    if (!section)
        return;
    const SectionId id = section->id;
    const Areas areas = m_canvas->selected();
    std::optional<std::vector<StitchId>> selected;
    if (!areas.empty())
        selected = stitchesIn(*section, areas);
    ReplaceStitchDialog dialog(m_document.catalogue(), stitchesIn(*section, {}), selected, m_canvas->brush(),
                               this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const auto replaced = replaceStitch(m_document.pattern(), m_document.catalogue(), id,
                                        dialog.wholeSection() ? Areas{} : areas, dialog.from(), dialog.to());
    if (!replaced.ok()) {
        m_document.tell(toQt(toText(replaced.fault())));
        return;
    }
    m_document.perform(replaced.value().edit);
    tell(replaced.value().count == 1 ? tr("1 stitch is replaced.")
                                     : tr("%1 stitches are replaced.").arg(replaced.value().count));
}

} // namespace shawlwright::app
