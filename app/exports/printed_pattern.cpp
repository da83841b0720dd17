#include "app/exports/printed_pattern.h"

#include "app/document/text.h"
#include "app/exports/chart_split.h"
#include "app/exports/document_font.h"
#include "app/exports/paragraph.h"
#include "app/painting/shape_painter.h"
#include "core/base/text.h"
#include "core/wording/abbreviations.h"
#include "core/wording/writer/gather.h"
#include "core/wording/yarn_words.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

namespace {

constexpr double pt = pageUnitsPerPoint;
constexpr double mm = pageUnitsPerMm;
const QColor softInk(0x6b, 0x65, 0x5d);

ParagraphStyle body()
{
    return {};
}
ParagraphStyle small()
{
    ParagraphStyle style;
    style.points = 8.5;
    style.colour = softInk;
    return style;
}
ParagraphStyle headingStyle(double points)
{
    ParagraphStyle style;
    style.points = points;
    style.bold = true;
    return style;
}

// Paragraphs of a text that was typed: lines apart, empty lines as distance.
void placeText(PageFlow& flow, const QString& text, const ParagraphStyle& style)
{
    for (const QString& line : text.split(QLatin1Char('\n'))) {
        if (line.trimmed().isEmpty())
            flow.space(style.points * 0.6 * pt);
        else
            place(flow, Paragraph(line, style, flow.width()));
    }
}

ShapeStyle chartStyle(const Theme& theme, const PatternHead& head, QPointF origin, double cell)
{
    QFont font = documentFont(10);
    font.setStyleStrategy(QFont::PreferNoShaping);
    return {theme, head, origin, cell, 0.35 * pt, font};
}

QString plain(double number)
{
    return toQt(toText(number));
}

} // namespace

PrintedPattern::PrintedPattern(const Pattern& pattern, const Catalogue& catalogue,
                               const ExportOptions& options, QSizeF paper)
    : m_pattern(pattern), m_catalogue(catalogue), m_options(options),
      m_told(runsToTell(pattern, catalogue, options.choice.version,
                        options.everySize ? std::nullopt : std::optional(options.choice.size))),
      m_sections(exportedSections(pattern, options)),
      m_flow(paper), m_contents(std::make_shared<Contents>())
{
    composeCover();
    composeCharts();
    composeKey();
    composeAbbreviations();
    composeWords();
}

void PrintedPattern::paintPage(QPainter& painter, int page) const
{
    m_flow.paintPage(painter, page);
    const QRectF area = m_flow.textArea();
    const QString number = QStringLiteral("page %1 of %2").arg(page).arg(pages());
    const double base = area.bottom() + 9 * mm;
    const QString title = toQt(m_pattern.head.title);
    painter.setPen(softInk);
    painter.setFont(printedFont(8, false, title));
    const QFontMetricsF metrics(painter.font());
    const double numberWidth = metrics.horizontalAdvance(number);
    painter.drawText(QPointF(area.left(), base),
                     metrics.elidedText(title, Qt::ElideRight, area.width() - numberWidth - 10 * mm));
    painter.setFont(printedFont(8, false, {}));
    painter.drawText(QPointF(area.right() - numberWidth, base), number);
}

int PrintedPattern::heading(const QString& words, double with)
{
    const Paragraph paragraph(words, headingStyle(13), m_flow.width());
    if (!m_flow.atHead() && m_flow.room() < 7 * mm + paragraph.height() + 2 * mm + with)
        m_flow.breakPage();
    m_flow.space(7 * mm);
    const int page = place(m_flow, paragraph);
    m_flow.space(2 * mm);
    return page;
}

