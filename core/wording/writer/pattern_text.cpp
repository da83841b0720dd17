// Written instructions as text: a section, the whole pattern, all its versions.

#include "core/base/text.h"
#include "core/wording/abbreviations.h"
#include "core/wording/writer/gather.h"
#include "core/wording/writer/phrase_text.h"
#include "core/wording/writer/prose_text.h"
#include "core/wording/writer/quantity_words.h"
#include "core/wording/yarn_words.h"

#include <algorithm>

namespace shawlwright {
namespace {

void addLine(std::string& text, const std::string& line)
{
    if (!line.empty())
        text += line + "\n";
}

class Teller {
public:
    Teller(const Pattern& pattern, const Catalogue& catalogue, const Style& style)
        : m_pattern(pattern), m_catalogue(catalogue), m_style(style)
    {
    }

    // What stands below the title.
    std::string section(const Runs& runs, int at)
    {
        const Section& section = m_pattern.sections[static_cast<std::size_t>(at)];
        std::string text;
        addLine(text, section.frame.note);
        if (!section.frame.words.empty()) {
            addLine(text, section.frame.words);
            return text;
        }
        std::vector<WrittenRow> rows = writtenRows(m_pattern, m_catalogue, runs, at, m_style);
        for (const WrittenLine& line : gathered(m_pattern, runs, at, m_style, rows))
            addLine(text, toText(line));
        for (WrittenRow& row : rows)
            if (!row.repeat)
                m_said.push_back(
                    {section.rows[static_cast<std::size_t>(row.firstRow)]->side, std::move(row.phrases)});
        return text;
    }

    std::string wholeOf(const Runs& runs)
    {
        std::string text;
        for (std::size_t s = 0; s < m_pattern.sections.size(); ++s)
            if (belongsTo(m_pattern.sections[s], m_pattern, runs.version()))
                text += "\n" + titled(s, {}, section(runs, static_cast<int>(s)));
        return text;
    }

    // What is the same in all versions is said once.
    std::string together(std::span<const Runs> versions)
    {
        std::string text;
        for (std::size_t s = 0; s < m_pattern.sections.size(); ++s) {
            std::vector<std::pair<std::string, std::vector<int>>>
                ways; // the words and the versions they are for
            for (const Runs& runs : versions) {
                if (!belongsTo(m_pattern.sections[s], m_pattern, runs.version()))
                    continue;
                std::string words = section(runs, static_cast<int>(s));
                const auto same = std::find_if(ways.begin(), ways.end(),
                                               [&](const auto& way) { return way.first == words; });
                if (same == ways.end())
                    ways.push_back({std::move(words), {runs.version()}});
                else
                    same->second.push_back(runs.version());
            }
            for (const auto& [words, of] : ways)
                text +=
                    "\n" + titled(s, of.size() == versions.size() ? std::string() : versionLine(of), words);
        }
        return text;
    }

    std::string apart(std::span<const Runs> versions)
    {
        std::string text;
        for (const Runs& runs : versions)
            text += "\nVersion from the cast-on to the end: " + versionName(m_pattern, runs.version()) +
                    "\n" + wholeOf(runs);
        return text;
    }

    std::string withAbbreviations(const std::string& head, const std::string& castOn,
                                  const std::string& body, bool yarnsListed) const
    {
        std::string list;
        for (const Abbreviation& one :
             abbreviationsIn(castOn + body, m_said, m_catalogue, m_style,
                             yarnsListed ? std::span<const Yarn>() : m_pattern.head.yarns))
            addLine(list, one.shortForm + ": " + one.meaning);
        std::string text = head;
        if (!text.empty())
            text += "\n";
        if (!list.empty())
            text += "Abbreviations\n" + list + "\n";
        return text + castOn + body;
    }

private:
    std::string titled(std::size_t at, const std::string& version, const std::string& words) const
    {
        std::string text;
        addLine(text, m_pattern.sections[at].frame.title);
        addLine(text, version);
        return text + words;
    }

