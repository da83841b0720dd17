#include "app/window/translations.h"

#include "app/window/shared_files.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

namespace shawlwright::app {

bool useTranslation(const QLocale& locale)
{
    const auto load = [&](const QString& name, const QString& folder) {
        auto* translator = new QTranslator(QCoreApplication::instance());
        if (translator->load(locale, name, QStringLiteral("_"), folder) &&
            QCoreApplication::installTranslator(translator))
            return true;
        delete translator;
        return false;
    };
    for (const QString& folder : sharedFolders(QStringLiteral("translations")))
        if (load(QStringLiteral("shawlwright"), folder)) {
            load(QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
            return true;
        }
    return false;
}

} // namespace shawlwright::app
