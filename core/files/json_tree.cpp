#include "core/files/json_tree.h"

#include "core/base/text.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace shawlwright::files {
namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

bool isBlank(char c)
{
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

// The library tells what it reads but not where. The cursor walks the same bytes in step with it; it needs no
// checks of its own, for each token has been found good before it is told of.
class Cursor {
public:
    Cursor(std::string_view text, std::size_t at) : m_text(text), m_at(at) {}

    std::uint32_t start()
    {
        while (m_at < m_text.size() && (isBlank(m_text[m_at]) || m_text[m_at] == ',' || m_text[m_at] == ':'))
            ++m_at;
        return static_cast<std::uint32_t>(m_at);
    }
    std::uint32_t pastBracket() { return static_cast<std::uint32_t>(++m_at); }
    std::uint32_t pastText()
    {
        for (++m_at; m_at < m_text.size() && m_text[m_at] != '"'; ++m_at)
            if (m_text[m_at] == '\\')
                ++m_at;
        return pastBracket();
    }
    std::uint32_t pastWord()
    {
        constexpr std::string_view ends = " \t\n\r,:]}";
        m_at = std::min(m_text.find_first_of(ends, m_at), m_text.size());
        return static_cast<std::uint32_t>(m_at);
    }

private:
    std::string_view m_text;
    std::size_t m_at;
};

std::string shown(std::string_view text, std::size_t byte)
{
    const unsigned char c = static_cast<unsigned char>(text[byte]);
    if (c < 0x20 || c == 0x7F)
        return "a control character (number " + toText(static_cast<int>(c)) + ")";
    return std::string("'") + text[byte] + "'";
}

constexpr int numberTooGreat = 406; // the library's number for it

// What stands at a byte where the library could not go on.
std::string notJson(std::string_view text, std::size_t byte)
{
    if (byte >= text.size())
        return "the file ends here in the middle of the pattern; it was cut short, so take another copy of "
               "it";
    if (static_cast<unsigned char>(text[byte]) >= 0x80)
        return "these letters are not UTF-8; save the file with the encoding UTF-8";
    if (text[byte] == '/')
        return "a remark can't stand in a pattern file; put it into \"notes\"";
    return shown(text, byte) +
           " can't stand here; look for a comma, a quote or a bracket that is missing or too many";
}

// The same within a text, of which all up to the byte has been read.
std::string notText(std::string_view text, std::size_t byte)
{
    const bool readable = byte < text.size() && static_cast<unsigned char>(text[byte]) < 0x80;
    if (!readable)
        return notJson(text, byte);
    if (text[byte] == '\n' || text[byte] == '\r')
        return "the text isn't closed at the end of its line; put a \" behind it, and \\n for a new line "
               "within";
    if (static_cast<unsigned char>(text[byte]) < 0x20)
        return shown(text, byte) + " can't stand in a text; take it out";
    return "the text has a \\ that says nothing; write \\\\ for a \\ and \\\" for a \"";
}

class TreeBuilder {
public:
    TreeBuilder(std::string_view text, int mostDepth)
        : m_text(text), m_mostDepth(mostDepth), m_cursor(text, text.starts_with(byteOrderMark) ? 3 : 0)
    {
        m_tree.source = text;
    }

    bool null() { return word(JsonKind::Null, 0, 0); }
    bool boolean(bool value) { return word(JsonKind::Boolean, value ? 1 : 0, 0); }
    bool number_integer(std::int64_t value)
    {
        return word(JsonKind::Whole, value, static_cast<double>(value));
    }
    bool number_unsigned(std::uint64_t value)
    {
        // A whole number beyond 63 bits is no count of anything.
        const bool fits = value <= static_cast<std::uint64_t>(INT64_MAX);
        return word(fits ? JsonKind::Whole : JsonKind::Number, fits ? static_cast<std::int64_t>(value) : 0,
                    static_cast<double>(value));
    }
    bool number_float(double value, const std::string&) { return word(JsonKind::Number, 0, value); }
    bool string(std::string& value) { return text(JsonKind::Text, value); }
    bool key(std::string& value) { return text(JsonKind::Key, value); }
    bool binary(std::vector<std::uint8_t>&) { return false; } // not in a text
    bool start_object(std::size_t) { return open(JsonKind::Object); }
    bool start_array(std::size_t) { return open(JsonKind::List); }
    bool end_array() { return close(); }
    bool end_object() { return keysDiffer(m_open.back()) && close(); }

    bool parse_error(std::size_t position, const std::string&, const nlohmann::json::exception& error)
    {
        const std::size_t byte = std::min(position > 0 ? position - 1 : 0, m_text.size());
        const std::size_t start = std::min<std::size_t>(m_cursor.start(), byte);
        if (error.id == numberTooGreat)
            return stop(start, "the number is too great to be read; write a smaller one");
        // A good token in the wrong place is told of when all of it has been read.
        const bool misplaced = std::string_view(error.what()).find("last read") == std::string_view::npos;
        if (misplaced)
            return stop(start, notJson(m_text, start));
        const bool inText = start < byte && m_text[start] == '"';
        if (!inText)
            return stop(byte, notJson(m_text, byte));
        return stop(byte, notText(m_text, byte));
    }

    const Fault& fault() const { return m_fault; }
    JsonTree take() { return std::move(m_tree); }

private:
    bool stop(std::size_t byte, std::string message)
    {
        m_fault = Fault{placeIn(m_text, byte), {}, std::move(message)};
        return false;
    }

    JsonNode* add(JsonKind kind)
    {
        const std::uint32_t at = m_cursor.start();
        if (m_tree.nodes.size() >= static_cast<std::size_t>(mostFileValues)) {
            stop(at, "the file holds more than " + toText(mostFileValues) + " values; divide the pattern");
            return nullptr;
        }
        JsonNode node;
        node.kind = kind;
        node.at = at;
        node.next = static_cast<std::uint32_t>(m_tree.nodes.size()) + 1;
        m_tree.nodes.push_back(node);
        return &m_tree.nodes.back();
    }

    bool word(JsonKind kind, std::int64_t whole, double number)
    {
        JsonNode* node = add(kind);
        if (!node)
            return false;
        node->whole = whole;
        node->number = number;
        node->end = m_cursor.pastWord();
        return true;
    }

    bool text(JsonKind kind, std::string& value)
    {
        JsonNode* node = add(kind);
        if (!node)
            return false;
        if (value.size() > static_cast<std::size_t>(mostTextBytes))
            return stop(node->at, "the text is " + toText(static_cast<int>(value.size())) +
                                      " bytes long; up to " + toText(mostTextBytes) + " are possible");
        if (value.find('\0') != std::string::npos)
            return stop(node->at, "the text holds a NUL (\\u0000), which is no letter; take it out");
        node->text = static_cast<std::uint32_t>(m_tree.texts.size());
        m_tree.texts.push_back(std::move(value));
        node->end = m_cursor.pastText();
        return true;
    }

    bool open(JsonKind kind)
    {
        if (m_open.size() >= static_cast<std::size_t>(m_mostDepth))
            return stop(m_cursor.start(), "brackets lie more than " + toText(m_mostDepth) +
                                              " deep in each other; no pattern needs that");
        if (!add(kind))
            return false;
        m_cursor.pastBracket();
        m_open.push_back(static_cast<std::uint32_t>(m_tree.nodes.size()) - 1);
        return true;
    }

    bool close()
    {
        m_cursor.start();
        JsonNode& node = m_tree.nodes[m_open.back()];
        node.end = m_cursor.pastBracket();
        node.next = static_cast<std::uint32_t>(m_tree.nodes.size());
        m_open.pop_back();
        return true;
    }

    bool keysDiffer(std::uint32_t object)
    {
        m_keys.clear();
        for (std::uint32_t key = object + 1; key < m_tree.nodes.size(); key = m_tree.nodes[key + 1].next)
            m_keys.push_back(key);
        if (m_keys.size() > static_cast<std::size_t>(mostKeys))
            return stop(m_tree.nodes[object].at, "there are " + toText(static_cast<int>(m_keys.size())) +
                                                     " keys within one { }; up to " + toText(mostKeys) +
                                                     " are possible");
        const auto less = [this](std::uint32_t a, std::uint32_t b) {
            const int order = m_tree.text(a).compare(m_tree.text(b));
            return order != 0 ? order < 0 : a < b;
        };
        std::sort(m_keys.begin(), m_keys.end(), less);
        for (std::size_t i = 1; i < m_keys.size(); ++i)
            if (m_tree.text(m_keys[i - 1]) == m_tree.text(m_keys[i]))
                return stop(m_tree.nodes[m_keys[i]].at,
                            "the key \"" + m_tree.text(m_keys[i]).substr(0, 40) +
                                "\" is here for the second time (first: line " +
                                toText(m_tree.placeOf(m_tree.nodes[m_keys[i - 1]].at).line) +
                                "); keep one of them");
        return true;
    }

    std::string_view m_text;
    int m_mostDepth;
    Cursor m_cursor;
    JsonTree m_tree;
    std::vector<std::uint32_t> m_open;
    std::vector<std::uint32_t> m_keys; // of the object being closed; kept to save allocations
    Fault m_fault;
};

} // namespace

