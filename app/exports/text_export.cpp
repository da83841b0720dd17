#include "app/exports/text_export.h"

#include "app/exports/section_charts.h"
#include "core/wording/writer/writer.h"

namespace shawlwright::app {

Result<QByteArray> textOf(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options)
{
    const bool oneVersion = options.section || !options.everyVersion;
    const ToldRuns told =
        runsToTell(pattern, catalogue, oneVersion ? std::optional(options.choice.version) : std::nullopt,
                   options.everySize ? std::nullopt : std::optional(options.choice.size));
    const Style style = styleOf(pattern.head);
    std::string text;
    if (options.section) {
        for (const int section : exportedSections(pattern, options))
            text += writtenSection(pattern, catalogue, told.versions.front(), section, style);
    } else {
        text = writtenVersions(pattern, catalogue, told.versions, style, HeadTold::Facts);
    }
    if (!text.empty() && text.back() != '\n')
        text += '\n';
    return QByteArray(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace shawlwright::app
