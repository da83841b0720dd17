#pragma once

namespace shawlwright::tests {

void benchCore();
void benchWords();
void benchStart();
void benchApp();    // these two need a QApplication
void benchWindow();

} // namespace shawlwright::tests
