// What a row is, in the menu at its number: side, yarn, start, end and note, for the row or all selected rows.
#include "app/document/text.h"
#include "app/panels/row_dialog.h"
#include "app/window/main_window.h"
#include "core/edits/rows.h"

#include <QAction>
#include <QMenu>
#include <QPixmap>

#include <algorithm>

namespace shawlwright::app {

// The selected rows where `row` is one of them; one step.
void MainWindow::setRowsMeant(int row, const QString& name, const std::function<void(Row&)>& change)
{
    const Section* section = shownSection();
    if (!section)
        return;
    std::vector<IndexRun> runs = rowRunsMeant();
    if (std::none_of(runs.begin(), runs.end(),
                     [row](const IndexRun& run) { return run.first <= row && row <= run.last; }))
        runs = {{row, row}};
    std::map<int, Row> rows;
    for (const IndexRun& run : runs)
        for (int at = run.first; at <= run.last && at < static_cast<int>(section->rows.size()); ++at) {
            Row changed = *section->rows[static_cast<std::size_t>(at)];
            change(changed);
            rows.emplace(at, std::move(changed));
        }
    m_document.performOrTell(setRows(m_document.pattern(), section->id, rows, fromQt(name)));
}

void MainWindow::addRowHead(QMenu& menu, int row)
{
    const Section* section = shownSection();
    if (!section || row < 0 || row >= static_cast<int>(section->rows.size()))
        return;
    const Row& is = *section->rows[static_cast<std::size_t>(row)];
    const auto choice = [&](QMenu* in, const QString& words, bool now, const QString& name,
                            std::function<void(Row&)> change) {
        QAction* one = in->addAction(words);
        one->setCheckable(true);
        one->setChecked(now);
        connect(one, &QAction::triggered, this,
                [this, row, name, change = std::move(change)] { setRowsMeant(row, name, change); });
        return one;
    };
    QMenu* side = menu.addMenu(tr("&Side: %1").arg(is.side == Side::RS ? tr("RS") : tr("WS")));
    for (const Side to : {Side::RS, Side::WS})
        choice(side, to == Side::RS ? tr("Right side (RS)") : tr("Wrong side (WS)"), is.side == to,
               tr("side of the row"), [to](Row& changed) { changed.side = to; });

    const PatternHead& head = m_document.pattern().head;
    const Yarn* own = yarnOf(head, is.yarn);
    QMenu* yarn = menu.addMenu(tr("&Yarn: %1").arg(own ? toQt(own->code) : tr("none")));
    for (const Yarn& one : head.yarns) {
        QPixmap swatch(14, 14);
        swatch.fill(QColor(static_cast<QRgb>(one.colour)));
        const QString words = one.name.empty() ? toQt(one.code) : toQt(one.code + "  " + one.name);
        choice(yarn, words, one.id == is.yarn, tr("yarn of the row"), [id = one.id](Row& changed) {
            changed.yarn = id;
        })->setIcon(QIcon(swatch));
    }

    const auto startsWhere = [](StartKind kind) {
        switch (kind) {
        case StartKind::Continue:
            return tr("where the last row ended");
        case StartKind::AfterSlipping:
            return tr("after slipping some stitches");
        case StartKind::AtEdge:
            return tr("at the edge");
        }
        return QString();
    };
    QMenu* start = menu.addMenu(tr("S&tarts: %1").arg(startsWhere(is.start.kind)));
    for (const StartKind kind : {StartKind::Continue, StartKind::AtEdge})
        choice(start, startsWhere(kind), is.start.kind == kind, tr("start of the row"), [kind](Row& changed) {
            changed.start.kind = kind;
            changed.start.slip = Quantity();
        });
    QAction* slipped = start->addAction(startsWhere(StartKind::AfterSlipping) + QStringLiteral("..."));
    slipped->setCheckable(true);
    slipped->setChecked(is.start.kind == StartKind::AfterSlipping);
    connect(slipped, &QAction::triggered, this, [this, row] { openRowSettings(row); }); // asks how many
    start->addSeparator();
    choice(start, tr("the yarn is joined here"), is.start.joins, tr("start of the row"),
           [joins = !is.start.joins](Row& changed) { changed.start.joins = joins; });

    const auto endsWith = [](FinishKind kind) {
        switch (kind) {
        case FinishKind::Turn:
            return tr("turn");
        case FinishKind::TurnEarly:
            return tr("turn early");
        case FinishKind::Slide:
            return tr("slide");
        case FinishKind::Round:
            return tr("round");
        case FinishKind::BindOff:
            return tr("bind off");
        }
        return QString();
    };
    QMenu* end = menu.addMenu(tr("At its &end: %1").arg(endsWith(is.finish.kind)));
    for (const FinishKind kind : {FinishKind::Turn, FinishKind::Slide, FinishKind::Round, FinishKind::BindOff})
        choice(end, endsWith(kind), is.finish.kind == kind, tr("end of the row"),
               [kind](Row& changed) { changed.finish.kind = kind; });
    end->addSeparator();
    const QStringList methods = turnMethodNames();
    for (int i = 0; i < methods.size(); ++i) {
        const auto method = static_cast<TurnMethod>(i);
        choice(end, tr("turn early: %1").arg(methods[i]),
               is.finish.kind == FinishKind::TurnEarly && is.finish.method == method, tr("end of the row"),
               [method](Row& changed) {
                   changed.finish.kind = FinishKind::TurnEarly;
                   changed.finish.method = method;
               });
    }
    QAction* note = menu.addAction(is.note.empty() ? tr("&Note...") : tr("&Note: %1...").arg(toQt(is.note).left(24)));
    connect(note, &QAction::triggered, this, [this, row, was = toQt(is.note)] {
        const Section* now = shownSection();
        if (!now || row >= static_cast<int>(now->rows.size()))
            return;
        const QString label = toQt(rowLabels(*now)[static_cast<std::size_t>(row)]);
        const QString words = m_ask.words(tr("Note of row %1, printed after it").arg(label), was);
        if (!words.isNull() && words != was)
            setRowsMeant(row, tr("note of the row"),
                         [text = fromQt(words.trimmed())](Row& changed) { changed.note = text; });
    });
}

// The same by the keyboard, beside the cursor.
void MainWindow::openRowHead()
{
    const At cursor = m_canvas->cursor();
    m_canvas->showRow(cursor.row);
    const QRect cell = m_canvas->cellRectOnViewport(cursor.row, cursor.column);
    const QPoint at = cell.isEmpty() ? m_canvas->viewport()->rect().center() : cell.bottomRight();
    rowMenu(cursor.row, 0, m_canvas->viewport()->mapToGlobal(at));
}

} // namespace shawlwright::app
