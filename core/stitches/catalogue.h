// The stitches a pattern can use: the built-in ones and the pattern's own, by number, by key and by abbreviation.
//
// Shape:   built-in stitches are numbered 0.. in the order of resources/stitches.json, `no_st` being 0; a pattern's own
//          from firstOwnStitch in the order they were made. Numbers live in memory only; files hold keys.
// Errors:  an unknown number gives no-stitch; an unknown key or word gives nothing.
#pragma once

#include "core/stitches/stitch.h"

#include <optional>
#include <span>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace shawlwright {

enum class Side : std::uint8_t { RS, WS };
inline Side otherSide(Side side) { return side == Side::RS ? Side::WS : Side::RS; }

class Catalogue {
public:
    Catalogue() = default;
    explicit Catalogue(std::vector<Stitch> builtIn); // gives each its number; the first must be no_st

    // The same catalogue with a pattern's own stitches; their ids are kept.
    Catalogue with(std::span<const Stitch> own) const;

    const Stitch& stitch(StitchId id) const
    {
        if (id.value < m_builtIn.size())
            return m_builtIn[id.value];
        const std::size_t own = static_cast<std::size_t>(id.value) - firstOwnStitch;
        return id.value >= firstOwnStitch && own < m_own.size() ? m_own[own] : m_builtIn.front();
    }
    bool known(StitchId id) const;
    std::optional<StitchId> find(std::string_view key) const;
    StitchId require(std::string_view key) const; // a key the program itself relies on; a missing one is a bug

    // The stitch (as seen from RS) that is called `abbreviation` when worked on `side`: worked("k", WS) is `p`.
    std::optional<StitchId> worked(std::string_view abbreviation, Side side) const;
    // The mirror image; nothing where none exists.
    std::optional<StitchId> mirrored(StitchId id) const;

    const std::vector<Stitch>& builtIn() const { return m_builtIn; }
    const std::vector<Stitch>& own() const { return m_own; }
    bool operator==(const Catalogue& other) const { return m_builtIn == other.m_builtIn && m_own == other.m_own; }

private:
    void index();

    std::vector<Stitch> m_builtIn;
    std::vector<Stitch> m_own; // at id - firstOwnStitch; a gap is filled with a copy of no_st
    std::unordered_map<std::string, StitchId> m_byKey;
    std::unordered_map<std::string, StitchId> m_byWord[2]; // by abbreviation on RS and on WS, US and UK
};

// The abbreviation on a side ("k2tog" of the stitch p2tog_on_ws on WS); UK where asked for and different.
enum class Words { US, UK };
const std::string& abbreviation(const Stitch& stitch, Side side, Words words = Words::US);

} // namespace shawlwright
