// Random edits, undone and redone: the pattern is what it was, and never has a fault in its shape.

#include "core/edits/marks.h"
#include "core/edits/paint.h"
#include "core/edits/rows.h"
#include "core/edits/sections.h"
#include "tests/core/edits/desk.h"

#include <gtest/gtest.h>

#include <random>

namespace shawlwright {
namespace {

using namespace test;

class Hand {
public:
    explicit Hand(unsigned seed) : m_random(seed) {}

    int upTo(int most) { return static_cast<int>(m_random() % static_cast<unsigned>(most + 1)); }

    Result<Edit> anything(const Pattern& pattern)
    {
        const Section& section =
            pattern.sections[static_cast<std::size_t>(upTo(static_cast<int>(pattern.sections.size()) - 1))];
        const SectionId id = section.id;
        const int rows = static_cast<int>(section.rows.size());
        const int columns = section.frame.columns;
        const int row = upTo(rows); // now and then one too far
        const int column = 1 + upTo(columns);
        const StitchId any{static_cast<std::uint16_t>(upTo(6))};
        const At cells[] = {{row, column}, {upTo(rows - 1), 1 + upTo(columns - 1)}};
        switch (upTo(19)) {
        case 0:
        case 1:
            return paint(pattern, smallCatalogue(), id, cells, any);
        case 2:
            return fill(pattern, smallCatalogue(), id, {row, row + upTo(2), column, column + upTo(5)}, any);
        case 3:
            return erase(pattern, smallCatalogue(), id, cells);
        case 4:
            return setCellYarn(pattern, id, cells, YarnId{static_cast<std::uint8_t>(upTo(2))});
        case 5:
            return shiftRow(pattern, smallCatalogue(), id, row, upTo(4) - 2);
        case 6:
            return insertRows(pattern, id, row, 1 + upTo(2));
        case 7:
            return deleteRows(pattern, id, row, row + upTo(3));
        case 8:
            return duplicateRows(pattern, id, row, row + upTo(2));
        case 9:
            return moveRows(pattern, id, row, row + upTo(2), upTo(rows));
        case 10:
            return insertColumns(pattern, id, upTo(columns), 1 + upTo(2));
        case 11:
            return deleteColumns(pattern, smallCatalogue(), id, column, column + upTo(3));
        case 12:
            return placeMarker(pattern, id, row, upTo(columns),
                               MarkerId{static_cast<std::uint16_t>(upTo(4))});
        case 13:
            return removeMarker(pattern, id, row, upTo(columns), MarkerId{1});
        case 14:
            return deleteMarkerMove(pattern, id, row, upTo(1));
        case 15: {
            Box made;
            made.firstRow = section.rows[static_cast<std::size_t>(upTo(rows - 1))]->id;
            made.lastRow = section.rows[static_cast<std::size_t>(upTo(rows - 1))]->id;
            made.firstColumn = column;
            made.lastColumn = column + upTo(4);
            return addBox(pattern, id, made);
        }
        case 16:
            return addBracket(pattern, id, row, row + upTo(3), 1 + upTo(4));
        case 17:
            return deleteBracket(pattern, id, 0);
        case 18:
            return pattern.sections.size() < 4 ? duplicateSection(pattern, id) : deleteSection(pattern, id);
        default:
            return moveSection(pattern, id, upTo(2));
        }
    }

private:
    std::mt19937 m_random;
};

TEST(RandomEdits, TakenBackAndDoneAgain)
{
    for (unsigned seed = 1; seed <= 60; ++seed) {
        Hand hand(seed);
        Pattern pattern = patternOf({"k k c4 k", "yo2 k k2tog k k", "k k k k k k k", "c4 k k k"}, 9);
        std::vector<Pattern> states{pattern};
        std::vector<Edit> back;
        for (int step = 0; step < 60; ++step) {
            const auto edit = hand.anything(pattern);
            if (!edit.ok()) {
                EXPECT_FALSE(edit.fault().message.empty());
                continue;
            }
            const Pattern before = pattern;
            back.push_back(apply(pattern, edit.value()).takeBack);
            states.push_back(pattern);
            EXPECT_EQ(edit.value().empty(), pattern == before)
                << "seed " << seed << ": " << edit.value().name;
            ASSERT_EQ(faultsOf(pattern, smallCatalogue()), Faults{})
                << "seed " << seed << ": " << edit.value().name;
            for (const Section& section : pattern.sections)
                for (const RowRef& row : section.rows)
                    ASSERT_EQ(static_cast<int>(row->cells.size()), section.frame.columns)
                        << "seed " << seed << ": " << edit.value().name;
        }
        EXPECT_GT(back.size(), 15u) << "seed " << seed; // most of what the hand tries is possible
        std::vector<Edit> again;
        for (std::size_t i = back.size(); i-- > 0;) {
            again.push_back(apply(pattern, back[i]).takeBack);
            ASSERT_EQ(pattern, states[i]) << "seed " << seed << ", undo " << i;
        }
        for (std::size_t i = 0; i < back.size(); ++i) {
            apply(pattern, again[back.size() - 1 - i]);
            ASSERT_EQ(pattern, states[i + 1]) << "seed " << seed << ", redo " << i;
        }
        Edit all; // composed edits do the same as one after the other
        for (const Edit& edit : back)
            all = composed(edit, all);
        apply(pattern, all);
        EXPECT_EQ(pattern, states.front()) << "seed " << seed;
    }
}

} // namespace
} // namespace shawlwright
