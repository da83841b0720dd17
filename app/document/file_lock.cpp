#include "app/document/file_lock.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QSysInfo>

namespace shawlwright::app {

namespace {

QString settled(const QString& path)
{
    const QFileInfo info(path);
    const QString canonical = info.canonicalFilePath(); // empty where there is no such file yet
    if (!canonical.isEmpty())
        return canonical;
    const QString folder = QFileInfo(info.absolutePath()).canonicalFilePath();
    return (folder.isEmpty() ? info.absolutePath() : folder) + QLatin1Char('/') + info.fileName();
}

QString holderInWords(const QLockFile& lock)
{
    qint64 process = 0;
    QString computer, program;
    if (!lock.getLockInfo(&process, &computer, &program))
        return {};
    if (computer.isEmpty() || computer == QSysInfo::machineHostName())
        return QCoreApplication::translate("FileLock", "this computer");
    return QCoreApplication::translate("FileLock", "the computer %1").arg(computer);
}

} // namespace

QString lockPath(const QString& path)
{
    const QFileInfo info(settled(path));
    return info.path() + QStringLiteral("/.") + info.fileName() + QStringLiteral(".lock");
}

Hold FileLock::take(const QString& path)
{
    const QString wanted = settled(path);
    if (m_lock && wanted == m_path)
        return Hold::Mine;
    auto lock = std::make_unique<QLockFile>(lockPath(wanted));
    lock->setStaleLockTime(0); // good as long as its process lives
    if (!lock->tryLock(0)) {
        if (lock->error() == QLockFile::LockFailedError) {
            m_holder = holderInWords(*lock);
            return Hold::TakenByAnother;
        }
        letGo();
        return Hold::Unlockable;
    }
    m_lock = std::move(lock);
    m_path = wanted;
    return Hold::Mine;
}

bool FileLock::holds(const QString& path) const
{
    return m_lock && settled(path) == m_path;
}

void FileLock::letGo()
{
    m_lock.reset();
    m_path.clear();
}

} // namespace shawlwright::app
