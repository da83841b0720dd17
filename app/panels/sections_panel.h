// The sections in knitting order: title, stitches at the start and at the end. Chosen by a click, renamed in
// place, moved by dragging.
#pragma once

#include "app/document/pattern_document.h"

#include <QWidget>

class QListView;
class QMenu;
class QToolButton;

namespace shawlwright::app {

class SectionsModel;

class SectionsPanel : public QWidget {
    Q_OBJECT
public:
    explicit SectionsPanel(PatternDocument& document, QWidget* parent = nullptr);

    void setSection(SectionId section); // as shown elsewhere; tells nobody
    void refresh();
    void rename(); // opens the field in place
    void setMenu(QMenu* menu);
    QListView* list() const { return m_list; }
    int heightWithin(int room) const; // that shows all sections, or as many as there is room for
    QString countsOf(int section) const; // "9 – 161", as shown

Q_SIGNALS:
    void sectionChosen(shawlwright::SectionId section);
    void heightWantedChanged();
    void sectionClicked(); // with the mouse: its chart is meant next

private:
    PatternDocument& m_document;
    SectionsModel* m_model;
    QListView* m_list;
    QMenu* m_menu = nullptr;
};

} // namespace shawlwright::app
