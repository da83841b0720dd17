// The words after the program's name, sorted.
//
// Errors:  a fault's message is a whole sentence: what was wrong, and which words work instead.
#pragma once

#include "core/base/result.h"

#include <optional>
#include <string>
#include <vector>

namespace shawlwright::app {

enum class Command { Editor, Help, ProgramVersion, Check, Counts, Rows, Read, Export };

struct Arguments {
    Command command = Command::Editor;
    std::string file; // "-": standard input
    bool json = false;
    bool all = false;                   // of check: also findings that only follow from another
    std::optional<std::string> section; // a title
    std::optional<std::string> version;
    std::optional<std::string> size;
    std::string out;               // of export and read; "-": standard output
    std::optional<std::string> as; // of export: the ending, where the file's own doesn't say
    std::optional<double> cellMm;
    std::optional<int> dpi;
    std::optional<std::string> paper;
    bool outlines = false; // of export to SVG: text as shapes
    bool withoutPlainWs = false; // of export
};

Result<Arguments> readArguments(const std::vector<std::string>& words); // without the program's name

std::string helpText();

} // namespace shawlwright::app
