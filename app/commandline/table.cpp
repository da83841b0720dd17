#include "app/commandline/table.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright::app {

std::string table(const std::vector<std::vector<std::string>>& given)
{
    if (given.empty())
        return {};
    std::vector<std::vector<std::string>> lines = given;
    std::vector<bool> right;
    for (std::string& heading : lines.front()) {
        right.push_back(heading.starts_with('>'));
        if (right.back())
            heading.erase(0, 1);
    }
    std::vector<int> widths(lines.front().size(), 0);
    for (const auto& line : lines)
        for (std::size_t i = 0; i < line.size(); ++i)
            widths[i] = std::max(widths[i], codePoints(line[i]));

    std::string text;
    for (const auto& line : lines) {
        std::string out;
        for (std::size_t i = 0; i < line.size(); ++i) {
            const std::string blanks(static_cast<std::size_t>(widths[i] - codePoints(line[i])), ' ');
            out += (i == 0 ? "" : "  ") + (right[i] ? blanks + line[i] : line[i] + blanks);
        }
        out.erase(out.find_last_not_of(' ') + 1);
        text += out + "\n";
    }
    return text;
}

} // namespace shawlwright::app
