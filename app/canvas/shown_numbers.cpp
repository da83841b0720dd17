#include "app/canvas/shown_numbers.h"

namespace shawlwright::app {

namespace {

bool sameSide(const NumberedRows& rows, int a, int b)
{
    return rows.side(a) == rows.side(b);
}

// Every so many, and the row before such a one where it starts at the other side.
bool stepped(const NumberedRows& rows, int at, int cell, int high)
{
    const int step = stepFor(cell, high);
    if (rows.line(at) % step == 0)
        return true;
    const int next = at + 1, last = at + 1 - step;
    if (rows.hidesAny || next >= rows.rows || rows.line(next) % step != 0 || sameSide(rows, at, next))
        return false;
    return last < 0 || !sameSide(rows, at, last) || (step - 1) * cell >= high;
}

} // namespace

int stepFor(int cell, int room)
{
    for (int tens = 1;; tens *= 10)
        for (const int digit : {1, 2, 5})
            if (tens * digit * cell >= room || tens >= 10000)
                return tens * digit;
}

bool labelShown(const NumberedRows& rows, int at, int cell, int high)
{
    if (at > 0)
        return stepped(rows, at, cell, high);
    // The first one gives way to what stands close above it.
    for (int above = 1; above < rows.rows && (rows.line(above) - 1) * cell < high; ++above)
        if (stepped(rows, above, cell, high) && sameSide(rows, 0, above))
            return false;
    return true;
}

bool countShown(const NumberedRows& rows, int at, int cell, int high)
{
    const int step = stepFor(cell, high) == 2 ? 3 : stepFor(cell, high); // of every second row all are of one side
    const int line = rows.line(at);
    return line % step == 0 || (at == 0 && (step - line) * cell >= high);
}

} // namespace shawlwright::app
