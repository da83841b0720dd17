// The key laid out in columns: a box with the symbol, the words, the name below them.
#include "core/base/text.h"
#include "core/chart/chart.h"
#include "core/chart/draw.h"

#include <algorithm>
#include <cmath>

namespace shawlwright::chart {

namespace {

constexpr double wordSize = 0.46, nameSize = 0.42, lineHeight = 0.6;
constexpr double columnWidth = 8; // wished for; a narrow key has one column

// Words broken into lines by estimate; a word longer than a line is cut.
std::vector<std::string> wrapped(const std::string& words, double size, double width)
{
    std::vector<std::string> lines;
    std::string line;
    const std::size_t most = static_cast<std::size_t>(std::max(4.0, std::floor(width / (0.7 * size))));
    std::size_t at = 0;
    while (at < words.size()) {
        const std::size_t space = std::min(words.find(' ', at), words.size());
        std::string word = words.substr(at, space - at);
        at = space + 1;
        while (word.size() > most) {
            std::size_t cut = most;
            while (cut > 0 && (static_cast<unsigned char>(word[cut]) & 0xC0) == 0x80)
                --cut; // not within a letter
            if (!line.empty())
                lines.push_back(std::move(line));
            lines.push_back(word.substr(0, cut));
            line.clear();
            word.erase(0, cut);
        }
        if (!line.empty() && textWidth(line + " " + word, size) > width) {
            lines.push_back(std::move(line));
            line.clear();
        }
        line += (line.empty() ? "" : " ") + word;
    }
    if (!line.empty())
        lines.push_back(std::move(line));
    return lines;
}

int boxWidth(const KeyEntry& entry, const Catalogue& catalogue)
{
    if (entry.kind == KeyKind::Stitch)
        return catalogue.stitch(entry.stitch).width();
    return entry.kind == KeyKind::StitchRepeat || entry.kind == KeyKind::Slip ? 2 : 1;
}

void addAll(std::vector<Shape>& shapes, const std::vector<Shape>& more, double dx = 0)
{
    for (const Shape& shape : more)
        shapes.push_back(moved(shape, dx, 0));
}

// The sample of an entry at 0, 0.
std::vector<Shape> sample(const KeyEntry& entry, const Catalogue& catalogue)
{
    const double w = boxWidth(entry, catalogue);
    std::vector<Shape> shapes;
    const Shape border = Stroke{rectangle({0, 0, w, 1}), 0.03, Ink::TenthLine, false};
    switch (entry.kind) {
    case KeyKind::Stitch:
        shapes.push_back(Fill{rectangle({0, 0, w, 1}), Ink::Paper, {}});
        shapes.push_back(border);
        addAll(shapes, symbolOf(catalogue.stitch(entry.stitch)).shapes);
        break;
    case KeyKind::NoStitch:
        shapes.push_back(Fill{rectangle({0, 0, 1, 1}), Ink::NoStitch, {}});
        break;
    case KeyKind::Resting:
        shapes.push_back(border);
        shapes.push_back(Stroke{segment({0.28, 0.72}, {0.72, 0.28}), 0.05, Ink::Resting, false});
        break;
    case KeyKind::Turn:
        addAll(shapes, turnMark(entry.method, Side::RS).shapes, 1);
        break;
    case KeyKind::Slip:
        shapes.push_back(Stroke{segment({1.9, 0.5}, {0.2, 0.5}), 0.07, Ink::TurnMark, true});
        shapes.push_back(
            Stroke{polyline({{0.34, 0.33}, {0.14, 0.5}, {0.34, 0.67}}), 0.07, Ink::TurnMark, false});
        break;
    case KeyKind::Slide:
        addAll(shapes, slideMark(Side::RS).shapes);
        break;
    case KeyKind::BindOff:
        addAll(shapes, bindOffMark().shapes);
        break;
    case KeyKind::BreakYarn:
        addAll(shapes, breakYarnMark().shapes);
        break;
    case KeyKind::StitchRepeat:
        shapes.push_back(border);
        shapes.push_back(Stroke{rectangle({0.05, 0.05, w - 0.1, 0.9}), 0.1, Ink::BoxLine, false});
        break;
    case KeyKind::RowRepeat:
        shapes.push_back(Stroke{polyline({{0.65, 0.08}, {0.4, 0.08}, {0.4, 0.92}, {0.65, 0.92}}), 0.08,
                                Ink::BracketLine, false});
        break;
    case KeyKind::Marker:
        shapes.push_back(Stroke{segment({0.5, 1}, {0.5, 0.5}), 0.15, Ink::MarkerLine, false});
        shapes.push_back(Stroke{segment({0.5, 0.5}, {0.5, 0}), 0.06, Ink::MarkerLine, false});
        break;
    case KeyKind::MarkerRemoved:
        shapes.push_back(Stroke{segment({0.5, 1}, {0.5, 0}), 0.1, Ink::MarkerLine, true});
        shapes.push_back(Stroke{segment({0.33, 0.33}, {0.67, 0.67}), 0.09, Ink::MarkerLine, false});
        shapes.push_back(Stroke{segment({0.33, 0.67}, {0.67, 0.33}), 0.09, Ink::MarkerLine, false});
        break;
    }
    return shapes;
}

} // namespace

Drawing keyDrawing(const std::vector<KeyEntry>& entries, const Catalogue& catalogue, double width)
{
    Drawing drawing;
    drawing.bounds = {0, 0, width, 0};
    if (entries.empty())
        return drawing;
    double symbolRoom = 1;
    for (const KeyEntry& entry : entries)
        symbolRoom = std::max(symbolRoom, std::min(3.0, static_cast<double>(boxWidth(entry, catalogue))));
    const double wished =
        columnWidth + symbolRoom - 1; // a wide symbol takes its room from the words otherwise
    const int columns = std::max(1, static_cast<int>(std::floor((width + 0.8) / (wished + 0.8))));
    const double each = (width - 0.8 * (columns - 1)) / columns;

    // Each entry is as high as its words need.
    struct Block {
        std::vector<Shape> shapes;
        std::string words;
        double height = 0;
    };
    std::vector<Block> blocks;
    double total = 0;
    for (const KeyEntry& entry : entries) {
        Block block;
        block.words = (entry.words.empty() ? "" : entry.words + ", ") + entry.name;
        block.shapes = sample(entry, catalogue);
        const double w = boxWidth(entry, catalogue);
        // A symbol wider than the column of symbols stands above its words.
        const bool above = w > symbolRoom;
        if (above && w > each)
            for (Shape& shape : block.shapes)
                shape = scaled(shape, each / w, each / w);
        const double x = above ? 0 : symbolRoom + 0.35, from = above ? 1.1 : 0;
        const auto words = wrapped(entry.words, wordSize, each - x);
        const auto names = wrapped(entry.name, nameSize, each - x);
        const double textHeight = lineHeight * static_cast<double>(words.size() + names.size());
        double y = from + (above ? 0 : std::max(0.0, (1 - textHeight) / 2)) + 0.46;
        if (words.size() + names.size() == 2)
            y = from + 0.4;
        for (const std::string& line : words) {
            block.shapes.push_back(Text{{x, y}, line, wordSize, Align::Left, Ink::Label, true});
            y += lineHeight;
        }
        for (const std::string& line : names) {
            block.shapes.push_back(Text{{x, y}, line, nameSize, Align::Left, Ink::SoftLabel, false});
            y += lineHeight;
        }
        block.height = from + std::max(above ? 0.0 : 1.0, textHeight) + 0.36;
        total += block.height;
        blocks.push_back(std::move(block));
    }

    // Down the first column, then the next, as even as the order allows.
    double limit = total / columns;
    const auto columnsNeeded = [&](double height) {
        int needed = 1;
        double y = 0;
        for (const Block& block : blocks) {
            if (y > 0 && y + block.height > height + 1e-9) {
                ++needed;
                y = 0;
            }
            y += block.height;
        }
        return needed;
    };
    while (columnsNeeded(limit) > columns)
        limit += 0.2;

    double x = 0, y = 0, bottom = 0;
    for (Block& block : blocks) {
        if (y > 0 && y + block.height > limit + 1e-9) {
            x += each + 0.8;
            y = 0;
        }
        Group group{"key", block.words, -1, {}};
        for (const Shape& shape : block.shapes)
            group.shapes.push_back(moved(shape, x, y));
        drawing.groups.push_back(std::move(group));
        y += block.height;
        bottom = std::max(bottom, y - 0.36);
    }
    drawing.bounds.height = bottom;
    return drawing;
}

} // namespace shawlwright::chart