void PrintedPattern::composeCover()
{
    const PatternHead& head = m_pattern.head;
    place(m_flow, Paragraph(head.title.empty() ? QStringLiteral("Untitled") : toQt(head.title),
                            headingStyle(22), m_flow.width()));
    if (!head.designer.empty()) {
        ParagraphStyle style;
        style.points = 11;
        style.colour = softInk;
        place(m_flow, Paragraph(QStringLiteral("designed by ") + toQt(head.designer), style, m_flow.width()));
    }
    if (const std::string choice = choiceInWords(m_pattern, m_options); m_options.section && !choice.empty())
        place(m_flow, Paragraph(toQt(choice), small(), m_flow.width()));
    m_flow.space(3 * mm);
    if (m_options.section)
        return;
    if (!head.introduction.empty()) {
        placeText(m_flow, toQt(head.introduction), body());
        m_flow.space(4 * mm);
    }
    composeFacts();
    composeContents();
    if (!head.notes.empty()) {
        heading(QStringLiteral("Notes"), 15 * mm);
        placeText(m_flow, toQt(head.notes), body());
    }
}

void PrintedPattern::fact(const QString& name, const QString& words, YarnId swatch)
{
    constexpr double column = 26 * mm;
    ParagraphStyle bold = body();
    bold.bold = true;
    const Paragraph left(name, bold, column);
    const double indent = swatch.value > 0 ? 6 * mm : 0;
    const Paragraph right(words, body(), m_flow.width() - column - indent);
    const QColor colour = yarnColour(m_pattern.head, swatch);
    m_flow.place(std::max(left.height(), right.height()) + 1 * mm, [=](QPainter& painter, QPointF at) {
        left.paint(painter, at);
        if (swatch.value > 0) {
            painter.setPen(QPen(softInk, 0.5 * pt));
            painter.setBrush(colour);
            painter.drawRect(QRectF(at + QPointF(column, 0.6 * mm), QSizeF(4 * mm, 3.2 * mm)));
            painter.setBrush(Qt::NoBrush);
        }
        right.paint(painter, at + QPointF(column + indent, 0));
    });
}

void PrintedPattern::composeFacts()
{
    const PatternHead& head = m_pattern.head;
    for (std::size_t i = 0; i < head.yarns.size(); ++i) {
        const Yarn& yarn = head.yarns[i];
        fact(i == 0 ? head.yarns.size() > 1 ? QStringLiteral("Yarns") : QStringLiteral("Yarn") : QString(),
             toQt(yarnInFull(yarn)), yarn.id);
    }
    fact(QStringLiteral("Needles"),
         plain(head.needleMm) + QStringLiteral(" mm, or the size that gives the gauge"));
    QString gauge = QStringLiteral("%1 stitches and %2 rows to 10 cm (4 in)")
                        .arg(plain(head.gauge.stitches), plain(head.gauge.rows));
    if (!head.gauge.over.empty())
        gauge += QStringLiteral(" in ") + toQt(head.gauge.over);
    fact(QStringLiteral("Gauge"), gauge);
    if (versionCount(m_pattern) > 1)
        fact(QStringLiteral("Version"), toQt(versionName(m_pattern, m_options.choice.version)));
    if (const std::string sizes = sizesInWords(m_pattern); !sizes.empty())
        fact(QStringLiteral("Sizes"), toQt(sizes));
    else if (head.sizes.size() == 1)
        fact(QStringLiteral("Size"), toQt(head.sizes.front()));
    QString castOn = toQt(castOnInWords(m_pattern)); // its first words are the name of the fact
    if (const QString begins = QStringLiteral("Cast on "); castOn.startsWith(begins))
        castOn.remove(0, begins.size());
    fact(QStringLiteral("Cast on"), castOn);
    if (const std::string markers = markersInWords(m_pattern, styleOf(head)); !markers.empty())
        fact(QStringLiteral("Markers"), toQt(markers));
}

