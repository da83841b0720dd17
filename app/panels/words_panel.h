// The words of the section shown, row by row; the row at the cursor is marked, a click goes to a row.
#pragma once

#include "app/document/pattern_document.h"

#include <QWidget>

class QLabel;
class QListView;
class QMenu;

namespace shawlwright::app {

class WordsModel;

class WordsPanel : public QWidget {
    Q_OBJECT
public:
    explicit WordsPanel(PatternDocument& document, QWidget* parent = nullptr);

    void setSection(SectionId section);
    void setRow(int row); // that the cursor is in
    void refresh();

    QString text() const;         // the whole section, as copied
    QString selectedText() const; // the chosen rows; all where none is chosen
    void copy() const;
    QListView* list() const { return m_list; }
    int markedItem() const; // -1: none

Q_SIGNALS:
    void rowWanted(shawlwright::SectionId section, int row);
    void settingsWanted(shawlwright::SectionId section, int row);

private:
    PatternDocument& m_document;
    SectionId m_section;
    QLabel* m_title;
    QLabel* m_note;
    WordsModel* m_model;
    QListView* m_list;
    int m_row = -1;
};

} // namespace shawlwright::app
