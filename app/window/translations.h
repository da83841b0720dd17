// The program's words in the person's language, where a translation of them is there.
//
// Shape:   shawlwright_<locale>.qm in the folder "translations" of the shared files, so a translation is added
// without building anything; Qt's own words (of file dialogs) come from Qt's folder. What the core says of
// a pattern (findings, words of the rows) is English.
#pragma once

#include <QLocale>

namespace shawlwright::app {

bool useTranslation(const QLocale& locale); // false: there is none, and the words are English

} // namespace shawlwright::app
