#include "core/files/builtin_catalogue.h"

#include "core/stitches/stitch_words.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cassert>
#include <initializer_list>
#include <limits>

namespace shawlwright {

std::string_view builtInStitchesJson(); // made from resources/stitches.json by embed.cmake

namespace {

using Json = nlohmann::json;

// Takes the members of one object by name and keeps the first fault; says what it was never asked for.
class Members {
public:
    Members(const Json& object, std::string path) : m_path(std::move(path)), m_object(object)
    {
        if (!object.is_object())
            refuse("", "should be an object in { }");
    }

    const std::optional<Fault>& fault() const { return m_fault; }

    void text(const char* name, std::string& into, bool needed = false)
    {
        if (const Json* value = take(name, needed)) {
            if (value->is_string())
                into = value->get_ref<const std::string&>();
            else
                refuse(name, "should be a text in quotes");
        }
    }
    void number(const char* name, int& into, bool needed = false)
    {
        if (const Json* value = take(name, needed))
            into = readNumber(name, *value);
    }
    void yesNo(const char* name, bool& into)
    {
        if (const Json* value = take(name, false)) {
            if (value->is_boolean())
                into = value->get<bool>();
            else
                refuse(name, "should be true or false");
        }
    }
    template <typename Kind>
    void kind(const char* name, Kind& into, bool needed = false)
    {
        if (const Json* value = take(name, needed))
            into = readKind<Kind>(name, *value);
    }
    template <typename Kind>
    void kinds(const char* name, std::vector<Kind>& into)
    {
        const Json* list = take(name, false);
        if (!list)
            return;
        if (!list->is_array())
            return refuse(name, "should be a list in [ ]");
        if (list->size() > mostLoopsPerStitch)
            return refuse(name, "has " + std::to_string(list->size()) + " entries; at most " +
                                    std::to_string(mostLoopsPerStitch) + " are possible");
        for (std::size_t i = 0; i < list->size(); ++i)
            into.push_back(readKind<Kind>(std::string(name) + '[' + std::to_string(i) + ']', (*list)[i]));
    }
    void crossing(const char* name, Crossing& into)
    {
        const Json* value = take(name, false);
        if (!value)
            return;
        Members inside(*value, m_path + '.' + name);
        inside.number("front", into.front, true);
        inside.number("back", into.back, true);
        inside.yesNo("backPurled", into.backPurled);
        inside.nothingElse();
        if (!m_fault)
            m_fault = inside.fault();
    }
    void nothingElse()
    {
        if (m_fault)
            return;
        for (const auto& [name, value] : m_object.items())
            if (std::find(m_asked.begin(), m_asked.end(), name) == m_asked.end())
                return refuse(name, "is not a property of a stitch; take it out or mend its spelling");
    }

private:
    const Json* take(const char* name, bool needed)
    {
        m_asked.emplace_back(name);
        if (m_fault)
            return nullptr;
        const auto found = m_object.find(name);
        if (found != m_object.end())
            return &*found;
        if (needed)
            refuse(name, "is missing");
        return nullptr;
    }
    void refuse(const std::string& name, std::string message)
    {
        if (!m_fault)
            m_fault = Fault{{}, name.empty() ? m_path : m_path + '.' + name, std::move(message)};
    }
    int readNumber(const std::string& name, const Json& value)
    {
        if (!value.is_number_integer()) {
            refuse(name, "should be a whole number");
            return 0;
        }
        constexpr auto most = std::numeric_limits<int>::max();
        const bool fits = value.is_number_unsigned() ? value.get<std::uint64_t>() <= most
                                                     : value.get<std::int64_t>() >= -std::int64_t{most};
        if (fits)
            return value.get<int>();
        refuse(name, "is " + value.dump() + ", which is too large a number");
        return 0;
    }
    template <typename Kind>
    Kind readKind(const std::string& name, const Json& value)
    {
        if (!value.is_string()) {
            refuse(name, "should be one of these words in quotes: " + allWords<Kind>());
            return {};
        }
        const auto& word = value.get_ref<const std::string&>();
        if (const auto kind = fromWord<Kind>(word))
            return *kind;
        refuse(name, "'" + word + "' is unknown; it should be one of " + allWords<Kind>());
        return {};
    }

