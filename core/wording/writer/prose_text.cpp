#include "core/wording/writer/prose_text.h"

#include <algorithm>

namespace shawlwright {

std::string proseText(std::string_view heading, std::string_view words)
{
    if (words.empty())
        return {};
    std::string text(heading);
    text += '\n';
    for (std::size_t from = 0; from <= words.size();) {
        const std::size_t end = std::min(words.find('\n', from), words.size());
        if (end > from)
            text += std::string(proseSetIn) + std::string(words.substr(from, end - from));
        text += '\n';
        from = end + 1;
    }
    return text;
}

} // namespace shawlwright
