// Numbers and UTF-8 text without a locale: files, command line and messages never follow the user's settings.
//
// Errors:  a reader of a number gives nothing for anything but the whole text being one number in range.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace shawlwright {

std::string toText(int number);
std::string toText(double number); // the shortest text that reads back as the same number

std::optional<int> readInt(std::string_view text);
std::optional<double> readDouble(std::string_view text);

// "1 stitch", "3 stitches"; the plural is the noun and "s" unless it is given.
std::string counted(int number, std::string_view noun, std::string_view plural = {});

// "a", "a and b", "a, b and c".
std::string joined(const std::vector<std::string>& parts);

bool validUtf8(std::string_view text);      // also false for a NUL in the text
int codePoints(std::string_view validText); // length as a person counts it, near enough

std::string lowered(std::string_view text); // ASCII letters only
std::string_view trimmed(std::string_view text);

} // namespace shawlwright
