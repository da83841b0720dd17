// What a copied part of a chart is to other programs: its rows in words, a drawing and a picture.
//
// Shape:   text/plain, image/svg+xml and image/png, the two drawn from the same shapes as the exports and
//          always in the light colours; and a number by which this program knows its own stitches again.
//          Pictures are made when somebody asks for them, of the pattern as it was when it was copied.
// Errors:  none; a part so large that its picture would pass the limits is offered without the PNG.
#pragma once

#include "app/exports/export_options.h"

#include <QMimeData>

namespace shawlwright::app {

class ChartMimeData : public QMimeData {
    Q_OBJECT
public:
    ChartMimeData(const Pattern& pattern, const Catalogue& catalogue, SectionId section, const Areas& part,
                  RunChoice choice, const QString& words, int number);

    static QString ownFormat();
    bool hasPicture() const { return m_options.dpi > 0; }

    QStringList formats() const override;
    bool hasFormat(const QString& format) const override;

protected:
    QVariant retrieveData(const QString& format, QMetaType type) const override;

private:
    Pattern m_pattern; // rows are shared with the document's
    Catalogue m_catalogue;
    ExportOptions m_options;
    mutable QByteArray m_svg, m_png; // once made
};

} // namespace shawlwright::app
