#include "app/panels/wrapped_runs.h"

#include <QPainter>
#include <QTextLayout>

namespace shawlwright::app {

double wrappedRuns(QPainter* painter, const QRectF& into, const std::vector<Run>& runs)
{
    QString words;
    QList<QTextLayout::FormatRange> formats;
    for (const Run& run : runs) {
        QTextLayout::FormatRange range;
        range.start = static_cast<int>(words.size());
        range.length = static_cast<int>(run.words.size());
        range.format.setFont(run.font);
        range.format.setForeground(run.ink);
        formats.push_back(range);
        words += run.words;
    }
    if (runs.empty())
        return 0;
    QTextLayout layout(words, runs.front().font);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.setFormats(formats);
    layout.beginLayout();
    double height = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(into.width());
        line.setPosition({0, height});
        height += line.height() * 1.18; // lines of instructions want air
    }
    layout.endLayout();
    if (painter)
        layout.draw(painter, into.topLeft());
    return height;
}

} // namespace shawlwright::app
