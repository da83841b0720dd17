// JSON as text, put together member by member in the order of the calls.
//
// Shape:   a member at its default is not written; `unknown` is an object as it was read, whose members go
// last. Errors:  none. What is no UTF-8 letter becomes U+FFFD, a number that is none becomes 0, so the text
// can always be read. Source:  RFC 8259.
#pragma once

#include "core/pattern/quantity.h"

#include <string>
#include <string_view>
#include <vector>

namespace shawlwright::files {

std::string inQuotes(std::string_view text);
std::string numeral(double number);
std::string numeral(const Quantity& quantity); // 7 or [7, 9, 11]

class ObjectText {
public:
    ObjectText() = default; // on one line
    explicit ObjectText(int indent)
        : m_indent(indent) {} // a member per line, the closing bracket at indent - 2

    void raw(std::string_view key, std::string_view json);
    void text(std::string_view key, std::string_view value); // "": left out
    void word(std::string_view key, std::string_view value, std::string_view usual = {});
    void whole(std::string_view key, long long value) { raw(key, std::to_string(value)); }
    void whole(std::string_view key, long long value, long long usual);
    void number(std::string_view key, double value, double usual);
    void quantity(std::string_view key, const Quantity& value, const Quantity& usual);
    void truth(std::string_view key, bool value); // false: left out
    void texts(std::string_view key, const std::vector<std::string>& values);
    // One item per line; no item: left out.
    void lines(std::string_view key, const std::vector<std::string>& items);
    void unknown(std::string_view object);

    std::string done() &&;

private:
    void separate();

    int m_indent = 0; // 0: on one line
    std::string m_text = "{";
};

std::string listText(const std::vector<std::string>& items); // on one line

} // namespace shawlwright::files
