// Words that differ from one the reader knows by a slip of the hand: a letter doubled, left out, put in,
// changed or turned about with its neighbour ("k2togg", "sskk", "y0").
//
// Shape:   near() gives the one word that is so near; none where more than one is, or where a figure would be
// changed: k3tog
//          is no misspelt k2tog. A doubled letter, two turned about or one that looks alike go before other
//          slips.
// Units:   words of 2 to 20 letters, without regard to capitals. Of words shorter than four letters only a
// doubled letter
//          and a figure for the letter it looks like (0 for o, 1 for l) are taken for slips.
// Source:  deletion neighbourhoods: Mor and Fraenkel, A hash code method for detecting and correcting
// spelling errors
//          (1982), from memory.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace shawlwright {

class NearWords {
public:
    void add(std::string_view word); // in small letters
    std::optional<std::string> near(std::string_view word) const;

private:
    std::vector<std::string> m_words;
    std::unordered_map<std::string, std::vector<std::size_t>>
        m_without; // a word with no or one letter left out
};

} // namespace shawlwright
