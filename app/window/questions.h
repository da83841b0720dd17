// What the window asks and tells in dialogs of its own, so that a test can answer in a person's place.
#pragma once

#include "app/document/pattern_document.h"

#include <QDateTime>
#include <QString>
#include <QStringList>

#include <functional>

class QWidget;

namespace shawlwright::app {

enum class Unsaved { Save, DontSave, GoOnEditing };
enum class Rescued { OpenIt, ThrowAway, AskAgain };
enum class Overwrite { WriteOver, SaveElsewhere, GoOnEditing };
enum class OpenElsewhere { ReadOnly, Copy, NotNow }; // another window has the file
enum class Differs { ReadAgain, KeepMine, SaveElsewhere };

struct Questions {
    std::function<Unsaved(const QString& name)> unsaved;
    std::function<Overwrite(const QString& name)> changedOnDisk;
    std::function<Rescued(const QString& name, const QDateTime& written)> rescued;
    std::function<OpenElsewhere(const QString& name, const QString& holder)> openElsewhere;
    // Somebody else changed or removed the open file.
    std::function<Differs(const QString& name, OnDisk now, bool modifiedHere)> differs;
    std::function<bool(const QString& question, const QString& doIt)> sure;
    std::function<QString()> openPath; // empty: not wanted
    std::function<QString(const QString& suggested)> savePath;
    std::function<QString(const QString& suggested, const QString& filter)> exportPath;
    std::function<QString(const QString& question, const QString& suggested)> words; // null: not wanted
    std::function<void(const QString& heading, const QString& sentence)> failed;
};

Questions askInDialogs(QWidget* window);
void keepFolder(const QString& path); // of this file, for the next question about one; an empty path changes nothing

} // namespace shawlwright::app
