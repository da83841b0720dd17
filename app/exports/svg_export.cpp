#include "app/exports/svg_export.h"

#include "app/document/text.h"
#include "app/exports/chart_sheet.h"
#include "app/exports/document_font.h"
#include "app/painting/shape_painter.h"
#include "core/base/text.h"

#include <QFont>
#include <QPainterPath>
#include <QXmlStreamWriter>

#include <charconv>
#include <cmath>
#include <set>

namespace shawlwright::app {

namespace {

// Millimetres to a thousandth, without a locale and without zeros at the end.
QString number(double value)
{
    const double rounded = std::round(value * 1000) / 1000;
    char text[64];
    const auto end =
        std::to_chars(text, text + sizeof text, rounded == 0 ? 0.0 : rounded, std::chars_format::fixed).ptr;
    return QString::fromLatin1(text, end - text);
}

// What a <g> says about the shapes in it; shapes that say the same share one.
struct Style {
    QString fill = QStringLiteral("none");
    QString stroke;
    double width = 0;
    bool dashed = false;
    bool operator==(const Style&) const = default;
};

class SvgWriter {
public:
    SvgWriter(const Pattern& pattern, const ChartSheet& sheet, Lettering lettering)
        : m_pattern(pattern), m_sheet(sheet), m_lettering(lettering), m_theme(lightTheme()), m_xml(&m_bytes)
    {
    }

    QByteArray write()
    {
        m_xml.setAutoFormatting(true);
        m_xml.setAutoFormattingIndent(1);
        m_xml.writeStartDocument();
        m_xml.writeStartElement(QStringLiteral("svg"));
        m_xml.writeDefaultNamespace(QStringLiteral("http://www.w3.org/2000/svg"));
        put("version", QStringLiteral("1.1"));
        put("width", number(m_sheet.widthMm) + QStringLiteral("mm"));
        put("height", number(m_sheet.heightMm) + QStringLiteral("mm"));
        put("viewBox",
            QStringLiteral("0 0 ") + number(m_sheet.widthMm) + QLatin1Char(' ') + number(m_sheet.heightMm));
        put("role", QStringLiteral("img"));
        put("aria-labelledby", QStringLiteral("title desc"));
        put("font-family", QStringLiteral("Inter, 'DejaVu Sans', sans-serif"));
        writeAbout();
        m_xml.writeEmptyElement(QStringLiteral("rect"));
        put("width", number(m_sheet.widthMm));
        put("height", number(m_sheet.heightMm));
        put("fill", m_theme.paper.name());
        for (const PlacedChart& chart : m_sheet.charts)
            writeChart(chart);
        m_xml.writeEndDocument();
        return m_bytes;
    }

private:
    void put(const char* name, const QString& value)
    {
        m_xml.writeAttribute(QString::fromLatin1(name), value);
    }
    void put(const char* name, double value) { put(name, number(value)); }

    void writeAbout()
    {
        const QString title = toQt(m_pattern.head.title);
        m_xml.writeStartElement(QStringLiteral("title"));
        put("id", QStringLiteral("title"));
        m_xml.writeCharacters(title.isEmpty() ? QStringLiteral("Knitting chart") : title);
        m_xml.writeEndElement();
        QStringList charts;
        for (const PlacedChart& chart : m_sheet.charts) {
            charts << QStringLiteral("%1: %2 rows of %3 columns")
                          .arg(chart.title.empty() ? QStringLiteral("Chart") : toQt(chart.title))
                          .arg(chart.rows)
                          .arg(chart.columns);
        }
        m_xml.writeStartElement(QStringLiteral("desc"));
        put("id", QStringLiteral("desc"));
        m_xml.writeCharacters(
            QStringLiteral("Knitting chart as seen from the right side, read upwards from Row 1. ") +
            charts.join(QStringLiteral("; ")) + QLatin1Char('.'));
        m_xml.writeEndElement();
    }

