#include "app/window/menu_place.h"

#include <algorithm>

namespace shawlwright::app {

QPoint menuPlace(QPoint at, QSize menu, const QRect& room)
{
    constexpr int beside = 2;
    const bool right = at.x() + beside + menu.width() - 1 <= room.right();
    const int x = right ? at.x() + beside : at.x() - beside - menu.width() + 1;
    return {std::max(room.left(), x),
            std::max(room.top(), std::min(at.y() + 1, room.bottom() - menu.height() + 1))};
}

} // namespace shawlwright::app
