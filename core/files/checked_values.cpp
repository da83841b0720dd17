#include "core/files/checked_values.h"

#include "core/base/text.h"
#include "core/files/shown_text.h"

#include <algorithm>

namespace shawlwright::files {
namespace {

std::string range(int least, int most)
{
    return toText(least) + " to " + toText(most);
}

} // namespace

void FaultList::add(JsonAt at, std::string message)
{
    if (m_noted.size() < static_cast<std::size_t>(mostFaultsNoted))
        m_noted.push_back({m_tree.nodes[at].at, at, Fault{{}, {}, std::move(message)}});
}

void FaultList::add(std::uint32_t byte, std::string where, std::string message)
{
    if (m_noted.size() < static_cast<std::size_t>(mostFaultsNoted))
        m_noted.push_back({byte, std::nullopt, Fault{{}, std::move(where), std::move(message)}});
}

Faults FaultList::first(int most) const
{
    std::vector<Noted> ordered = m_noted;
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const Noted& a, const Noted& b) { return a.byte < b.byte; });
    if (ordered.size() > static_cast<std::size_t>(most))
        ordered.resize(static_cast<std::size_t>(most));
    Faults faults;
    for (Noted& noted : ordered) {
        if (noted.byte != nowhere)
            noted.fault.at = m_tree.placeOf(noted.byte);
        if (noted.value)
            noted.fault.where = m_tree.pathOf(*noted.value);
        faults.push_back(std::move(noted.fault));
    }
    return faults;
}

std::string described(const JsonTree& tree, JsonAt at)
{
    const JsonNode& node = tree.nodes[at];
    switch (node.kind) {
    case JsonKind::Null:
        return "null";
    case JsonKind::Boolean:
        return node.whole != 0 ? "true" : "false";
    case JsonKind::Whole:
    case JsonKind::Number:
        return "the number " + shortened(tree.source.substr(node.at, node.end - node.at));
    case JsonKind::List:
        return "a list in [ ]";
    case JsonKind::Object:
        return "an object in { }";
    case JsonKind::Text:
    case JsonKind::Key:
        break;
    }
    return "the text '" + shortened(tree.text(at)) + "'";
}

std::optional<int> wholeAt(FaultList& faults, JsonAt at, int least, int most)
{
    const JsonNode& node = faults.tree().nodes[at];
    if (node.kind == JsonKind::Whole && node.whole >= least && node.whole <= most)
        return static_cast<int>(node.whole);
    faults.add(at, "a whole number from " + range(least, most) + " belongs here, not " +
                       described(faults.tree(), at));
    return std::nullopt;
}

std::optional<std::string> textAt(FaultList& faults, JsonAt at)
{
    if (faults.tree().nodes[at].kind == JsonKind::Text)
        return faults.tree().text(at);
    faults.add(at, "a text in quotes belongs here, not " + described(faults.tree(), at));
    return std::nullopt;
}

std::vector<JsonAt> listAt(FaultList& faults, JsonAt at, int most)
{
    if (faults.tree().nodes[at].kind != JsonKind::List) {
        faults.add(at, "a list in [ ] belongs here, not " + described(faults.tree(), at));
        return {};
    }
    std::vector<JsonAt> items = faults.tree().items(at);
    if (items.size() > static_cast<std::size_t>(most)) {
        faults.add(at, "the list has " + toText(static_cast<int>(items.size())) + " entries; up to " +
                           toText(most) + " are possible");
        items.clear();
    }
    return items;
}

int wordAt(FaultList& faults, JsonAt at, std::span<const std::string_view> words)
{
    const JsonTree& tree = faults.tree();
    if (tree.nodes[at].kind == JsonKind::Text)
        for (std::size_t i = 0; i < words.size(); ++i)
            if (tree.text(at) == words[i])
                return static_cast<int>(i);
    std::vector<std::string> all;
    for (const std::string_view word : words)
        all.push_back("\"" + std::string(word) + "\"");
    faults.add(at, "one of " + joined(all) + " belongs here, not " + described(tree, at));
    return -1;
}