void PrintedPattern::composeContents()
{
    if (m_sections.empty())
        return;
    heading(QStringLiteral("Contents"), 10 * mm);
    const auto line = [this](const QString& name, const std::function<QString(const Contents&)>& where) {
        const Paragraph left(name, body(), m_flow.width() - 70 * mm);
        const double width = m_flow.width();
        m_flow.place(
            left.height(), [left, width, where, contents = m_contents](QPainter& painter, QPointF at) {
                left.paint(painter, at);
                const QString words = where(*contents);
                if (!words.isEmpty())
                    Paragraph(words, body(), 70 * mm).paint(painter, at + QPointF(width - 70 * mm, 0));
            });
    };
    for (const int section : m_sections) {
        const std::string& title = m_pattern.sections[static_cast<std::size_t>(section)].frame.title;
        line(title.empty() ? QStringLiteral("Section %1").arg(section + 1) : toQt(title),
             [section](const Contents& contents) {
                 QStringList parts;
                 if (const auto it = contents.chart.find(section); it != contents.chart.end())
                     parts << QStringLiteral("chart on page %1").arg(it->second);
                 if (const auto it = contents.words.find(section); it != contents.words.end())
                     parts << QStringLiteral("in words on page %1").arg(it->second);
                 return parts.join(QStringLiteral(", "));
             });
    }
    line(QStringLiteral("Key and abbreviations"), [](const Contents& contents) {
        const int page = contents.key > 0 ? contents.key : contents.abbreviations;
        return page > 0 ? QStringLiteral("page %1").arg(page) : QString();
    });
}

void PrintedPattern::composeCharts()
{
    const auto charts = sectionCharts(m_pattern, m_catalogue, m_told.versions.front().bySize, m_options);
    if (!charts.empty() && !m_options.section)
        m_flow.breakPage();
    bool first = true;
    for (const SectionChart& chart : charts) {
        composeChart(chart, first);
        first = false;
    }
}

