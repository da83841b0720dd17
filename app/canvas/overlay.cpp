#include "app/canvas/overlay.h"

#include "app/painting/shape_painter.h"

#include <algorithm>

namespace shawlwright::app {

bool Overlay::refresh(const Section* section, const PatternHead& head, const Catalogue& catalogue)
{
    std::vector<Piece> pieces;
    const auto add = [&](const std::vector<chart::Shape>& shapes) {
        for (const chart::Shape& shape : shapes)
            pieces.push_back({shape, boundsOf(shape)});
    };
    if (section) {
        add(chart::boxShapes(*section, head, 1, &catalogue));
        add(chart::markerShapes(*section, head, 1));
        add(chart::turnShapes(*section, 1));
    }
    const bool same = std::equal(pieces.begin(), pieces.end(), m_pieces.begin(), m_pieces.end(),
                                 [](const Piece& a, const Piece& b) { return a.bounds == b.bounds; });
    m_pieces = std::move(pieces);
    return !same;
}

} // namespace shawlwright::app
