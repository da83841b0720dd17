#pragma once

namespace shawlwright::tests {

void benchCore();
void benchWords();
void benchApp(); // needs a QApplication

} // namespace shawlwright::tests
