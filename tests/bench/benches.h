#pragma once

namespace shawlwright::tests {

void benchCore();
void benchWords();
void benchStart();
void benchApp(); // needs a QApplication

} // namespace shawlwright::tests
