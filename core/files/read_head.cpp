#include "core/files/read_head.h"

#include "core/base/text.h"
#include "core/files/read_stitch.h"
#include "core/files/shown_text.h"

#include <set>

namespace shawlwright::files {
namespace {

constexpr int mostOwnStitchNumber = 9999;

std::optional<std::uint32_t> readColour(std::string_view text)
{
    if (text.size() != 7 || text.front() != '#')
        return std::nullopt;
    std::uint32_t colour = 0;
    for (const char c : text.substr(1)) {
        const bool decimal = c >= '0' && c <= '9';
        const char letter = static_cast<char>(c | 0x20);
        if (!decimal && (letter < 'a' || letter > 'f'))
            return std::nullopt;
        colour = colour * 16 + static_cast<std::uint32_t>(decimal ? c - '0' : letter - 'a' + 10);
    }
    return colour;
}

// Notes the second of two that are the same.
template <typename Value>
void onlyOnce(FaultList& faults, std::set<Value>& seen, JsonAt at, Value value, const std::string& message)
{
    if (!seen.insert(std::move(value)).second)
        faults.add(at, message);
}

class HeadReader {
public:
    HeadReader(FaultList& faults, Fields& file) : m_faults(faults), m_file(file) {}

    PatternHead read()
    {
        m_head.title = m_file.text("title");
        m_head.designer = m_file.text("designer");
        m_head.introduction = m_file.text("introduction");
        m_head.notes = m_file.text("notes");
        m_head.versions = m_file.texts("versions", mostNames);
        m_head.sizes = m_file.texts("sizes", mostNames);
        yarns();
        markers();
        m_head.needleMm = m_file.number("needleMm", 0, mostMeasure, m_head.needleMm);
        gauge();
        castOn();
        stitches();
        style();
        return std::move(m_head);
    }

private:
    void yarns()
    {
        std::set<int> ids;
        std::set<std::string> codes;
        for (const JsonAt item : m_file.list("yarns", mostYarns)) {
            Fields in(m_faults, item);
            Yarn yarn;
            const int id = in.whole("id", 1, mostYarns, static_cast<int>(m_head.yarns.size()) + 1);
            yarn.id = YarnId{static_cast<std::uint8_t>(id)};
            if (const auto code = in.needed("code"))
                yarn.code = textAt(m_faults, *code).value_or(std::string());
            yarn.name = in.text("name");
            if (const auto colour = in.find("colour"))
                yarn.colour = colourAt(*colour);
            yarn.weight = in.whole("weight", 0, 7, -1);
            yarn.metresPerBall = in.number("metresPerBall", 0, mostMeasure, 0);
            yarn.gramsPerBall = in.number("gramsPerBall", 0, mostMeasure, 0);
            yarn.unknown = in.unknown();
            onlyOnce(m_faults, ids, item, id,
                     "two yarns have the number " + toText(id) + "; give each its own");
            onlyOnce(m_faults, codes, item, yarn.code,
                     "two yarns have the code '" + shortened(yarn.code) + "'; give each its own");
            m_head.yarns.push_back(std::move(yarn));
        }
    }

    std::uint32_t colourAt(JsonAt at)
    {
        const JsonTree& tree = m_faults.tree();
        const auto colour = tree.nodes[at].kind == JsonKind::Text ? readColour(tree.text(at)) : std::nullopt;
        if (!colour)
            m_faults.add(at, "a colour such as \"#7f3a5c\" belongs here, not " + described(tree, at));
        return colour.value_or(0);
    }

