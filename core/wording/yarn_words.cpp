#include "core/wording/yarn_words.h"

#include "core/base/text.h"

#include <array>

namespace shawlwright {
namespace {

constexpr std::array<std::string_view, 8> weights{"lace",   "super fine", "fine",        "light",
                                                  "medium", "bulky",      "super bulky", "jumbo"};

std::string weightInWords(std::size_t weight)
{
    return "weight " + toText(static_cast<int>(weight)) + " (" + std::string(weights[weight]) + ")";
}

bool takeWeight(std::string_view part, Yarn& yarn)
{
    for (std::size_t weight = 0; weight < weights.size(); ++weight)
        if (part == weightInWords(weight)) {
            yarn.weight = static_cast<int>(weight);
            return true;
        }
    return false;
}

// "400 m per 100 g"
bool takeBall(std::string_view part, Yarn& yarn)
{
    const std::size_t per = part.find(" m per ");
    if (per == std::string_view::npos || !part.ends_with(" g"))
        return false;
    const auto metres = readDouble(part.substr(0, per));
    const std::size_t from = per + std::string_view(" m per ").size();
    const auto grams = readDouble(part.substr(from, part.size() - 2 - from));
    if (!metres || !grams || *metres <= 0 || *grams <= 0)
        return false;
    yarn.metresPerBall = *metres;
    yarn.gramsPerBall = *grams;
    return true;
}

} // namespace

std::string yarnInFull(const Yarn& yarn)
{
    std::string words = yarn.code;
    const auto add = [&words](const std::string& part, const char* apart) {
        if (!part.empty())
            words += (words.empty() ? "" : apart) + part;
    };
    add(yarn.name, ": ");
    if (yarn.weight >= 0 && yarn.weight < static_cast<int>(weights.size()))
        add(weightInWords(static_cast<std::size_t>(yarn.weight)), ", ");
    if (yarn.metresPerBall > 0 && yarn.gramsPerBall > 0)
        add(toText(yarn.metresPerBall) + " m per " + toText(yarn.gramsPerBall) + " g", ", ");
    return words;
}

std::optional<Yarn> yarnFromWords(std::string_view words)
{
    Yarn yarn;
    words = trimmed(words);
    const auto takeLast = [&](bool (*take)(std::string_view, Yarn&)) {
        const std::size_t comma = words.rfind(", ");
        if (comma != std::string_view::npos && take(words.substr(comma + 2), yarn))
            words = words.substr(0, comma);
    };
    takeLast(takeBall);
    takeLast(takeWeight);
    const std::size_t colon = words.find(": ");
    yarn.code = std::string(trimmed(words.substr(0, colon)));
    if (colon != std::string_view::npos)
        yarn.name = std::string(trimmed(words.substr(colon + 2)));
    constexpr std::size_t longestCode = 20;
    if (yarn.code.empty() || yarn.code.size() > longestCode)
        return std::nullopt;
    return yarn;
}

} // namespace shawlwright
