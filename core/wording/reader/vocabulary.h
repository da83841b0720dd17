// Every word for a stitch, a yarn or a marker that a text may use: abbreviations of the catalogue (US and
// UK), names in full, older and looser forms. It grows while a text is read: markers and yarns are named as
// they turn up, and stitches that the catalogue lacks become the pattern's own.
//
// Shape:   words are looked up by side, the longest that fits wins; letters are compared as typed first
// ("MB"), then
//          without regard to capitals.
// Errors:  a word that isn't known gives nothing.
// Source:  abbreviations: resources/stitches.json. Older forms (yfwd, yrn, psso, kf&b): common practice, no
// source.
#pragma once

#include "core/pattern/questions.h"
#include "core/wording/reader/near_words.h"

#include <optional>
#include <string_view>
#include <unordered_map>

namespace shawlwright {

class Vocabulary {
public:
    Vocabulary(const Catalogue& catalogue, PatternHead head);

    struct Literal { // "k2tog", "k1-p1 in next st", "yarn over"
        StitchId stitch;
        std::size_t end = 0;
        std::string remark; // the reading taken where the word has more than one
    };
    std::optional<Literal> literal(std::string_view text, std::size_t from, Side side) const;
    // The word that a misspelt one is meant for, if only one can be; see near_words.h. Words that lead to one
    // stitch count as one.
    std::optional<std::string> meantBy(std::string_view word, Side side) const;

    struct Numbered { // "k", "sl" with " wyif": a number stands between letters and tail; "bo" before it
        std::string letters, tail;
        StitchId stitch;
        bool edge = false;
    };
    const std::vector<Numbered>& numbered(Side side) const { return m_numbered[static_cast<int>(side)]; }

    // The stitch of the pattern's own that goes by this word on this side; made if there is none yet.
    StitchId own(const std::string& word, Side side, int takesUp, int leaves, const std::string& name);
    std::optional<StitchId> worked(std::string_view word, Side side) const;

    YarnId yarn(const std::string& name); // made if there is none
    std::optional<YarnId> knownYarn(std::string_view name) const;
    MarkerId marker(const std::string& name); // made if there is none
    std::optional<MarkerId> knownMarker(std::string_view name) const;

    const PatternHead& head() const { return m_head; }
    PatternHead& head() { return m_head; }
    const Catalogue& catalogue() const { return m_catalogue; }
    void nameSizes(const Quantity& numbers); // of a text that hasn't named its sizes
    int sizes() const { return std::max(1, static_cast<int>(m_head.sizes.size())); }

private:
    void index();
    void addLiteral(Side side, std::string_view word, StitchId stitch, std::string_view remark = {});
    void addNumbered(Side side, const Stitch& stitch, Words words);

    struct Entry {
        std::string exact;
        StitchId stitch;
        std::string remark;
    };
    const Entry* entry(std::string_view key, std::string_view exact, Side side) const;

    Catalogue m_builtIn;
    Catalogue m_catalogue;
    PatternHead m_head;
    std::unordered_map<std::string, std::vector<Entry>> m_literals[2];
    std::vector<Numbered> m_numbered[2];
    std::size_t m_longest = 0;
    mutable std::unordered_map<std::string, MarkerId> m_markers[2]; // by name as typed, and in small letters
    mutable std::size_t m_markersKnown = 0;                         // of the head's, in the maps
    mutable std::optional<NearWords> m_near[2];                     // made when first asked for
};

} // namespace shawlwright
