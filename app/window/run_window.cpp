#include "app/window/run_window.h"

#include "app/window/main_window.h"

#include <QApplication>
#include <QDir>
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
    MainWindow window;
    window.keepRescueCopies(RescueCopy::standardFolder());
    window.show();
    const QStringList arguments = QCoreApplication::arguments();
    for (qsizetype i = 1; i < arguments.size(); ++i)
        if (!arguments[i].startsWith(QLatin1Char('-'))) {
            window.openPath(QDir::current().absoluteFilePath(arguments[i]));
            break;
        }
    QTimer::singleShot(0, &window, &MainWindow::offerRescued);
    return QApplication::exec();
}

} // namespace shawlwright::app
