// Sections of a text: their titles, and their rows laid out on one grid.

#include "core/base/text.h"
#include "core/wording/reader/stretch_boxes.h"
#include "core/wording/reader/text_reader.h"

#include <algorithm>
#include <utility>

namespace shawlwright {
namespace {

bool titleLike(const std::string& line)
{
    return line.size() <= 80 && !line.empty() && line.back() != '.' && line.back() != ',' &&
           line.back() != ';';
}

void addLine(std::string& text, const std::string& line)
{
    text += (text.empty() ? "" : "\n") + line;
}

} // namespace

// Lines before a section: the last paragraph is its title and note; what stands before it belongs to the
// pattern.
void TextReader::beginSection()
{
    if (m_inSection)
        endSection();
    std::vector<std::vector<NormalText>> paragraphs;
    bool blank = true;
    for (NormalText& line : m_prose) {
        if (line.blank()) {
            blank = true;
            continue;
        }
        if (blank)
            paragraphs.push_back({});
        blank = false;
        paragraphs.back().push_back(std::move(line));
    }
    m_prose.clear();
    m_section = {};
    m_section.versions = std::exchange(m_nextVersions, m_partVersions);
    takeUpVersion();
    m_inSection = true;
    m_lastNumber = 0;
    m_paintedTo.reset();
    m_templates.clear();
    m_waiting.clear();
    if (!paragraphs.empty()) {
        for (std::size_t i = 0; i < paragraphs.back().size(); ++i) {
            std::string line(trimmed(paragraphs.back()[i].text));
            if (m_section.title.empty() && m_section.note.empty() && m_out.pattern.sections.empty() &&
                headFact(line))
                continue;
            if (m_section.title.empty() && m_section.note.empty() && titleLike(line)) {
                if (line.back() == ':')
                    line.pop_back();
                m_section.title = line;
            } else {
                addLine(m_section.note, line);
            }
        }
        paragraphs.pop_back();
    }
    PatternHead& head = m_words.head();
    for (const auto& lines : paragraphs) {
        bool titled = false;
        bool noted = false;
        for (const NormalText& line : lines) {
            const std::string text(trimmed(line.text));
            if (!m_titled && head.title.empty() && titleLike(text)) {
                head.title = text;
                titled = m_titled = true;
                continue;
            }
            if (headFact(text))
                continue;
            noted = true;
            addLine(titled || m_out.pattern.sections.empty() ? head.introduction : head.notes, text);
        }
        if (!titled && noted)
            say(ReadingNote::Weight::Note, lines.front().placeOf(0),
                std::string(trimmed(lines.front().text)).substr(0, 60), "rows, a cast-on or a title",
                "a note to the pattern");
    }
    m_section.start = m_needle;
}

void TextReader::endSection()
{
    if (!m_inSection)
        return;
    while (!m_waiting.empty()) {
        const int next = m_waiting.begin()->first;
        fillTo(next);
        if (m_waiting.contains(next))
            fillOne(next);
    }
    const bool open =
        !m_section.rows.empty() && m_section.rows.back().base.finish.kind != FinishKind::BindOff;
    if (open && !m_templates.empty() && !m_paintedTo) { // rows end with a row told
        const Place at = m_section.rows.back().at;
        const int number = m_lastNumber + 1;
        if (fillOne(number))
            say(ReadingNote::Weight::Note, at, "the last row of the section", {},
                "followed by Row " + toText(number) + ", as all such rows");
    }
    m_inSection = false;
    leaveVersion();
    if (static_cast<int>(m_out.pattern.sections.size()) < mostSections)
        m_out.pattern.sections.push_back(laidOut(m_section));
    else
        say(ReadingNote::Weight::Error, {}, "more than " + toText(mostSections) + " sections",
            "fewer sections", {});
    m_section = {};
}

// Short rows step where each stitch of the needle has a column, whether it is worked or rests.
int TextReader::columnsOfShortRows(const DraftSection& draft) const
{
    if (m_columnsThere)
        return 0; // the chart is as wide as its designer made it
    int most = 0, before = draft.start.count();
    int since = 0; // the widest needle since the last early turn
    bool any = false;
    for (const DraftRow& row : draft.rows) {
        const bool early = row.base.finish.kind == FinishKind::TurnEarly && row.base.words.empty();
        since = std::max({since, before, row.after});
        if (early) { // the rows between two turns lie over the same stitches
            most = std::max(most, any ? since : before);
            since = 0;
        }
        any = any || early;
        before = std::max(row.after, 0);
    }
    return most;
}

Section TextReader::laidOut(DraftSection& draft)
{
    Section section;
    section.id = SectionId{static_cast<std::uint32_t>(m_out.pattern.sections.size() + 1)};
    section.frame.title = draft.title;
    section.frame.note = draft.note;
    section.frame.versions = draft.versions;
    int columns = std::max(1, m_columnsThere.value_or(1));
    for (const DraftRow& row : draft.rows)
        columns = std::max(columns, row.draft.width());
    columns = std::max(columns, std::min(columnsOfShortRows(draft), mostColumns));
    section.frame.columns = columns;

    std::vector<std::optional<PlacedRow>> places(draft.rows.size());
    Needle needle = draft.start;
    if (!m_columnsThere) // columns of another chart say nothing in this one
        beginColumns(needle, columns);
    const auto knit = [&](std::size_t at) {
        DraftRow& row = draft.rows[at];
        row.compact.row.finish = row.base.finish;
        if (!places[at]) {
            std::vector<int> u = compact(row.draft);
            std::optional<WantedRange> reached;
            if (mayWork() && row.base.words.empty()) {
                Needle copy = needle;
                Trace trace;
                Needle before = needle;
                if (row.draft.boxes.empty() || !m_columnsThere) // else a repeat stands where those below it do
                    spreadColumns(before, columns);
                work(copy, row.compact, false, &trace);
                u = overParents(row.draft, row.compact.row, before, trace, columns);
                reached = reachOf(before, trace, row.base.side, columns);
            }
            places[at] = placed(row.draft, row.base, u, columns);
            const int edge = row.base.side == Side::RS ? 0 : needle.count();
            RowEdges edges;
            if (startOf(needle, row.base, 0) != edge)
                edges.from = reached ? reached->from : u.empty() ? 0 : u.front();
            if (row.base.finish.kind == FinishKind::TurnEarly)
                edges.to = reached ? std::optional(reached->to) : std::nullopt;
            else
                edges.to = columns;
            stretchBoxes(*places[at], row.draft, u, edges);
        }
        work(needle, *places[at], false);
    };
    const auto knitAll = [&](const auto& self, std::size_t from, std::size_t to,
                             std::size_t repeats) -> void {
        for (std::size_t row = from; row <= to && row < draft.rows.size();) {
            const Repeat* repeat = nullptr;
            std::size_t at = 0;
            for (std::size_t r = repeats; r-- > 0;)
                if (!repeat && draft.repeats[r].first == row && draft.repeats[r].last <= to) {
                    repeat = &draft.repeats[r];
                    at = r;
                }
            if (!repeat) {
                knit(row++);
                continue;
            }
            for (int n = 0; n < std::max(1, repeat->times.at(0)); ++n) {
                self(self, repeat->first, repeat->last, at);
                if (!mayWork())
                    break;
            }
            row = repeat->last + 1;
        }
    };
    if (!draft.rows.empty())
        knitAll(knitAll, 0, draft.rows.size() - 1, draft.repeats.size());

    std::uint32_t boxId = 0;
    std::vector<std::string> wanted;
    for (std::size_t i = 0; i < draft.rows.size(); ++i) {
        if (!places[i])
            places[i] =
                placed(draft.rows[i].draft, draft.rows[i].base, compact(draft.rows[i].draft), columns);
        for (Box box : places[i]->boxes) {
            box.id = BoxId{++boxId};
            box.firstRow = box.lastRow = draft.rows[i].base.id;
            section.frame.boxes.push_back(std::move(box));
        }
        Row& row = places[i]->row;
        m_out.rowPlaces[draft.rows[i].base.id.value] = draft.rows[i].at;
        if (row.finish.kind == FinishKind::BindOff || draft.rows[i].base.words.empty())
            row.words = draft.rows[i].base.words;
        section.rows.push_back(std::make_shared<const Row>(std::move(row)));
        wanted.push_back(i < draft.numberedOnFrom ? draft.rows[i].label : std::string());
        // A set-up row before Row 1 is Row 0.
        if (i > 0 && wanted[i] == "1" && wanted[i - 1].empty() && i == 1)
            wanted[0] = "0";
    }
    for (auto repeat = draft.repeats.rbegin(); repeat != draft.repeats.rend(); ++repeat)
        section.frame.brackets.push_back(
            {draft.rows[repeat->first].base.id, draft.rows[repeat->last].base.id, repeat->times});
    typeLabels(section, wanted);
    return section;
}

// A label is typed where counting would give another, see rowLabels().
void TextReader::typeLabels(Section& section, const std::vector<std::string>& wanted) const
{
    int number = 0;
    char letter = 0;
    for (std::size_t i = 0; i < section.rows.size(); ++i) {
        const bool slides = section.rows[i]->finish.kind == FinishKind::Slide;
        if (letter == 0) {
            ++number;
            if (slides && i + 1 < section.rows.size())
                letter = 'a';
        }
        const std::string counted = toText(number) + (letter != 0 ? std::string(1, letter) : std::string());
        if (!wanted[i].empty() && wanted[i] != counted) {
            Row row = *section.rows[i];
            row.label = wanted[i];
            if (const auto typed = readInt(row.label))
                number = *typed;
            section.rows[i] = std::make_shared<const Row>(std::move(row));
        }
        letter = slides && letter != 0 && letter < 'z' ? static_cast<char>(letter + 1) : '\0';
    }
}

} // namespace shawlwright
