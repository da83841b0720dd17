// What lies over the cells: stitch repeats, markers and turns as the chart's own shapes, found quickly by
// place.
//
// Units:   chart units, a cell 1 wide and high; see chart.h.
#pragma once

#include "core/chart/chart.h"

#include <QRectF>

#include <vector>

namespace shawlwright::app {

class Overlay {
public:
    // Anew from the section; true where something moved.
    bool refresh(const Section* section, const PatternHead& head, const Catalogue& catalogue);

    struct Piece {
        chart::Shape shape;
        QRectF bounds;
    };
    const std::vector<Piece>& pieces() const { return m_pieces; }

private:
    std::vector<Piece> m_pieces;
};

} // namespace shawlwright::app
