// The pattern file read: its text into a tree, the tree into a pattern, the pattern asked for what its shape
// breaks.

#include "core/base/text.h"
#include "core/files/pattern_file.h"
#include "core/files/read_head.h"
#include "core/files/shown_text.h"
#include "core/pattern/questions.h"

#include <algorithm>
#include <set>
#include <unordered_map>

namespace shawlwright {
namespace {

using namespace files;

constexpr int mostFaultsTold = 20;
constexpr int mostId = 1'000'000'000;
constexpr int mostBoxes = 2000; // of a section; brackets too
constexpr int mostMoves = 1000; // of a row
constexpr int mostFileRows = 300'000;
constexpr int mostFileCells = 20'000'000;

class PatternReader {
public:
    PatternReader(const JsonTree& tree, const Catalogue& builtIn)
        : m_tree(tree), m_faults(tree), m_catalogue(builtIn), m_yarns({})
    {
    }

    ReadPattern read()
    {
        Fields file(m_faults, 0);
        if (m_faults.none() && formatFits(file)) {
            m_pattern.head = readHead(m_faults, file);
            m_catalogue = m_catalogue.with(m_pattern.head.stitches);
            m_yarns = YarnNames(m_pattern.head.yarns);
            for (const Marker& marker : m_pattern.head.markers)
                m_markers.emplace(marker.name, marker.id);
            motifs(file);
            if (file.needed("sections"))
                for (const JsonAt item : file.list("sections", mostSections))
                    section(item);
            m_pattern.head.unknown = file.unknown();
            tellCellFaults();
            if (m_faults.none())
                shapeFaults(file);
        }
        if (!m_faults.none())
            return {std::nullopt, m_faults.first(mostFaultsTold)};
        return {std::move(m_pattern), {}};
    }

private:
    // Format 1 is the first. When there is a second, the step that makes a tree of format 1 into one of
    // format 2 goes here, before anything but the number is read.
    bool formatFits(Fields& file)
    {
        const auto value = file.find("format");
        if (!value) {
            m_faults.add(JsonAt{0},
                         "\"format\" is missing, so this is no pattern file; one begins with \"format\": " +
                             toText(fileFormat));
            return false;
        }
        const JsonNode& node = m_tree.nodes[*value];
        if (node.kind == JsonKind::Whole && node.whole > fileFormat) {
            m_faults.add(*value,
                         "the file has format " + std::to_string(node.whole) +
                             ", and this program reads format " + toText(fileFormat) +
                             "; open it with a newer version of the program. The file is left as it is");
            return false;
        }
        return wholeAt(m_faults, *value, 1, fileFormat).has_value();
    }

    void motifs(Fields& file)
    {
        std::set<std::string> names;
        for (const JsonAt item : file.list("motifs", mostMotifs)) {
            Fields in(m_faults, item);
            Motif motif;
            if (const auto name = in.needed("name"))
                motif.name = textAt(m_faults, *name).value_or(std::string());
            if (!names.insert(motif.name).second)
                m_faults.add(item, "two motifs are called '" + shortened(motif.name) + "'; give each a name of its own");
            const auto columns = in.neededWhole("columns", 1, mostMotifColumns);
            const auto rows = in.needed("rows") ? in.list("rows", mostMotifRows) : std::vector<JsonAt>{};
            for (const JsonAt row : rows) {
                if (!roomFor(row, columns.value_or(0)))
                    break;
                motif.rows.push_back(motifCells(row, columns));
            }
            motif.columns = columns.value_or(0);
            motif.unknown = in.unknown();
            m_pattern.head.motifs.push_back(std::move(motif));
        }
    }

    std::vector<Cell> motifCells(JsonAt value, std::optional<int> columns)
    {
        const auto text = textAt(m_faults, value);
        if (!text || !columns)
            return {};
        ReadCells read = readCells(*text, *columns, m_catalogue, m_yarns);
        if (!read.fault.empty())
            m_faults.add(value, std::move(read.fault));
        return std::move(read.cells);
    }

