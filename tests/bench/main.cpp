// Prints `name value unit` lines; never fails for being slow. Figures that count are ratios within one run.

#include "tests/bench/benches.h"
#include "tests/bench/measure.h"

#include <QApplication>

#include <sys/resource.h>

int main(int argc, char** argv)
{
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    shawlwright::tests::benchStart();
    shawlwright::tests::benchCore();
    shawlwright::tests::benchWords();
    shawlwright::tests::benchApp();
    shawlwright::tests::benchWindow();
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    shawlwright::tests::tell("memory.peak", static_cast<double>(usage.ru_maxrss) / 1024, "MB");
    return 0;
}
