// What is odd about the shawl: a click goes to the place, one more carries out the mend.
//
// Shape:   findings that only follow from another are folded under it.
#pragma once

#include "app/document/pattern_document.h"

#include <QWidget>

#include <set>

class QLabel;
class QListView;
class QModelIndex;

namespace shawlwright::app {

class FindingsModel;

class FindingsPanel : public QWidget {
    Q_OBJECT
public:
    explicit FindingsPanel(PatternDocument& document, QWidget* parent = nullptr);

    void setSection(SectionId section); // its findings are named by row alone
    void refresh();

    int heightWanted() const; // that shows all of them, or more than a side has room for
    int count() const; // that stand on their own
    QListView* list() const { return m_list; }
    QRect mendRect(int item) const; // on the viewport; empty: no mend
    QRect foldRect(int item) const;
    std::optional<Finding> finding(int item) const;
    QString sentence(int item) const;

Q_SIGNALS:
    void findingWanted(const shawlwright::Finding& finding);
    void mendWanted(const shawlwright::Finding& finding);
    void countChanged(int count);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void unfold(int item);

    PatternDocument& m_document;
    SectionId m_section;
    FindingsModel* m_model;
    QListView* m_list;
    QLabel* m_none;
    std::set<std::pair<std::uint32_t, int>> m_unfolded; // section, row of the fault
    int m_count = -1;
};

} // namespace shawlwright::app
