#include "app/commandline/json_text.h"

#include "core/base/text.h"

namespace shawlwright::app {

std::string jsonString(std::string_view text)
{
    static constexpr char digits[] = "0123456789abcdef";
    std::string quoted = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') {
            quoted += '\\';
            quoted += c;
        } else if (c == '\n') {
            quoted += "\\n";
        } else if (c == '\t') {
            quoted += "\\t";
        } else if (byte < 0x20 || byte == 0x7f) {
            quoted += "\\u00";
            quoted += digits[byte >> 4];
            quoted += digits[byte & 15];
        } else {
            quoted += c;
        }
    }
    return quoted + "\"";
}

void JsonObject::key(std::string_view key)
{
    if (!m_inside.empty())
        m_inside += ", ";
    m_inside += jsonString(key) + ": ";
}

JsonObject& JsonObject::put(std::string_view key, std::string_view text)
{
    this->key(key);
    m_inside += jsonString(text);
    return *this;
}

JsonObject& JsonObject::put(std::string_view key, int number)
{
    this->key(key);
    m_inside += toText(number);
    return *this;
}

JsonObject& JsonObject::put(std::string_view key, std::span<const int> numbers)
{
    this->key(key);
    m_inside += "[";
    for (std::size_t i = 0; i < numbers.size(); ++i)
        m_inside += (i == 0 ? "" : ", ") + toText(numbers[i]);
    m_inside += "]";
    return *this;
}

std::string jsonArray(std::span<const JsonObject> objects)
{
    if (objects.empty())
        return "[]\n";
    std::string text = "[\n";
    for (std::size_t i = 0; i < objects.size(); ++i)
        text += " " + objects[i].text() + (i + 1 < objects.size() ? ",\n" : "\n");
    return text + "]\n";
}

} // namespace shawlwright::app
