// A copy of unsaved work for the case that the program ends before it is saved.
//
// Shape:   one copy per running window, under a name of its own beside a lock that says the window still
// runs. It is
//          written a few seconds after a change and goes on a good save or a clean close; a copy without a
//          living lock is what a crash left behind and is offered at the next start until somebody says what
//          becomes of it.
// Errors:  a copy that can't be written is told once; one that can't be read is left where it is.
#pragma once

#include "app/document/pattern_document.h"

#include <QDateTime>
#include <QLockFile>
#include <QTimer>

#include <memory>
#include <vector>

namespace shawlwright::app {

struct LeftBehind {
    QString copy; // path of the copy
    QString name; // of its file, else its title; empty: it has neither
    QDateTime written;
    std::shared_ptr<QLockFile> lock; // held while it is asked about, so that no other window asks too
};

class RescueCopy : public QObject {
    Q_OBJECT
public:
    RescueCopy(PatternDocument& document, const QString& folder, QObject* parent = nullptr);
    ~RescueCopy() override; // a clean end: the copy goes

    static QString standardFolder();
    std::vector<LeftBehind> leftBehind() const; // newest first

    // The work as it was, as an unnamed shawl that is not saved yet; a sentence where it can't be read.
    std::optional<QString> open(const LeftBehind& left);
    void throwAway(const LeftBehind& left);

    void writeNow();
    void letGo(); // what was unsaved is saved or given up
    QString path() const { return m_path; }
    void setDelay(int milliseconds) { m_timer.setInterval(milliseconds); }

Q_SIGNALS:
    void told(const QString& sentence);

private:
    PatternDocument& m_document;
    QString m_folder;
    QString m_path;
    std::unique_ptr<QLockFile> m_lock;
    QTimer m_timer;
    bool m_toldOnce = false;
};

} // namespace shawlwright::app
