// Opens the window.
//
// Shape:   arguments that are no options are files to open, each in a window of its own.
// Errors:  2 where there is no display, said on standard error; else what the event loop gives.
#pragma once

namespace shawlwright::app {

int runWindow(int argc, char** argv);

} // namespace shawlwright::app
