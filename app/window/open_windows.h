// The windows of the program that are open beside this one. Each is a program of its own, so that what ends one leaves
// the others alone; they hear of each other here.
//
// Shape:   a lock per window in one folder of the person says who is there, and names the local socket that it hears.
// Over it goes one line: "settings"; "ask" with the answer "may" or "stays"; "close" with the answer "closed" or "stays".
// Errors:  a window that doesn't answer because it has ended counts as closed.
#pragma once

#include <QLocalServer>
#include <QLockFile>
#include <QObject>

#include <functional>
#include <memory>

class QLocalSocket;

namespace shawlwright::app {

class OpenWindows : public QObject {
    Q_OBJECT
public:
    // False where the person wants to go on with the window of this program. `mayClose` asks about unsaved work and closes
    // nothing; `close` comes once nobody wants to go on.
    struct Window {
        std::function<bool()> mayClose;
        std::function<bool()> close;
    };
    OpenWindows(const QString& folder, Window window, QObject* parent = nullptr);
    ~OpenWindows() override;

    static QString standardFolder();

    void tellSettings(); // the others take what is kept now
    void closeAll();     // all are asked, this one first; only where none stays they are closed, this one last

Q_SIGNALS:
    void settingsLeft(); // by another window

private:
    QStringList others() const; // names of the sockets
    void hear(QLocalSocket& from);
    void sayNext(const QByteArray& word); // to the others, one after the other

    QString m_folder;
    QString m_name;
    Window m_window;
    std::unique_ptr<QLockFile> m_lock;
    QLocalServer m_server;
    QStringList m_toTell;
    bool m_closing = false;
};

} // namespace shawlwright::app
