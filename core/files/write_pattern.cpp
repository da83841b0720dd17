#include "core/files/cells_text.h"
#include "core/files/file_words.h"
#include "core/files/json_out.h"
#include "core/files/pattern_file.h"

namespace shawlwright {
namespace {

using namespace files;

std::string colourText(std::uint32_t colour)
{
    constexpr char digits[] = "0123456789abcdef";
    std::string text = "#";
    for (int shift = 20; shift >= 0; shift -= 4)
        text += digits[(colour >> shift) & 15];
    return text;
}

// Yarns, markers and own stitches are numbered in the order of the file; a number is written where it is
// another.
std::string yarnText(const Yarn& yarn, std::size_t index)
{
    ObjectText out;
    out.whole("id", yarn.id.value, static_cast<long long>(index) + 1);
    out.raw("code", inQuotes(yarn.code));
    out.text("name", yarn.name);
    out.word("colour", colourText(yarn.colour), "#000000");
    out.whole("weight", yarn.weight, -1);
    out.number("metresPerBall", yarn.metresPerBall, 0);
    out.number("gramsPerBall", yarn.gramsPerBall, 0);
    out.unknown(yarn.unknown);
    return std::move(out).done();
}

std::string markerText(const Marker& marker, std::size_t index)
{
    ObjectText out;
    out.whole("id", marker.id.value, static_cast<long long>(index) + 1);
    out.raw("name", inQuotes(marker.name));
    out.unknown(marker.unknown);
    return std::move(out).done();
}

std::string gaugeText(const Gauge& gauge)
{
    ObjectText out;
    out.raw("stitches", numeral(gauge.stitches));
    out.raw("rows", numeral(gauge.rows));
    out.text("over", gauge.over);
    out.unknown(gauge.unknown);
    return std::move(out).done();
}

std::string crossingText(const Crossing& crossing)
{
    ObjectText out;
    out.whole("front", crossing.front);
    out.whole("back", crossing.back);
    out.truth("backPurled", crossing.backPurled);
    out.unknown(crossing.unknown);
    return std::move(out).done();
}

std::string stitchText(const Stitch& stitch, std::size_t index)
{
    const Stitch usual;
    ObjectText out;
    out.whole("id", stitch.id.value, static_cast<long long>(index) + firstOwnStitch);
    out.raw("key", inQuotes(stitch.key));
    out.text("name", stitch.name);
    out.word("family", wordFor(familyWords, stitch.family), wordFor(familyWords, usual.family));
    out.whole("takesUp", stitch.takesUp);
    out.whole("leaves", stitch.leaves);
    out.whole("columns", stitch.columns, usual.columns);
    out.word("lean", wordFor(leanWords, stitch.lean), wordFor(leanWords, usual.lean));
    out.word("manner", wordFor(mannerWords, stitch.manner), wordFor(mannerWords, usual.manner));
    std::vector<std::string> heads;
    for (const HeadKind head : stitch.heads)
        heads.emplace_back(wordFor(headWords, head));
    out.texts("heads", heads);
    out.word("face", wordFor(faceWords, stitch.face), wordFor(faceWords, usual.face));
    out.truth("sameOnBothSides", stitch.sameOnBothSides);
    out.raw("onRS", inQuotes(stitch.onRS));
    out.raw("onWS", inQuotes(stitch.onWS));
    out.text("onRSUK", stitch.onRSUK);
    out.text("onWSUK", stitch.onWSUK);
    out.text("howToRS", stitch.howToRS);
    out.text("howToWS", stitch.howToWS);
    out.text("mirror", stitch.mirror);
    out.text("source", stitch.source);
    out.word("drawing", wordFor(drawingWords, stitch.drawing), wordFor(drawingWords, usual.drawing));
    out.whole("drawingNumber", stitch.drawingNumber, 0);
    if (stitch.crossing != usual.crossing)
        out.raw("crossing", crossingText(stitch.crossing));
    out.text("strokes", stitch.strokes);
    out.unknown(stitch.unknown);
    return std::move(out).done();
}

class Writer {
public:
    Writer(const Pattern& pattern, const Catalogue& builtIn)
        : m_pattern(pattern), m_catalogue(builtIn.with(pattern.head.stitches)), m_yarns(pattern.head.yarns)
    {
        for (const Marker& marker : pattern.head.markers)
            m_markers.emplace(marker.id, marker.name);
    }

    std::string text() const
    {
        const PatternHead& head = m_pattern.head;
        ObjectText out(2);
        out.whole("format", fileFormat);
        out.raw("title", inQuotes(head.title));
        out.text("designer", head.designer);
        out.text("introduction", head.introduction);
        out.text("notes", head.notes);
        out.texts("versions", head.versions);
        out.texts("sizes", head.sizes);
        out.lines("yarns", each(head.yarns, yarnText));
        out.lines("markers", each(head.markers, markerText));
        out.raw("needleMm", numeral(head.needleMm));
        out.raw("gauge", gaugeText(head.gauge));
        out.raw("castOn", castOnText(head.castOn));
        out.lines("stitches", each(head.stitches, stitchText));
        std::vector<std::string> motifs;
        for (const Motif& motif : head.motifs)
            motifs.push_back(motifText(motif));
        out.lines("motifs", motifs);
        if (!head.style.empty())
            out.raw("style", styleText(head.style));
        out.unknown(head.unknown);
        std::vector<std::string> sections;
        for (const Section& section : m_pattern.sections)
            sections.push_back(sectionText(section));
        if (sections.empty())
            out.raw("sections", "[]");
        out.lines("sections", sections);
        return std::move(out).done() + "\n";
    }

private:
    template <typename Thing>
    static std::vector<std::string> each(const std::vector<Thing>& things,
                                         std::string (*write)(const Thing&, std::size_t))
    {
        std::vector<std::string> lines;
        for (std::size_t i = 0; i < things.size(); ++i)
            lines.push_back(write(things[i], i));
        return lines;
    }

