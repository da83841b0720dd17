// What is written from a pattern that was read, row by row beside the words it was read from: how many rows
// are the same but for blanks, capitals and full stops, and how long both are.
#pragma once

#include "core/base/text.h"
#include "core/wording/reader/reader.h"
#include "core/wording/writer/writer.h"

#include <cstdio>
#include <cstdlib>
#include <map>
#include <regex>
#include <sstream>
#include <string>

namespace shawlwright::tests {

struct WrittenAgain {
    int rows = 0;
    int equal = 0;
    double written = 0, printed = 0, shortest = 0; // letters
    std::vector<std::string> longer; // rows that are longer than the print in the shortest style

    // Without what either may say or leave unsaid: "leaving 6 sts unworked" tells a count, as "(23 sts)"
    // does; a marker's letter, where "sm" and "to marker" mean the next one; the method of a turn; the lean that
    // "m1" was read with; brackets about one stitch; a second asterisk where two groups would have the same.
    static std::string normal(const std::string& words)
    {
        static const std::regex counts(", leaving [0-9]+ sts? unworked| \\(counting the ds\\)");
        static const std::regex letters("(marker|sm|pm) [a-z]\\b");
        std::string text = std::regex_replace(lowered(words), counts, "");
        text = std::regex_replace(text, letters, "$1");
        text = std::regex_replace(text, std::regex("remove marker"), "rm");
        text = std::regex_replace(text, std::regex("turn for ds"), "turn");
        text = std::regex_replace(text, std::regex("m1l\\b"), "m1");
        text = std::regex_replace(text, std::regex("\\[([a-z0-9]+)\\] "), "$1 ");
        text = std::regex_replace(text, std::regex("\\b2 times"), "twice");
        text = std::regex_replace(text, std::regex("\\*\\*"), "*");
        std::string result;
        for (const char c : text)
            if (c != ' ' && c != '.')
                result += c;
        return result;
    }

    // Rows are found by what stands before the colon. A first row that places the markers of the cast-on is
    // no row of the text.
    void add(const std::string& text, const ReadText& read, const Catalogue& catalogue, const Ledger& ledger,
             const std::string& name)
    {
        std::map<std::string, std::string> words;
        std::istringstream lines(text);
        for (std::string line; std::getline(lines, line);)
            if (const auto colon = line.find(": "); colon != std::string::npos)
                words[line.substr(0, colon)] = line.substr(colon + 2, line.rfind('.') - colon - 2);
        if (toldAnew(read))
            return; // its rows have other numbers
        Style style;
        style.counts = CountsShown::Never;
        style.gathering = Gathering::RowByRow;
        Style shortestStyle = style;
        shortestStyle.longRuns = LongRuns::Counted;
        shortestStyle.markers = MarkersSlipped::WhereNeeded;
        for (std::size_t section = 0; section < read.pattern.sections.size(); ++section) {
            const int at = static_cast<int>(section);
            const auto inShort = writtenRows(read.pattern, catalogue, ledger, at, shortestStyle);
            std::size_t i = 0;
            for (const WrittenRow& row : writtenRows(read.pattern, catalogue, ledger, at, style)) {
                const WrittenRow& shortRow = inShort.at(i++);
                const std::string label = row.label.substr(0, row.label.find(':'));
                const bool placesCastOn =
                    text.find("pm after") < text.find(label) && row.text.find("pm ") != std::string::npos;
                if (const auto found = words.find(label); found != words.end() && !placesCastOn)
                    compare(found->second, row, shortRow, name);
            }
        }
    }

    // Where the first row places the markers of the cast-on and is repeated, it is told by itself.
    static bool toldAnew(const ReadText& read)
    {
        return std::any_of(read.notes.begin(), read.notes.end(), [](const ReadingNote& note) {
            return note.chosen.find("the first time told by itself") != std::string::npos;
        });
    }

    std::string told() const
    {
        char line[250];
        std::snprintf(line, sizeof line,
                      "written again: %d of %d rows equal (%.1f%%), length %.3f of the print; with long runs counted and "
                      "needless slips left out %.3f, %d rows longer",
                      equal, rows, 100.0 * equal / std::max(rows, 1), written / std::max(printed, 1.0),
                      shortest / std::max(printed, 1.0), static_cast<int>(longer.size()));
        return line;
    }

private:
    void compare(const std::string& was, const WrittenRow& row, const WrittenRow& shortRow, const std::string& name)
    {
        const std::string print = normal(was);
        const std::string is = normal(row.text);
        ++rows;
        equal += print == is ? 1 : 0;
        const std::size_t least = normal(shortRow.text).size();
        if (least > print.size())
            longer.push_back(name + ", " + row.label + "\n  printed " + was + "\n  written " + shortRow.text);
        shortest += static_cast<double>(least);
        written += static_cast<double>(is.size());
        printed += static_cast<double>(print.size());
        if (print != is && std::getenv("SHAWLWRIGHT_TELL"))
            std::printf("%s %s\n  printed %s\n  written %s\n", name.c_str(), row.label.c_str(), was.c_str(),
                        row.text.c_str());
    }
};

} // namespace shawlwright::tests
