#include "app/commandline/commands.h"
#include "app/commandline/opened_pattern.h"

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
    std::optional<int> version, size;
    if (arguments.version || arguments.section)
        version = it.choice.version;
    if (arguments.size)
        size = it.choice.size;
    const ToldRuns told = runsToTell(it.pattern, it.catalogue, version, size);
    const Style style = styleOf(it.pattern.head);
    std::string text;
    if (!arguments.section) {
        text = writtenVersions(it.pattern, it.catalogue, told.versions, style);
    } else {
        for (const int section : sections.value())
            text += (text.empty() ? "" : "\n") +
                    writtenSection(it.pattern, it.catalogue, told.versions.front(), section, style);
    }
    if (!text.empty() && text.back() != '\n')
        text += '\n';
    return {0, text, {}};
}

} // namespace shawlwright::app