Place placeIn(std::string_view text, std::size_t byte)
{
    const std::string_view before = text.substr(0, std::min(byte, text.size()));
    const std::size_t lineAt = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
    std::string_view line = before.substr(lineAt);
    if (lineAt == 0 && line.starts_with(byteOrderMark))
        line.remove_prefix(byteOrderMark.size());
    return {1 + static_cast<int>(std::count(before.begin(), before.end(), '\n')), 1 + codePoints(line)};
}

std::vector<std::uint32_t> JsonTree::items(std::uint32_t list) const
{
    std::vector<std::uint32_t> found;
    for (std::uint32_t node = list + 1; node < nodes[list].next; node = nodes[node].next)
        found.push_back(node);
    return found;
}

Place JsonTree::placeOf(std::uint32_t byte) const
{
    return placeIn(source, byte);
}

std::string JsonTree::pathOf(std::uint32_t node) const
{
    std::string path;
    std::uint32_t at = 0;
    while (at != node) {
        const bool object = nodes[at].kind == JsonKind::Object;
        std::uint32_t child = at + 1;
        for (int index = 0;; ++index) {
            const std::uint32_t value = object ? child + 1 : child;
            if (node < nodes[value].next) {
                path += object ? (path.empty() ? "" : ".") + texts[nodes[child].text].substr(0, 40)
                               : "[" + toText(index) + "]";
                at = node == child ? node : value; // the path of a key is that of its value
                break;
            }
            child = nodes[value].next;
        }
    }
    return path;
}

