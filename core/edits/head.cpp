// The head of a pattern: sections.h. What is still in use stays; what depends on versions and sizes follows
// them.

#include "core/edits/sections.h"

#include "core/base/text.h"
#include "core/edits/checks.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace shawlwright {
namespace {

MaybeFault refused(std::string where, std::string message)
{
    return Fault{{}, std::move(where), std::move(message)};
}

bool positive(double number)
{
    return std::isfinite(number) && number > 0;
}

MaybeFault namesFault(const std::string& what, const std::vector<std::string>& names)
{
    std::set<std::string> seen;
    for (const std::string& name : names) {
        if (trimmed(name).empty() || !validUtf8(name))
            return refused("", "a " + what + " needs a name; type one");
        if (!seen.insert(name).second)
            return refused("", "two " + what + "s are called '" + name + "'; give each a name of its own");
    }
    return std::nullopt;
}

MaybeFault yarnsFault(const PatternHead& head)
{
    std::set<YarnId> ids;
    std::vector<std::string> codes;
    if (head.yarns.empty())
        return refused("Yarns", "a pattern needs at least one yarn");
    for (const Yarn& yarn : head.yarns) {
        if (yarn.id == YarnId{} || !ids.insert(yarn.id).second)
            return refused("Yarn " + yarn.code, "stands there twice; take one of them out");
        if (yarn.code.find_first_of(" \t\n@*") != std::string::npos)
            return refused("Yarn " + yarn.code,
                           "a yarn's code has no blanks, @ or *; give a short one such as MC");
        if (yarn.weight < -1 || yarn.weight > 7)
            return refused("Yarn " + yarn.code,
                           "the weight category is " + toText(yarn.weight) + "; give 0 to 7");
        if (!(yarn.metresPerBall >= 0) || !(yarn.gramsPerBall >= 0) || !std::isfinite(yarn.metresPerBall) ||
            !std::isfinite(yarn.gramsPerBall))
            return refused("Yarn " + yarn.code, "metres and grams of a ball are 0 (not said) or more");
        codes.push_back(yarn.code);
    }
    return namesFault("yarn", codes);
}

MaybeFault stitchesFault(const PatternHead& head)
{
    std::set<std::string> keys;
    std::set<StitchId> ids;
    for (const Stitch& stitch : head.stitches) {
        if (const auto whole = checked(stitch); !whole.ok())
            return whole.fault();
        if (stitch.id.value < firstOwnStitch || !ids.insert(stitch.id).second ||
            !keys.insert(stitch.key).second)
            return refused("Stitch " + stitch.key, "another stitch has this key; give it one of its own");
    }
    return std::nullopt;
}

MaybeFault valuesFault(const Pattern& after)
{
    const PatternHead& head = after.head;
    if (trimmed(head.title).empty())
        return refused("", "the pattern needs a title; type one");
    for (const std::string* text : {&head.title, &head.designer, &head.introduction, &head.notes})
        if (!validUtf8(*text))
            return refused("", "the text holds characters that can't be kept; type it again");
    if (!positive(head.needleMm))
        return refused("Needle", "is " + toText(head.needleMm) + " mm; give a size above 0");
    if (!positive(head.gauge.stitches) || !positive(head.gauge.rows))
        return refused("Gauge", "is " + toText(head.gauge.stitches) + " stitches and " +
                                    toText(head.gauge.rows) + " rows over 10 cm; give numbers above 0");
    if (auto fault = yarnsFault(head))
        return fault;
    if (!yarnOf(head, head.castOn.yarn))
        return refused("Cast-on", "needs one of the pattern's yarns; choose one");
    if (auto fault =
            quantityFault(after, "Cast-on", "the number of stitches", head.castOn.stitches, 0, mostCount))
        return fault;
    std::vector<std::string> markers;
    for (const Marker& marker : head.markers)
        markers.push_back(marker.name);
    if (auto fault = namesFault("marker", markers))
        return fault;
    if (auto fault = namesFault("version", head.versions))
        return fault;
    if (auto fault = namesFault("size", head.sizes))
        return fault;
    return stitchesFault(head);
}

const Stitch* ownStitch(const PatternHead& head, StitchId id)
{
    const auto found = std::find_if(head.stitches.begin(), head.stitches.end(),
                                    [id](const Stitch& s) { return s.id == id; });
    return found == head.stitches.end() ? nullptr : &*found;
}

// What cells use that the head would no longer have.
MaybeFault cellsUseFault(const PatternHead& before, const PatternHead& head, const std::vector<Cell>& cells,
                         const std::string& where)
{
    for (const Cell& cell : cells) {
        if (cell.yarn != YarnId{} && yarnOf(before, cell.yarn) && !yarnOf(head, cell.yarn))
            return refused(where, "works yarn " + yarnOf(before, cell.yarn)->code + "; change its yarn first");
        if (cell.stitch.value < firstOwnStitch)
            continue;
        const Stitch* was = ownStitch(before, cell.stitch);
        const Stitch* now = ownStitch(head, cell.stitch);
        if (was && !now)
            return refused(where, "uses the stitch " + was->name + "; paint another there first");
        if (was && now->width() != was->width())
            return refused(where, "uses the stitch " + was->name + " as " + counted(was->width(), "column") +
                                      " wide, it can't be " + toText(now->width()) +
                                      " while it stands in the chart; make a new stitch, or erase it first");
    }
    return std::nullopt;
}

// What a row or box uses that the head would no longer have.
MaybeFault rowUseFault(const PatternHead& before, const PatternHead& head, const Row& row,
                       const std::string& where)
{
    if (row.yarn != YarnId{} && yarnOf(before, row.yarn) && !yarnOf(head, row.yarn))
        return refused(where, "works yarn " + yarnOf(before, row.yarn)->code + "; change its yarn first");
    if (auto fault = cellsUseFault(before, head, row.cells, where))
        return fault;
    for (const MarkerMove& move : row.moves)
        if (const Marker* was = markerOf(before, move.marker); was && !markerOf(head, move.marker))
            return refused(where, "moves marker " + was->name + "; take it out of the row first");
    return std::nullopt;
}

MaybeFault useFault(const Pattern& pattern, const PatternHead& head)
{
    for (const Motif& motif : head.motifs)
        for (const std::vector<Cell>& cells : motif.rows)
            if (auto fault = cellsUseFault(pattern.head, head, cells, "Motif '" + motif.name + "'"))
                return Fault{{}, fault->where, fault->message + ", or delete the motif"};
    for (const Section& section : pattern.sections) {
        for (const Box& box : section.frame.boxes)
            if (box.until == BoxUntil::Marker)
                if (const Marker* was = markerOf(pattern.head, box.marker);
                    was && !markerOf(head, box.marker))
                    return refused(sectionWords(section), "a stitch repeat goes to marker " + was->name +
                                                              "; change the repeat first");
        const auto labels = rowLabels(section);
        for (std::size_t i = 0; i < section.rows.size(); ++i)
            if (auto fault = rowUseFault(pattern.head, head, *section.rows[i],
                                         sectionWords(section) + ", Row " + labels[i]))
                return fault;
    }
    return std::nullopt;
}

// The version names of a section under the new head: a name that changed in a list of the same length is a
// new name for the same version.
Result<std::vector<std::string>> versionsNow(const Pattern& pattern, const PatternHead& head,
                                             const Section& section)
{
    const auto& was = pattern.head.versions;
    const auto& now = head.versions;
    std::vector<std::string> names = section.frame.versions;
    for (std::string& name : names) {
        if (std::find(now.begin(), now.end(), name) != now.end())
            continue;
        const auto at = static_cast<std::size_t>(std::find(was.begin(), was.end(), name) - was.begin());
        if (was.size() != now.size() || at >= now.size())
            return Fault{{}, sectionWords(section), "belongs to version '" + name + "'; change that first"};
        name = now[at];
    }
    return names;
}

// Which of the old sizes each new one takes its numbers from: the one of its name, else the one in its place.
std::vector<int> sizesFrom(const PatternHead& before, const PatternHead& head)
{
    const int old = std::max(1, static_cast<int>(before.sizes.size()));
    std::vector<int> from;
    for (int i = 0; i < std::max(1, static_cast<int>(head.sizes.size())); ++i) {
        auto found = before.sizes.end();
        if (!head.sizes.empty())
            found =
                std::find(before.sizes.begin(), before.sizes.end(), head.sizes[static_cast<std::size_t>(i)]);
        from.push_back(found != before.sizes.end() ? static_cast<int>(found - before.sizes.begin())
                                                   : std::min(i, old - 1));
    }
    return from;
}

Quantity taken(const Quantity& quantity, const std::vector<int>& from)
{
    if (quantity.single())
        return quantity;
    std::vector<int> values;
    for (const int size : from)
        values.push_back(quantity.at(size));
    return Quantity(std::move(values));
}

void follow(Row& row, const std::vector<int>& from)
{
    row.start.slip = taken(row.start.slip, from);
    if (row.stated)
        row.stated = taken(*row.stated, from);
}

void follow(SectionFrame& frame, const std::vector<int>& from)
{
    for (Box& box : frame.boxes) {
        box.times = taken(box.times, from);
        box.leaving = taken(box.leaving, from);
    }
    for (Bracket& bracket : frame.brackets)
        bracket.times = taken(bracket.times, from);
}

} // namespace

