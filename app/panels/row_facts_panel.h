// What stands on the needle at the row of the cursor: counts, worked and resting, between markers and turns,
// per yarn.
//
// Shape:   of a row that is worked several times, the time chosen in the field.
#pragma once

#include "app/document/pattern_document.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QScrollArea;
class QSpinBox;

namespace shawlwright::app {

class RowFactsPanel : public QWidget {
    Q_OBJECT
public:
    explicit RowFactsPanel(PatternDocument& document, QWidget* parent = nullptr);

    void setRow(SectionId section, int row);
    void refresh();
    int heightWanted() const; // that shows all of them
    QString text() const; // "Stitches: 63 to 64 (+1)", one fact per line

Q_SIGNALS:
    void headingChanged(const QString& heading); // "At row 7 (RS)"

private:
    using Fact = std::pair<QString, QString>;
    std::vector<Fact> facts(int line) const;
    std::vector<int> linesOfRow() const; // of the ledger, one per time worked
    void fillFacts();

    PatternDocument& m_document;
    SectionId m_section;
    int m_row = -1;
    std::vector<int> m_lines;
    QScrollArea* m_scroll;
    QGridLayout* m_grid;
    std::vector<std::pair<QLabel*, QLabel*>> m_labels;
    QWidget* m_timeLine;
    QSpinBox* m_time;
    QLabel* m_ofTimes;
    QLabel* m_doubt;
};

} // namespace shawlwright::app
