// JSON text for other programs to read: one object per line in an array, keys in the order they are put.
//
// Errors:  none; the texts of a pattern are valid UTF-8.
#pragma once

#include <span>
#include <string>
#include <string_view>

namespace shawlwright::app {

std::string jsonString(std::string_view text); // with its quotes

class JsonObject {
public:
    JsonObject& put(std::string_view key, std::string_view text);
    JsonObject& put(std::string_view key, int number);
    JsonObject& put(std::string_view key, std::span<const int> numbers);
    std::string text() const { return "{" + m_inside + "}"; }

private:
    void key(std::string_view key);
    std::string m_inside;
};

std::string jsonArray(std::span<const JsonObject> objects); // with a line break at its end

} // namespace shawlwright::app
