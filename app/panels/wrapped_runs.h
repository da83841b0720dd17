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
};

// Draws from the rectangle's top (with a null painter: only measures); gives the height used.
double wrappedRuns(QPainter* painter, const QRectF& into, const std::vector<Run>& runs);

} // namespace shawlwright::app
