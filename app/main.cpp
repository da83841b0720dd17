#include "app/commandline/commandline.h"
#include "app/window/run_window.h"

int main(int argc, char** argv)
{
    if (const auto code = shawlwright::app::runCommandLine(argc, argv))
        return *code;
    return shawlwright::app::runWindow(argc, argv);
}