    void writeChart(const PlacedChart& chart)
    {
        m_prefix =
            m_sheet.charts.size() > 1 ? QStringLiteral("section-%1-").arg(chart.section + 1) : QString();
        m_origin = chart.origin;
        m_xml.writeStartElement(QStringLiteral("g"));
        put("id", m_prefix + QStringLiteral("chart"));
        if (!chart.title.empty()) {
            writeName(chart.title);
            writeText(chart.title, chart.titleAt, sheetTitleMm, chart::Align::Left, m_theme.ink, true);
        }
        m_used = {QStringLiteral("title"), QStringLiteral("desc"), m_prefix + QStringLiteral("chart")};
        for (const chart::Group& group : chart.drawing.groups)
            writeGroup(group);
        m_xml.writeEndElement();
    }

    void writeName(const std::string& words) { m_xml.writeTextElement(QStringLiteral("title"), toQt(words)); }

    // Ids are plain: letters, digits and hyphens, each once in the file.
    QString idOf(const chart::Group& group)
    {
        QString id = group.row >= 0 ? QStringLiteral("row-%1").arg(group.row + 1) : toQt(group.name);
        for (QChar& c : id)
            if (!(c.unicode() < 128 && c.isLetterOrNumber()))
                c = QLatin1Char('-');
        id = m_prefix + id;
        QString unique = id;
        for (int i = 2; !m_used.insert(unique).second; ++i)
            unique = id + QStringLiteral("-%1").arg(i);
        return unique;
    }

    void writeGroup(const chart::Group& group)
    {
        if (group.shapes.empty() && group.row < 0)
            return; // a row of plain stitches draws nothing, but is told
        m_xml.writeStartElement(QStringLiteral("g"));
        put("id", idOf(group));
        if (!group.words.empty())
            writeName(group.words);
        // Lines that belong to no row (the grid above all) are one path as long as they look the same.
        m_joining = group.row < 0;
        for (const chart::Shape& shape : group.shapes)
            std::visit([this](const auto& it) { writeShape(it); }, shape);
        endStyle();
        m_xml.writeEndElement();
    }

    void writeShape(const chart::Fill& fill)
    {
        Style style;
        style.fill = colourOf(m_theme, fill.ink, m_pattern.head, fill.yarn).name();
        writePath(fill.path, style, false);
    }

    void writeShape(const chart::Stroke& stroke)
    {
        Style style;
        style.stroke = colourOf(m_theme, stroke.ink, m_pattern.head).name();
        style.width = stroke.width * m_sheet.cellMm;
        style.dashed = stroke.dashed;
        writePath(stroke.path, style, m_joining);
    }

    void writeShape(const chart::Text& text)
    {
        endStyle();
        writeText(text.words, m_origin + QPointF(text.at.x, text.at.y) * m_sheet.cellMm,
                  text.size * m_sheet.cellMm, text.align, colourOf(m_theme, text.ink, m_pattern.head),
                  text.bold);
    }

    void writePath(const chart::Path& path, const Style& style, bool join)
    {
        if (!m_open || *m_open != style) {
            endStyle();
            beginStyle(style);
        }
        m_path += pathData(path);
        if (!join)
            endPath();
    }

    void beginStyle(const Style& style)
    {
        m_open = style;
        m_xml.writeStartElement(QStringLiteral("g"));
        put("fill", style.fill);
        if (style.stroke.isEmpty())
            return;
        put("stroke", style.stroke);
        put("stroke-width", style.width);
        put("stroke-linecap", style.dashed ? QStringLiteral("butt") : QStringLiteral("round"));
        put("stroke-linejoin", QStringLiteral("round"));
        if (style.dashed)
            put("stroke-dasharray", number(2.5 * style.width) + QLatin1Char(' ') + number(2 * style.width));
    }

    void endPath()
    {
        if (m_path.isEmpty())
            return;
        m_xml.writeEmptyElement(QStringLiteral("path"));
        put("d", m_path);
        m_path.clear();
    }

    void endStyle()
    {
        if (!m_open)
            return;
        endPath();
        m_xml.writeEndElement();
        m_open.reset();
    }

