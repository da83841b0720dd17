// What the window shows before a shawl is open: how to begin, what was open lately, and the samples.
//
// Shape:   lies over the window below its menus and is left by opening something, by Esc or by its last
// button. Files that are no longer where they were stay in the list, greyed and said so, until they are
// taken off it.
#pragma once

#include <QWidget>

class QLabel;
class QListWidget;
class QToolButton;

namespace shawlwright::app {

class StartPage : public QWidget {
    Q_OBJECT
public:
    explicit StartPage(QWidget* parent);

    void setRecent(const QStringList& paths);
    void setSamples(const QStringList& paths);
    QListWidget* recentList() const { return m_recent; }
    QListWidget* sampleList() const { return m_samples; }

Q_SIGNALS:
    void newWanted();
    void openWanted();
    void wordsWanted();
    void fileWanted(const QString& path);   // one of the recent ones
    void sampleWanted(const QString& path); // opened as a copy
    void forgetWanted(const QString& path);
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void forgetCurrent();

    QListWidget* m_recent = nullptr;
    QListWidget* m_samples = nullptr;
    QLabel* m_nothingYet = nullptr;
    QLabel* m_noSamples = nullptr;
    QToolButton* m_forget = nullptr;
};

} // namespace shawlwright::app
