#include "app/commandline/arguments.h"

#include "core/base/text.h"

#include <algorithm>
#include <filesystem>
#include <map>

namespace shawlwright::app {

namespace {

const std::map<std::string, Command, std::less<>> commands = {{"check", Command::Check},
                                                              {"counts", Command::Counts},
                                                              {"rows", Command::Rows},
                                                              {"read", Command::Read},
                                                              {"export", Command::Export}};

// Which options a command takes; what is not listed is refused rather than ignored.
bool takes(Command command, std::string_view option)
{
    if (command == Command::Read)
        return option == "-o";
    if (option == "--version" || option == "--size")
        return true;
    if (option == "--json")
        return command == Command::Check || command == Command::Counts;
    if (option == "--all")
        return command == Command::Check;
    if (option == "--section")
        return command == Command::Rows || command == Command::Export;
    return command == Command::Export && (option == "-o" || option == "--as" || option == "--cell" ||
                                          option == "--dpi" || option == "--paper" || option == "--outlines" ||
                                          option == "--without-plain-ws");
}

bool isSwitch(std::string_view option)
{
    return option == "--json" || option == "--all" || option == "--outlines" ||
           option == "--without-plain-ws";
}

Fault usage(const std::string& sentence)
{
    return {{}, {}, sentence + " \"shawlwright --help\" lists what there is."};
}

std::string inQuotes(std::string_view word)
{
    return "\"" + std::string(word) + "\"";
}

std::optional<Fault> setOption(Arguments& arguments, const std::string& option, const std::string& value)
{
    if (option == "--version") {
        arguments.version = value;
    } else if (option == "--size") {
        arguments.size = value;
    } else if (option == "--section") {
        arguments.section = value;
    } else if (option == "-o") {
        arguments.out = value;
    } else if (option == "--as") {
        arguments.as = lowered(value);
    } else if (option == "--paper") {
        arguments.paper = lowered(value);
        if (arguments.paper != "a4" && arguments.paper != "letter")
            return usage("--paper takes a4 or letter, not " + inQuotes(value) + ".");
    } else if (option == "--cell") {
        arguments.cellMm = readDouble(value);
        if (!arguments.cellMm || *arguments.cellMm < 1 || *arguments.cellMm > 50)
            return usage("--cell takes the size of a stitch in millimetres, from 1 to 50, not " +
                         inQuotes(value) + ".");
    } else if (option == "--dpi") {
        arguments.dpi = readInt(value);
        if (!arguments.dpi || *arguments.dpi < 10 || *arguments.dpi > 4800)
            return usage("--dpi takes a whole number from 10 to 4800, not " + inQuotes(value) + ".");
    }
    return std::nullopt;
}

// The bare form: files to open, or nothing. A single word that is no file is more likely a command misspelt.
Result<Arguments> readBare(const std::vector<std::string>& words)
{
    Arguments arguments;
    if (words.empty())
        return arguments;
    const std::string& first = words.front();
    if (first == "--help" || first == "-h" || first == "--version") {
        if (words.size() > 1)
            return usage(first + " stands alone or after a command, " + inQuotes(words[1]) +
                         " is one word too many.");
        arguments.command = first == "--version" ? Command::ProgramVersion : Command::Help;
        return arguments;
    }
    std::size_t at = 0;
    if (first == "--")
        at = 1;
    else if (first.starts_with("-"))
        return usage(inQuotes(first) + " is not an option of the program alone.");
    if (words.size() == at)
        return arguments;
    arguments.file = words[at];
    std::error_code ignored;
    if (at == 0 && arguments.file.find_first_of("./") == std::string::npos &&
        !std::filesystem::exists(arguments.file, ignored)) // also "chek FILE"
        return usage(inQuotes(arguments.file) + " is neither a command nor a file.");
    return arguments;
}

} // namespace

Result<Arguments> readArguments(const std::vector<std::string>& words)
{
    const auto found = words.empty() ? commands.end() : commands.find(words.front());
    if (found == commands.end())
        return readBare(words);

    Arguments arguments;
    arguments.command = found->second;
    bool optionsOver = false;
    for (std::size_t i = 1; i < words.size(); ++i) {
        std::string word = words[i];
        if (!optionsOver && word == "--") {
            optionsOver = true;
            continue;
        }
        if (!optionsOver && (word == "--help" || word == "-h")) {
            arguments.command = Command::Help;
            return arguments;
        }
        if (optionsOver || word == "-" || !word.starts_with("-")) {
            if (!arguments.file.empty())
                return usage(found->first + " takes one file, " + inQuotes(word) + " is one word too many.");
            if (word.empty())
                return usage(found->first + " was given a file without a name.");
            arguments.file = word;
            continue;
        }
        std::optional<std::string> value;
        if (const auto equals = word.find('='); word.starts_with("--") && equals != std::string::npos) {
            value = word.substr(equals + 1);
            word.resize(equals);
        }
        if (!takes(arguments.command, word))
            return usage(found->first + " has no option " + inQuotes(word) + ".");
        if (isSwitch(word)) {
            if (value)
                return usage(word + " takes no value.");
            (word == "--json"       ? arguments.json
             : word == "--all"      ? arguments.all
             : word == "--outlines" ? arguments.outlines
                                    : arguments.withoutPlainWs) = true;
            continue;
        }
        if (!value) {
            if (i + 1 == words.size())
                return usage(word + " needs a value after it.");
            value = words[++i];
        }
        if (auto fault = setOption(arguments, word, *value))
            return *fault;
    }
    if (arguments.file.empty())
        return usage(found->first + " needs the pattern's file, or - for standard input.");
    if (arguments.command == Command::Read && arguments.out.empty())
        return usage("read needs -o and the name of the pattern file to write, or -o - for standard output.");
    if (arguments.command == Command::Export && arguments.out.empty())
        return usage("export needs -o and the name of the file to write, or -o - for standard output.");
    return arguments;
}

std::string helpText()
{
    return R"(Shawlwright charts hand-knitted shawls and keeps every stitch count true.

  shawlwright [FILE...]                     opens the editor, a window for each file
  shawlwright check FILE [--json] [--all]   what doesn't come out on the needle
  shawlwright counts FILE [--json]          the stitches of every row as it is knitted
  shawlwright rows FILE [--section TITLE]   the written instructions
  shawlwright read TEXT -o FILE             written instructions become a pattern file
  shawlwright export FILE -o OUT            by the ending of OUT: .svg .pdf .png .txt
  shawlwright --version                     the version of this program

FILE and OUT may be - for standard input and output; OUT - needs --as svg, pdf, png or txt.

  --version NAME   which version of the pattern (default: the first; of rows and a text: all of them)
  --size NAME      which size of the pattern (default: the first; of rows and export: all of them, as 23 (29))
  --json           for programs rather than people
  --all            of check: also what only follows from another finding

Of export:
  --section TITLE  the chart or the rows of one section instead of all
  --cell MM        width of a stitch in the chart, in millimetres (default: 5)
  --paper a4|letter  the page of a PDF (default: a4)
  --dpi N          dots per inch of a PNG (default: 300)
  --outlines       SVG: letters as shapes, for a printer who lacks the font
  --without-plain-ws  charts without plain WS rows, and a sentence that says so

Exit code 0: done, and no errors in the pattern. 1: check found errors, read kept rows it
did not understand as words. 2: wrong usage, or something could not be read or written.
)";
}

} // namespace shawlwright::app
