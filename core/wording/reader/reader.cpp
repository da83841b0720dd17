#include "core/wording/reader/reader.h"

#include "core/wording/reader/row_reader.h"
#include "core/wording/reader/text_reader.h"

namespace shawlwright {

ReadText readText(std::string_view text, const Catalogue& catalogue, const ReadOptions& options)
{
    return TextReader(catalogue, options).read(text);
}

RowReading readRow(std::string_view text, Side side, const Catalogue& catalogue, const PatternHead& head)
{
    Vocabulary words(catalogue, head);
    NormalText whole;
    for (const NormalText& line : normalLines(text))
        append(whole, part(line, 0));
    RowWords read = readRowWords(whole, side, words);
    RowReading reading;
    reading.phrases = std::move(read.phrases);
    reading.stated = read.stated;
    reading.note = noteOf(read);
    reading.notes = std::move(read.notes);
    reading.understood = read.understood;
    for (const Doubt& doubt : read.doubts)
        if (doubt.alwaysSay)
            reading.notes.push_back(
                {ReadingNote::Weight::Warning, doubt.at, doubt.found, {}, doubt.readings.front()});
    if (!read.sameAs.empty()) {
        reading.understood = false;
        reading.notes.push_back({ReadingNote::Weight::Error,
                                 whole.placeOf(0),
                                 "Row " + read.sameAs,
                                 "the stitches of this row",
                                 {}});
    }
    reading.head = words.head();
    return reading;
}

} // namespace shawlwright
