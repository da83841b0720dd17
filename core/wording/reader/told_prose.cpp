#include "core/wording/reader/told_prose.h"

#include "core/base/text.h"
#include "core/wording/reader/row_head.h"
#include "core/wording/writer/prose_text.h"

namespace shawlwright {
namespace {

bool setIn(std::string_view line)
{
    return line.starts_with(proseSetIn) && !trimmed(line).empty();
}

} // namespace

void takeProse(std::string_view text, std::vector<NormalText>& lines, PatternHead& head)
{
    const std::vector<std::string_view> typed = typedLines(text); // a NormalText has its letters made plain
    const auto forget = [&lines](std::size_t at) {
        lines[at].text.clear();
        lines[at].at.resize(1);
    };
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
