#include "core/wording/reader/told_prose.h"

#include "core/base/text.h"
#include "core/wording/reader/row_head.h"
#include "core/wording/writer/prose_text.h"

#include <algorithm>

namespace shawlwright {
namespace {

// As they were typed: a NormalText has its letters made plain.
std::vector<std::string_view> linesOf(std::string_view text)
{
    std::vector<std::string_view> lines;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t end = std::min(text.find_first_of("\n\r\f", from), text.size());
        lines.push_back(text.substr(from, end - from));
        const bool crlf = end + 1 < text.size() && text[end] == '\r' && text[end + 1] == '\n';
        from = end + (crlf ? 2 : 1);
    }
    return lines;
}

bool setIn(std::string_view line)
{
    return line.starts_with(proseSetIn) && !trimmed(line).empty();
}

} // namespace

void takeProse(std::string_view text, std::vector<NormalText>& lines, PatternHead& head)
{
    const std::vector<std::string_view> typed = linesOf(text);
    const auto forget = [&](std::size_t at) { lines[at].text.clear(), lines[at].at.resize(1); };
    for (std::size_t at = 0; at + 1 < typed.size() && at + 1 < lines.size(); ++at) {
        const std::string_view heading = typed[at];
        if (heading != introductionHeading && heading != notesHeading) {
            if (const auto row = rowHead(lines[at]); row && row->sure)
                return;
            continue;
        }
        if (!setIn(typed[at + 1]))
            continue;
        std::string& to = heading == notesHeading ? head.notes : head.introduction;
        forget(at);
        std::size_t blanks = 0;
        while (at + 1 < typed.size() && (setIn(typed[at + 1]) || trimmed(typed[at + 1]).empty())) {
            ++at;
            if (!setIn(typed[at])) {
                ++blanks;
                continue;
            }
            to += std::string(to.empty() ? 0 : blanks + 1, '\n') + std::string(typed[at].substr(proseSetIn.size()));
            forget(at);
            blanks = 0;
        }
    }
}

} // namespace shawlwright
