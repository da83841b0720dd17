#include "app/window/open_windows.h"

#include <QDir>
#include <QLocalSocket>
#include <QPointer>
#include <QStandardPaths>
#include <QUuid>

namespace shawlwright::app {

namespace {

const QString ending = QStringLiteral(".window");
constexpr int millisecondsToAnswer = 2000;

} // namespace

QString OpenWindows::standardFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) + QStringLiteral("/windows");
}

OpenWindows::OpenWindows(const QString& folder, Window window, QObject* parent)
    : QObject(parent), m_folder(folder),
      m_name(QStringLiteral("shawlwright-") + QUuid::createUuid().toString(QUuid::WithoutBraces)),
      m_window(std::move(window))
{
    QDir().mkpath(m_folder);
    m_server.setSocketOptions(QLocalServer::UserAccessOption);
    connect(&m_server, &QLocalServer::newConnection, this, [this] {
        while (QLocalSocket* from = m_server.nextPendingConnection()) {
            connect(from, &QLocalSocket::disconnected, from, &QObject::deleteLater);
            connect(from, &QLocalSocket::readyRead, this, [this, from] { hear(*from); });
            hear(*from); // what came before anybody listened
        }
    });
    if (!m_server.listen(m_name))
        return; // a window that nobody hears of does all else
    m_lock = std::make_unique<QLockFile>(QDir(m_folder).filePath(m_name + ending));
    m_lock->setStaleLockTime(0); // alive as long as its process
    m_lock->tryLock(0);
}

OpenWindows::~OpenWindows() = default;

QStringList OpenWindows::others() const
{
    QStringList names;
    for (const QString& file : QDir(m_folder).entryList({QLatin1Char('*') + ending}, QDir::Files | QDir::Hidden)) {
        const QString name = file.chopped(ending.size());
        if (name == m_name)
            continue;
        QLockFile lock(QDir(m_folder).filePath(file));
        lock.setStaleLockTime(0);
        if (lock.tryLock(0)) {
            lock.unlock();
            QLocalServer::removeServer(name); // its program was killed
        } else {
            names << name;
        }
    }
    return names;
}

void OpenWindows::hear(QLocalSocket& from)
{
    if (!from.canReadLine())
        return;
    const QByteArray line = from.readLine().trimmed();
    if (line == "settings") {
        Q_EMIT settingsLeft();
    } else if (line == "ask" || line == "close") {
        // The question may take as long as it likes; whoever asked may be gone by then.
        const QPointer<QLocalSocket> asker(&from);
        const bool asks = line == "ask";
        const bool goes = asks ? m_window.mayClose() : m_window.close();
        if (!asker)
            return;
        asker->write(!goes ? "stays\n" : asks ? "may\n" : "closed\n");
        asker->waitForBytesWritten(millisecondsToAnswer); // the program may end before it is idle again
    }
}

void OpenWindows::tellSettings()
{
    for (const QString& name : others()) {
        auto* to = new QLocalSocket(this);
        connect(to, &QLocalSocket::connected, to, [to] {
            to->write("settings\n");
            to->flush();
            to->disconnectFromServer();
        });
        connect(to, &QLocalSocket::disconnected, to, &QObject::deleteLater);
        connect(to, &QLocalSocket::errorOccurred, to, &QObject::deleteLater);
        to->connectToServer(name);
    }
}

void OpenWindows::closeAll()
{
    if (m_closing)
        return;
    m_closing = true;
    if (!m_window.mayClose()) {
        m_closing = false;
        return;
    }
    m_toTell = others();
    sayNext("ask");
}

void OpenWindows::sayNext(const QByteArray& word)
{
    if (m_toTell.isEmpty() && word == "ask") {
        m_toTell = others();
        return sayNext("close");
    }
    if (m_toTell.isEmpty()) {
        m_closing = false;
        m_window.close();
        return;
    }
    auto* to = new QLocalSocket(this);
    // An answer, or the end of the other program: whichever comes first settles it, once.
    const auto settled = [this, to, word](bool goOn) {
        to->disconnect(this);
        to->deleteLater();
        if (goOn)
            return sayNext(word);
        m_closing = false;
        m_toTell.clear();
    };
    connect(to, &QLocalSocket::connected, this, [to, word] {
        to->write(word + '\n');
        to->flush();
    });
    connect(to, &QLocalSocket::readyRead, this, [to, settled] {
        if (to->canReadLine())
            settled(to->readLine().trimmed() != "stays");
    });
    connect(to, &QLocalSocket::disconnected, this, [settled] { settled(true); });
    connect(to, &QLocalSocket::errorOccurred, this, [settled] { settled(true); });
    to->connectToServer(m_toTell.takeFirst());
}

} // namespace shawlwright::app
