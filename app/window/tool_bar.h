// The bar of tools. Where all of it finds no room, as with large text, what the menus have too gives way first: the zoom,
// then the files, then undo and redo, then what is drawn seldom. It is then in the menu of a button that is shown for it.
//
// Shape:   entries are added in the order in which they are shown; a group that may give way is closed by mayGiveWay().
#pragma once

#include <QToolBar>

#include <vector>

class QMenu;
class QToolButton;

namespace shawlwright::app {

class ToolBar : public QToolBar {
    Q_OBJECT
public:
    explicit ToolBar(const QString& title, QWidget* parent = nullptr);

    void mayGiveWay(int order);  // what was added since the last such call; 0 goes first
    void staysShown();           // the same, of what never goes
    void fit();                  // after the words or the width have changed

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Group {
        int order = -1; // below 0: it stays
        QList<QAction*> actions;
    };
    void close(int order);
    void fillMore(const std::vector<bool>& shown);
    void showGroups(const std::vector<bool>& groups);

    std::vector<Group> m_groups;
    QMenu* m_moreMenu = nullptr;
    QAction* m_more = nullptr; // in the bar while something has given way
    bool m_fitting = false;
};

// A press that closes the menu of a button elsewhere never tells the button that the pointer has left it.
void leaveWithMenu(QToolButton& button);

} // namespace shawlwright::app
