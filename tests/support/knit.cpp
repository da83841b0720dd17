#include "tests/support/knit.h"

#include "core/base/text.h"
#include "core/files/builtin_catalogue.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <sstream>

namespace shawlwright::tests {
namespace {

[[noreturn]] void wrong(const std::string& what)
{
    std::fprintf(stderr, "test notation: %s\n", what.c_str());
    std::abort();
}

int number(std::string_view text)
{
    const auto value = readInt(text);
    if (!value)
        wrong("'" + std::string(text) + "' is no number");
    return *value;
}

} // namespace

Knit::Knit(int castOn, Side firstSide)
{
    PatternHead& head = m_pattern.head;
    head.title = "Test";
    head.yarns = {{YarnId{1}, "MC", "main", 0xd9a441, -1, 0, 0},
                  {YarnId{2}, "CC", "contrast", 0x3b5b7a, -1, 0, 0}};
    head.castOn = {Quantity(castOn), YarnId{1}, "", firstSide};
    section("Body");
    m_pattern.sections.erase(m_pattern.sections.begin(), m_pattern.sections.end() - 1);
}

const Catalogue& Knit::catalogue() const
{
    return builtInCatalogue();
}

Knit& Knit::section(std::string title, std::vector<std::string> versions)
{
    Section section;
    section.id = freshSectionId(m_pattern);
    section.frame.title = std::move(title);
    section.frame.versions = std::move(versions);
    m_pattern.sections.push_back(std::move(section));
    return *this;
}

MarkerId Knit::marker(const std::string& name)
{
    for (const Marker& marker : m_pattern.head.markers)
        if (marker.name == name)
            return marker.id;
    const MarkerId id = freshMarkerId(m_pattern.head);
    m_pattern.head.markers.push_back({id, name});
    return id;
}

Knit& Knit::row(Side side, std::string_view words, std::string_view yarnCode)
{
    Section& section = m_pattern.sections.back();
    Row row;
    row.id = freshRowId(m_pattern);
    row.side = side;
    row.yarn = YarnId{1};
    for (const Yarn& yarn : m_pattern.head.yarns)
        if (yarn.code == yarnCode)
            row.yarn = yarn.id;

    struct Open {
        int u;
    };
    std::vector<Open> open;
    std::vector<std::pair<Box, std::pair<int, int>>> boxes; // with u0, u1
    std::vector<std::pair<MarkerMove, int>> moves;
    std::vector<std::pair<StitchId, int>> worked; // stitch and width, in order; noStitch width 1
    int u = 0;
    const auto put = [&](StitchId id, int times) {
        const int width = id == noStitch ? 1 : catalogue().stitch(id).width();
        for (int i = 0; i < times; ++i) {
            worked.emplace_back(id, width);
            u += width;
        }
    };
    std::istringstream in{std::string(words)};
    for (std::string word; in >> word;) {
        if (word == ".") {
            put(noStitch, 1);
        } else if (word == "[") {
            open.push_back({u});
        } else if (word[0] == ']') {
            if (open.empty())
                wrong("] without [ in: " + std::string(words));
            Box box;
            const std::string rest = word.substr(1);
            if (rest[0] == '*') {
                box.times = Quantity(number(rest.substr(1)));
            } else {
                const auto dash = rest.find('-');
                const std::string place = rest.substr(0, dash);
                box.leaving = Quantity(dash == std::string::npos ? 0 : number(rest.substr(dash + 1)));
                box.until = place == "end"    ? BoxUntil::RowEnd
                            : place == "turn" ? BoxUntil::LastTurn
                                              : BoxUntil::Marker;
                if (box.until == BoxUntil::Marker)
                    box.marker = marker(place);
            }
            boxes.push_back({box, {open.back().u, u}});
            open.pop_back();
        } else if (word[0] == '|' || word[0] == '~' || (word[0] == '-' && word.size() > 1)) {
            MarkerMove move;
            move.kind = word[0] == '|'   ? MoveKind::Place
                        : word[0] == '-' ? MoveKind::Remove
                                         : MoveKind::Shift;
            if (word.back() == '!') {
                move.reach = MoveReach::EachTime;
                word.pop_back();
            }
            move.marker = marker(word.substr(1));
            moves.emplace_back(move, u);
        } else if (word.starts_with("slip:")) {
            row.start.kind = StartKind::AfterSlipping;
            row.start.slip = Quantity(number(word.substr(5)));
        } else if (word == "edge") {
            row.start.kind = StartKind::AtEdge;
        } else if (word == "join") {
            row.start.joins = true;
        } else if (word == "break") {
            row.finish.breaksYarn = true;
        } else if (word.starts_with("turn")) {
            row.finish.kind = FinishKind::TurnEarly;
            const std::string how = word.size() > 4 ? word.substr(5) : "";
            row.finish.method = how == "wt"     ? TurnMethod::WrapAndTurn
                                : how == "ds"   ? TurnMethod::DoubleStitch
                                : how == "yo"   ? TurnMethod::YarnOver
                                : how == "pin"  ? TurnMethod::PinnedYarn
                                : how == "twin" ? TurnMethod::TwinStitch
                                                : TurnMethod::Plain;
        } else if (word == "slide" || word == "round" || word == "bindoff") {
            row.finish.kind = word == "slide"   ? FinishKind::Slide
                              : word == "round" ? FinishKind::Round
                                                : FinishKind::BindOff;
        } else {
            int times = 1;
            if (const auto star = word.rfind('*'); star != std::string::npos) {
                times = number(std::string_view(word).substr(star + 1));
                word = word.substr(0, star);
            }
            auto id = catalogue().worked(word, side);
            if (!id)
                id = catalogue().find(word);
            if (!id)
                wrong("no stitch '" + word + "'");
            put(*id, times);
        }
    }

    const int columns = u;
    const auto boundary = [&](int at) { return side == Side::RS ? at : columns - at; };
    if (side == Side::WS)
        std::reverse(worked.begin(), worked.end());
    for (const auto& [id, width] : worked)
        for (int part = 0; part < width; ++part)
            row.cells.push_back({id, {}, static_cast<std::uint8_t>(part)});
    for (auto& [move, at] : moves) {
        move.boundary = boundary(at);
        row.moves.push_back(move);
    }
    for (auto& [box, span] : boxes) {
        box.id = freshBoxId(section);
        box.firstRow = box.lastRow = row.id;
        box.firstColumn = std::min(boundary(span.first), boundary(span.second)) + 1;
        box.lastColumn = std::max(boundary(span.first), boundary(span.second));
        section.frame.boxes.push_back(box);
    }
    section.frame.columns = std::max(section.frame.columns, columns);
    section.rows.push_back(std::make_shared<const Row>(std::move(row)));
    return *this;
}

Knit& Knit::times(int rows, Quantity times)
{
    Section& section = m_pattern.sections.back();
    Bracket bracket;
    bracket.firstRow = section.rows[section.rows.size() - static_cast<std::size_t>(rows)]->id;
    bracket.lastRow = section.rows.back()->id;
    bracket.times = std::move(times);
    section.frame.brackets.push_back(bracket);
    return *this;
}

Knit& Knit::stated(Quantity count)
{
    RowRef& last = m_pattern.sections.back().rows.back();
    Row row = *last;
    row.stated = std::move(count);
    last = std::make_shared<const Row>(std::move(row));
    return *this;
}

Pattern Knit::done()
{
    for (Section& section : m_pattern.sections)
        for (RowRef& ref : section.rows)
            if (static_cast<int>(ref->cells.size()) < section.frame.columns) {
                Row row = *ref;
                row.cells.resize(static_cast<std::size_t>(section.frame.columns));
                ref = std::make_shared<const Row>(std::move(row));
            }
    return m_pattern;
}

std::vector<int> afterEach(const Ledger& ledger)
{
    std::vector<int> counts;
    for (const LedgerLine& line : ledger.lines)
        counts.push_back(line.after);
    return counts;
}

std::vector<std::string> kinds(const Ledger& ledger)
{
    std::vector<std::string> names;
    for (const Finding& finding : ledger.findings)
        if (finding.followsFrom < 0)
            names.emplace_back(kindName(finding.kind));
    return names;
}

std::string dumpEnd(const Ledger& ledger)
{
    return dump(ledger.before.back());
}

std::string told(const Ledger& ledger, const Pattern& pattern)
{
    std::string text;
    for (const Finding& finding : ledger.findings) {
        if (finding.row >= 0)
            text += placeInWords(pattern, sectionIndex(pattern, finding.section), finding.row);
        text += ", column " + toText(finding.column) + ": " + std::string(kindName(finding.kind)) + ": " +
                finding.message +
                (finding.followsFrom >= 0 ? " (follows from line " + toText(finding.followsFrom) + ")" : "") +
                "\n";
    }
    return text;
}

std::string chart(const Pattern& pattern, int row, const Catalogue& catalogue)
{
    const Section& section = pattern.sections.front();
    std::string text;
    for (int column = 1; column <= section.frame.columns; ++column) {
        const Cell cell = cellAt(*section.rows[static_cast<std::size_t>(row)], column);
        if (cell.part == 0)
            text += (text.empty() ? "" : " ") +
                    (cell.stitch == noStitch ? "-" : catalogue.stitch(cell.stitch).key);
    }
    return text;
}

} // namespace shawlwright::tests
