// A paragraph of several inks that breaks its lines within a width: what the lists on the right are made of.
#pragma once

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace shawlwright::app {

struct Run {
    QString words;
    QFont font;
    QColor ink;
    QColor ground{}; // behind the words; none: as it is
};

// Draws from the rectangle's top (with a null painter: only measures); gives the height used.
// The letter at a point of the paragraph, counted over all runs; -1: none.
int letterAt(QPointF point, const QRectF& into, const std::vector<Run>& runs);

double wrappedRuns(QPainter* painter, const QRectF& into, const std::vector<Run>& runs);

} // namespace shawlwright::app
