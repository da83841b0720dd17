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
    const Ledger ledger = run(it.pattern, it.catalogue, it.choice);
    const Style style = styleOf(it.pattern.head);
    std::string text;
    if (!arguments.section) {
        text = writtenPattern(it.pattern, it.catalogue, ledger, style);
    } else {
        for (const int section : sections.value())
            text +=
                (text.empty() ? "" : "\n") + writtenSection(it.pattern, it.catalogue, ledger, section, style);
    }
    if (!text.empty() && text.back() != '\n')
        text += '\n';
    return {0, text, {}};
}

} // namespace shawlwright::app
