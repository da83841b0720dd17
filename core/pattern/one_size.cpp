#include "core/pattern/one_size.h"

#include "core/pattern/questions.h"

#include <algorithm>

namespace shawlwright {
namespace {

bool numbersDiffer(const Row& row)
{
    return !row.start.slip.single() || (row.stated && !row.stated->single());
}

} // namespace

Pattern ofOneSize(Pattern pattern, int size)
{
    if (sizeCount(pattern) < 2)
        return pattern;
    size = std::clamp(size, 0, sizeCount(pattern) - 1);
    const auto settle = [size](Quantity& quantity) { quantity = Quantity(quantity.at(size)); };
    pattern.head.sizes = {pattern.head.sizes[static_cast<std::size_t>(size)]};
    settle(pattern.head.castOn.stitches);
    for (Section& section : pattern.sections) {
        for (Box& box : section.frame.boxes) {
            settle(box.times);
            settle(box.leaving);
        }
        for (Bracket& bracket : section.frame.brackets)
            settle(bracket.times);
        for (RowRef& ref : section.rows) {
            if (!numbersDiffer(*ref))
                continue;
            Row row = *ref;
            settle(row.start.slip);
            if (row.stated)
                settle(*row.stated);
            ref = std::make_shared<const Row>(std::move(row));
        }
    }
    return pattern;
}

} // namespace shawlwright
