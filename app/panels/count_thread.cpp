#include "app/panels/count_thread.h"

#include "app/document/text.h"
#include "app/panels/look.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

CountThread::CountThread(PatternDocument& document, QWidget* parent) : QWidget(parent), m_document(document)
{
    setMouseTracking(true);
    setFocusPolicy(Qt::TabFocus);
    setAccessibleName(tr("Stitches over the shawl"));
    setCursor(Qt::PointingHandCursor);
    refresh();
}

int CountThread::labelHeight() const
{
    return QFontMetrics(smaller(font())).height();
}

QRectF CountThread::area() const
{
    const int count = QFontMetrics(heading(smaller(font()))).horizontalAdvance(QStringLiteral("0000"));
    return QRectF(rect()).adjusted(16, labelHeight() + 8, -std::max(44, count + 16), -10);
}

void CountThread::setRow(SectionId section, int row)
{
    if (section == m_section && row == m_row)
        return;
    m_section = section;
    m_row = row;
    update();
}

void CountThread::refresh()
{
    const Ledger& ledger = m_document.derived().ledger();
    m_counts.clear();
    m_sections.clear();
    m_most = 1;
    int section = -1;
    for (std::size_t line = 0; line < ledger.lines.size(); ++line) {
        m_counts.push_back(ledger.lines[line].after);
        m_most = std::max({m_most, ledger.lines[line].after, ledger.lines[line].before});
        if (ledger.rows[line].section != section) {
            section = ledger.rows[line].section;
            m_sections.emplace_back(
                static_cast<int>(line),
                toQt(m_document.pattern().sections[static_cast<std::size_t>(section)].frame.title));
        }
    }
    m_hovered = -1;
    update();
}

QPointF CountThread::pointOf(int line) const
{
    return pointOf(line, area());
}

QPointF CountThread::pointOf(int line, const QRectF& in) const
{
    const double count = m_counts[static_cast<std::size_t>(line)];
    return {in.left() + in.width() * (line + 1) / std::max<double>(1, static_cast<double>(m_counts.size())),
            in.bottom() - in.height() * count / m_most};
}

int CountThread::lineAt(double x) const
{
    if (m_counts.empty())
        return -1;
    const QRectF in = area();
    const double share = (x - in.left()) / std::max(1.0, in.width());
    return std::clamp(static_cast<int>(std::lround(share * static_cast<double>(m_counts.size()))) - 1, 0,
                      static_cast<int>(m_counts.size()) - 1);
}

int CountThread::markedLine() const
{
    const int section = sectionIndex(m_document.pattern(), m_section);
    return section < 0 || m_row < 0 ? -1 : firstLineOf(m_document.derived().ledger(), section, m_row);
}

QString CountThread::inWords(int line) const
{
    const KnittedRow& row = m_document.derived().ledger().rows[static_cast<std::size_t>(line)];
    const Section& section = m_document.pattern().sections[static_cast<std::size_t>(row.section)];
    return tr("%1, row %2: %3 stitches")
        .arg(toQt(section.frame.title), toQt(rowLabels(section)[static_cast<std::size_t>(row.row)]))
        .arg(m_counts[static_cast<std::size_t>(line)]);
}

