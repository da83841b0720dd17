#include "app/document/checked_save.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QSaveFile>
#include <QStorageInfo>

namespace shawlwright::app {

namespace {

QString inWords(const char* text)
{
    return QCoreApplication::translate("Files", text);
}

QString bytesInWords(qint64 bytes)
{
    return QLocale::c().formattedDataSize(bytes, 1, QLocale::DataSizeTraditionalFormat);
}

QString sentence(const QString& path, const QString& reason, const QString& remedy)
{
    const QString said = inWords("\u201c%1\u201d was not saved: %2. %3").arg(QDir::toNativeSeparators(path), reason, remedy);
    return QFileInfo::exists(path) ? said + inWords(" What was there before is untouched.") : said;
}

// Why a write stopped half-way: the disk's room tells, where it can be asked.
QString reasonOfWrite(const QSaveFile& file, qint64 wanted, qint64 written)
{
    const QStorageInfo disk(QFileInfo(file.fileName()).absolutePath());
    if (disk.isValid() && disk.bytesAvailable() >= 0 && disk.bytesAvailable() < wanted)
        return inWords("the disk is full (%1 needed, %2 free)")
            .arg(bytesInWords(wanted), bytesInWords(disk.bytesAvailable()));
    if (written >= 0 && written < wanted)
        return inWords("only %1 of %2 could be written, the disk may be full")
            .arg(bytesInWords(written), bytesInWords(wanted));
    // It was taken, but didn't get out; Qt may not know why.
    if (file.error() == QFileDevice::NoError || file.errorString() == QObject::tr("Unknown error"))
        return inWords("not all of %1 could be written, the disk may be full").arg(bytesInWords(wanted));
    return file.errorString();
}

} // namespace

std::optional<QString> saveChecked(const QString& path, const QByteArray& bytes)
{
    const QString elsewhere = inWords("Save it in another folder or under another name.");
    const QFileInfo target(path);
    const QFileInfo folder(target.absolutePath());
    if (path.isEmpty())
        return inWords("Nothing was saved: no file name was given.");
    if (target.isDir())
        return sentence(path, inWords("there is a folder of that name"), elsewhere);
    if (!folder.exists())
        return sentence(path,
                        inWords("the folder \u201c%1\u201d does not exist").arg(folder.filePath()),
                        elsewhere);
    if (!folder.isDir())
        return sentence(path, QStringLiteral("\u201c%1\u201d is a file, not a folder").arg(folder.filePath()),
                        elsewhere);
    if (target.exists() && !target.isWritable())
        return sentence(path, inWords("the file is read-only"), elsewhere);

    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        const bool closed = !QFileInfo(folder.filePath()).isWritable();
        return sentence(path,
                        closed ? inWords("nothing may be written in that folder") : file.errorString(),
                        elsewhere);
    }
    const QString room = inWords("Make room, or save it on another disk.");
    const qint64 written = file.write(bytes);
    if (written != bytes.size() || !file.flush()) {
        const QString reason = reasonOfWrite(file, bytes.size(), written);
        file.cancelWriting();
        file.commit();
        return sentence(path, reason, room);
    }
    if (!file.commit())
        return sentence(path, reasonOfWrite(file, bytes.size(), bytes.size()), room);
    return std::nullopt;
}

} // namespace shawlwright::app
