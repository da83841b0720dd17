// Text from a file as a message shows it.
#pragma once

#include <string>
#include <string_view>

namespace shawlwright::files {

// The text itself, or its first 40 bytes or so and "..."; never a letter cut in two, never a line break.
inline std::string shortened(std::string_view text)
{
    constexpr std::size_t most = 40;
    std::string shown(text.substr(0, most));
    if (text.size() > most) {
        while (!shown.empty() && (static_cast<unsigned char>(text[shown.size()]) & 0xC0) == 0x80)
            shown.pop_back();
        shown += "...";
    }
    for (char& c : shown)
        if (static_cast<unsigned char>(c) < ' ')
            c = ' ';
    return shown;
}

} // namespace shawlwright::files
