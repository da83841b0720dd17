// Writes a whole file or none of it: beside the target, then put in its place.
//
// Shape:   a link is followed (its target is replaced), permissions are kept, the old file stays until the
// new is whole. Errors:  the sentence names the file, the reason and what to do; the old file is then
// untouched. A disk that takes
//          only a part of the bytes is such an error, although Qt's own commit() would call it a success.
#pragma once

#include <QByteArray>
#include <QString>

#include <optional>

namespace shawlwright::app {

std::optional<QString> saveChecked(const QString& path, const QByteArray& bytes);

} // namespace shawlwright::app
