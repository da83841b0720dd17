#pragma once

namespace shawlwright::tests {

void benchCore();
void benchApp(); // needs a QApplication

} // namespace shawlwright::tests
