#include "tests/laws/written_ways.h"

#include "core/pattern/questions.h"

namespace shawlwright::tests {
namespace {

template <typename Value>
void draw(Value& value, int values, std::mt19937& random)
{
    value = static_cast<Value>(random() % static_cast<unsigned>(values));
}

// Each stitch repeat on rows of its own.
void partBoxes(Section& section)
{
    std::vector<Box> parted;
    std::uint32_t id = 0;
    for (std::size_t row = 0; row < section.rows.size(); ++row)
        for (Box box : boxesOn(section, static_cast<int>(row))) {
            box.id = BoxId{++id};
            box.firstRow = box.lastRow = section.rows[row]->id;
            parted.push_back(std::move(box));
        }
    section.frame.boxes = std::move(parted);
}

} // namespace

Style anyStyle(std::mt19937& random)
{
    Style style;
    draw(style.words, 2, random);
    draw(style.counts, 3, random);
    draw(style.repeats, 2, random);
    draw(style.times, 3, random);
    draw(style.capitals, 3, random);
    draw(style.sides, 3, random);
    draw(style.repeatWord, 2, random);
    draw(style.labels, 4, random);
    draw(style.countMarks, 4, random);
    draw(style.gathering, 2, random);
    draw(style.longRuns, 2, random);
    draw(style.markers, 2, random);
    draw(style.versions, 2, random);
    return style;
}

Pattern withRowsAgain(Pattern pattern, std::mt19937& random)
{
    const Pattern was = pattern;
    for (Section& section : pattern.sections) {
        partBoxes(section);
        for (int blocks = 1 + static_cast<int>(random() % 2); blocks > 0; --blocks) {
            if (section.rows.empty() || section.rows.size() > 30)
                break;
            const std::size_t first = random() % section.rows.size();
            const std::size_t length = 1 + random() % std::min<std::size_t>(4, section.rows.size() - first);
            const std::vector<RowRef> block(section.rows.begin() + static_cast<std::ptrdiff_t>(first),
                                            section.rows.begin() +
                                                static_cast<std::ptrdiff_t>(first + length));
            std::size_t at = first + length;
            for (auto times = 1 + random() % 3; times > 0; --times)
                for (const RowRef& ref : block) {
                    Row copy = *ref;
                    copy.id = freshRowId(pattern);
                    copy.label.clear();
                    for (Box box : std::vector<Box>(section.frame.boxes))
                        if (box.firstRow == ref->id) {
                            box.id = freshBoxId(section);
                            box.firstRow = box.lastRow = copy.id;
                            section.frame.boxes.push_back(std::move(box));
                        }
                    section.rows.insert(section.rows.begin() + static_cast<std::ptrdiff_t>(at++),
                                        std::make_shared<const Row>(std::move(copy)));
                }
        }
    }
    return knittedRows(pattern, 0, 0).size() > 300 ? was : pattern;
}

} // namespace shawlwright::tests
