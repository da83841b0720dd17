#include "app/commandline/commands.h"
#include "app/commandline/opened_pattern.h"

#include "app/document/text.h"
#include "app/exports/export_file.h"
#include "core/base/text.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "core/wording/reader/reader.h"

#include <QFile>

namespace shawlwright::app {

namespace {

std::string notesInWords(const ReadText& read)
{
    std::string text;
    for (const ReadingNote& note : read.notes)
        text += toText(note) + "\n";
    if (static_cast<int>(read.notes.size()) >= mostNotes)
        text += "shawlwright: more notes are not shown.\n";
    if (read.rowsNot > 0)
        text += "shawlwright: " + counted(read.rowsRead, "row") + " understood, " + toText(read.rowsNot) +
                " kept as words.\n";
    return text;
}

} // namespace

// Exit 0: every row was understood; 1: some were not and are kept as words; 2: nothing could be read.
Answer readCommand(const Arguments& arguments)
{
    const auto text = readBytes(arguments.file);
    if (!text.ok())
        return refusal(text.fault().message);
    const bool toStream = arguments.out == "-";
    const QString path = QFile::decodeName(arguments.out.c_str());
    const QString source = arguments.file == "-" ? QString() : QFile::decodeName(arguments.file.c_str());
    if (!toStream)
        if (const auto refused = refusedTarget(path, source))
            return refusal(fromQt(*refused));

    const ReadText read = readText(text.value(), builtInCatalogue());
    const std::string notes = notesInWords(read);
    if (read.rowsRead == 0)
        return {2,
                {},
                notes +
                    "shawlwright: no row could be read; a row begins with \"Row 1 (RS):\" or the like.\n"};
    const Catalogue catalogue = builtInCatalogue().with(read.pattern.head.stitches);
    if (const Faults faults = faultsOf(read.pattern, catalogue); !faults.empty())
        return {
            2, {}, notes + "shawlwright: the rows make no sound pattern: " + toText(faults.front()) + "\n"};
    const std::string bytes = writePattern(read.pattern, builtInCatalogue());
    const int code = read.rowsNot > 0 ? 1 : 0;
    if (toStream)
        return {code, bytes, notes};
    if (const auto fault = writeExported(path, QByteArray::fromStdString(bytes)))
        return {2, {}, notes + "shawlwright: " + fromQt(*fault) + "\n"};
    return {code, {}, notes};
}

} // namespace shawlwright::app