    void section(JsonAt item)
    {
        Fields in(m_faults, item);
        Section section;
        section.id = SectionId{idOf(in, m_sectionIds, "sections")};
        SectionFrame& frame = section.frame;
        frame.title = in.text("title");
        frame.note = in.text("note");
        frame.versions = in.texts("versions", mostNames);
        const auto columns = in.neededWhole("columns", 0, mostColumns);
        frame.columns = columns.value_or(0);
        frame.words = in.text("words");

        std::unordered_map<std::uint32_t, int> rowAt;
        m_rowItems.emplace_back();
        for (const JsonAt rowItem : in.list("rows", mostRows)) {
            if (!roomFor(rowItem, frame.columns))
                break;
            m_rowItems.back().push_back(rowItem);
            auto row = std::make_shared<Row>(this->row(rowItem, columns, section.rows.size()));
            rowAt.emplace(row->id.value, static_cast<int>(section.rows.size()));
            section.rows.push_back(std::move(row));
        }
        for (const JsonAt box : in.list("boxes", mostBoxes))
            frame.boxes.push_back(this->box(box, rowAt));
        std::unordered_map<std::uint32_t, std::uint32_t> boxIds;
        for (const Box& box : frame.boxes)
            if (box.id.value != 0 && !boxIds.emplace(box.id.value, 0).second)
                m_faults.add(item, "two stitch repeats have the id " + std::to_string(box.id.value) +
                                       "; give each its own");
        for (const JsonAt bracket : in.list("brackets", mostBoxes))
            frame.brackets.push_back(this->bracket(bracket, rowAt));
        frame.unknown = in.unknown();
        m_sectionItems.push_back(item);
        m_pattern.sections.push_back(std::move(section));
    }

    // Memory is asked for by what the file says, not by its size: a short row is as wide as its section.
    bool roomFor(JsonAt row, int columns)
    {
        m_rows += 1;
        m_cells += columns;
        if (m_rows > mostFileRows)
            m_faults.add(row, "the pattern has more than " + toText(mostFileRows) + " rows; divide it");
        else if (m_cells > mostFileCells)
            m_faults.add(row, "the rows up to here have more than " + toText(mostFileCells) +
                                  " cells; divide the pattern, or make its sections narrower");
        return m_rows <= mostFileRows && m_cells <= mostFileCells;
    }

    Row row(JsonAt item, std::optional<int> columns, std::size_t index)
    {
        Fields in(m_faults, item);
        Row row;
        row.id = RowId{idOf(in, m_rowIds, "rows")};
        row.side = in.neededWord("side", sideWords);
        row.yarn = yarnNamed(m_faults, in, "yarn", m_yarns);
        row.label = in.text("label");
        row.start.kind = in.word("start", startWords, StartKind::Continue);
        row.start.slip = in.quantity("slip", 0, mostCount, Quantity());
        row.start.joins = in.truth("joins");
        if (const auto value = in.find("cells"))
            row.cells = cells(*value, columns, index);
        else
            row.cells.resize(static_cast<std::size_t>(columns.value_or(0)));
        row.finish.kind = in.word("finish", finishWords, FinishKind::Turn);
        row.finish.method = in.word("method", methodWords, TurnMethod::Plain);
        row.finish.breaksYarn = in.truth("breaks");
        for (const JsonAt move : in.list("markers", mostMoves))
            row.moves.push_back(this->move(move));
        if (in.find("stated"))
            row.stated = in.quantity("stated", 0, mostCount, Quantity());
        row.note = in.text("note");
        row.words = in.text("words");
        row.unknown = in.unknown();
        return row;
    }

    std::vector<Cell> cells(JsonAt value, std::optional<int> columns, std::size_t row)
    {
        if (m_tree.nodes[value].kind != JsonKind::Text) {
            textAt(m_faults, value);
            return {};
        }
        ReadCells read = readCells(m_tree.text(value), columns.value_or(mostColumns), m_catalogue, m_yarns);
        if (!read.fault.empty() && m_cellFaults.size() < static_cast<std::size_t>(mostFaultsTold)) {
            // The text stands in the file letter by letter unless it has a \ in it.
            const JsonNode& node = m_tree.nodes[value];
            const bool plain = node.end - node.at == m_tree.text(value).size() + 2;
            const std::uint32_t byte = node.at + (plain ? 1 + static_cast<std::uint32_t>(read.faultAt) : 0);
            m_cellFaults.push_back({byte, static_cast<int>(m_pattern.sections.size()), static_cast<int>(row),
                                    std::move(read.fault)});
        }
        if (!columns)
            read.cells.clear();
        return std::move(read.cells);
    }

