#include "app/commandline/opened_pattern.h"

#include "core/base/text.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>
#include <sys/stat.h>

namespace shawlwright::app {

namespace {

std::string nameOf(const std::string& file)
{
    return file == "-" ? "standard input" : file;
}

Result<std::string> readAll(std::FILE* stream, const std::string& name)
{
    std::string bytes;
    std::vector<char> piece(1 << 16);
    while (const std::size_t got = std::fread(piece.data(), 1, piece.size(), stream)) {
        bytes.append(piece.data(), got);
        if (bytes.size() > static_cast<std::size_t>(mostFileBytes))
            return Fault{{}, {}, name + ": longer than 64 MB, which no pattern is; nothing was read."};
    }
    if (std::ferror(stream))
        return Fault{{}, {}, name + ": cannot be read (" + std::strerror(errno) + ")."};
    return bytes;
}

// The index of a name among names; a fault that lists them otherwise.
Result<int> chosen(const std::optional<std::string>& wanted, const std::vector<std::string>& names,
                   const char* what)
{
    if (!wanted)
        return 0;
    for (std::size_t i = 0; i < names.size(); ++i)
        if (names[i] == *wanted)
            return static_cast<int>(i);
    const std::string word(what);
    if (names.empty())
        return Fault{{},
                     {},
                     "There is no " + word + " \"" + *wanted +
                         "\": this pattern has only one, without a name. "
                         "Leave out --" +
                         word + "."};
    std::vector<std::string> quoted;
    for (const std::string& name : names)
        quoted.push_back("\"" + name + "\"");
    return Fault{{},
                 {},
                 "There is no " + word + " \"" + *wanted + "\" in this pattern; it has " + joined(quoted) +
                     "."};
}

} // namespace

Result<std::string> readBytes(const std::string& file)
{
    if (file == "-")
        return readAll(stdin, nameOf(file));
    struct stat about {};
    if (::stat(file.c_str(), &about) == 0) {
        if (S_ISDIR(about.st_mode))
            return Fault{{}, {}, file + ": is a folder, not a pattern."};
        if (S_ISREG(about.st_mode) && about.st_size > mostFileBytes)
            return Fault{{}, {}, file + ": longer than 64 MB, which no pattern is; nothing was read."};
    }
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> stream(std::fopen(file.c_str(), "rb"), std::fclose);
    if (!stream)
        return Fault{{}, {}, file + ": cannot be opened (" + std::strerror(errno) + ")."};
    return readAll(stream.get(), file);
}

Result<OpenedPattern> openPattern(const Arguments& arguments)
{
    const auto bytes = readBytes(arguments.file);
    if (!bytes.ok())
        return bytes.fault();
    ReadPattern read = readPattern(bytes.value(), builtInCatalogue());
    if (!read.pattern) {
        std::string lines;
        for (const Fault& fault : read.faults)
            lines += (lines.empty() ? "" : "\n") + nameOf(arguments.file) + ": " + toText(fault);
        return Fault{{}, {}, lines.empty() ? nameOf(arguments.file) + ": cannot be read." : lines};
    }
    OpenedPattern opened;
    opened.pattern = std::move(*read.pattern);
    opened.catalogue = builtInCatalogue().with(opened.pattern.head.stitches);
    const auto version = chosen(arguments.version, opened.pattern.head.versions, "version");
    if (!version.ok())
        return version.fault();
    const auto size = chosen(arguments.size, opened.pattern.head.sizes, "size");
    if (!size.ok())
        return size.fault();
    opened.choice = {version.value(), size.value()};
    return opened;
}

Result<std::vector<int>> chosenSections(const OpenedPattern& opened, const std::optional<std::string>& title)
{
    std::vector<int> found;
    std::vector<std::string> titles;
    bool elsewhere = false;
    for (int i = 0; i < static_cast<int>(opened.pattern.sections.size()); ++i) {
        const Section& section = opened.pattern.sections[static_cast<std::size_t>(i)];
        const bool here = belongsTo(section, opened.pattern, opened.choice.version);
        if (here)
            titles.push_back("\"" + section.frame.title + "\"");
        if (title && section.frame.title != *title)
            continue;
        if (here)
            found.push_back(i);
        else
            elsewhere = true;
    }
    if (!title || !found.empty())
        return found;
    std::string sentence = "There is no section \"" + *title + "\"";
    if (elsewhere)
        sentence = "Section \"" + *title + "\" doesn't belong to the version \"" +
                   versionName(opened.pattern, opened.choice.version) + "\"";
    return Fault{{},
                 {},
                 sentence + (titles.empty() ? "; this pattern has no sections there."
                                            : "; the sections there are " + joined(titles) + ".")};
}

} // namespace shawlwright::app