void PrintedPattern::composeChart(const SectionChart& given, bool first)
{
    const auto chart = std::make_shared<const SectionChart>(given);
    const Section& section = drawnSection(*chart, m_pattern);
    const int rows = static_cast<int>(section.rows.size());
    const int columns = section.frame.columns;
    chart::ChartOptions whole;
    whole.key = false;
    whole.title = false;
    const auto drawing = [this, chart](const chart::ChartOptions& options) {
        return drawingOf(*chart, m_pattern, m_catalogue, options);
    };
    const chart::Rect bounds = drawing(whole).bounds;

    const QString title =
        chart->title.empty() ? QStringLiteral("Section %1").arg(chart->section + 1) : toQt(chart->title);
    const Paragraph guide(
        QStringLiteral(
            "Charts show the right side and are read upwards: RS rows from right to left, WS rows from "
            "left to right."),
        small(), m_flow.width());
    std::vector<Paragraph> above;
    if (first)
        above.push_back(guide);
    for (const std::string& sentence : chart->notShown)
        above.emplace_back(toQt(sentence), small(), m_flow.width());
    double aboveHeight = above.empty() ? 0 : 2 * mm;
    for (const Paragraph& paragraph : above)
        aboveHeight += paragraph.height();
    const double captionHeight =
        Paragraph(QStringLiteral("x"), small(), m_flow.width()).height() * 2 + 1 * mm;
    const double reserved = 13 * mm + aboveHeight + captionHeight;
    const double width = m_flow.width();
    const double height = m_flow.fullHeight() - reserved;

    // The cell is kept, but for a chart that fits on fewer sheets when it is drawn a little smaller.
    double cell = std::max(m_options.cellMm, leastPrintedCellMm) * mm;
    const double least = std::max(leastPrintedCellMm * mm, 0.75 * cell);
    for (const double fitting : {width / bounds.width, height / bounds.height})
        if (fitting < cell && fitting >= least)
            cell = fitting;
    const auto most = [cell](double room, double extent, int count) {
        return std::max(1, static_cast<int>(std::floor(room / cell - (extent - count) + 1e-6)));
    };
    const auto columnSpans = splitColumns(section, most(width, bounds.width, columns));
    const auto rowSpans = splitRows(section, most(height, bounds.height, rows));
    const bool single = columnSpans.size() == 1 && rowSpans.size() == 1;

    const auto sheetPages = std::make_shared<std::vector<int>>();
    const int across = static_cast<int>(columnSpans.size());
    for (int up = 0; up < static_cast<int>(rowSpans.size()); ++up)
        for (int left = 0; left < across; ++left) {
            chart::ChartOptions part = whole;
            if (!single) {
                const Span r = rowSpans[static_cast<std::size_t>(up)],
                           c = columnSpans[static_cast<std::size_t>(left)];
                part.firstRow = r.first - 1;
                part.lastRow = r.last - 1;
                part.firstColumn = c.first;
                part.lastColumn = c.last;
            }
            const chart::Rect box = drawing(part).bounds;
            const double scale = std::min({cell, width / box.width, height / box.height});
            const double tall = box.height * scale;
            const int sheet = up * across + left;
            if (sheet == 0) {
                m_contents->chart[chart->section] =
                    heading(title, tall + aboveHeight + captionHeight);
                for (const Paragraph& paragraph : above)
                    place(m_flow, paragraph);
                if (!above.empty())
                    m_flow.space(2 * mm);
            } else {
                m_flow.space(4 * mm);
            }
            sheetPages->push_back(m_flow.place(
                tall,
                [this, drawing, part, scale](QPainter& painter, QPointF at) {
                    const chart::Drawing shapes = drawing(part);
                    const Theme theme = lightTheme();
                    const QPointF origin = at - QPointF(shapes.bounds.x, shapes.bounds.y) * scale;
                    paintDrawing(painter, shapes, chartStyle(theme, m_pattern.head, origin, scale));
                },
                single ? 0 : captionHeight));
            if (single)
                continue;
            const auto labels = rowLabels(section);
            const QString about = QStringLiteral("%1: rows %2 to %3, columns %4 to %5")
                                      .arg(title, toQt(labels[static_cast<std::size_t>(part.firstRow)]),
                                           toQt(labels[static_cast<std::size_t>(part.lastRow)]))
                                      .arg(part.firstColumn)
                                      .arg(part.lastColumn);
            const int leftSheet = left + 1 < across ? sheet + 1 : -1;
            const int upSheet = up + 1 < static_cast<int>(rowSpans.size()) ? sheet + across : -1;
            m_flow.place(captionHeight, [about, leftSheet, upSheet, sheetPages, width](QPainter& painter,
                                                                                       QPointF at) {
                QStringList on;
                if (leftSheet >= 0)
                    on << QStringLiteral("to the left on page %1")
                              .arg((*sheetPages)[static_cast<std::size_t>(leftSheet)]);
                if (upSheet >= 0)
                    on << QStringLiteral("upwards on page %1")
                              .arg((*sheetPages)[static_cast<std::size_t>(upSheet)]);
                const QString more = on.isEmpty() ? QStringLiteral(".")
                                                  : QStringLiteral(". Continues ") +
                                                        on.join(QStringLiteral(", ")) + QStringLiteral(".");
                Paragraph(about + more, small(), width).paint(painter, at + QPointF(0, 1 * mm));
            });
        }
}

void PrintedPattern::composeKey()
{
    std::vector<const Section*> sections;
    std::vector<std::vector<chart::RowFacts>> facts;
    const auto charts = sectionCharts(m_pattern, m_catalogue, m_told.versions.front().bySize, m_options);
    for (const SectionChart& chart : charts) {
        sections.push_back(&drawnSection(chart, m_pattern));
        facts.push_back(chart.facts);
    }
    const auto entries = chart::keyOf(sections, m_catalogue, facts, styleOf(m_pattern.head).words);
    if (entries.empty())
        return;
    constexpr double cell = 6 * mm; // its names are small print otherwise
    const double width = m_flow.width() / cell;
    const double tall = chart::keyDrawing(entries, m_catalogue, width).bounds.height * cell;
    const double most = m_flow.fullHeight() - 15 * mm;
    const auto piece = static_cast<std::size_t>(std::max(
        1.0, std::floor(static_cast<double>(entries.size()) * std::min(1.0, most / std::max(tall, 1.0)))));
    for (std::size_t from = 0; from < entries.size(); from += piece) {
        const std::vector<chart::KeyEntry> some(
            entries.begin() + static_cast<std::ptrdiff_t>(from),
            entries.begin() + static_cast<std::ptrdiff_t>(std::min(from + piece, entries.size())));
        const auto drawing =
            std::make_shared<const chart::Drawing>(chart::keyDrawing(some, m_catalogue, width));
        const double height = drawing->bounds.height * cell;
        if (from == 0)
            m_contents->key = heading(QStringLiteral("Key to the charts"), height);
        const double scale = std::min(cell, m_flow.width() / drawing->bounds.width);
        m_flow.place(height, [this, drawing, scale](QPainter& painter, QPointF at) {
            const Theme theme = lightTheme();
            paintDrawing(painter, *drawing,
                         chartStyle(theme, m_pattern.head,
                                    at - QPointF(drawing->bounds.x, drawing->bounds.y) * scale, scale));
        });
    }
}

