// Short rows and increases: a dialog that tells beforehand what comes of it, then one edit.
#include "app/document/text.h"
#include "app/panels/arch_dialog.h"
#include "app/panels/increases_dialog.h"
#include "app/panels/wedge_dialog.h"
#include "app/window/main_window.h"
#include "app/window/row_words.h"

#include <algorithm>

namespace shawlwright::app {

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
        words << rowsInWords(section, std::pair(run.first, run.last));
    return words.join(QStringLiteral(", "));
}

namespace {

// Where rows may be made: a painted row stays, they come after it, or before.
struct Beginnings {
    SectionId section;
    std::vector<int> rows; // indexes
    QStringList words;
    int row(int choice) const { return rows[static_cast<std::size_t>(std::max(0, choice))]; }
};

Beginnings beginningsAt(const Section& section, int row)
{
    const QString label = rowsInWords(section, {row, row});
    if (nothingOn(*section.rows[static_cast<std::size_t>(row)]))
        return {section.id, {row}, {MainWindow::tr("at %1").arg(label)}};
    return {section.id, {row + 1, row}, {MainWindow::tr("after %1").arg(label), MainWindow::tr("before %1").arg(label)}};
}

// The needle that the shown choice has ahead of a row, or behind the last one; null: it isn't knit there.
const Needle* needleAhead(const Ledger& ledger, int section, int row)
{
    int line = firstLineOf(ledger, section, row);
    if (line < 0 && row > 0 && (line = firstLineOf(ledger, section, row - 1)) >= 0)
        ++line;
    return line < 0 ? nullptr : &ledger.before[static_cast<std::size_t>(line)];
}

// Each name once, right to left.
std::vector<Marker> markersOn(const Needle& needle, const PatternHead& head)
{
    std::vector<Marker> markers;
    for (const MarkerAt& at : needle.markers)
        if (const Marker* named = markerOf(head, at.marker))
            if (std::find(markers.begin(), markers.end(), *named) == markers.end())
                markers.push_back(*named);
    return markers;
}

// "Rows 9 to 28": as they are called once they are made.
QString madeRows(const Pattern& pattern, SectionId id, int at, const Edit& edit, std::size_t rows)
{
    Pattern with = pattern;
    apply(with, edit);
    const Section& section = with.sections[static_cast<std::size_t>(sectionIndex(with, id))];
    QString words = rowsInWords(section, {at, at + static_cast<int>(rows) - 1});
    words[0] = words[0].toUpper();
    return words;
}

QString leadAndFilled(int lead, int filled)
{
    QString words;
    if (lead > 0)
        words += QLatin1Char(' ') + oneOrMany(lead, MainWindow::tr("The first row leads to the edge it starts from."),
                                            MainWindow::tr("The first %1 rows lead to the edge it starts from."));
    if (filled > 0)
        words += QLatin1Char(' ') +
                 oneOrMany(filled, MainWindow::tr("1 empty row is filled."), MainWindow::tr("%1 empty rows are filled."));
    return words;
}

// "10, 14, 18, ... 34": a long list by its beginning and end.
QString shortList(const std::vector<int>& numbers)
{
    QStringList words;
    for (std::size_t i = 0; i < numbers.size(); ++i)
        if (numbers.size() <= 7 || i < 4 || i + 1 == numbers.size())
            words << QString::number(numbers[i]);
        else if (i == 4)
            words << QStringLiteral("...");
    return words.join(QStringLiteral(", ")).replace(QStringLiteral("..., "), QStringLiteral("... "));
}

QString wedgeInWords(const Pattern& pattern, SectionId id, int at, const Wedge& wedge, WedgeAt where)
{
    const QString turns = where == WedgeAt::Marker
                              ? MainWindow::tr("%1 turns, %2 on each side").arg(wedge.turns).arg(wedge.turns / 2)
                              : oneOrMany(wedge.turns, MainWindow::tr("1 turn"), MainWindow::tr("%1 turns"));
    return MainWindow::tr("%1: %2, the last short row works %3 and %4 rest.")
               .arg(madeRows(pattern, id, at, wedge.edit, wedge.rows.size()), turns)
               .arg(wedge.lastWorked)
               .arg(wedge.resting) +
           leadAndFilled(wedge.lead, wedge.filled);
}

QString archesInWords(const Pattern& pattern, SectionId id, int at, const Arches& arches)
{
    const QString rows = madeRows(pattern, id, at, arches.edit, arches.rows.size());
    QString words = arches.arches == 1
                        ? MainWindow::tr("%1: an arch of %2 short rows, each with a turn.").arg(rows).arg(arches.shortRows)
                        : MainWindow::tr("%1: %2 arches of %3 short rows, %4 turns in all.")
                              .arg(rows)
                              .arg(arches.arches)
                              .arg(arches.shortRows)
                              .arg(arches.arches * arches.shortRows);
    words += QLatin1Char(' ') + MainWindow::tr("Stitches from turn to turn: %1.").arg(shortList(arches.widths));
    QStringList rests;
    for (const Arches::Rests& rest : arches.rests)
        rests << MainWindow::tr("%1 to the right and %2 to the left").arg(rest.right).arg(rest.left);
    words += QLatin1Char(' ') + MainWindow::tr("After the last of them %1 rest.").arg(rests.join(QStringLiteral("; ")));
    if (arches.joins > 0)
        words += QLatin1Char(' ') + oneOrMany(arches.joins, MainWindow::tr("A yarn is joined once."),
                                            MainWindow::tr("A yarn is joined %1 times."));
    return words + leadAndFilled(arches.lead, arches.filled);
}

QString increasesInWords(const Pattern& pattern, SectionId id, int at, const IncreasePlan& plan)
{
    Pattern with = pattern;
    apply(with, plan.edit);
    const Section& section = with.sections[static_cast<std::size_t>(sectionIndex(with, id))];
    const auto labels = rowLabels(section);
    const auto label = [&](int row) { return toQt(labels[static_cast<std::size_t>(at + row)]); };
    const int rows = static_cast<int>(plan.rows.size());
    QString words = rowsInWords(section, {at, at + rows - 1});
    words[0] = words[0].toUpper();
    words = MainWindow::tr("%1: %2 become %3 in %4.")
                .arg(words,
                     oneOrMany(plan.before, MainWindow::tr("1 stitch"), MainWindow::tr("%1 stitches")),
                     QString::number(plan.counts.back()),
                     oneOrMany(static_cast<int>(plan.with.size()), MainWindow::tr("1 row with increases"),
                             MainWindow::tr("%1 rows with increases")));
    QStringList counts;
    const int times = static_cast<int>(plan.with.size());
    for (int i = 0; i < times; ++i)
        if (times <= 8 || i < 5 || i + 1 == times)
            counts << MainWindow::tr("row %1: %2")
                          .arg(label(plan.with[static_cast<std::size_t>(i)]))
                          .arg(plan.counts[static_cast<std::size_t>(plan.with[static_cast<std::size_t>(i)])]);
        else if (i == 5)
            counts << QStringLiteral("...");
    words += QLatin1Char(' ') + MainWindow::tr("After %1.").arg(counts.join(QStringLiteral(", ")));
    int worked = 0;
    for (const int count : plan.counts)
        worked += count;
    words += QLatin1Char(' ') + MainWindow::tr("%1 stitches are worked in all.").arg(worked);
    if (plan.lead > 0)
        words += QLatin1Char(' ') + oneOrMany(plan.lead, MainWindow::tr("A plain row comes first."),
                                            MainWindow::tr("%1 plain rows come first."));
    return words + leadAndFilled(0, plan.filled);
}

} // namespace

