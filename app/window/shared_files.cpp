#include "app/window/shared_files.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QSet>
#include <QStandardPaths>

namespace shawlwright::app {

QStringList sharedFolders(const QString& name)
{
    const QString beside = QCoreApplication::applicationDirPath();
    QStringList folders = {beside + QLatin1Char('/') + name,
                           beside + QStringLiteral("/../share/shawlwright/") + name};
    folders += QStandardPaths::locateAll(QStandardPaths::GenericDataLocation,
                                         QStringLiteral("shawlwright/") + name,
                                         QStandardPaths::LocateDirectory);
    QStringList there;
    for (const QString& folder : folders) {
        const QString canonical = QFileInfo(folder).canonicalFilePath();
        if (!canonical.isEmpty() && QFileInfo(canonical).isDir() && !there.contains(canonical))
            there << canonical;
    }
    return there;
}

QStringList samples()
{
    QStringList paths;
    QSet<QString> names;
    for (const QString& folder : sharedFolders(QStringLiteral("samples")))
        for (const QFileInfo& file :
             QDir(folder).entryInfoList({QStringLiteral("*.shawl")}, QDir::Files, QDir::Name))
            if (!names.contains(file.fileName())) {
                names.insert(file.fileName());
                paths << file.absoluteFilePath();
            }
    return paths;
}

} // namespace shawlwright::app
