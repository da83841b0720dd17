// Words of shaping that name no row: a length to work to, and the triples of Japanese patterns.
//
// Source:  2-1-5, rows - stitches - times: dancingbarefoot.wordpress.com; knittercocoon.com. Lengths: The
// Knitter.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace shawlwright {

// "2-1-5" is "2-1-5 is 1 stitch every 2 rows, 5 times"; none where there is no such triple.
std::optional<std::string> shapingInWords(std::string_view text);

// "until piece measures 20 cm": where "until" stands; none: the text works to no length.
std::optional<std::size_t> lengthToWorkTo(std::string_view text);

} // namespace shawlwright