PatternHead withOwnStitch(PatternHead head, const Stitch& stitch)
{
    const auto known = std::find_if(head.stitches.begin(), head.stitches.end(),
                                    [&](const Stitch& one) { return one.id == stitch.id; });
    if (known == head.stitches.end())
        head.stitches.push_back(stitch);
    else
        *known = stitch;
    for (Stitch& other : head.stitches)
        if (other.id != stitch.id && other.key == stitch.mirror)
            other.mirror = stitch.key;
        else if (other.id != stitch.id && other.mirror == stitch.key)
            other.mirror.clear();
    return head;
}

Result<Edit> setHead(const Pattern& pattern, PatternHead head, std::string name)
{
    Edit edit{std::move(name), {}};
    if (head == pattern.head)
        return edit;
    const bool resized = head.sizes != pattern.head.sizes;
    const std::vector<int> from = sizesFrom(pattern.head, head);
    if (resized && head.castOn.stitches == pattern.head.castOn.stitches)
        head.castOn.stitches = taken(head.castOn.stitches, from);
    if (auto fault = valuesFault(Pattern{head, {}}))
        return *fault;
    if (auto fault = useFault(pattern, head))
        return *fault;

    edit.steps.push_back(SwapHead{head});
    for (const Section& section : pattern.sections) {
        SectionFrame frame = section.frame;
        auto versions = versionsNow(pattern, head, section);
        if (!versions.ok())
            return versions.fault();
        frame.versions = std::move(versions).take();
        std::map<int, Row> rows;
        if (resized) {
            follow(frame, from);
            for (std::size_t i = 0; i < section.rows.size(); ++i) {
                Row row = *section.rows[i];
                follow(row, from);
                rows.emplace(static_cast<int>(i), std::move(row));
            }
        }
        addFrame(edit, section, std::move(frame));
        addSwap(edit, section, std::move(rows));
    }
    return edit;
}

} // namespace shawlwright