    std::string versionLine(const std::vector<int>& versions) const
    {
        std::string text = versions.size() == 1 ? "Version: " : "Versions: ";
        for (std::size_t i = 0; i < versions.size(); ++i)
            text += (i > 0 ? ", " : "") + versionName(m_pattern, versions[i]);
        return text;
    }

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    const Style& m_style;
    std::vector<SaidRow> m_said;
};

bool listsFacts(const PatternHead& head, HeadTold told)
{
    return !head.title.empty() && told == HeadTold::Facts;
}

// Nothing of it without a title: the first line would be taken for one.
std::string factLines(const PatternHead& head, HeadTold told)
{
    std::string text;
    if (!listsFacts(head, told))
        return text;
    if (!head.designer.empty())
        addLine(text, "by " + head.designer);
    if (const std::string introduction = proseText(introductionHeading, head.introduction); !introduction.empty())
        text += "\n" + introduction + "\n";
    for (const Yarn& yarn : head.yarns)
        if (const std::string words = yarnInFull(yarn); !words.empty() && words != yarn.code)
            addLine(text, "Yarn " + words);
    addLine(text, "Needles: " + toText(head.needleMm) + " mm, or the size that gives the gauge");
    addLine(text, "Gauge: " + toText(head.gauge.stitches) + " sts and " + toText(head.gauge.rows) + " rows to 10 cm (4 in)" +
                      (head.gauge.over.empty() ? "" : " in " + head.gauge.over));
    return text;
}

std::string notesOf(const PatternHead& head, HeadTold told)
{
    return head.notes.empty() || !listsFacts(head, told) ? "" : "\n" + proseText(notesHeading, head.notes);
}

std::string beginning(const Pattern& pattern, const Style& style)
{
    std::string text = castOnInWords(pattern) + "\n";
    addLine(text, markersInWords(pattern, style));
    return text;
}

std::string sizesLine(const Pattern& pattern, const Runs& runs, const Style& style)
{
    const std::vector<std::string>& sizes = pattern.head.sizes;
    if (sizes.size() == 1)
        return "Size: " + sizes.front() + "\n";
    if (sizes.empty())
        return {};
    std::string text = "Sizes: " + sizesInWords(pattern) + "\n";
    const int size = runs.first().choice.size;
    if (!runs.everySize() && style.counts != CountsShown::Never && size >= 0 && size < sizeCount(pattern))
        text += "Counts after rows are those of size " + sizes[static_cast<std::size_t>(size)] + ".\n";
    return text;
}

} // namespace

std::string sizesInWords(const Pattern& pattern)
{
    const std::vector<std::string>& sizes = pattern.head.sizes;
    if (sizes.size() < 2)
        return {};
    std::string text = sizes.front() + " (";
    for (std::size_t i = 1; i < sizes.size(); ++i)
        text += (i > 1 ? ", " : "") + sizes[i];
    return text + ")";
}

std::string castOnInWords(const Pattern& pattern)
{
    const CastOn& castOn = pattern.head.castOn;
    const Quantity& stitches = castOn.stitches;
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

std::string markersInWords(const Pattern& pattern, const Style& style)
{
    const auto places = [](const RowRef& row) {
        return std::any_of(row->moves.begin(), row->moves.end(),
                           [](const MarkerMove& move) { return move.kind == MoveKind::Place; });
    };
    const bool any =
        std::any_of(pattern.sections.begin(), pattern.sections.end(), [&](const Section& section) {
            return std::any_of(section.rows.begin(), section.rows.end(), places);
        });
    return any && style.markers == MarkersSlipped::WhereNeeded ? "Slip markers as you come to them." : "";
}

std::string writtenSection(const Pattern& pattern, const Catalogue& catalogue, const Runs& runs, int section,
                           const Style& style)
{
    std::string text;
    addLine(text, pattern.sections[static_cast<std::size_t>(section)].frame.title);
    return text + Teller(pattern, catalogue, style).section(runs, section);
}

std::string writtenPattern(const Pattern& pattern, const Catalogue& catalogue, const Runs& runs,
                           const Style& style, HeadTold told)
{
    Teller teller(pattern, catalogue, style);
    std::string head;
    addLine(head, pattern.head.title);
    head += factLines(pattern.head, told);
    if (versionCount(pattern) > 1)
        addLine(head, "Version: " + versionName(pattern, runs.version()));
    head += sizesLine(pattern, runs, style) + notesOf(pattern.head, told);
    const std::string body = teller.wholeOf(runs);
    return teller.withAbbreviations(head, beginning(pattern, style), body, listsFacts(pattern.head, told));
}

std::string writtenVersions(const Pattern& pattern, const Catalogue& catalogue,
                            std::span<const Runs> versions, const Style& style, HeadTold told)
{
    if (versions.size() == 1)
        return writtenPattern(pattern, catalogue, versions.front(), style, told);
    Teller teller(pattern, catalogue, style);
    std::string head;
    addLine(head, pattern.head.title);
    head += factLines(pattern.head, told);
    std::string names;
    for (const Runs& runs : versions)
        names += (names.empty() ? "" : ", ") + versionName(pattern, runs.version());
    addLine(head, "Versions: " + names);
    head += sizesLine(pattern, versions.front(), style) + notesOf(pattern.head, told);
    const std::string body =
        style.versions == VersionsTold::Apart ? teller.apart(versions) : teller.together(versions);
    return teller.withAbbreviations(head, beginning(pattern, style), body, listsFacts(pattern.head, told));
}

ToldRuns runsToTell(const Pattern& pattern, const Catalogue& catalogue, std::optional<int> version,
                    std::optional<int> size)
{
    ToldRuns told;
    told.ledgers = runEvery(pattern, catalogue);
    std::vector<const Ledger*> every;
    for (const Ledger& ledger : told.ledgers)
        every.push_back(&ledger);
    const auto sizes = static_cast<std::size_t>(sizeCount(pattern));
    for (std::size_t v = 0; v < static_cast<std::size_t>(versionCount(pattern)); ++v) {
        if (version && static_cast<std::size_t>(*version) != v)
            continue;
        const auto first = every.begin() + static_cast<std::ptrdiff_t>(v * sizes);
        told.versions.emplace_back(
            size ? std::vector{first[*size]}
                 : std::vector(first, first + static_cast<std::ptrdiff_t>(sizes)),
            every);
    }
    return told;
}

} // namespace shawlwright