Fields::Fields(FaultList& faults, JsonAt object) : m_faults(faults), m_object(object)
{
    const JsonTree& tree = faults.tree();
    if (tree.nodes[object].kind != JsonKind::Object) {
        faults.add(object, "an object in { } belongs here, not " + described(tree, object));
        return;
    }
    for (JsonAt key = object + 1; key < tree.nodes[object].next; key = tree.nodes[key + 1].next)
        m_members.push_back({key});
}

std::optional<JsonAt> Fields::find(std::string_view key)
{
    for (Member& member : m_members)
        if (m_faults.tree().text(member.key) == key) {
            member.taken = true;
            return member.key + 1;
        }
    return std::nullopt;
}

std::optional<JsonAt> Fields::needed(std::string_view key)
{
    const auto value = find(key);
    if (!value && m_faults.tree().nodes[m_object].kind == JsonKind::Object)
        m_faults.add(m_object, "\"" + std::string(key) + "\" is missing here; add it");
    return value;
}

std::string Fields::text(std::string_view key)
{
    const auto value = find(key);
    return value ? textAt(m_faults, *value).value_or(std::string()) : std::string();
}

int Fields::whole(std::string_view key, int least, int most, int usual)
{
    const auto value = find(key);
    return value ? wholeAt(m_faults, *value, least, most).value_or(usual) : usual;
}

std::optional<int> Fields::neededWhole(std::string_view key, int least, int most)
{
    const auto value = needed(key);
    return value ? wholeAt(m_faults, *value, least, most) : std::nullopt;
}

double Fields::number(std::string_view key, double least, double most, double usual)
{
    const auto value = find(key);
    if (!value)
        return usual;
    const JsonNode& node = m_faults.tree().nodes[*value];
    const bool isNumber = node.kind == JsonKind::Whole || node.kind == JsonKind::Number;
    if (isNumber && node.number >= least && node.number <= most)
        return node.number;
    m_faults.add(*value, "a number from " + toText(least) + " to " + toText(most) + " belongs here, not " +
                             described(m_faults.tree(), *value));
    return usual;
}

bool Fields::truth(std::string_view key)
{
    const auto value = find(key);
    if (!value)
        return false;
    const JsonNode& node = m_faults.tree().nodes[*value];
    if (node.kind != JsonKind::Boolean)
        m_faults.add(*value, "true or false belongs here, not " + described(m_faults.tree(), *value));
    return node.kind == JsonKind::Boolean && node.whole != 0;
}

Quantity Fields::quantity(std::string_view key, int least, int most, Quantity usual)
{
    constexpr int mostSizes = 100;
    const auto value = find(key);
    if (!value)
        return usual;
    const JsonNode& node = m_faults.tree().nodes[*value];
    if (node.kind != JsonKind::List) {
        if (node.kind == JsonKind::Whole)
            return Quantity(wholeAt(m_faults, *value, least, most).value_or(usual.values.front()));
        m_faults.add(*value, "a whole number, or one per size as a list in [ ], belongs here, not " +
                                 described(m_faults.tree(), *value));
        return usual;
    }
    std::vector<int> values;
    const auto items = listAt(m_faults, *value, mostSizes);
    for (const JsonAt item : items)
        values.push_back(wholeAt(m_faults, item, least, most).value_or(0));
    if (node.next == *value + 1)
        m_faults.add(*value, "the list is empty; give one number, or one per size");
    return values.empty() ? usual : Quantity(std::move(values));
}

std::vector<std::string> Fields::texts(std::string_view key, int most)
{
    std::vector<std::string> all;
    for (const JsonAt item : list(key, most))
        all.push_back(textAt(m_faults, item).value_or(std::string()));
    return all;
}

std::vector<JsonAt> Fields::list(std::string_view key, int most)
{
    const auto value = find(key);
    return value ? listAt(m_faults, *value, most) : std::vector<JsonAt>();
}

std::string Fields::unknown() const
{
    const JsonTree& tree = m_faults.tree();
    std::string kept;
    for (const Member& member : m_members)
        if (!member.taken)
            kept.append(kept.empty() ? "{" : ", ")
                .append(tree.onOneLine(member.key))
                .append(": ")
                .append(tree.onOneLine(member.key + 1));
    return kept.empty() ? kept : kept + "}";
}

} // namespace shawlwright::files
