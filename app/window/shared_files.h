// Files that come with the program: samples, translations.
//
// Shape:   looked for beside the program (samples/ where it was built), in ../share/shawlwright where it was
// installed, and in the desktop's data folders; each name once, the nearest one.
#pragma once

#include <QStringList>

namespace shawlwright::app {

QStringList sharedFolders(const QString& name); // that there are, nearest first
QStringList samples();                          // whole paths, by name

} // namespace shawlwright::app
