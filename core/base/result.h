// What could not be done, and where: the only way core reports failure. No exception leaves core.
//
// Shape:   a Result holds either a value or one Fault; Faults is a list, first one first.
// Units:   Place counts lines and columns from 1, columns in code points; 0, 0 means: not in a text.
// Errors:  asking a failed Result for its value is a bug (assert).
#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace shawlwright {

struct Place {
    int line = 0;
    int column = 0;
    bool operator==(const Place&) const = default;
};

struct Fault {
    Place at;
    std::string where;   // "Section 'Left wing', Row 37"  or  "sections[1].rows[36].cells"
    std::string message; // the numbers and what to do, in a knitter's words
    bool operator==(const Fault&) const = default;
};

using Faults = std::vector<Fault>;

// "line 3, column 9, Section 'Left wing', Row 37: needs 7 stitches, 5 are left"; parts that are empty are left out.
std::string toText(const Fault& fault);

template <typename T>
class [[nodiscard]] Result {
public:
    Result(T value) : m_held(std::move(value)) {}
    Result(Fault fault) : m_held(std::move(fault)) {}

    bool ok() const { return std::holds_alternative<T>(m_held); }
    const T& value() const
    {
        assert(ok());
        return std::get<T>(m_held);
    }
    T& value()
    {
        assert(ok());
        return std::get<T>(m_held);
    }
    T take() &&
    {
        assert(ok());
        return std::move(std::get<T>(m_held));
    }
    const Fault& fault() const
    {
        assert(!ok());
        return std::get<Fault>(m_held);
    }

private:
    std::variant<T, Fault> m_held;
};

} // namespace shawlwright
