// What fills or makes whole rows at once: asked first, then one edit.
#include "app/document/text.h"
#include "app/panels/plain_rows_dialog.h"
#include "app/panels/replace_stitch_dialog.h"
#include "app/panels/stripes_dialog.h"
#include "app/window/main_window.h"
#include "app/window/row_words.h"
#include "core/edits/replace_stitch.h"

namespace shawlwright::app {

void MainWindow::actsOnShaping()
{
    on(ActionId::PlainRows, [this] { fillPlainRows(); });
    on(ActionId::StripedRows, [this] { stripeRows(); });
    on(ActionId::ShortRowWedge, [this] { makeWedge(); });
    on(ActionId::ShortRowArch, [this] { makeArches(); });
    on(ActionId::IncreaseRows, [this] { makeIncreases(); });
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
    std::vector<std::pair<int, int>> spans{*together};
    if (!selected && together->first > 0 && together->first < all.second)
        spans.push_back({together->first, all.second});
    spans.push_back(all);
    std::vector<StripesDialog::Rows> choices;
    for (const auto& span : spans)
        choices.push_back({span == all ? tr("all rows of the section") : rowsInWords(*section, span),
                           stripesOf(*section, span.first, span.second)});
    StripesDialog dialog(std::move(choices), m_document.pattern().head.yarns, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const auto rows = spans[static_cast<std::size_t>(dialog.chosen())];
    m_document.performOrTell(stripedRows(m_document.pattern(), m_document.catalogue(),
                                         m_document.derived().ledgers(), id, rows.first, rows.second,
                                         dialog.stripes()));
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
