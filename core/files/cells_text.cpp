#include "core/files/cells_text.h"

#include "core/base/text.h"
#include "core/files/shown_text.h"

namespace shawlwright::files {
namespace {

constexpr std::string_view noStitchMark = "-";

bool standsInCells(std::string_view code)
{
    return !code.empty() && code.front() != '#' && code.find_first_of(" \t\r\n*@") == std::string_view::npos;
}

// How many columns the whole stitch takes that begins here; 0 where it is none.
int wholeStitch(const std::vector<Cell>& cells, std::size_t at, const Catalogue& catalogue)
{
    const Cell first = cells[at];
    const std::size_t width = static_cast<std::size_t>(catalogue.stitch(first.stitch).width());
    if (first.part != 0 || !catalogue.known(first.stitch) || at + width > cells.size())
        return 0;
    for (std::size_t part = 1; part < width; ++part)
        if (cells[at + part] != Cell{first.stitch, first.yarn, static_cast<std::uint8_t>(part)})
            return 0;
    return static_cast<int>(width);
}

struct Token {
    std::string_view key, yarn, times;
    bool hasYarn = false, hasTimes = false;
};

Token divided(std::string_view text)
{
    Token token;
    if (const std::size_t star = text.rfind('*'); star != std::string_view::npos) {
        token.hasTimes = true;
        token.times = text.substr(star + 1);
        text = text.substr(0, star);
    }
    if (const std::size_t at = text.find('@'); at != std::string_view::npos) {
        token.hasYarn = true;
        token.yarn = text.substr(at + 1);
        text = text.substr(0, at);
    }
    token.key = text;
    return token;
}

} // namespace

YarnNames::YarnNames(const std::vector<Yarn>& yarns)
{
    std::map<std::string_view, int> uses;
    for (const Yarn& yarn : yarns)
        ++uses[yarn.code];
    for (const Yarn& yarn : yarns) {
        const std::string number = "#" + toText(static_cast<int>(yarn.id.value));
        const bool plain = standsInCells(yarn.code) && uses[yarn.code] == 1;
        m_names.emplace(yarn.id.value, plain ? yarn.code : number);
        m_ids.emplace(number, yarn.id);
    }
    for (const Yarn& yarn : yarns)
        m_ids.emplace(yarn.code, yarn.id);
}

std::string YarnNames::name(YarnId id) const
{
    const auto found = m_names.find(id.value);
    return found == m_names.end() ? "#" + toText(static_cast<int>(id.value)) : found->second;
}

std::optional<YarnId> YarnNames::find(std::string_view name) const
{
    const auto found = m_ids.find(name);
    return found == m_ids.end() ? std::nullopt : std::optional(found->second);
}

std::string YarnNames::all() const
{
    std::vector<std::string> names;
    for (const auto& [id, name] : m_names)
        names.push_back(shortened(name));
    if (names.size() > 8)
        names.resize(8);
    return joined(names);
}

std::string cellsText(const std::vector<Cell>& cells, const Catalogue& catalogue, const YarnNames& yarns)
{
    std::size_t end = cells.size();
    while (end > 0 && cells[end - 1] == Cell{})
        --end;
    std::string text;
    for (std::size_t at = 0; at < end;) {
        const std::size_t width = static_cast<std::size_t>(std::max(1, wholeStitch(cells, at, catalogue)));
        std::size_t next = at + width;
        int times = 1;
        while (next + width <= end && wholeStitch(cells, next, catalogue) == static_cast<int>(width) &&
               cells[next].stitch == cells[at].stitch && cells[next].yarn == cells[at].yarn) {
            next += width;
            ++times;
        }
        const Stitch& stitch = catalogue.stitch(cells[at].stitch);
        text.append(text.empty() ? "" : " ").append(stitch.id == noStitch ? noStitchMark : stitch.key);
        if (cells[at].yarn != YarnId{})
            text.append("@").append(yarns.name(cells[at].yarn));
        if (times > 1)
            text.append("*").append(toText(times));
        at = next;
    }
    return text;
}

ReadCells readCells(std::string_view text, int columns, const Catalogue& catalogue, const YarnNames& yarns)
{
    ReadCells read;
    read.cells.reserve(static_cast<std::size_t>(columns));
    constexpr std::string_view blanks = " \t";
    const auto refuse = [&](std::size_t at, std::string message) {
        read.fault = std::move(message);
        read.faultAt = at;
        return read;
    };
    for (std::size_t at = text.find_first_not_of(blanks); at != std::string_view::npos;) {
        const std::size_t end = std::min(text.find_first_of(blanks, at), text.size());
        const std::string_view word = text.substr(at, end - at);
        const Token token = divided(word);
        const std::string column = "column " + toText(static_cast<int>(read.cells.size()) + 1);

        const auto stitch = token.key == noStitchMark ? std::optional(noStitch) : catalogue.find(token.key);
        if (!stitch)
            return refuse(
                at, column + " holds '" + shortened(token.key) +
                        "', a stitch that neither the program nor this pattern knows; correct its name, or "
                        "describe it under \"stitches\"");
        const auto yarn = token.hasYarn ? yarns.find(token.yarn) : std::optional(YarnId{});
        if (!yarn)
            return refuse(at,
                          column + " is worked with '" + shortened(token.yarn) +
                              "', a yarn that the pattern doesn't have" +
                              (yarns.all().empty() ? "" : "; name one of its yarns (" + yarns.all() + ")"));
        const auto times = token.hasTimes ? readInt(token.times) : std::optional(1);
        if (!times || *times < 1)
            return refuse(at, column + " holds '" + shortened(word) +
                                  "'; after * goes a whole number from 1 to " + toText(mostColumns));
        const int width = catalogue.stitch(*stitch).width();
        const int room = columns - static_cast<int>(read.cells.size());
        if (*times > room / width)
            return refuse(at, "'" + shortened(word) + "' at " + column + " goes past the last column, " +
                                  toText(columns) + "; widen the section or shorten the row");
        for (int i = 0; i < *times * width; ++i)
            read.cells.push_back({*stitch, *yarn, static_cast<std::uint8_t>(i % width)});
        at = text.find_first_not_of(blanks, end);
    }
    read.cells.resize(static_cast<std::size_t>(columns));
    return read;
}

} // namespace shawlwright::files
