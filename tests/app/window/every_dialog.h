// Every dialog of the window, one after the other, for what all of them promise.
#pragma once

#include "tests/app/window/seat.h"

namespace shawlwright::app {

// Every action that asks something, except those that ask by the desktop's own dialog, one line or a menu.
std::vector<ActionId> askingActions();
// Some of them need a marker, a selection or a stitch of one's own; there are two yarns.
void prepareForDialogs(Seat& seat);
// `look` is called inside of each; `name` is what the menu calls it.
void inEveryDialog(Seat& seat, const std::function<void(const std::string& name, QDialog& dialog)>& look);

} // namespace shawlwright::app