void PrintedPattern::composeAbbreviations()
{
    // The words are needed here already: only what they use is listed.
    const Style style = styleOf(m_pattern.head);
    const Runs& runs = m_told.versions.front();
    std::vector<SaidRow> said;
    std::string text;
    for (const int index : m_sections) {
        const Section& section = m_pattern.sections[static_cast<std::size_t>(index)];
        if (!section.frame.words.empty())
            continue;
        std::vector<WrittenRow> rows = writtenRows(m_pattern, m_catalogue, runs, index, style);
        m_words[index] = gathered(m_pattern, runs, index, style, rows);
        for (const WrittenLine& line : m_words[index])
            text += toText(line) + "\n";
        for (WrittenRow& row : rows)
            if (!row.repeat)
                said.push_back(
                    {section.rows[static_cast<std::size_t>(row.firstRow)]->side, std::move(row.phrases)});
    }
    const auto list = abbreviationsIn(text, said, m_catalogue, style);
    if (list.empty())
        return;
    m_contents->abbreviations = heading(QStringLiteral("Abbreviations"), 12 * mm);
    for (const Abbreviation& it : list) {
        constexpr double column = 26 * mm;
        ParagraphStyle bold = body();
        bold.bold = true;
        const Paragraph left(toQt(it.shortForm), bold, column - 2 * mm);
        const Paragraph right(toQt(it.meaning), body(), m_flow.width() - column);
        m_flow.place(std::max(left.height(), right.height()) + 0.6 * mm,
                     [left, right](QPainter& painter, QPointF at) {
                         left.paint(painter, at);
                         right.paint(painter, at + QPointF(26 * mm, 0));
                     });
    }
}

void PrintedPattern::composeWords()
{
    for (const int index : m_sections) {
        const SectionFrame& frame = m_pattern.sections[static_cast<std::size_t>(index)].frame;
        const QString head =
            frame.title.empty() ? QStringLiteral("Section %1").arg(index + 1) : toQt(frame.title);
        std::vector<std::pair<QString, int>> lines; // how many letters of it are a label; -1: no row
        for (const std::string& text : {frame.note, frame.words})
            if (!text.empty())
                for (const QString& line : toQt(text).split(QLatin1Char('\n')))
                    lines.emplace_back(line, -1);
        if (frame.words.empty())
            for (const WrittenLine& line : m_words[index])
                lines.emplace_back(toQt(toText(line)),
                                   line.label.empty() ? -1 : static_cast<int>(toQt(line.label).size()));

        bool headed = false;
        for (const auto& [line, label] : lines) {
            if (line.trimmed().isEmpty()) {
                m_flow.space(2 * mm);
                continue;
            }
            ParagraphStyle set = body();
            if (label >= 0) {
                set.boldLetters = label;
                set.hanging = 12;
            }
            const Paragraph paragraph(line, set, m_flow.width());
            if (!headed) // with a note and the first row, never at the foot of a page alone
                m_contents->words[index] =
                    heading(head, std::min(paragraph.height() + 12 * mm, m_flow.fullHeight() / 2));
            headed = true;
            place(m_flow, paragraph);
            m_flow.space(1 * mm);
        }
        if (!headed)
            m_contents->words[index] = heading(head, 0);
    }
}

} // namespace shawlwright::app
