#include "app/window/run_window.h"

#include "app/window/main_window.h"
#include "app/window/open_windows.h"
#include "app/window/translations.h"

#include <QApplication>
#include <QDir>
#include <QIcon>
#include <QProcess>
#include <QTimer>

#include <cstdio>

namespace shawlwright::app {

namespace {

// Qt ends the program where it finds no display; the person is told before.
bool displayFound(int argc, char** argv)
{
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"})
        if (!qEnvironmentVariableIsEmpty(name))
            return true;
    for (int i = 1; i < argc; ++i)
        if (QByteArrayView(argv[i]) == "-platform")
            return true;
#if defined(Q_OS_UNIX) && !defined(Q_OS_MACOS)
    return false;
#else
    return true;
#endif
}

// Drawn for two sizes; the desktop takes its own where the program is installed.
QIcon programIcon()
{
    QIcon icon;
    const QIcon small(QStringLiteral(":/shawlwright-small.svg")), large(QStringLiteral(":/shawlwright.svg"));
    for (const int size : {16, 24})
        icon.addPixmap(small.pixmap(size, size));
    for (const int size : {32, 48, 64, 128, 256})
        icon.addPixmap(large.pixmap(size, size));
    return icon;
}

} // namespace

int runWindow(int argc, char** argv)
{
    if (!displayFound(argc, argv)) {
        std::fputs("shawlwright: there is no display to open the window on (DISPLAY and WAYLAND_DISPLAY are "
                   "not set). "
                   "The commands check, counts, rows and export need none; see shawlwright --help.\n",
                   stderr);
        return 2;
    }
    QApplication application(argc, argv);
    QCoreApplication::setOrganizationName(QStringLiteral("Shawlwright"));
    QCoreApplication::setApplicationName(QStringLiteral("Shawlwright"));
    QGuiApplication::setApplicationDisplayName(QString());
    QGuiApplication::setDesktopFileName(QStringLiteral("shawlwright"));
    QApplication::setWindowIcon(programIcon());
    useTranslation(QLocale());
    MainWindow window;
    window.keepRescueCopies(RescueCopy::standardFolder());
    window.keepEarlierSaves(EarlierSaves::standardFolder());
    // A program of its own for each window: what ends one leaves the others alone.
    QObject::connect(&window, &MainWindow::anotherWindowWanted, [](const QString& path) {
        QProcess::startDetached(QCoreApplication::applicationFilePath(), {path});
    });
    OpenWindows windows(OpenWindows::standardFolder(), {[&window] { return window.mayCloseForAll(); }, [&window] { return window.closeForAll(); }});
    QObject::connect(&window, &MainWindow::quitWanted, &windows, &OpenWindows::closeAll);
    QObject::connect(&window, &MainWindow::settingsChanged, &windows, &OpenWindows::tellSettings);
    QObject::connect(&windows, &OpenWindows::settingsLeft, &window, &MainWindow::takeSharedSettings);
    window.show();
    const QStringList arguments = QCoreApplication::arguments();
    QStringList files;
    for (qsizetype i = 1; i < arguments.size(); ++i)
        if (!arguments[i].startsWith(QLatin1Char('-')))
            files << QDir::current().absoluteFilePath(arguments[i]);
    if (files.isEmpty())
        window.showStartPage();
    else
        window.openFiles(files);
    QTimer::singleShot(0, &window, &MainWindow::offerRescued);
    return QApplication::exec();
}

} // namespace shawlwright::app
