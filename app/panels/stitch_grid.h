// The stitches as tiles by family: symbol and abbreviation; the nine favourites carry their key.
//
// Shape:   groups of tiles below headings, as many to a line as the width holds.
#pragma once

#include "core/stitches/catalogue.h"

#include <QString>
#include <QWidget>

#include <vector>

namespace shawlwright::app {

struct StitchGroup {
    QString heading;
    std::vector<StitchId> stitches;
    bool keys = false; // tiles carry 1 to 9
    bool operator==(const StitchGroup&) const = default;
};

class StitchGrid : public QWidget {
    Q_OBJECT
public:
    explicit StitchGrid(QWidget* parent = nullptr);

    void show(const Catalogue& catalogue, std::vector<StitchGroup> groups, Side side, Words words);
    void setChosen(StitchId stitch);
    StitchId chosen() const { return m_chosen; }

    // The tile of a stitch; an empty one where it is not shown.
    QRect tileOf(StitchId stitch) const;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;

Q_SIGNALS:
    void chosenByUser(shawlwright::StitchId stitch);
    void contextWanted(shawlwright::StitchId stitch, const QPoint& globalPosition);
    void revealWanted(const QRect& tile);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Tile {
        StitchId stitch;
        QRect rect; // of the symbol's box; the abbreviation stands below
        int key = 0;
    };
    struct Laid {
        std::vector<Tile> tiles;
        std::vector<std::pair<QRect, QString>> headings;
        int height = 0;
    };
    int leastTile() const;
    int tileHeight() const;
    int labelHeight() const;
    QString labelOf(StitchId stitch, Side side) const;
    int tilesFor(StitchId stitch, int tileWidth) const;
    Laid laidOut(int width) const;
    const Tile* tileAt(QPoint point) const;
    void lay();
    void choose(std::size_t tile);

    Catalogue m_shown;
    std::vector<StitchGroup> m_groups;
    Side m_side = Side::RS;
    Words m_words = Words::US;
    StitchId m_chosen = noStitch;
    std::size_t m_current = 0; // tile the keys go on from
    Laid m_laid;
};

} // namespace shawlwright::app
