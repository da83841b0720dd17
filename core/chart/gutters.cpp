#include "core/chart/gutters.h"

#include "core/base/text.h"
#include "core/chart/cells.h"

#include <algorithm>

namespace shawlwright::chart {

namespace {

constexpr double numberSize = 0.5, codeSize = 0.4, noteSize = 0.4, gap = 0.16;

// The words beside a row's number: what is done before its first stitch.
std::string startWords(const Row& row)
{
    std::string words;
    if (row.start.joins)
        words = "join";
    if (row.start.kind == StartKind::AfterSlipping) {
        std::string slip = "sl " + toText(row.start.slip.at(0));
        for (std::size_t i = 1; i < row.start.slip.values.size(); ++i)
            slip += (i == 1 ? " (" : ", ") + toText(row.start.slip.values[i]);
        if (!row.start.slip.single())
            slip += ")";
        words += (words.empty() ? "" : ", ") + slip;
    }
    return words;
}

// One side of the grid; distances grow away from it.
class Gutter {
public:
    Gutter(const Frame& frame, const ChartInput& input, Side starting)
        : m_frame(frame), m_input(input), m_side(starting), m_labels(rowLabels(frame.section))
    {
        const bool coloured = usesColour(input.head);
        const double turnRoom = turnsAtEdge() ? 0.72 : 0;
        m_strip = gap + turnRoom;
        m_code = m_strip + (coloured ? 0.24 + 0.12 : 0);
        m_number = m_code + (coloured ? widest([&](int row) { return codeWidth(row); }) + gap : 0);
        double numbers = widest([&](int row) {
            return m_frame.row(row).side == m_side ? textWidth(label(row), numberSize)
                                                   : marksWidth(m_frame.row(row));
        });
        m_note = m_number + numbers + (numbers > 0 ? gap : 0);
        const double notes = widest([&](int row) {
            return m_frame.row(row).side == m_side ? textWidth(startWords(m_frame.row(row)), noteSize) : 0;
        });
        m_end = m_note + (notes > 0 ? notes + gap : 0);
    }

    double end() const { return m_end; }
    double x(double distance) const
    {
        return m_side == Side::RS ? m_frame.right() + distance : m_frame.left() - distance;
    }

    void addStrip(std::vector<Shape>& shapes) const
    {
        const double h = m_frame.cellHeight, inset = std::min(0.06, h * 0.1);
        for (int row = m_frame.firstRow; row <= m_frame.lastRow; ++row) {
            const Yarn* yarn = yarnOf(m_input.head, m_frame.row(row).yarn);
            if (!yarn)
                continue;
            const double a = x(m_strip), b = x(m_strip + 0.22);
            const Path bar =
                roundedRectangle({std::min(a, b), m_frame.top(row) + inset, 0.22, h - 2 * inset}, 0.07);
            shapes.push_back(Fill{bar, Ink::YarnFull, yarn->id});
            shapes.push_back(Stroke{bar, 0.02, Ink::SoftLabel, false}); // a white yarn needs an edge
            const bool runBegins =
                row == m_frame.firstRow || m_frame.row(row - 1).yarn != m_frame.row(row).yarn;
            if (runBegins)
                shapes.push_back(text(m_code, row, yarn->code, codeSize, Ink::SoftLabel, false));
        }
    }

    void addNumbers(std::vector<Shape>& shapes) const
    {
        for (int index = m_frame.firstRow; index <= m_frame.lastRow; ++index) {
            const Row& row = m_frame.row(index);
            if (row.side == m_side) {
                shapes.push_back(text(m_number, index, label(index), numberSize, Ink::Label, true));
                if (const std::string words = startWords(row); !words.empty())
                    shapes.push_back(text(m_note, index, words, noteSize, Ink::SoftLabel, false));
            } else {
                addFinish(shapes, index);
            }
        }
    }

private:
    std::string label(int row) const { return m_labels[static_cast<std::size_t>(row)]; }

    template <typename Width>
    double widest(Width width) const
    {
        double most = 0;
        for (int row = m_frame.firstRow; row <= m_frame.lastRow; ++row)
            most = std::max(most, width(row));
        return most;
    }

    double codeWidth(int row) const
    {
        const Yarn* yarn = yarnOf(m_input.head, m_frame.row(row).yarn);
        return yarn ? textWidth(yarn->code, codeSize) : 0;
    }

    static int marks(const Row& row)
    {
        return (row.finish.kind == FinishKind::Slide || row.finish.kind == FinishKind::BindOff ? 1 : 0) +
               (row.finish.breaksYarn ? 1 : 0);
    }
    double marksWidth(const Row& row) const { return marks(row) * 0.8 * std::min(1.0, m_frame.cellHeight); }

    // A turn mark of a row that reaches the edge of the grid stands in the gutter.
    bool turnsAtEdge() const
    {
        for (int index = m_frame.firstRow; index <= m_frame.lastRow; ++index) {
            const Row& row = m_frame.row(index);
            if (row.side == m_side || row.finish.kind != FinishKind::TurnEarly)
                continue;
            const auto worked = workedColumns(m_frame.section, index);
            const int edge = m_side == Side::RS ? m_frame.firstColumn : m_frame.lastColumn;
            if (worked && worked->last == edge)
                return true;
        }
        return false;
    }

    Text text(double distance, int row, std::string words, double size, Ink ink, bool bold) const
    {
        const double h = m_frame.cellHeight, fitted = std::min(size, h * 0.85);
        return {{x(distance), m_frame.top(row) + h / 2 + fitted * 0.36},
                std::move(words),
                fitted,
                m_side == Side::RS ? Align::Left : Align::Right,
                ink,
                bold};
    }

