// The cells of a row as text: "k*12 yo k2tog -*3 p@CC".
//
// Shape:   tokens from column 1, apart by blanks: the key of a stitch (or - for no stitch), @ and the yarn
// where it isn't
//          the row's, * and how many of them follow each other. A wide stitch is one token. No stitches
//          without a yarn at the end are left out. A yarn is named by its code, or by # and its number where
//          the code would not do (doubled, or with a blank).
// Errors:  readCells() gives the first token that can't be read, and where it begins in the text.
#pragma once

#include "core/pattern/pattern.h"

#include <map>
#include <string>
#include <string_view>

namespace shawlwright::files {

class YarnNames {
public:
    explicit YarnNames(const std::vector<Yarn>& yarns);

    std::string name(YarnId id) const;
    std::optional<YarnId> find(std::string_view name) const;
    std::string all() const; // "MC and CC", for messages

private:
    std::map<std::uint8_t, std::string> m_names;
    std::map<std::string, YarnId, std::less<>> m_ids;
};

std::string cellsText(const std::vector<Cell>& cells, const Catalogue& catalogue, const YarnNames& yarns);

struct ReadCells {
    std::vector<Cell> cells;
    std::string fault;       // empty: none
    std::size_t faultAt = 0; // byte in the text
};
ReadCells readCells(std::string_view text, int columns, const Catalogue& catalogue, const YarnNames& yarns);

} // namespace shawlwright::files
