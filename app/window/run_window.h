// Opens the window.
//
// Shape:   the first argument that is no option is the file to open.
// Errors:  2 where there is no display, said on standard error; else what the event loop gives.
#pragma once

namespace shawlwright::app {

int runWindow(int argc, char** argv);

} // namespace shawlwright::app
