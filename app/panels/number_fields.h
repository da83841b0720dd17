// Number fields of one manner: counts of stitches, and lengths that take both a comma and a point.
#pragma once

#include <QDoubleSpinBox>
#include <QSpinBox>

namespace shawlwright::app {

QSpinBox* stitchCount(int value, int least, int most, QWidget* parent);
void setUnit(QSpinBox& box, const QString& one, const QString& more); // its suffix, by its value
QDoubleSpinBox* lengthField(double value, double least, double most, const QString& suffix, QWidget* parent);

} // namespace shawlwright::app
