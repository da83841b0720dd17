// render_icon DRAWING.svg SIZE OUT.png: an icon of one size, while the program is built.
#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSvgRenderer>

int main(int argc, char** argv)
{
    if (argc != 4)
        return 2;
    const QString out = QString::fromLocal8Bit(argv[3]);
    const int size = QByteArray(argv[2]).toInt();
    QSvgRenderer drawing(QString::fromLocal8Bit(argv[1]));
    QImage image(size, size, QImage::Format_ARGB32_Premultiplied);
    if (!drawing.isValid() || image.isNull())
        return 2;
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    drawing.render(&painter);
    painter.end();
    return QDir().mkpath(QFileInfo(out).absolutePath()) && image.save(out, "PNG") ? 0 : 1;
}