    // At the side where a row ends: the arrow of a slide, binding off, the yarn broken.
    void addFinish(std::vector<Shape>& shapes, int index) const
    {
        const Row& row = m_frame.row(index);
        const double size = 0.8 * std::min(1.0, m_frame.cellHeight);
        double distance = m_number;
        const auto add = [&](const Symbol& mark) {
            const double a = x(distance), b = x(distance + size);
            const double y = m_frame.top(index) + (m_frame.cellHeight - size) / 2;
            for (const Shape& shape : mark.shapes)
                shapes.push_back(moved(scaled(shape, size, size), std::min(a, b), y));
            distance += size;
        };
        if (row.finish.kind == FinishKind::Slide)
            add(slideMark(row.side));
        if (row.finish.kind == FinishKind::BindOff)
            add(bindOffMark());
        if (row.finish.breaksYarn)
            add(breakYarnMark());
    }

    const Frame& m_frame;
    const ChartInput& m_input;
    Side m_side;
    std::vector<std::string> m_labels;
    double m_strip = 0, m_code = 0, m_number = 0, m_note = 0, m_end = 0;
};

// "23", or "23–219" for a row that is worked again and again.
std::string countText(const RowFacts& facts)
{
    return sizesLabel(*facts.after) + (facts.atLast ? "–" + sizesLabel(*facts.atLast) : std::string());
}

// Counts after each row, the count before the first one below, faults beside.
void addCounts(Gutters& gutters, const Frame& frame, const ChartInput& input, double from)
{
    const auto fact = [&](int row) {
        const auto at = static_cast<std::size_t>(row);
        return at < input.facts.size() ? &input.facts[at] : nullptr;
    };
    double width = textWidth("sts", 0.42);
    bool any = false;
    for (int row = frame.firstRow; row <= frame.lastRow; ++row)
        if (const RowFacts* facts = fact(row); facts && (facts->after || facts->fault)) {
            any = true;
            width = facts->after ? std::max(width, textWidth(countText(*facts), numberSize)) : width;
        }
    if (!any)
        return;
    const double right = from + 0.3 + width;
    Group group{"stitch counts", "Stitches after each row", -1, {}};
    const auto add = [&](double baseline, std::string words, double size) {
        Text text{{right, baseline}, std::move(words), size, Align::Right, Ink::SoftLabel, false};
        group.shapes.emplace_back(std::move(text));
    };
    add(frame.top(frame.lastRow) - 0.22, "sts", 0.42);
    const double h = frame.cellHeight, size = std::min(numberSize, h * 0.85);
    for (int row = frame.firstRow; row <= frame.lastRow; ++row) {
        const RowFacts* facts = fact(row);
        if (!facts)
            continue;
        const double middle = frame.top(row) + h / 2;
        if (facts->after)
            add(middle + size * 0.36, countText(*facts), size);
        if (facts->fault) {
            const double x = right + 0.42, r = 0.24 * std::min(1.0, h);
            Path triangle;
            triangle.move({x, middle - r})
                .line({x + r * 1.1, middle + r})
                .line({x - r * 1.1, middle + r})
                .close();
            group.shapes.push_back(Fill{triangle, Ink::FaultMark, {}});
        }
    }
    if (const RowFacts* first = fact(frame.firstRow); first && first->before)
        add(frame.top(frame.firstRow - 1) + 1.2,
            "begin with " + sizesLabel(*first->before) + (*first->before == Quantity(1) ? " st" : " sts"), 0.42);
    const bool ranges = std::any_of(input.facts.begin(), input.facts.end(), [](const RowFacts& f) { return f.atLast.has_value(); });
    if (ranges)
        add(frame.top(frame.firstRow - 1) + 0.62, "first–last time", 0.42);
    gutters.groups.push_back(std::move(group));
}

} // namespace

std::vector<int> numberedColumns(int firstColumn, int lastColumn)
{
    std::vector<int> columns;
    for (int column = firstColumn; column <= lastColumn; ++column) {
        const bool regular = column == 1 || column % 5 == 0;
        const bool edge = column == firstColumn || column == lastColumn;
        const int beyond = column % 5 == 0 ? 0 : std::min(column % 5, 5 - column % 5); // from a regular one
        if (regular || (edge && beyond >= 2))
            columns.push_back(column);
    }
    return columns;
}

Gutters guttersOf(const Frame& frame, const ChartInput& input, const ChartOptions& options)
{
    Gutters gutters;
    const Gutter right(frame, input, Side::RS), left(frame, input, Side::WS);
    if (usesColour(input.head)) {
        Group strips{"yarns", {}, -1, {}};
        left.addStrip(strips.shapes);
        right.addStrip(strips.shapes);
        gutters.groups.push_back(std::move(strips));
    }
    Group numbers{"row numbers", {}, -1, {}};
    left.addNumbers(numbers.shapes);
    right.addNumbers(numbers.shapes);
    gutters.groups.push_back(std::move(numbers));
    if (options.stitchNumbers) {
        Group below{"stitch numbers", {}, -1, {}};
        const double y = frame.top(frame.firstRow - 1) + 0.62;
        for (const int column : numberedColumns(frame.firstColumn, frame.lastColumn))
            below.shapes.push_back(
                Text{{frame.x(column) + 0.5, y}, toText(column), 0.42, Align::Centre, Ink::SoftLabel, false});
        gutters.groups.push_back(std::move(below));
    }
    if (options.counts)
        addCounts(gutters, frame, input, right.x(right.end()));
    gutters.leftEdge = left.x(left.end());
    return gutters;
}

} // namespace shawlwright::chart