// Does what the dialog settled: the edit in one step, then what came of it in the status bar.
void MainWindow::performShaping(SectionId section, std::pair<int, std::size_t> rows, const Edit& edit, const QString& words)
{
    m_document.perform(edit);
    goTo(section, rows.first);
    // On a wide row what was made may lie far from where the keys were: to the first turn.
    if (const Section* shown = shownSection())
        for (std::size_t at = static_cast<std::size_t>(rows.first); at < std::min(shown->rows.size(), static_cast<std::size_t>(rows.first) + rows.second); ++at) {
            const Row& made = *shown->rows[at];
            const ColumnSpan used = usedColumns(made, {});
            if (made.finish.kind != FinishKind::TurnEarly || used.first == 0)
                continue;
            m_canvas->setCursor({static_cast<int>(at), made.side == Side::RS ? used.last : used.first});
            break;
        }
    tell(words);
}

void MainWindow::makeWedge()
{
    const Section* section = shownSection();
    if (!section || section->rows.empty())
        return;
    const int row = std::clamp(m_canvas->cursor().row, 0, static_cast<int>(section->rows.size()) - 1);
    const Beginnings begins = beginningsAt(*section, row);
    WedgeWishes first;
    first.method = m_canvas->turnMethod();
    first.yarns = {section->rows[static_cast<std::size_t>(row)]->yarn};
    const auto made = [&](int choice, const WedgeWishes& wishes) {
        const Derived& derived = m_document.derived();
        return shortRowWedge(m_document.pattern(), m_document.catalogue(), derived.ledgers(),
                             derived.shownLedger(), begins.section, begins.row(choice), wishes);
    };
    WedgeWishes most = first; // what is proposed fits
    most.untilLeft = first.step;
    if (const auto wedge = made(0, most); wedge.ok())
        first.turns = std::min(first.turns, wedge.value().turns);
    const auto preview = [&](int choice, const WedgeWishes& wishes) {
        const auto wedge = made(choice, wishes);
        return wedge.ok() ? ShapingPreview{true, wedgeInWords(m_document.pattern(), begins.section,
                                                              begins.row(choice), wedge.value(), wishes.at)}
                          : ShapingPreview{false, toQt(toText(wedge.fault()))};
    };
    WedgeDialog dialog(begins.words, m_document.pattern().head, first, preview, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const auto wedge = made(dialog.place(), dialog.wishes());
    if (!wedge.ok())
        return m_document.tell(toQt(toText(wedge.fault())));
    const int at = begins.row(dialog.place());
    performShaping(begins.section, {at, wedge.value().rows.size()}, wedge.value().edit,
                   wedgeInWords(m_document.pattern(), begins.section, at, wedge.value(), dialog.wishes().at));
}

void MainWindow::makeArches()
{
    const Section* section = shownSection();
    if (!section || section->rows.empty())
        return;
    const int row = std::clamp(m_canvas->cursor().row, 0, static_cast<int>(section->rows.size()) - 1);
    const Beginnings begins = beginningsAt(*section, row);
    std::vector<ArchPlaceChoice> places{{ArchPlace{}, tr("the middle of the row")}};
    ArchWishes first;
    if (const Needle* needle = needleAhead(m_document.derived().ledger(), shownIndex(), begins.row(0))) {
        places.front().words = tr("the middle of the %1 stitches").arg(needle->count());
        for (const Marker& marker : markersOn(*needle, m_document.pattern().head)) {
            ArchPlace place;
            place.at = ArchPlace::At::Marker;
            place.marker = marker.id;
            QStringList after;
            for (const MarkerAt& at : needle->markers)
                if (at.marker == marker.id)
                    after << QString::number(at.position);
            places.push_back({place, tr("marker %1, after %2 stitches")
                                         .arg(toQt(marker.name), after.join(QStringLiteral(", ")))});
        }
        for (int loop = 0; loop < needle->count(); ++loop)
            if (needle->loops[static_cast<std::size_t>(loop)].column == m_canvas->cursor().column) {
                ArchPlace place;
                place.at = ArchPlace::At::Stitch;
                place.stitch = loop + 1;
                places.push_back({place, tr("stitch %1, at the cursor").arg(loop + 1)});
                break;
            }
        first.width = std::clamp(needle->count() / 4, 1, 10);
        if (first.width > 1 && (needle->count() - first.width) % 2 != 0)
            --first.width; // as many rest on either side
    }
    first.method = m_canvas->turnMethod();
    first.yarns = {section->rows[static_cast<std::size_t>(row)]->yarn};
    const auto made = [&](int choice, const ArchWishes& wishes) {
        const Derived& derived = m_document.derived();
        return shortRowArches(m_document.pattern(), m_document.catalogue(), derived.ledgers(),
                              derived.shownLedger(), begins.section, begins.row(choice), wishes);
    };
    while (first.rows > 2 && !made(0, first).ok()) // what is proposed fits
        --first.rows;
    const auto preview = [&](int choice, const ArchWishes& wishes) {
        const auto arches = made(choice, wishes);
        return arches.ok() ? ShapingPreview{true, archesInWords(m_document.pattern(), begins.section,
                                                                begins.row(choice), arches.value())}
                           : ShapingPreview{false, toQt(toText(arches.fault()))};
    };
    ArchDialog dialog(begins.words, std::move(places), m_document.pattern().head.yarns, first, preview, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const auto arches = made(dialog.begin(), dialog.wishes());
    if (!arches.ok())
        return m_document.tell(toQt(toText(arches.fault())));
    const int at = begins.row(dialog.begin());
    performShaping(begins.section, {at, arches.value().rows.size()}, arches.value().edit,
                   archesInWords(m_document.pattern(), begins.section, at, arches.value()));
}

void MainWindow::makeIncreases()
{
    const Section* section = shownSection();
    if (!section || section->rows.empty())
        return;
    const int row = std::clamp(m_canvas->cursor().row, 0, static_cast<int>(section->rows.size()) - 1);
    const Beginnings begins = beginningsAt(*section, row);
    std::vector<Marker> markers;
    int stitches = 0;
    if (const Needle* needle = needleAhead(m_document.derived().ledger(), shownIndex(), begins.row(0))) {
        stitches = needle->count();
        markers = markersOn(*needle, m_document.pattern().head);
    }
    IncreaseWishes first;
    first.yarn = section->rows[static_cast<std::size_t>(row)]->yarn;
    const auto made = [&](int choice, const IncreaseWishes& wishes) {
        const Derived& derived = m_document.derived();
        return increasePlan(m_document.pattern(), m_document.catalogue(), derived.ledgers(),
                            derived.shownLedger(), begins.section, begins.row(choice), wishes);
    };
    const auto preview = [&](int choice, const IncreaseWishes& wishes) {
        const auto plan = made(choice, wishes);
        return plan.ok() ? ShapingPreview{true, increasesInWords(m_document.pattern(), begins.section,
                                                                 begins.row(choice), plan.value())}
                         : ShapingPreview{false, toQt(toText(plan.fault()))};
    };
    IncreasesDialog dialog(begins.words, markers, m_document.pattern().head.yarns, stitches, first, preview, this);
    if (dialog.exec() != QDialog::Accepted)
        return;
    const auto plan = made(dialog.begin(), dialog.wishes());
    if (!plan.ok())
        return m_document.tell(toQt(toText(plan.fault())));
    const int at = begins.row(dialog.begin());
    performShaping(begins.section, {at, plan.value().rows.size()}, plan.value().edit,
                   increasesInWords(m_document.pattern(), begins.section, at, plan.value()));
}

} // namespace shawlwright::app
