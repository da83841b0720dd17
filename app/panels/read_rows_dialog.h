// Rows in words, typed, pasted or from a file, to be made into a shawl: the text, and below it whatever could
// not be read or has two readings. A click on a note goes to its place.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/wording/reader/reader.h"

#include <QTimer>

class QLabel;
class QListWidget;
class QPlainTextEdit;

namespace shawlwright::app {

class ReadRowsDialog : public FormDialog {
    Q_OBJECT
public:
    ReadRowsDialog(const Catalogue& catalogue, const QString& text, QWidget* parent = nullptr);

    const Pattern& pattern(); // as the text reads now
    QPlainTextEdit& field() { return *m_field; }
    QListWidget& notes() { return *m_notes; }
    void readNow();

protected:
    std::optional<QString> whatWrong() const override;

private:
    void openFile();
    QString rowAt(Place at) const;
    void tell(const QString& weight, Place at, const QString& row, const QString& words);
    void tellNeedle();
    void showPlace();
    void goTo(int note);

    const Catalogue& m_catalogue;
    QPlainTextEdit* m_field;
    QLabel* m_summary;
    QLabel* m_where; // the cursor is
    std::vector<Place> m_places; // of the notes
    QListWidget* m_notes;
    QTimer m_later;
    ReadText m_read;
};

} // namespace shawlwright::app
