// Written instructions as text: a section, the whole pattern.

#include "core/base/text.h"
#include "core/wording/writer/gather.h"
#include "core/wording/writer/phrase_text.h"
#include "core/wording/writer/quantity_words.h"

namespace shawlwright {
namespace {

void addLine(std::string& text, const std::string& line)
{
    if (!line.empty())
        text += line + "\n";
}

std::string sizesInWords(const std::vector<std::string>& sizes)
{
    std::string text = sizes.front() + " (";
    for (std::size_t i = 1; i < sizes.size(); ++i)
        text += (i > 1 ? ", " : "") + sizes[i];
    return text + ")";
}

} // namespace

std::string castOnInWords(const Pattern& pattern, int size)
{
    const CastOn& castOn = pattern.head.castOn;
    const Quantity stitches = size < 0 ? castOn.stitches : Quantity(castOn.stitches.at(size));
    std::string text =
        everyValueIs(stitches, 0) ? "Begin without sts" : "Cast on " + stitchesInWords(stitches);
    text += " with " + yarnInWords(pattern.head, castOn.yarn);
    if (!castOn.method.empty())
        text += " (" + castOn.method + ")";
    text += ".";
    if (castOn.firstSide == Side::WS)
        text += " The WS faces for the first row.";
    return text;
}

std::string writtenSection(const Pattern& pattern, const Catalogue& catalogue, const Runs& runs, int section,
                           const Style& style)
{
    const SectionFrame& frame = pattern.sections[static_cast<std::size_t>(section)].frame;
    std::string text;
    addLine(text, frame.title);
    addLine(text, frame.note);
    if (!frame.words.empty()) {
        addLine(text, frame.words);
        return text;
    }
    const std::vector<WrittenRow> rows = writtenRows(pattern, catalogue, runs, section, style);
    for (const WrittenLine& line : gathered(pattern, runs, section, style, rows))
        addLine(text, toText(line));
    return text;
}

std::string writtenPattern(const Pattern& pattern, const Catalogue& catalogue, const Runs& runs,
                           const Style& style)
{
    const PatternHead& head = pattern.head;
    std::string text;
    addLine(text, head.title);
    if (versionCount(pattern) > 1)
        addLine(text, "Version: " + versionName(pattern, runs.version()));
    if (sizeCount(pattern) > 1) {
        addLine(text, "Sizes: " + sizesInWords(head.sizes));
        if (style.counts != CountsShown::Never && runs.first().choice.size >= 0 &&
            runs.first().choice.size < sizeCount(pattern))
            addLine(text, "Counts after rows are those of size " +
                              head.sizes[static_cast<std::size_t>(runs.first().choice.size)] + ".");
    }
    if (!text.empty())
        text += "\n";
    addLine(text, castOnInWords(pattern, -1));
    for (std::size_t s = 0; s < pattern.sections.size(); ++s)
        if (belongsTo(pattern.sections[s], pattern, runs.version()))
            text += "\n" + writtenSection(pattern, catalogue, runs, static_cast<int>(s), style);
    return text;
}

} // namespace shawlwright
