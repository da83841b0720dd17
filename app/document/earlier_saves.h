// Copies of what was saved, the last few of each shawl, so that a save that was regretted can be taken back.
//
// Shape:   one folder per pattern file, named by a digest of the file's whole path, with a copy per save
// named by its time (UTC, to the millisecond) and a file "path" that says which pattern they are of. The same
// bytes twice in a row are kept once. The oldest copies go, and so do the folders saved to longest ago.
// Errors:  a copy that can't be written gives a sentence; the save itself is not touched by it.
#pragma once

#include <QByteArray>
#include <QDateTime>
#include <QString>

#include <optional>
#include <vector>

namespace shawlwright::app {

constexpr int mostEarlierSaves = 5;
constexpr int mostShawlsKept = 100;

struct EarlierSave {
    QString copy; // where it lies
    QDateTime saved;
};

struct ShawlSaves {
    QString path;                   // of the pattern file
    std::vector<EarlierSave> saves; // newest first, never empty
};

class EarlierSaves {
public:
    explicit EarlierSaves(QString folder) : m_folder(std::move(folder)) {}

    static QString standardFolder();

    std::optional<QString> keep(const QString& path, const QByteArray& bytes,
                                QDateTime when = QDateTime::currentDateTimeUtc());
    // What lies at `path` before it is written over, unless it is what was saved last.
    std::optional<QString> keepWhatIsThere(const QString& path);
    std::vector<EarlierSave> of(const QString& path) const; // newest first
    std::vector<ShawlSaves> all() const;                    // saved to last, first

private:
    QString folderOf(const QString& path) const;

    QString m_folder;
};

} // namespace shawlwright::app
