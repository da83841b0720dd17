// A JSON text as a flat tree that remembers where each value stands.
//
// Shape:   nodes in the order of the text, the root first. A List is followed by its values, an Object by a
// Key and a
//          value in turn; `next` is the first node that is no longer part of it.
// Units:   bytes from the start of the text; placeOf() makes lines and columns of them.
// Errors:  readTree() stops at the first fault. Depth, number of values, length of texts and doubled keys are
// checked
//          while reading, before memory is asked for; a NUL, even an escaped one, is refused.
// Source:  RFC 8259.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace shawlwright::files {

inline constexpr int mostFileValues = 3'000'000;
inline constexpr int mostTextBytes = 1'000'000; // of one text
inline constexpr int mostKeys = 1000;           // of one object

enum class JsonKind : std::uint8_t { Null, Boolean, Whole, Number, Text, List, Object, Key };

struct JsonNode {
    JsonKind kind = JsonKind::Null;
    std::uint32_t at = 0, end = 0; // from its first byte to one past its last
    std::uint32_t next = 0;
    std::int64_t whole = 0; // Whole; 0 or 1 of a Boolean
    double number = 0;      // Whole and Number
    std::uint32_t text = 0; // Text and Key: index into texts
};

struct JsonTree {
    std::string_view source; // not owned
    std::vector<JsonNode> nodes;
    std::vector<std::string> texts;

    const std::string& text(std::uint32_t node) const { return texts[nodes[node].text]; }
    std::vector<std::uint32_t> items(std::uint32_t list) const; // the values of a list

    Place placeOf(std::uint32_t byte) const;
    std::string pathOf(std::uint32_t node) const;    // "sections[1].rows[36].cells"; "" of the root
    std::string onOneLine(std::uint32_t node) const; // as it was written, blanks made even
};

Place placeIn(std::string_view text, std::size_t byte);

Result<JsonTree> readTree(std::string_view bytes, int mostDepth);

} // namespace shawlwright::files
