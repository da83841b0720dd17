// The name of an undo step in the person's language: "delete rows 3 to 5".
//
// Shape:   core names its edits in English; a name is one of the sentences of a table, with numbers and names in their
//          places. The sentences are translated, what stands in them is not. A name of another shape stays as it is.
#pragma once

#include <QString>
#include <QStringList>

namespace shawlwright::app {

QString stepWords(const QString& name);
bool isKnownStep(const QString& name);

} // namespace shawlwright::app