    MarkerMove move(JsonAt item)
    {
        Fields in(m_faults, item);
        MarkerMove move;
        int kinds = 0;
        for (const auto& [kind, key] : moveWords)
            if (const auto value = in.find(key)) {
                ++kinds;
                move.kind = kind;
                move.marker = markerNamed(*value);
            }
        if (kinds != 1 && m_tree.nodes[item].kind == JsonKind::Object)
            m_faults.add(item, "a marker is moved by one of \"place\", \"remove\" and \"shift\"; there " +
                                   std::string(kinds == 0 ? "is none" : "are " + toText(kinds)));
        move.boundary = in.neededWhole("after", 0, mostColumns).value_or(0);
        move.reach = in.truth("each") ? MoveReach::EachTime : MoveReach::Once;
        move.unknown = in.unknown();
        return move;
    }

    Box box(JsonAt item, const std::unordered_map<std::uint32_t, int>& rowAt)
    {
        Fields in(m_faults, item);
        Box box;
        box.id = BoxId{static_cast<std::uint32_t>(in.neededWhole("id", 1, mostId).value_or(0))};
        std::tie(box.firstRow, box.lastRow) = rowsOf(in, rowAt);
        if (const auto value = in.needed("columns"))
            std::tie(box.firstColumn, box.lastColumn) = pairAt(*value, mostColumns);
        box.until = in.word("until", untilWords, BoxUntil::Times);
        box.times = in.quantity("times", 0, mostRepeats, box.times);
        if (const auto value = in.find("marker"))
            box.marker = markerNamed(*value);
        else if (box.until == BoxUntil::Marker)
            (void)in.needed("marker");
        box.leaving = in.quantity("leaving", 0, mostCount, box.leaving);
        box.unknown = in.unknown();
        return box;
    }

    Bracket bracket(JsonAt item, const std::unordered_map<std::uint32_t, int>& rowAt)
    {
        Fields in(m_faults, item);
        Bracket bracket;
        std::tie(bracket.firstRow, bracket.lastRow) = rowsOf(in, rowAt);
        bracket.times = in.quantity("times", 0, mostRepeats, bracket.times);
        bracket.unknown = in.unknown();
        return bracket;
    }

    std::pair<RowId, RowId> rowsOf(Fields& in, const std::unordered_map<std::uint32_t, int>& rowAt)
    {
        const auto value = in.needed("rows");
        if (!value)
            return {};
        const auto [first, last] = pairAt(*value, mostId);
        for (const int id : {first, last})
            if (id != 0 && !rowAt.contains(static_cast<std::uint32_t>(id)))
                m_faults.add(*value, "no row of this section has the id " + toText(id) +
                                         "; give the ids of the first and the last row of the repeat");
        return {RowId{static_cast<std::uint32_t>(first)}, RowId{static_cast<std::uint32_t>(last)}};
    }

    // The first and the last of a stretch; 0, 0 and a fault where the list has not two numbers.
    std::pair<int, int> pairAt(JsonAt value, int most)
    {
        const std::size_t faultsBefore = m_faults.count();
        const auto items = listAt(m_faults, value, mostColumns);
        if (items.size() == 2) {
            const auto first = wholeAt(m_faults, items[0], 1, most);
            const auto last = wholeAt(m_faults, items[1], 1, most);
            return first && last ? std::pair(*first, *last) : std::pair(0, 0);
        }
        if (m_faults.count() == faultsBefore)
            m_faults.add(value,
                         "two numbers belong here, the first and the last; there " +
                             std::string(items.size() == 1 ? "is 1" : "are " + std::to_string(items.size())));
        return {0, 0};
    }

