#include "app/panels/wrapped_runs.h"

#include <QPainter>
#include <QTextLayout>

namespace shawlwright::app {

namespace {

double laid(QTextLayout& layout, double width, const std::vector<Run>& runs)
{
    QString words;
    QList<QTextLayout::FormatRange> formats;
    for (const Run& run : runs) {
        QTextLayout::FormatRange range;
        range.start = static_cast<int>(words.size());
        range.length = static_cast<int>(run.words.size());
        range.format.setFont(run.font);
        range.format.setForeground(run.ink);
        if (run.ground.isValid())
            range.format.setBackground(run.ground);
        formats.push_back(range);
        words += run.words;
    }
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setText(words);
    layout.setFont(runs.front().font);
    layout.setTextOption(option);
    layout.setFormats(formats);
    layout.beginLayout();
    double height = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, height});
        height += line.height() * 1.18; // lines of instructions want air
    }
    layout.endLayout();
    return height;
}

} // namespace

double wrappedRuns(QPainter* painter, const QRectF& into, const std::vector<Run>& runs)
{
    if (runs.empty())
        return 0;
    QTextLayout layout;
    const double height = laid(layout, into.width(), runs);
    if (painter)
        layout.draw(painter, into.topLeft());
    return height;
}

int letterAt(QPointF point, const QRectF& into, const std::vector<Run>& runs)
{
    if (runs.empty())
        return -1;
    QTextLayout layout;
    laid(layout, into.width(), runs);
    const QPointF at = point - into.topLeft();
    for (int i = 0; i < layout.lineCount(); ++i) {
        const QTextLine line = layout.lineAt(i);
        if (at.y() >= line.y() && at.y() < line.y() + line.height())
            return at.x() >= 0 && at.x() < line.naturalTextWidth()
                       ? line.xToCursor(at.x(), QTextLine::CursorOnCharacter)
                       : -1;
    }
    return -1;
}

} // namespace shawlwright::app