    void markers()
    {
        std::set<int> ids;
        std::set<std::string> names;
        for (const JsonAt item : m_file.list("markers", mostMarkers)) {
            Fields in(m_faults, item);
            Marker marker;
            const int id = in.whole("id", 1, UINT16_MAX - 1, static_cast<int>(m_head.markers.size()) + 1);
            marker.id = MarkerId{static_cast<std::uint16_t>(id)};
            if (const auto name = in.needed("name"))
                marker.name = textAt(m_faults, *name).value_or(std::string());
            marker.unknown = in.unknown();
            onlyOnce(m_faults, ids, item, id,
                     "two markers have the number " + toText(id) + "; give each its own");
            onlyOnce(m_faults, names, item, marker.name,
                     "two markers are called '" + shortened(marker.name) + "'; give each a name of its own");
            m_head.markers.push_back(std::move(marker));
        }
    }

    void gauge()
    {
        const auto value = m_file.find("gauge");
        if (!value)
            return;
        Fields in(m_faults, *value);
        m_head.gauge.stitches = in.number("stitches", 0, mostMeasure, m_head.gauge.stitches);
        m_head.gauge.rows = in.number("rows", 0, mostMeasure, m_head.gauge.rows);
        m_head.gauge.over = in.text("over");
        m_head.gauge.unknown = in.unknown();
    }

    void castOn()
    {
        const auto value = m_file.needed("castOn");
        if (!value)
            return;
        Fields in(m_faults, *value);
        CastOn& castOn = m_head.castOn;
        if (in.needed("stitches"))
            castOn.stitches = in.quantity("stitches", 0, mostCount, castOn.stitches);
        castOn.yarn = yarnNamed(m_faults, in, "yarn", YarnNames(m_head.yarns));
        castOn.method = in.text("method");
        castOn.firstSide = in.word("firstSide", sideWords, Side::RS);
        castOn.unknown = in.unknown();
    }

    void stitches()
    {
        std::set<int> ids;
        std::set<std::string> keys;
        for (const JsonAt item : m_file.list("stitches", mostOwnStitches)) {
            Stitch stitch = ownStitch(item, static_cast<int>(m_head.stitches.size()) + firstOwnStitch);
            const int id = stitch.id.value;
            onlyOnce(m_faults, ids, item, id,
                     "two stitches have the number " + toText(id) + "; give each its own");
            onlyOnce(m_faults, keys, item, stitch.key,
                     "two stitches have the key '" + shortened(stitch.key) + "'; give each its own");
            m_head.stitches.push_back(std::move(stitch));
        }
    }

    Stitch ownStitch(JsonAt item, int nextId)
    {
        Fields in(m_faults, item);
        const int id = in.whole("id", firstOwnStitch, mostOwnStitchNumber, nextId);
        Stitch stitch = readStitch(m_faults, in);
        stitch.id = StitchId{static_cast<std::uint16_t>(id)};
        return stitch;
    }

    void style()
    {
        const auto value = m_file.find("style");
        if (!value)
            return;
        const JsonTree& tree = m_faults.tree();
        if (tree.nodes[*value].kind != JsonKind::Object) {
            m_faults.add(*value, "an object in { } belongs here, not " + described(tree, *value));
            return;
        }
        for (JsonAt key = *value + 1; key < tree.nodes[*value].next; key = tree.nodes[key + 1].next)
            m_head.style[tree.text(key)] = textAt(m_faults, key + 1).value_or(std::string());
    }

    FaultList& m_faults;
    Fields& m_file;
    PatternHead m_head;
};

} // namespace

PatternHead readHead(FaultList& faults, Fields& file)
{
    return HeadReader(faults, file).read();
}

YarnId yarnNamed(FaultList& faults, Fields& in, std::string_view key, const YarnNames& yarns)
{
    const auto value = in.needed(key);
    const auto name = value ? textAt(faults, *value) : std::nullopt;
    if (!name)
        return YarnId{};
    const auto id = yarns.find(*name);
    if (!id && !yarns.all().empty()) // where there is none at all, that is what is told
        faults.add(*value, "no yarn has the code '" + shortened(*name) +
                               "'; name one of the pattern's yarns (" + yarns.all() + ")");
    return id.value_or(YarnId{});
}

} // namespace shawlwright::files