    MarkerId markerNamed(JsonAt value)
    {
        const auto name = textAt(m_faults, value);
        const auto found = name ? m_markers.find(*name) : m_markers.end();
        if (name && found == m_markers.end())
            m_faults.add(value, "no marker is called '" + shortened(*name) +
                                    "'; add it under \"markers\", or name " + "another");
        return found == m_markers.end() ? MarkerId{} : found->second;
    }

    std::uint32_t idOf(Fields& in, std::unordered_map<std::uint32_t, std::uint32_t>& seen,
                       const std::string& things)
    {
        const auto id = in.neededWhole("id", 1, mostId);
        if (!id)
            return 0;
        const auto [first, added] = seen.emplace(static_cast<std::uint32_t>(*id), m_tree.nodes[in.at()].at);
        if (!added && m_faults.count() < static_cast<std::size_t>(mostFaultsTold))
            m_faults.add(*in.find("id"),
                         "two " + things + " have the id " + toText(*id) + " (the other: line " +
                             toText(m_tree.placeOf(first->second).line) + "); give each its own");
        else if (!added)
            m_faults.add(*in.find("id"),
                         "two " + things + " have the id " + toText(*id) + "; give each its own");
        return static_cast<std::uint32_t>(*id);
    }

    void tellCellFaults()
    {
        for (CellFault& fault : m_cellFaults)
            m_faults.add(fault.byte, placeInWords(m_pattern, fault.section, fault.row),
                         std::move(fault.message));
    }

    // What the pattern's own questions find says its place in words; the line of it is looked up by these
    // words, and left out where two sections have one title.
    void shapeFaults(Fields& file)
    {
        const Faults found = faultsOf(m_pattern, m_catalogue);
        if (found.empty())
            return;
        std::unordered_map<std::string, std::uint32_t> places;
        const auto place = [&](const std::string& where, JsonAt item) {
            const auto [at, added] = places.emplace(where, m_tree.nodes[item].at);
            if (!added)
                at->second = nowhere;
        };
        for (const char* key : {"yarns", "markers", "castOn"})
            if (const auto value = file.find(key))
                place(key, *value);
        for (std::size_t s = 0; s < m_pattern.sections.size(); ++s) {
            const Section& section = m_pattern.sections[s];
            const std::string where = "Section '" + section.frame.title + "'";
            place(where, m_sectionItems[s]);
            const auto labels = rowLabels(section);
            for (std::size_t r = 0; r < labels.size(); ++r)
                place(where + ", Row " + labels[r], m_rowItems[s][r]);
        }
        for (const Fault& fault : found) {
            const auto at = places.find(fault.where);
            m_faults.add(at == places.end() ? nowhere : at->second, fault.where, fault.message);
        }
    }

    struct CellFault {
        std::uint32_t byte;
        int section, row;
        std::string message;
    };

    const JsonTree& m_tree;
    FaultList m_faults;
    Catalogue m_catalogue;
    YarnNames m_yarns;
    std::map<std::string, MarkerId> m_markers;
    Pattern m_pattern;
    std::vector<JsonAt> m_sectionItems;
    std::vector<std::vector<JsonAt>> m_rowItems;
    std::unordered_map<std::uint32_t, std::uint32_t> m_sectionIds, m_rowIds; // id -> byte of the first
    std::vector<CellFault> m_cellFaults;
    long long m_rows = 0, m_cells = 0;
};

} // namespace

ReadPattern readPattern(std::string_view bytes, const Catalogue& builtIn)
{
    if (bytes.size() > static_cast<std::size_t>(mostFileBytes))
        return {std::nullopt,
                {Fault{{},
                       {},
                       "the file has " + std::to_string(bytes.size()) + " bytes; a pattern has at most " +
                           toText(mostFileBytes)}}};
    const auto tree = readTree(bytes, mostFileDepth);
    if (!tree.ok())
        return {std::nullopt, {tree.fault()}};
    return PatternReader(tree.value(), builtIn).read();
}

} // namespace shawlwright
