#include "app/commandline/commands.h"
#include "app/commandline/json_text.h"
#include "app/commandline/opened_pattern.h"
#include "app/commandline/table.h"

#include "core/base/text.h"

#include <map>

namespace shawlwright::app {

namespace {

// A ledger line with the words for its place.
struct CountLine {
    std::string section, row, yarn;
    int index = 1;
    int pass = 1; // how often this row has been worked in its section, this time included
    const LedgerLine* line = nullptr;
};

std::vector<CountLine> countLines(const Pattern& pattern, const Ledger& ledger)
{
    std::vector<std::vector<std::string>> labels;
    for (const Section& section : pattern.sections)
        labels.push_back(rowLabels(section));
    std::map<std::pair<int, int>, int> passes;
    std::vector<CountLine> lines;
    for (std::size_t i = 0; i < ledger.lines.size(); ++i) {
        const KnittedRow& knitted = ledger.rows[i];
        const auto section = static_cast<std::size_t>(knitted.section);
        CountLine line;
        line.section = pattern.sections[section].frame.title;
        line.row = labels[section][static_cast<std::size_t>(knitted.row)];
        line.index = knitted.index;
        line.pass = ++passes[{knitted.section, knitted.row}];
        line.line = &ledger.lines[i];
        if (const Yarn* yarn = yarnOf(pattern.head, ledger.lines[i].yarn))
            line.yarn = yarn->code;
        lines.push_back(std::move(line));
    }
    return lines;
}

const char* sideName(Side side)
{
    return side == Side::RS ? "RS" : "WS";
}

std::string inJson(const std::vector<CountLine>& lines)
{
    std::vector<JsonObject> objects;
    for (const CountLine& line : lines)
        objects.push_back(JsonObject()
                              .put("section", line.section)
                              .put("row", line.row)
                              .put("index", line.index)
                              .put("pass", line.pass)
                              .put("side", sideName(line.line->side))
                              .put("yarn", line.yarn)
                              .put("before", line.line->before)
                              .put("after", line.line->after)
                              .put("worked", line.line->worked)
                              .put("resting", line.line->resting)
                              .put("segments", line.line->segments));
    return jsonArray(objects);
}

std::string inWords(const std::vector<CountLine>& lines)
{
    std::vector<std::vector<std::string>> parts = {{"Section", ">Row", ">Pass", "Side", "Yarn", ">Before",
                                                    ">After", ">Worked", ">Resting",
                                                    "Between markers, right to left"}};
    for (const CountLine& line : lines) {
        std::string segments;
        for (const int segment : line.line->segments)
            segments += (segments.empty() ? "" : " | ") + toText(segment);
        parts.push_back({line.section, line.row, toText(line.pass), sideName(line.line->side), line.yarn,
                         toText(line.line->before), toText(line.line->after), toText(line.line->worked),
                         toText(line.line->resting), segments});
    }
    return table(parts);
}

} // namespace

Answer countsCommand(const Arguments& arguments)
{
    const auto opened = openPattern(arguments);
    if (!opened.ok())
        return refusal(opened.fault().message);
    const Ledger ledger = run(opened.value().pattern, opened.value().catalogue, opened.value().choice);
    const auto lines = countLines(opened.value().pattern, ledger);
    return {0, arguments.json ? inJson(lines) : inWords(lines), {}};
}

} // namespace shawlwright::app
