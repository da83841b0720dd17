// The words of the section shown as they are printed; the line that tells the row at the cursor is marked, a
// click goes to a row, a double click opens its words to be typed over.
#pragma once

#include "app/document/pattern_document.h"
#include "core/wording/writer/phrase_text.h"

#include <QWidget>

class QKeyEvent;
class QLabel;
class QListView;
class QMenu;

namespace shawlwright::app {

class RowWordsEditor;
class WordsModel;

class WordsPanel : public QWidget {
    Q_OBJECT
public:
    explicit WordsPanel(PatternDocument& document, QWidget* parent = nullptr);

    void setSection(SectionId section);
    void setRow(int row); // that the cursor is in
    void refresh();
    // Lights the phrase that tells a cell of the chart, where its row is told by words of its own.
    void lightCell(int row, int column);
    QString litWords() const; // empty: none

    QString text() const;         // the whole section, as copied
    QString selectedText() const; // the chosen rows; all where none is chosen
    void copy() const;
    QListView* list() const { return m_list; }
    int markedItem() const; // -1: none

    void edit(int row);                                 // opens the words of a row of the chart
    RowWordsEditor* editor() const { return m_editor; } // null: none is open
    void endEditing();

Q_SIGNALS:
    void rowWanted(shawlwright::SectionId section, int row);
    // The pointer is over a phrase that tells these columns; firstColumn 0: over none.
    void phrasePointed(shawlwright::SectionId section, int row, int firstColumn, int lastColumn);
    void settingsWanted(shawlwright::SectionId section, int row);
    void wordsWanted(shawlwright::SectionId section, int row);
    // Return was pressed; whoever listens takes them and calls endEditing(), or says in the editor what is
    // wrong.
    void wordsTyped(shawlwright::SectionId section, shawlwright::RowId row, const QString& words);
    void editingLeft();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    std::vector<PhraseSpan> spansOf(int item, int row) const;
    void pointAt(QPoint point);
    int rowMeant(int item) const; // of rows told together the cursor's
    bool keyPressed(QKeyEvent& event); // true: it is used up
    void leaveEditing();
    void placeEditor();
    void keepRowWhole();

    PatternDocument& m_document;
    SectionId m_section;
    RowId m_edited;
    RowWordsEditor* m_editor = nullptr;
    QLabel* m_title;
    QLabel* m_note;
    WordsModel* m_model;
    QListView* m_list;
    int m_row = -1;
    int m_litRow = -1, m_litColumn = 0;
    bool m_pointed = false; // at a phrase
};

} // namespace shawlwright::app
