#include "app/commandline/commands.h"
#include "app/commandline/json_text.h"
#include "app/commandline/opened_pattern.h"

#include "core/base/text.h"
#include "core/derived/derived.h"
#include "core/files/builtin_catalogue.h"

#include <algorithm>

namespace shawlwright::app {

namespace {

struct Placed {
    std::string section; // empty: of the whole pattern
    std::string row;     // the printed label
    int index = 0;       // from 1 as knitted; 0: no row
};

class Report {
public:
    Report(const Pattern& pattern, const Derived& derived) : m_pattern(pattern), m_derived(derived)
    {
        for (const Section& section : pattern.sections)
            m_labels.push_back(rowLabels(section));
    }

    Placed place(const Finding& finding) const
    {
        Placed placed;
        const int section = sectionIndex(m_pattern, finding.section);
        if (section < 0)
            return placed;
        placed.section = m_pattern.sections[static_cast<std::size_t>(section)].frame.title;
        const auto& labels = m_labels[static_cast<std::size_t>(section)];
        if (finding.row >= 0 && finding.row < static_cast<int>(labels.size()))
            placed.row = labels[static_cast<std::size_t>(finding.row)];
        const auto& rows = m_derived.ledger().rows;
        if (finding.line >= 0 && finding.line < static_cast<int>(rows.size()))
            placed.index = rows[static_cast<std::size_t>(finding.line)].index;
        return placed;
    }

    std::string json(bool all) const
    {
        std::vector<JsonObject> objects;
        for (const Finding& finding : m_derived.findings()) {
            if (finding.followsFrom >= 0 && !all)
                continue;
            const Placed placed = place(finding);
            objects.push_back(JsonObject()
                                  .put("severity", severityName(finding.severity))
                                  .put("section", placed.section)
                                  .put("row", placed.row)
                                  .put("index", placed.index)
                                  .put("column", finding.column)
                                  .put("kind", kindName(finding.kind))
                                  .put("message", finding.message));
        }
        return jsonArray(objects);
    }

    std::string words(bool all) const
    {
        std::string text;
        int shown[3] = {0, 0, 0};
        for (const Finding& finding : m_derived.findings()) {
            if (finding.followsFrom >= 0 && !all)
                continue;
            ++shown[static_cast<std::size_t>(finding.severity)];
            text += line(finding);
            if (const int follow = followers(finding); follow > 0 && !all)
                text += "         from it " +
                        counted(follow, "more finding follows", "more findings follow") +
                        " (--all lists them)\n";
        }
        if (text.empty())
            return "No findings: every row comes out.\n";
        return text + counted(shown[0], "error") + ", " + counted(shown[1], "warning") + ", " +
               counted(shown[2], "note") + ".\n";
    }

private:
    std::string line(const Finding& finding) const
    {
        const Placed placed = place(finding);
        std::string text(severityName(finding.severity));
        text.resize(9, ' ');
        if (!placed.section.empty())
            text += placed.section;
        if (!placed.row.empty())
            text += (placed.section.empty() ? "Row " : ", Row ") + placed.row;
        // Where rows are repeated, the label alone does not tell which time the row is worked.
        if (finding.row >= 0 && placed.index > 0 && placed.index != finding.row + 1)
            text += " (row " + toText(placed.index) + " as knitted)";
        if (finding.column > 0)
            text += ", stitch " + toText(finding.column);
        return text + (placed.section.empty() && placed.row.empty() ? "" : ": ") + finding.message + "\n";
    }

    int followers(const Finding& root) const
    {
        if (root.line < 0 || root.severity != Severity::Error)
            return 0;
        return static_cast<int>(std::ranges::count_if(
            m_derived.findings(), [&](const Finding& finding) { return finding.followsFrom == root.line; }));
    }

    const Pattern& m_pattern;
    const Derived& m_derived;
    std::vector<std::vector<std::string>> m_labels;
};

} // namespace

Answer checkCommand(const Arguments& arguments)
{
    const auto opened = openPattern(arguments);
    if (!opened.ok())
        return refusal(opened.fault().message);
    const Pattern& pattern = opened.value().pattern;
    Derived derived(builtInCatalogue(), pattern);
    derived.show(pattern, opened.value().choice);
    const bool errors = std::ranges::any_of(
        derived.findings(), [](const Finding& finding) { return finding.severity == Severity::Error; });
    const Report report(pattern, derived);
    return {errors ? 1 : 0, arguments.json ? report.json(arguments.all) : report.words(arguments.all), {}};
}

} // namespace shawlwright::app
