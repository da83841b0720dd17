// A place in a text that is being read, and the small things that are read there: words, numbers, numbers per
// size.
//
// Shape:   every function either takes what it is named for and moves on, or leaves the place alone.
// Units:   numbers up to mostCount; a greater one is not a number.
#pragma once

#include "core/pattern/pattern.h"
#include "core/wording/reader/normal_text.h"

#include <initializer_list>
#include <optional>

namespace shawlwright {

class Cursor {
public:
    explicit Cursor(const NormalText& text) : m_text(text) {}

    std::size_t at() const { return m_at; }
    void to(std::size_t at) { m_at = at; }
    bool done() const { return m_at >= m_text.text.size(); }
    Place place() const { return m_text.placeOf(m_at); }
    const std::string& text() const { return m_text.text; }
    char peek(std::size_t ahead = 0) const
    {
        return m_at + ahead < m_text.text.size() ? m_text.text[m_at + ahead] : '\0';
    }

    void blanks();
    bool take(char c);                 // blanks before it
    bool word(std::string_view words); // whole words, capitals or not; blanks before, between
    bool anyOf(std::initializer_list<std::string_view> words); // the first that fits
    std::optional<int> number();                               // figures, or words: "twelve", "a", "one"
    std::optional<int> figures();
    std::optional<Quantity> quantity(int sizes); // "4", "4 (5, 6)"
    // "twice", "4 times", "4 (5, 6) times", "3x"; "more" is left standing.
    std::optional<Quantity> times(int sizes);
    std::string upTo(std::string_view stops) const; // what stands here, to the next of these letters

    long long steps() const
    {
        return m_steps;
    } // letters and words looked at: the work done, whatever the machine

    static bool letterOrDigit(char c);

private:
    const NormalText& m_text;
    std::size_t m_at = 0;
    mutable long long m_steps = 0;
};

std::optional<int> numberWord(std::string_view lowerWord); // "three", "forty-two"

} // namespace shawlwright
