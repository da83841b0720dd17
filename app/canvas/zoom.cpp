#include "app/canvas/zoom.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::app {

namespace {

constexpr double perNotch = 1.2;
constexpr double notch = 120;

} // namespace

int cellAfterWheel(int cellAtStart, int summedAngle)
{
    const double wanted = cellAtStart * std::pow(perNotch, summedAngle / notch);
    return static_cast<int>(std::lround(std::clamp<double>(wanted, leastCell, greatestCell)));
}

int clampedAngle(int cellAtStart, int summedAngle)
{
    const auto angleTo = [&](int cell) {
        return static_cast<int>(
            std::lround(notch * std::log(static_cast<double>(cell) / cellAtStart) / std::log(perNotch)));
    };
    return std::clamp(summedAngle, angleTo(leastCell), angleTo(greatestCell));
}

int nextCell(int cell, int steps)
{
    const int wanted = cellAfterWheel(cell, steps * static_cast<int>(notch));
    return std::clamp(wanted == cell ? cell + steps : wanted, leastCell, greatestCell);
}

int cellOfPercent(double percent, double pixelRatio)
{
    const double wanted = usualCell * pixelRatio * percent / 100;
    return static_cast<int>(std::lround(std::clamp<double>(wanted, leastCell, greatestCell)));
}

double percentOfCell(int cell, double pixelRatio)
{
    return 100 * cell / (usualCell * pixelRatio);
}

QPoint scrollAbout(QPointF cellsFromUpperLeft, int cell, QPointF pointInGrid)
{
    return (cellsFromUpperLeft * cell - pointInGrid).toPoint();
}

} // namespace shawlwright::app
