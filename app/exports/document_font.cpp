#include "app/exports/document_font.h"

#include <QStringList>

namespace shawlwright::app {

QFont documentFont(int pixelSize, bool bold)
{
    QFont font;
    font.setFamilies(
        QStringList{QStringLiteral("Inter"), QStringLiteral("DejaVu Sans"), QStringLiteral("Sans Serif")});
    font.setPixelSize(pixelSize);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setWeight(bold ? QFont::DemiBold : QFont::Normal);
    return font;
}

} // namespace shawlwright::app
