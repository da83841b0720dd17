// Holds a pattern file for one window, so that two of them, or two people, don't write over each other.
//
// Shape:   a hidden file beside the pattern, ".name.shawl.lock", that names process, program and computer. A
// link is followed first. The lock of a process that has ended counts for nothing and is taken over; that of
// another computer stays until its file is removed.
// Errors:  in a folder that can't be written in there is no lock: Unlockable, and the file can't be saved
// there either.
#pragma once

#include <QLockFile>
#include <QString>

#include <memory>

namespace shawlwright::app {

enum class Hold { Mine, TakenByAnother, Unlockable };

class FileLock {
public:
    // What was held before is let go unless another one holds `path`. Taking what is held already is Mine.
    Hold take(const QString& path);
    bool holds(const QString& path) const;
    void letGo();

    // The other one, for a message: "this computer"; empty where it is not known.
    QString holder() const { return m_holder; }

private:
    std::unique_ptr<QLockFile> m_lock;
    QString m_path; // of what is held
    QString m_holder;
};

QString lockPath(const QString& path);

} // namespace shawlwright::app
