// The pictures of single cells, each made once per size, pixel ratio, theme and yarn, and kept until one of
// them changes.
//
// Shape:   a stitch of w columns is one picture w cells wide; opaque, ground and grid lines in it. Below four
// pixels a
//          cell is one colour, by family: symbols say nothing there.
// Units:   device pixels.
#pragma once

#include "app/painting/theme.h"
#include "core/pattern/pattern.h"

#include <QFont>
#include <QImage>

#include <array>
#include <cstdint>
#include <vector>

namespace shawlwright::app {

struct AtlasKey {
    int cell = 24;
    double pixelRatio = 1;
    Theme theme;
    std::vector<std::uint32_t> yarnColours; // by yarn id; empty: no tints
    bool operator==(const AtlasKey&) const = default;
};

class Atlas {
public:
    // Forgets the pictures unless nothing has changed that they depend on.
    void prepare(AtlasKey key, const Catalogue& catalogue, const PatternHead& head, const QFont& font);

    // One row of cells, column `first` at the right end, into `to` at its pixel row `top`. resting: by column
    // - 1.
    void paintRow(QImage& to, int top, const Row& row, int first, int last, const std::vector<bool>& resting);
    int line() const; // thickness of a grid line; 0 where cells are too small for lines

private:
    // A stitch's cells one after the other, part 0 first, each a square of pixels in rows.
    using Pixels = std::vector<std::uint32_t>;

    const Pixels& pixels(StitchId stitch, YarnId yarn);
    const std::uint32_t* sourceOf(Cell held, YarnId ofRow, const std::vector<bool>& resting, int column);
    QImage made(const Stitch& stitch, YarnId yarn) const;
    QImage blank(int width, const QColor& ground, bool lines) const;
    QImage resting() const;
    QImage nothing() const;
    QColor ground(YarnId yarn) const;

    AtlasKey m_key;
    const Catalogue* m_catalogue = nullptr; // of the document; given anew before each use
    const PatternHead* m_head = nullptr;
    QFont m_font;
    std::vector<Stitch> m_own;                     // a stitch drawn anew needs a new picture
    std::array<std::vector<Pixels>, 256> m_pixels; // by yarn, by stitch
    Pixels m_resting;
    std::vector<const std::uint32_t*> m_sources; // of the row being painted, left end first
};

} // namespace shawlwright::app
