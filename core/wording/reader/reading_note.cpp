#include "core/wording/reader/reading_note.h"

#include "core/base/text.h"

namespace shawlwright {

std::string sentence(const ReadingNote& note)
{
    std::string text;
    const auto add = [&text](const std::string& part) { text += (text.empty() ? "" : "; ") + part; };
    if (!note.found.empty())
        add("found '" + note.found + "'");
    if (!note.expected.empty())
        add("expected " + note.expected);
    if (!note.chosen.empty())
        add("taken as " + note.chosen);
    return text;
}

std::string toText(const ReadingNote& note)
{
    const char* const weight = note.weight == ReadingNote::Weight::Error     ? "error"
                               : note.weight == ReadingNote::Weight::Warning ? "warning"
                                                                             : "note";
    return toText(note.at.line) + ":" + toText(note.at.column) + ": " + weight + ": " + sentence(note);
}

} // namespace shawlwright
