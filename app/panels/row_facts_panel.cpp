#include "app/panels/row_facts_panel.h"

#include "app/document/text.h"
#include "app/panels/form_dialog.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr int mostSegments = 7; // beside one another in the panel

} // namespace

RowFactsPanel::RowFactsPanel(PatternDocument& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_scroll(new QScrollArea(this))
{
    setObjectName(QStringLiteral("panel"));
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    m_scroll->setObjectName(QStringLiteral("panel"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    outer->addWidget(m_scroll);
    auto* inside = new QWidget;
    m_scroll->setWidget(inside);
    auto* layout = new QVBoxLayout(inside);
    layout->setContentsMargins(16, 0, 16, 8);
    layout->setSpacing(4);

    m_timeLine = new QWidget(inside);
    auto* line = new QHBoxLayout(m_timeLine);
    line->setContentsMargins(0, 0, 0, 4);
    line->addWidget(softLabel(tr("Knit several times, here time"), m_timeLine), 1);
    m_time = new QSpinBox(m_timeLine);
    m_time->setFixedWidth(58);
    m_time->setAccessibleName(tr("Which time the row is worked"));
    line->addWidget(m_time);
    m_ofTimes = softLabel({}, m_timeLine);
    m_ofTimes->setWordWrap(false);
    line->addWidget(m_ofTimes);
    layout->addWidget(m_timeLine);

    m_grid = new QGridLayout;
    m_grid->setHorizontalSpacing(12);
    m_grid->setVerticalSpacing(4);
    m_grid->setColumnStretch(0, 1);
    layout->addLayout(m_grid);
    m_doubt = new QLabel(inside);
    m_doubt->setObjectName(QStringLiteral("fault"));
    m_doubt->setWordWrap(true);
    layout->addWidget(m_doubt);
    layout->addStretch();
    connect(m_time, &QSpinBox::valueChanged, this, &RowFactsPanel::fillFacts);
    m_timeLine->hide();
    m_doubt->hide();
}

int RowFactsPanel::heightWanted() const
{
    constexpr int border = 2; // of the scroll area, above and below
    return m_scroll->widget()->layout()->totalHeightForWidth(std::max(80, m_scroll->width() - border)) + border;
}

void RowFactsPanel::setRow(SectionId section, int row)
{
    if (section == m_section && row == m_row)
        return;
    m_section = section;
    m_row = row;
    refresh();
}

std::vector<int> RowFactsPanel::linesOfRow() const
{
    std::vector<int> lines;
    const Ledger& ledger = m_document.derived().ledger();
    const int section = sectionIndex(m_document.pattern(), m_section);
    for (std::size_t line = 0; line < ledger.rows.size(); ++line)
        if (ledger.rows[line].section == section && ledger.rows[line].row == m_row)
            lines.push_back(static_cast<int>(line));
    return lines;
}

void RowFactsPanel::refresh()
{
    m_lines = linesOfRow();
    const QSignalBlocker quiet(m_time);
    m_time->setRange(1, std::max(1, static_cast<int>(m_lines.size())));
    m_timeLine->setVisible(m_lines.size() > 1);
    m_ofTimes->setText(tr("of %1").arg(m_lines.size()));
    QString title = tr("At this row");
    const int at = sectionIndex(m_document.pattern(), m_section);
    if (at >= 0) {
        const Section& section = m_document.pattern().sections[static_cast<std::size_t>(at)];
        if (m_row >= 0 && m_row < static_cast<int>(section.rows.size()))
            title = tr("At row %1 (%2)")
                        .arg(toQt(rowLabels(section)[static_cast<std::size_t>(m_row)]),
                             section.rows[static_cast<std::size_t>(m_row)]->side == Side::RS ? tr("RS")
                                                                                             : tr("WS"));
    }
    Q_EMIT headingChanged(title);
    fillFacts();
}

std::vector<RowFactsPanel::Fact> RowFactsPanel::facts(int at) const
{
    const PatternHead& head = m_document.pattern().head;
    const LedgerLine& line = m_document.derived().ledger().lines[static_cast<std::size_t>(at)];
    std::vector<Fact> facts;
    const int change = line.after - line.before;
    facts.emplace_back(tr("Stitches"),
                       change == 0 ? QString::number(line.after)
                                   : tr("%1 to %2 (%3%4)")
                                         .arg(line.before)
                                         .arg(line.after)
                                         .arg(change > 0 ? QStringLiteral("+") : QString(QChar(0x2212)))
                                         .arg(std::abs(change)));
    facts.emplace_back(tr("Worked / resting"), tr("%1 / %2").arg(line.worked).arg(line.resting));
    if (line.segments.size() > 1) {
        // As the knitter sees them on the needle: the first worked on the right side stands at the right.
        QStringList parts;
        for (auto segment = line.segments.rbegin(); segment != line.segments.rend(); ++segment)
            parts << QString::number(*segment);
        if (const qsizetype all = parts.size(); all > mostSegments) // the ends, where a knitter counts from
            parts = parts.mid(0, 3) + QStringList{QString(QChar(0x2026))} + parts.mid(all - 3);
        facts.emplace_back(tr("Between markers"), parts.join(QStringLiteral(" | ")));
    }
    if (line.betweenTurns >= 0)
        facts.emplace_back(tr("Between the turns"), QString::number(line.betweenTurns));
    const auto perYarn = [&](const std::vector<int>& counts, const QString& name) {
        for (std::size_t i = 0; i < counts.size(); ++i) {
            const Yarn* yarn = yarnOf(head, YarnId{static_cast<std::uint8_t>(i + 1)});
            if (counts[i] > 0 && yarn)
                facts.emplace_back(name.arg(toQt(yarn->code)), QString::number(counts[i]));
        }
    };
    perYarn(line.perYarn, tr("%1 stitches worked"));
    perYarn(line.ridges, tr("%1 ridges so far"));
    return facts;
}

void RowFactsPanel::fillFacts()
{
    const std::size_t time = static_cast<std::size_t>(m_time->value()) - 1;
    std::vector<Fact> shown;
    if (time < m_lines.size())
        shown = facts(m_lines[time]);
    else if (m_row >= 0)
        shown.emplace_back(tr("Not knit in the version shown"), QString());
    while (m_labels.size() < shown.size()) {
        auto* name = softLabel({}, this);
        auto* value = new QLabel(this);
        value->setObjectName(QStringLiteral("strong"));
        value->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        value->setTextInteractionFlags(Qt::TextSelectableByMouse);
        const int row = static_cast<int>(m_labels.size());
        m_grid->addWidget(name, row, 0);
        m_grid->addWidget(value, row, 1);
        m_labels.emplace_back(name, value);
    }
    for (std::size_t i = 0; i < m_labels.size(); ++i) {
        const bool used = i < shown.size();
        m_labels[i].first->setVisible(used);
        m_labels[i].second->setVisible(used);
        if (used) {
            m_labels[i].first->setText(shown[i].first);
            m_labels[i].second->setText(shown[i].second);
        }
    }
    QString doubt;
    if (time < m_lines.size()) {
        const LedgerLine& line = m_document.derived().ledger().lines[static_cast<std::size_t>(m_lines[time])];
        if (line.restsOn.value != 0) {
            for (std::size_t s = 0; s < m_document.pattern().sections.size(); ++s) {
                const Section& section = m_document.pattern().sections[s];
                const int row = rowIndex(section, line.restsOn);
                if (row < 0)
                    continue;
                const QString label = toQt(rowLabels(section)[static_cast<std::size_t>(row)]);
                doubt = section.id == m_section && row == m_row
                            ? tr("The row does not come out; the counts are what it would leave.")
                            : tr("These counts rest on row %1, which does not come out.").arg(label);
            }
        }
    }
    m_doubt->setText(doubt);
    m_doubt->setVisible(!doubt.isEmpty());
}

QString RowFactsPanel::text() const
{
    QStringList lines;
    for (const auto& [name, value] : m_labels)
        if (!name->isHidden())
            lines << name->text() + QStringLiteral(": ") + value->text();
    return lines.join(QLatin1Char('\n'));
}

} // namespace shawlwright::app
