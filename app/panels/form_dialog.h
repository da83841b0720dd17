// A dialog that asks for some values: a heading, a form, one line for what is wrong, and two buttons.
//
// Shape:   opens in its first field, the text of that selected, and beside the row where the keys were if there is room. It
//          grows with what is asked, never larger than the screen: then what is asked scrolls; what comes of it, what is wrong
//          and the buttons stay in sight. Tab goes from field to field in the order of the layouts: lines downwards, each from the left.
// Errors:  whatWrong(), and what the asker has set by refusedBy(), give a sentence while the answers can't be taken; the
// dialog then stays open and shows it.
#pragma once

#include <QDialog>
#include <QList>

#include <functional>
#include <optional>

class QDialogButtonBox;
class QFormLayout;
class QLayout;
class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace shawlwright::app {

class FormDialog : public QDialog {
    Q_OBJECT
public:
    // `doIt` is the word on the button that takes the answers: "Cast on", "Keep".
    FormDialog(const QString& title, const QString& doIt, QWidget* parent);

    void refusedBy(std::function<std::optional<QString>()> refusal) { m_refusal = std::move(refusal); }
    void accept() override;
    void setVisible(bool visible) override;

    // A line of several fields; the letter of the label goes to the first of them.
    static void addLine(QFormLayout* form, const QString& label, QLayout* line, QWidget* first);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    virtual std::optional<QString> whatWrong() const { return {}; }

    QVBoxLayout* body() { return m_body; }
    QFormLayout* addForm(QVBoxLayout* into = nullptr);
    void lineUp(const QList<QLayout*>& forms); // one left edge for the fields of forms and grids with labels in column 0
    QLabel* addHeading(const QString& text);
    QLabel* addNote(const QString& text);
    QLabel* addPreview(int lines); // what comes of the answers, with room for so many lines
    QPushButton* doItButton() { return m_doIt; }
    // What would come of the answers, said in `label`: where they don't fit it says why, and they can't be taken.
    void showOutcome(QLabel& label, const QString& words, bool fits);
    void forgetWrong(); // the answers have changed since
    void orderTabs();   // by the layouts, after something was added
    void grow();        // to hold what was added
    void fit();         // the same, and closes the gap where something went

private:
    int neededWidth() const;
    int widthToHave() const;
    int neededHeight(int forWidth) const;
    void fitTo(QSize wanted);
    void placeBesideKeys();
    void widenLabels();
    void takeUpRoom();
    void focusFirst();
    QScrollArea* m_scroll = nullptr;
    QVBoxLayout* m_body = nullptr;
    QDialogButtonBox* m_buttons = nullptr;
    std::function<std::optional<QString>()> m_refusal;
    QList<QLayout*> m_linedUp;
    bool m_opened = false;
    QLabel* m_wrong = nullptr;
    QLabel* m_preview = nullptr;
    QPushButton* m_doIt = nullptr;
};

// A label in the soft ink, for an explanation beside fields.
QLabel* softLabel(const QString& text, QWidget* parent = nullptr);

} // namespace shawlwright::app
