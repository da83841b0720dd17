// Values of a JSON tree, each checked for kind and range as it is taken; what is wrong is noted and reading
// goes on.
//
// Shape:   Fields are the members of one object. A key that is asked for counts as known; the others are kept
// as text. Errors:  a missing key gives the value a pattern has without it, or is a fault where it says
// needed. A value of the
//          wrong kind or out of range is a fault and gives the same as a missing one. Whole numbers are
//          exact: 3.0, true and "3" are none.
#pragma once

#include "core/files/file_words.h"
#include "core/files/json_tree.h"
#include "core/pattern/quantity.h"

#include <optional>
#include <span>

namespace shawlwright::files {

using JsonAt = std::uint32_t; // index of a node

inline constexpr int mostFaultsNoted = 1000;         // of which the first ones are told
inline constexpr std::uint32_t nowhere = UINT32_MAX; // the byte of what has no place in the text; told last

// The faults of one file, each at the byte where it stands.
class FaultList {
public:
    explicit FaultList(const JsonTree& tree) : m_tree(tree) {}

    const JsonTree& tree() const { return m_tree; }
    void add(JsonAt at, std::string message); // told with the path of the value
    void add(std::uint32_t byte, std::string where, std::string message);
    bool none() const { return m_noted.empty(); }
    std::size_t count() const { return m_noted.size(); }
    Faults first(int most) const; // in the order of the file

private:
    struct Noted {
        std::uint32_t byte;
        std::optional<JsonAt> value; // its path is the place; looked for only if the fault is told
        Fault fault;
    };
    const JsonTree& m_tree;
    std::vector<Noted> m_noted;
};

std::string described(const JsonTree& tree, JsonAt at); // "the number 3.7", "the text 'abc'"

std::optional<int> wholeAt(FaultList& faults, JsonAt at, int least, int most);
std::optional<std::string> textAt(FaultList& faults, JsonAt at);
std::vector<JsonAt> listAt(FaultList& faults, JsonAt at, int most);
// The place of a word in a list of words; -1 and a fault where it is none of them.
int wordAt(FaultList& faults, JsonAt at, std::span<const std::string_view> words);

class Fields {
public:
    Fields(FaultList& faults, JsonAt object);

    JsonAt at() const { return m_object; }
    std::optional<JsonAt> find(std::string_view key); // null where it is missing
    std::optional<JsonAt> needed(std::string_view key);

    std::string text(std::string_view key);
    int whole(std::string_view key, int least, int most, int usual);
    std::optional<int> neededWhole(std::string_view key, int least, int most);
    double number(std::string_view key, double least, double most, double usual);
    bool truth(std::string_view key);
    Quantity quantity(std::string_view key, int least, int most, Quantity usual);
    std::vector<std::string> texts(std::string_view key, int most);
    std::vector<JsonAt> list(std::string_view key, int most);

    template <typename Enum, std::size_t count>
    Enum word(std::string_view key, const std::array<Word<Enum>, count>& words, Enum usual)
    {
        const auto value = find(key);
        return value ? enumAt(*value, words, usual) : usual;
    }
    template <typename Enum, std::size_t count>
    Enum neededWord(std::string_view key, const std::array<Word<Enum>, count>& words)
    {
        const auto value = needed(key);
        return value ? enumAt(*value, words, words.front().value) : words.front().value;
    }
    template <typename Enum, std::size_t count>
    Enum enumAt(JsonAt at, const std::array<Word<Enum>, count>& words, Enum usual)
    {
        std::array<std::string_view, count> all;
        for (std::size_t i = 0; i < count; ++i)
            all[i] = words[i].word;
        const int index = wordAt(m_faults, at, all);
        return index < 0 ? usual : words[static_cast<std::size_t>(index)].value;
    }

    std::string unknown() const; // the members nobody asked for, as one object; "" where there are none

private:
    struct Member {
        JsonAt key;
        bool taken = false;
    };
    FaultList& m_faults;
    JsonAt m_object;
    std::vector<Member> m_members;
};

} // namespace shawlwright::files
