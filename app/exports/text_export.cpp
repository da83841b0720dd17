#include "app/exports/text_export.h"

#include "app/exports/section_charts.h"
#include "core/wording/writer/writer.h"

namespace shawlwright::app {

Result<QByteArray> textOf(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options)
{
    const Ledger ledger = run(pattern, catalogue, options.choice);
    const Style style = styleOf(pattern.head);
    std::string text;
    if (options.section) {
        for (const int section : exportedSections(pattern, options))
            text += writtenSection(pattern, catalogue, ledger, section, style);
    } else {
        text = writtenPattern(pattern, catalogue, ledger, style);
    }
    if (!text.empty() && text.back() != '\n')
        text += '\n';
    return QByteArray(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace shawlwright::app
