// How long words are, in letters, without making them.
//
// Units:   letters of the US abbreviations, whatever the style: a row has one tree of phrases in every style.
//          The words that say how often something is worked and those that say how far count alike, "4 times"
//          as "rep from * to last 5 sts": which of the two is told is a matter of style.
#pragma once

#include "core/wording/phrases.h"

#include <vector>

namespace shawlwright {

class TextLength {
public:
    TextLength(const Catalogue& catalogue, Side side) : m_catalogue(catalogue), m_side(side) {}

    int run(StitchId stitch, YarnId yarn, int count); // "k3", "[k2tog] 4 times", "yo, yo"
    int group(int inside, int times) const;           // "[ ... ] 4 times"
    int phrase(const Phrase& phrase);
    int phrases(const Phrases& phrases); // with the commas between

    static constexpr int comma = 2;

private:
    struct Known {
        StitchId stitch;
        bool numbered, edge, told; // "k3", "bo 3", "yo, yo"
        int letters;
    };
    const Known& known(StitchId stitch);

    const Catalogue& m_catalogue;
    Side m_side;
    std::vector<Known> m_known;
};

} // namespace shawlwright