    std::string m_path;
    const Json& m_object;
    std::vector<std::string> m_asked;
    std::optional<Fault> m_fault;
};

Result<Stitch> readStitch(const Json& json, const std::string& path)
{
    Stitch stitch;
    Members members(json, path);
    members.text("key", stitch.key, true);
    members.text("name", stitch.name, true);
    members.kind("family", stitch.family, true);
    members.number("takesUp", stitch.takesUp, true);
    members.number("leaves", stitch.leaves, true);
    members.number("columns", stitch.columns);
    members.kind("lean", stitch.lean);
    members.kind("manner", stitch.manner);
    members.kinds("heads", stitch.heads);
    members.kind("face", stitch.face);
    members.yesNo("sameOnBothSides", stitch.sameOnBothSides);
    members.text("onRS", stitch.onRS, true);
    members.text("onWS", stitch.onWS, true);
    members.text("onRSUK", stitch.onRSUK);
    members.text("onWSUK", stitch.onWSUK);
    members.text("howToRS", stitch.howToRS, true);
    members.text("howToWS", stitch.howToWS);
    members.text("mirror", stitch.mirror);
    members.text("source", stitch.source, true);
    members.kind("drawing", stitch.drawing);
    members.number("drawingNumber", stitch.drawingNumber);
    members.crossing("crossing", stitch.crossing);
    members.text("strokes", stitch.strokes);
    members.nothingElse();
    if (members.fault())
        return *members.fault();
    auto result = checked(std::move(stitch));
    if (result.ok())
        return result;
    return Fault{{}, path, result.fault().where + ' ' + result.fault().message};
}

Place placeOf(std::string_view text, std::size_t byte)
{
    Place place{1, 1};
    for (const char c : text.substr(0, std::min(byte, text.size()))) {
        if (c == '\n')
            place = {place.line + 1, 1};
        else if ((static_cast<unsigned char>(c) & 0xC0) != 0x80)
            ++place.column;
    }
    return place;
}

Result<Json> parse(std::string_view text)
{
    try {
        return Json::parse(text);
    } catch (const Json::parse_error& error) {
        const std::size_t before = error.byte > 0 ? error.byte - 1 : 0; // the last byte read is the wrong one
        return Fault{placeOf(text, before), "the list of stitches",
                     "is not JSON from here on; look for a missing comma, quote or bracket"};
    } catch (const Json::exception&) {
        return Fault{{1, 1}, "the list of stitches", "is JSON that holds a number too large to read"};
    }
}

std::string at(std::size_t index) { return "stitches[" + std::to_string(index) + ']'; }

std::optional<Fault> faultOfList(const std::vector<Stitch>& stitches)
{
    if (stitches.empty() || stitches.front().key != "no_st")
        return Fault{{}, at(0), "should be no_st, the filler where the fabric has no stitch"};
    std::unordered_map<std::string_view, std::size_t> byKey;
    for (std::size_t i = 0; i < stitches.size(); ++i) {
        const auto [first, added] = byKey.emplace(stitches[i].key, i);
        if (!added)
            return Fault{{}, at(i) + ".key", "'" + stitches[i].key + "' is the key of " + at(first->second) + " already"};
    }
    for (std::size_t i = 0; i < stitches.size(); ++i)
        if (!stitches[i].mirror.empty() && !byKey.contains(stitches[i].mirror))
            return Fault{{}, at(i) + ".mirror", "'" + stitches[i].mirror + "' is no stitch of this list"};
    return std::nullopt;
}

} // namespace

Result<std::vector<Stitch>> readStitches(std::string_view text)
{
    const auto json = parse(text);
    if (!json.ok())
        return json.fault();
    const Json& root = json.value();
    const auto list = root.is_object() ? root.find("stitches") : root.end();
    if (!root.is_object() || list == root.end() || !list->is_array())
        return Fault{{}, "stitches", "is missing; the file should hold { \"stitches\": [ ... ] }"};
    if (list->size() >= firstOwnStitch)
        return Fault{{}, "stitches", "has " + std::to_string(list->size()) + " entries; at most " +
                                         std::to_string(firstOwnStitch - 1) + " are possible"};
    std::vector<Stitch> stitches;
    for (std::size_t i = 0; i < list->size(); ++i) {
        auto stitch = readStitch((*list)[i], at(i));
        if (!stitch.ok())
            return stitch.fault();
        stitches.push_back(std::move(stitch).take());
        stitches.back().id = StitchId{static_cast<std::uint16_t>(i)};
    }
    if (const auto fault = faultOfList(stitches))
        return *fault;
    return stitches;
}

const Catalogue& builtInCatalogue()
{
    static const Catalogue catalogue = [] {
        auto stitches = readStitches(builtInStitchesJson());
        assert(stitches.ok());
        return Catalogue(std::move(stitches).take());
    }();
    return catalogue;
}

} // namespace shawlwright