    std::string castOnText(const CastOn& castOn) const
    {
        ObjectText out;
        out.raw("stitches", numeral(castOn.stitches));
        yarn(out, castOn.yarn);
        out.text("method", castOn.method);
        out.word("firstSide", wordFor(sideWords, castOn.firstSide), "RS");
        out.unknown(castOn.unknown);
        return std::move(out).done();
    }

    std::string motifText(const Motif& motif) const
    {
        ObjectText out(6);
        out.raw("name", inQuotes(motif.name));
        out.whole("columns", motif.columns);
        std::vector<std::string> rows;
        for (const std::vector<Cell>& cells : motif.rows)
            rows.push_back(inQuotes(cellsText(cells, m_catalogue, m_yarns)));
        out.unknown(motif.unknown);
        out.lines("rows", rows);
        return std::move(out).done();
    }

    static std::string styleText(const std::map<std::string, std::string>& style)
    {
        ObjectText out;
        for (const auto& [key, value] : style)
            out.raw(key, inQuotes(value));
        return std::move(out).done();
    }

    std::string sectionText(const Section& section) const
    {
        const SectionFrame& frame = section.frame;
        ObjectText out(6);
        out.whole("id", section.id.value);
        out.raw("title", inQuotes(frame.title));
        out.text("note", frame.note);
        out.texts("versions", frame.versions);
        out.whole("columns", frame.columns);
        out.text("words", frame.words);
        std::vector<std::string> boxes, brackets, rows;
        for (const Box& box : frame.boxes)
            boxes.push_back(boxText(box));
        for (const Bracket& bracket : frame.brackets)
            brackets.push_back(bracketText(bracket));
        for (const RowRef& row : section.rows)
            rows.push_back(rowText(*row));
        out.lines("boxes", boxes);
        out.lines("brackets", brackets);
        out.unknown(frame.unknown);
        out.lines("rows", rows);
        return std::move(out).done();
    }

    std::string boxText(const Box& box) const
    {
        const Box usual;
        ObjectText out;
        out.whole("id", box.id.value);
        out.raw("rows", listText({std::to_string(box.firstRow.value), std::to_string(box.lastRow.value)}));
        out.raw("columns", listText({std::to_string(box.firstColumn), std::to_string(box.lastColumn)}));
        out.word("until", wordFor(untilWords, box.until), wordFor(untilWords, usual.until));
        if (box.until == BoxUntil::Times || box.times != usual.times)
            out.raw("times", numeral(box.times));
        marker(out, "marker", box.marker);
        out.quantity("leaving", box.leaving, usual.leaving);
        out.unknown(box.unknown);
        return std::move(out).done();
    }

    static std::string bracketText(const Bracket& bracket)
    {
        ObjectText out;
        out.raw("rows",
                listText({std::to_string(bracket.firstRow.value), std::to_string(bracket.lastRow.value)}));
        out.raw("times", numeral(bracket.times));
        out.unknown(bracket.unknown);
        return std::move(out).done();
    }

    std::string rowText(const Row& row) const
    {
        ObjectText out;
        out.whole("id", row.id.value);
        out.raw("side", inQuotes(wordFor(sideWords, row.side)));
        yarn(out, row.yarn);
        out.text("label", row.label);
        out.word("start", wordFor(startWords, row.start.kind), wordFor(startWords, StartKind::Continue));
        out.quantity("slip", row.start.slip, Quantity());
        out.truth("joins", row.start.joins);
        out.raw("cells", inQuotes(cellsText(row.cells, m_catalogue, m_yarns)));
        out.word("finish", wordFor(finishWords, row.finish.kind), wordFor(finishWords, FinishKind::Turn));
        out.word("method", wordFor(methodWords, row.finish.method), wordFor(methodWords, TurnMethod::Plain));
        out.truth("breaks", row.finish.breaksYarn);
        if (!row.moves.empty())
            out.raw("markers", movesText(row.moves));
        if (row.stated)
            out.raw("stated", numeral(*row.stated));
        out.text("note", row.note);
        out.text("words", row.words);
        out.unknown(row.unknown);
        return std::move(out).done();
    }

    std::string movesText(const std::vector<MarkerMove>& moves) const
    {
        std::vector<std::string> items;
        for (const MarkerMove& move : moves) {
            ObjectText out;
            marker(out, wordFor(moveWords, move.kind), move.marker);
            out.whole("after", move.boundary);
            out.truth("each", move.reach == MoveReach::EachTime);
            out.unknown(move.unknown);
            items.push_back(std::move(out).done());
        }
        return listText(items);
    }

    void yarn(ObjectText& out, YarnId id) const
    {
        if (id != YarnId{})
            out.raw("yarn", inQuotes(m_yarns.name(id)));
    }

    void marker(ObjectText& out, std::string_view key, MarkerId id) const
    {
        if (const auto found = m_markers.find(id); found != m_markers.end())
            out.raw(key, inQuotes(found->second));
    }

    const Pattern& m_pattern;
    Catalogue m_catalogue;
    YarnNames m_yarns;
    std::map<MarkerId, std::string> m_markers;
};

} // namespace

std::string writePattern(const Pattern& pattern, const Catalogue& builtIn)
{
    return Writer(pattern, builtIn).text();
}

} // namespace shawlwright
