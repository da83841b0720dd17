// The windows of the program that are open beside this one. Each is a program of its own, so that what ends one leaves
// the others alone; they hear of each other here.
//
// Shape:   a lock per window in one folder of the person says who is there, and names the local socket that it hears.
// Over it goes one line: "settings", or "close" with the answer "closed" or "stays".
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
    // `close` closes the window of this program, or says false where the person wants to go on with it.
    OpenWindows(const QString& folder, std::function<bool()> close, QObject* parent = nullptr);
    ~OpenWindows() override;

    static QString standardFolder();

    void tellSettings(); // the others take what is kept now
    void closeAll();     // the others one after the other, this one last; the first that stays stops it

Q_SIGNALS:
    void settingsLeft(); // by another window

private:
    QStringList others() const; // names of the sockets
    void hear(QLocalSocket& from);
    void closeNext();

    QString m_folder;
    QString m_name;
    std::function<bool()> m_close;
    std::unique_ptr<QLockFile> m_lock;
    QLocalServer m_server;
    QStringList m_toClose;
    bool m_closing = false;
};

} // namespace shawlwright::app
