// The bar of tools. Where all of it finds no room, as with large text, what the menus have too gives way first: the zoom,
// then the files, then undo and redo. The tools stay as long as they can.
//
// Shape:   entries are added in the order in which they are shown; a group that may give way is closed by mayGiveWay().
#pragma once

#include <QToolBar>

#include <vector>

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
    void showGroups(const std::vector<bool>& groups);

    std::vector<Group> m_groups;
    bool m_fitting = false;
};

} // namespace shawlwright::app
