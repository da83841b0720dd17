#include "app/document/earlier_saves.h"

#include "app/document/checked_save.h"
#include "core/files/pattern_file.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>

#include <algorithm>

namespace shawlwright::app {

namespace {

const QString timeForm = QStringLiteral("yyyyMMdd'T'HHmmss'.'zzz'Z'");
const QString pathFile = QStringLiteral("path");

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    if (file.size() > mostFileBytes || !file.open(QIODevice::ReadOnly))
        return {};
    return file.readAll();
}

QString wholePath(const QString& path)
{
    const QFileInfo info(path);
    const QString canonical = info.canonicalFilePath();
    return canonical.isEmpty() ? info.absoluteFilePath() : canonical;
}

std::vector<EarlierSave> savesIn(const QString& folder)
{
    std::vector<EarlierSave> saves;
    const QFileInfoList copies =
        QDir(folder).entryInfoList({QStringLiteral("*.shawl")}, QDir::Files, QDir::Name | QDir::Reversed);
    for (const QFileInfo& copy : copies) {
        QDateTime saved = QDateTime::fromString(copy.completeBaseName(), timeForm);
        saved.setTimeSpec(Qt::UTC);
        if (saved.isValid())
            saves.push_back({copy.absoluteFilePath(), saved});
    }
    return saves;
}

} // namespace

QString EarlierSaves::standardFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) + QStringLiteral("/saves");
}

QString EarlierSaves::folderOf(const QString& path) const
{
    const QByteArray digest =
        QCryptographicHash::hash(wholePath(path).toUtf8(), QCryptographicHash::Sha256).toHex();
    return m_folder + QLatin1Char('/') + QString::fromLatin1(digest.left(24));
}

std::optional<QString> EarlierSaves::keep(const QString& path, const QByteArray& bytes, QDateTime when)
{
    const QString folder = folderOf(path);
    std::vector<EarlierSave> saves = savesIn(folder);
    if (!saves.empty() && contentOf(saves.front().copy) == bytes)
        return std::nullopt;
    if (!QDir().mkpath(folder))
        return QCoreApplication::translate("EarlierSaves", "The folder %1 can't be made.")
            .arg(QDir::toNativeSeparators(folder));
    if (!saves.empty() && when <= saves.front().saved) // a clock that was set back
        when = saves.front().saved.addMSecs(1);
    if (!QFile::exists(folder + QLatin1Char('/') + pathFile))
        if (auto wrong = saveChecked(folder + QLatin1Char('/') + pathFile, wholePath(path).toUtf8()))
            return wrong;
    const QString copy =
        folder + QLatin1Char('/') + when.toUTC().toString(timeForm) + QStringLiteral(".shawl");
    if (auto wrong = saveChecked(copy, bytes))
        return wrong;
    for (std::size_t i = mostEarlierSaves - 1; i < saves.size(); ++i) // the new one comes on top
        QFile::remove(saves[i].copy);
    const std::vector<ShawlSaves> shawls = all();
    for (std::size_t i = mostShawlsKept; i < shawls.size(); ++i)
        QDir(folderOf(shawls[i].path)).removeRecursively();
    return std::nullopt;
}

std::optional<QString> EarlierSaves::keepWhatIsThere(const QString& path)
{
    const QFileInfo info(path);
    if (!info.isFile())
        return std::nullopt;
    const QByteArray bytes = contentOf(path);
    return bytes.isEmpty() ? std::nullopt : keep(path, bytes, info.lastModified().toUTC());
}

std::vector<EarlierSave> EarlierSaves::of(const QString& path) const
{
    return savesIn(folderOf(path));
}

std::vector<ShawlSaves> EarlierSaves::all() const
{
    std::vector<ShawlSaves> shawls;
    const QFileInfoList folders = QDir(m_folder).entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot);
    for (const QFileInfo& folder : folders) {
        ShawlSaves one{
            QString::fromUtf8(contentOf(folder.absoluteFilePath() + QLatin1Char('/') + pathFile)),
            savesIn(folder.absoluteFilePath())};
        if (!one.path.isEmpty() && !one.saves.empty())
            shawls.push_back(std::move(one));
    }
    std::sort(shawls.begin(), shawls.end(), [](const ShawlSaves& a, const ShawlSaves& b) {
        return a.saves.front().saved > b.saves.front().saved;
    });
    return shawls;
}

} // namespace shawlwright::app