void CountThread::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Theme theme = themeOf(*this);
    painter.fillRect(rect(), theme.paper);
    if (m_counts.empty())
        return;
    const QRectF in = area();
    painter.setFont(smaller(font()));
    const int lines = static_cast<int>(m_counts.size());

    painter.setPen(QPen(theme.line, 0));
    painter.drawLine(QPointF(in.left(), std::floor(in.bottom()) + 0.5),
                     QPointF(in.right(), std::floor(in.bottom()) + 0.5));
    // Section borders, with as much of the title as fits.
    for (std::size_t i = 0; i < m_sections.size(); ++i) {
        const double x = in.left() + in.width() * m_sections[i].first / lines;
        const double end =
            i + 1 < m_sections.size() ? in.left() + in.width() * m_sections[i + 1].first / lines : in.right();
        painter.setPen(QPen(theme.line, 0));
        painter.drawLine(QPointF(std::floor(x) + 0.5, 2), QPointF(std::floor(x) + 0.5, in.bottom()));
        painter.setPen(theme.softInk);
        const QString title = painter.fontMetrics().elidedText(m_sections[i].second, Qt::ElideRight,
                                                               static_cast<int>(end - x) - 8);
        if (title == m_sections[i].second || title.size() > 4) // "F…" names nothing; the tool tip has it whole
            painter.drawText(QPointF(x + 4, painter.fontMetrics().ascent() + 1), title);
    }
    painter.setRenderHint(QPainter::Antialiasing);
    const LedgerLine& first = m_document.derived().ledger().lines.front();
    QPainterPath thread(QPointF(in.left(), in.bottom() - in.height() * first.before / m_most));
    // No more points than pixels: of each pixel's rows the highest and the last.
    int pixel = -1;
    double highest = 0;
    for (int line = 0; line < lines; ++line) {
        const QPointF point = pointOf(line, in);
        const int here = static_cast<int>(point.x());
        highest = here == pixel ? std::min(highest, point.y()) : point.y();
        pixel = here;
        const bool lastHere = line + 1 == lines || static_cast<int>(pointOf(line + 1, in).x()) != here;
        if (!lastHere)
            continue;
        if (highest < point.y())
            thread.lineTo(point.x(), highest);
        thread.lineTo(point);
    }
    painter.setPen(QPen(theme.accent, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(thread);

    const int marked = markedLine();
    if (marked >= 0 && marked < lines) {
        const QPointF at = pointOf(marked, in);
        painter.setPen(QPen(theme.softInk, 1, Qt::DotLine));
        painter.drawLine(QPointF(at.x(), labelHeight() + 4), QPointF(at.x(), in.bottom()));
        painter.setPen(QPen(theme.paper, 1.5));
        painter.setBrush(theme.accent);
        painter.drawEllipse(at, 4, 4);
    }
    if (m_hovered >= 0 && m_hovered < lines) {
        painter.setPen(QPen(theme.accent, 1.5));
        painter.setBrush(theme.paper);
        painter.drawEllipse(pointOf(m_hovered, in), 3.5, 3.5);
    }
    painter.setPen(theme.ink);
    painter.setFont(heading(smaller(font())));
    const double ascent = painter.fontMetrics().ascent();
    const double y = std::clamp(pointOf(lines - 1).y() + ascent / 3, ascent, std::max(ascent, in.bottom()));
    painter.drawText(QPointF(in.right() + 8, y), QString::number(m_counts.back()));
    if (hasFocus()) {
        painter.setPen(QPen(theme.accent, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

void CountThread::mousePressEvent(QMouseEvent* event)
{
    const int line = lineAt(event->position().x());
    if (event->button() != Qt::LeftButton || line < 0)
        return;
    const KnittedRow& row = m_document.derived().ledger().rows[static_cast<std::size_t>(line)];
    Q_EMIT rowWanted(m_document.pattern().sections[static_cast<std::size_t>(row.section)].id, row.row);
}

void CountThread::mouseMoveEvent(QMouseEvent* event)
{
    const int line = lineAt(event->position().x());
    if (line == m_hovered)
        return;
    m_hovered = line;
    update();
    if (line >= 0)
        QToolTip::showText(event->globalPosition().toPoint(), inWords(line), this);
}

void CountThread::leaveEvent(QEvent*)
{
    m_hovered = -1;
    update();
}

void CountThread::keyPressEvent(QKeyEvent* event)
{
    const int step = event->key() == Qt::Key_Left ? -1 : event->key() == Qt::Key_Right ? 1 : 0;
    if (step == 0 || m_counts.empty())
        return QWidget::keyPressEvent(event);
    const int line = std::clamp(markedLine() + step, 0, static_cast<int>(m_counts.size()) - 1);
    const KnittedRow& row = m_document.derived().ledger().rows[static_cast<std::size_t>(line)];
    Q_EMIT rowWanted(m_document.pattern().sections[static_cast<std::size_t>(row.section)].id, row.row);
}

bool CountThread::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        const auto* help = static_cast<QHelpEvent*>(event);
        const int line = lineAt(help->pos().x());
        if (line >= 0)
            QToolTip::showText(help->globalPos(), inWords(line), this);
        return true;
    }
    return QWidget::event(event);
}

} // namespace shawlwright::app