    void addPoint(QString& data, const chart::Point& point) const
    {
        data += number(m_origin.x() + point.x * m_sheet.cellMm) + QLatin1Char(' ') +
                number(m_origin.y() + point.y * m_sheet.cellMm);
    }

    QString pathData(const chart::Path& path) const
    {
        QString data;
        std::size_t at = 0;
        for (const chart::Verb verb : path.verbs) {
            switch (verb) {
            case chart::Verb::Move:
            case chart::Verb::Line:
                data += verb == chart::Verb::Move ? QLatin1Char('M') : QLatin1Char('L');
                addPoint(data, path.points[at++]);
                break;
            case chart::Verb::Curve:
                data += QLatin1Char('C');
                for (int i = 0; i < 3; ++i) {
                    if (i > 0)
                        data += QLatin1Char(' ');
                    addPoint(data, path.points[at++]);
                }
                break;
            case chart::Verb::Close:
                data += QLatin1Char('Z');
                break;
            }
        }
        return data;
    }

    void writeText(const std::string& words, QPointF at, double size, chart::Align align,
                   const QColor& colour, bool bold)
    {
        if (m_lettering == Lettering::Outlines) {
            writeOutlines(words, at, size, align, colour, bold);
            return;
        }
        m_xml.writeStartElement(QStringLiteral("text"));
        put("x", at.x());
        put("y", at.y());
        put("font-size", size);
        if (align != chart::Align::Left)
            put("text-anchor",
                align == chart::Align::Centre ? QStringLiteral("middle") : QStringLiteral("end"));
        if (bold)
            put("font-weight", QStringLiteral("600"));
        put("fill", colour.name());
        m_xml.writeCharacters(toQt(words));
        m_xml.writeEndElement();
    }

    void writeOutlines(const std::string& words, QPointF at, double size, chart::Align align,
                       const QColor& colour, bool bold)
    {
        constexpr int drawnAt = 256; // letters are taken from the font this large and made small again
        const QFont font = documentFont(drawnAt, bold);
        const double scale = size / drawnAt;
        QPainterPath letters;
        letters.addText(0, 0, font, toQt(words));
        const double width = letters.boundingRect().right() * scale;
        const double left = at.x() - (align == chart::Align::Centre  ? width / 2
                                      : align == chart::Align::Right ? width
                                                                     : 0);
        QString data;
        for (int i = 0; i < letters.elementCount(); ++i) {
            const QPainterPath::Element element = letters.elementAt(i);
            if (element.type == QPainterPath::MoveToElement)
                data += QLatin1Char('M');
            else if (element.type == QPainterPath::LineToElement)
                data += QLatin1Char('L');
            else if (element.type == QPainterPath::CurveToElement)
                data += QLatin1Char('C');
            else
                data += QLatin1Char(' ');
            data += number(left + element.x * scale) + QLatin1Char(' ') + number(at.y() + element.y * scale);
        }
        if (data.isEmpty())
            return;
        m_xml.writeStartElement(QStringLiteral("g"));
        writeName(words);
        m_xml.writeEmptyElement(QStringLiteral("path"));
        put("fill", colour.name());
        put("fill-rule",
            letters.fillRule() == Qt::OddEvenFill ? QStringLiteral("evenodd") : QStringLiteral("nonzero"));
        put("d", data);
        m_xml.writeEndElement();
    }

    const Pattern& m_pattern;
    const ChartSheet& m_sheet;
    const Lettering m_lettering;
    const Theme m_theme;
    QByteArray m_bytes;
    QXmlStreamWriter m_xml;
    QString m_prefix;
    QPointF m_origin;
    std::set<QString> m_used;
    std::optional<Style> m_open; // the <g> that is open inside the current group
    QString m_path;              // collected for one <path>
    bool m_joining = false;
};

} // namespace

Result<QByteArray> svgOf(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options)
{
    const auto sheet = chartSheet(pattern, catalogue, options);
    if (!sheet.ok())
        return sheet.fault();
    return SvgWriter(pattern, sheet.value(), options.lettering).write();
}

} // namespace shawlwright::app
