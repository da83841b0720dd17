#include "core/files/builtin_catalogue.h"

#include "core/files/read_stitch.h"

#include <cassert>
#include <unordered_map>

namespace shawlwright {

std::string_view builtInStitchesJson(); // made from resources/stitches.json by embed.cmake

namespace {

using namespace files;

constexpr int mostListDepth = 8;

// What a pattern's own stitch may leave out, a built-in one may not; and nobody looks after members we don't
// know.
void refuseLoose(FaultList& faults, Fields& in, const Stitch& stitch)
{
    for (const char* needed : {"key", "name", "family", "howToRS", "source"})
        in.needed(needed);
    if (!stitch.unknown.empty() || !stitch.crossing.unknown.empty())
        faults.add(in.at(), "holds " + stitch.unknown + stitch.crossing.unknown +
                                ", which a stitch doesn't have; mend the spelling or take it out");
}

class ListReader {
public:
    explicit ListReader(FaultList& faults) : m_faults(faults) {}

    std::vector<Stitch> read()
    {
        Fields root(m_faults, 0);
        if (const auto list = root.needed("stitches"))
            for (const JsonAt item : listAt(m_faults, *list, firstOwnStitch - 1))
                add(item);
        if (m_faults.none() && (m_stitches.empty() || m_stitches.front().key != "no_st"))
            m_faults.add(0, "the first stitch should be no_st, the filler where the fabric has no stitch");
        if (m_faults.none())
            checkMirrors();
        return std::move(m_stitches);
    }

private:
    void add(JsonAt item)
    {
        Fields in(m_faults, item);
        Stitch stitch = readStitch(m_faults, in);
        refuseLoose(m_faults, in, stitch);
        stitch.id = StitchId{static_cast<std::uint16_t>(m_stitches.size())};
        if (const auto [first, fresh] = m_byKey.emplace(stitch.key, m_stitches.size()); !fresh)
            m_faults.add(item, "the key '" + stitch.key + "' is taken by stitches[" +
                                   std::to_string(first->second) + "] already; give each its own");
        m_items.push_back(item);
        m_stitches.push_back(std::move(stitch));
    }

    void checkMirrors()
    {
        for (std::size_t i = 0; i < m_stitches.size(); ++i)
            if (!m_stitches[i].mirror.empty() && !m_byKey.contains(m_stitches[i].mirror))
                m_faults.add(m_items[i],
                             "its mirror image '" + m_stitches[i].mirror + "' is no stitch of this list");
    }

    FaultList& m_faults;
    std::vector<Stitch> m_stitches;
    std::vector<JsonAt> m_items;
    std::unordered_map<std::string, std::size_t> m_byKey;
};

} // namespace

Result<std::vector<Stitch>> readStitches(std::string_view json)
{
    const auto tree = readTree(json, mostListDepth);
    if (!tree.ok())
        return tree.fault();
    FaultList faults(tree.value());
    auto stitches = ListReader(faults).read();
    if (!faults.none())
        return faults.first(1).front();
    return stitches;
}

const Catalogue& builtInCatalogue()
{
    static const Catalogue catalogue = [] {
        auto stitches = readStitches(builtInStitchesJson());
        assert(stitches.ok()); // a test reads the same text
        return Catalogue(std::move(stitches).take());
    }();
    return catalogue;
}

} // namespace shawlwright
