// The stitches to draw with: a find field, favourites and those used lately first, then by family; below,
// what the chosen stitch does.
//
// Shape:   favourites are nine at most, by key of the catalogue, and keep their places 1 to 9.
#pragma once

#include "app/document/pattern_document.h"
#include "app/panels/stitch_grid.h"

#include <QStringList>
#include <QWidget>

class QFrame;
class QLabel;
class QLineEdit;
class QScrollArea;

namespace shawlwright::app {

class StitchesPanel : public QWidget {
    Q_OBJECT
public:
    explicit StitchesPanel(PatternDocument& document, QWidget* parent = nullptr);

    void refresh();          // the catalogue or the words changed
    void setSide(Side side); // whose abbreviations are shown
    void setChosen(StitchId stitch);
    StitchId chosen() const { return m_grid->chosen(); }
    StitchId chosenBefore() const; // of those that are still there; plain knit where none is
    void usedLately(StitchId stitch);
    void find(); // puts the keys into the find field

    QStringList favourites() const { return m_favourites; }
    void setFavourites(const QStringList& keys);
    void setFavourite(int place, StitchId stitch); // place 1..9
    std::optional<StitchId> favourite(int place) const;

    StitchGrid* grid() const { return m_grid; }
    QLineEdit* findField() const { return m_find; }
    QString description() const; // what is shown of the chosen stitch

    static QStringList firstFavourites();

Q_SIGNALS:
    void stitchChosen(shawlwright::StitchId stitch);
    void contextWanted(shawlwright::StitchId stitch, const QPoint& globalPosition);
    void favouritesChanged();
    void toChartWanted(); // the search is done, the keys go back to the chart

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fill();
    void describe();
    void fitDescription(); // a quarter of the panel at most, and scrolled where it is longer
    std::vector<StitchGroup> groups() const;
    bool matches(const Stitch& stitch, const QString& words) const;

    PatternDocument& m_document;
    QLineEdit* m_find;
    QScrollArea* m_scroll;
    StitchGrid* m_grid;
    QScrollArea* m_about;
    QLabel* m_name;
    QLabel* m_does;
    QStringList m_favourites;
    std::vector<StitchId> m_recent;
    std::vector<StitchId> m_chosenOnes; // the last few, the latest at the end
    Side m_side = Side::RS;
};

QString familyName(Family family);
QString leanInWords(Lean lean);              // "leans right"; empty: none
QString workedInWords(const Stitch& stitch); // "takes up 2, leaves 1, leans right"

} // namespace shawlwright::app