std::string JsonTree::onOneLine(std::uint32_t node) const
{
    std::string line;
    bool inText = false;
    for (std::size_t i = nodes[node].at; i < nodes[node].end; ++i) {
        const char c = source[i];
        if (inText || !isBlank(c))
            line += c;
        if (inText && c == '\\')
            line += source[++i];
        else if (c == '"')
            inText = !inText;
        else if (!inText && (c == ',' || c == ':'))
            line += ' ';
    }
    return line;
}

Result<JsonTree> readTree(std::string_view bytes, int mostDepth)
{
    if (const std::size_t nul = bytes.find('\0'); nul != std::string_view::npos)
        return Fault{
            placeIn(bytes, nul), {}, "there is a NUL byte, so this is no text; a pattern file is UTF-8 text"};
    const std::string_view text =
        bytes.starts_with(byteOrderMark) ? bytes.substr(byteOrderMark.size()) : bytes;
    if (std::all_of(text.begin(), text.end(), isBlank))
        return Fault{{}, {}, "the file is empty; take another copy of it, or begin a new pattern"};
    TreeBuilder builder(bytes, mostDepth);
    // A handler that answers every error itself leaves the library nothing to throw.
    if (!nlohmann::json::sax_parse(bytes.begin(), bytes.end(), &builder))
        return builder.fault();
    return builder.take();
}

} // namespace shawlwright::files
