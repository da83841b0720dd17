// Brioche: a hood over what is worked, because a pair is a stitch with its yarn over lying on it.
#include "core/chart/symbol_parts.h"

namespace shawlwright::chart {

void drawBrioche(Shapes& shapes, const Stitch& stitch)
{
    const double w = stitch.width();
    const bool purl = stitch.face == Face::Purl;
    if (stitch.drawing == DrawnAs::SlipHood) {
        add(shapes, polyline({{w / 2 - 0.32, 0.36}, {w / 2, footLine}, {w / 2 + 0.32, 0.36}}));
        add(shapes, arch({w / 2 - 0.32, 0.36}, {w / 2 + 0.32, 0.36}, 0.26));
        return;
    }
    if (stitch.leaves >= 2 && stitch.takesUp <= 1) {
        // The hood covers the foot; the heads rise out of it.
        add(shapes, arch({w / 2 - 0.3, 0.9}, {w / 2 + 0.3, 0.9}, 0.34));
        Stitch heads = stitch;
        heads.lean = Lean::None;
        Shapes fan;
        drawLoops(fan, heads);
        for (Shape& shape : fan)
            for (Point& p : std::get<Stroke>(shape).path.points)
                p.y = headLine + (p.y - headLine) * 0.86 - 0.04;
        shapes.insert(shapes.end(), fan.begin(), fan.end());
        return;
    }
    if (stitch.takesUp >= 2) {
        add(shapes, arch({w / 2 - 0.4, 0.4}, {w / 2 + 0.4, 0.4}, 0.3));
        Stitch legs = stitch;
        legs.drawing = DrawnAs::ByLoops;
        Shapes under;
        drawLoops(under, legs);
        for (Shape& shape : under)
            for (Point& p : std::get<Stroke>(shape).path.points)
                p = {w / 2 + (p.x - w / 2) * 0.9, 0.28 + (p.y - headLine) * 0.86};
        shapes.insert(shapes.end(), under.begin(), under.end());
        return;
    }
    add(shapes, arch({w / 2 - 0.3, 0.5}, {w / 2 + 0.3, 0.5}, 0.36));
    if (purl)
        add(shapes, segment({w / 2 - 0.22, 0.72}, {w / 2 + 0.22, 0.72}));
    else
        add(shapes, segment({w / 2, 0.36}, {w / 2, footLine}));
}

} // namespace shawlwright::chart
