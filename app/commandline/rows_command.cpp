#include "app/commandline/commands.h"
#include "app/commandline/opened_pattern.h"

#include "core/pattern/one_size.h"
#include "core/wording/writer/writer.h"

namespace shawlwright::app {

Answer rowsCommand(const Arguments& arguments)
{
    const auto opened = openPattern(arguments);
    if (!opened.ok())
        return refusal(opened.fault().message);
    const OpenedPattern& it = opened.value();
    const auto sections = chosenSections(it, arguments.section);
    if (!sections.ok())
        return refusal(sections.fault().message);
    // A section is asked for in one version; everything else in all of them, unless one is named.
    std::optional<int> version;
    if (arguments.version || arguments.section)
        version = it.choice.version;
    const Pattern pattern = arguments.size ? ofOneSize(it.pattern, it.choice.size) : it.pattern;
    const ToldRuns told = runsToTell(pattern, it.catalogue, version, std::nullopt);
    const Style style = styleOf(pattern.head);
    std::string text;
    if (!arguments.section) {
        text = writtenVersions(pattern, it.catalogue, told.versions, style);
    } else {
        for (const int section : sections.value())
            text += (text.empty() ? "" : "\n") +
                    writtenSection(pattern, it.catalogue, told.versions.front(), section, style);
    }
    if (!text.empty() && text.back() != '\n')
        text += '\n';
    return {0, text, {}};
}

} // namespace shawlwright::app
