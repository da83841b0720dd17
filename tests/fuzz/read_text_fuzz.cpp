// Any bytes as written instructions: they are read without a crash or a hang, and what is read is a sound
// pattern.

#include "core/files/builtin_catalogue.h"
#include "core/needle/ledger.h"
#include "core/wording/own_words.h"
#include "core/wording/reader/reader.h"

#include <cstdlib>

using namespace shawlwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size > 1u << 16)
        return 0;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const ReadText read = readText(text, builtInCatalogue());
    const Catalogue catalogue = builtInCatalogue().with(read.pattern.head.stitches);
    if (!faultsOf(read.pattern, catalogue).empty() || static_cast<int>(read.notes.size()) > mostNotes)
        std::abort();
    for (const ReadingNote& note : read.notes)
        if (note.at.line < 0 || note.at.column < 0 || toText(note).empty())
            std::abort();
    if (size < 4096)
        ownWordsFindings(read.pattern, catalogue, run(read.pattern, catalogue));
    readRow(text.substr(0, 400), size % 2 == 0 ? Side::RS : Side::WS, catalogue, read.pattern.head);
    return 0;
}
