// Introduction and notes in a written pattern: below a heading and set in, so that a reader knows where they end.
#pragma once

#include <string>
#include <string_view>

namespace shawlwright {

inline constexpr std::string_view introductionHeading = "Introduction", notesHeading = "Notes", proseSetIn = "  ";

std::string proseText(std::string_view heading, std::string_view words); // empty words: nothing

} // namespace shawlwright
