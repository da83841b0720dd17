#include "core/stitches/stitch_words.h"

#include <array>

namespace shawlwright {
namespace {

// In the order of the enumerators.
constexpr std::array familyWords{"basic",   "yarn-over", "increase", "decrease", "slip", "brioche",
                                 "nupp",    "cable",     "wrap",     "short-row", "edge"};
constexpr std::array leanWords{"none", "right", "left", "centred"};
constexpr std::array faceWords{"knit", "purl"};
constexpr std::array headWords{"knit", "purl", "yarn-over"};
constexpr std::array mannerWords{"worked",    "slipped", "pair-made", "pair-worked",
                                 "bound-off", "cast-on", "dropped",   "double-turn"};
constexpr std::array drawingWords{"empty", "bar", "by-loops", "ring",   "slip",    "through-back",
                                  "hood",  "slip-hood", "raised", "cap", "cup",     "disc",
                                  "crossing", "dashed", "wrapped", "hook", "double-leg", "elongated"};

static_assert(familyWords.size() == static_cast<std::size_t>(Family::Edge) + 1);
static_assert(leanWords.size() == static_cast<std::size_t>(Lean::Centred) + 1);
static_assert(mannerWords.size() == static_cast<std::size_t>(Manner::DoubleTurn) + 1);
static_assert(drawingWords.size() == static_cast<std::size_t>(Drawing::Elongated) + 1);

template <typename Kind>
constexpr const auto& wordsOf()
{
    if constexpr (std::is_same_v<Kind, Family>)
        return familyWords;
    else if constexpr (std::is_same_v<Kind, Lean>)
        return leanWords;
    else if constexpr (std::is_same_v<Kind, Face>)
        return faceWords;
    else if constexpr (std::is_same_v<Kind, HeadKind>)
        return headWords;
    else if constexpr (std::is_same_v<Kind, Manner>)
        return mannerWords;
    else
        return drawingWords;
}

template <typename Kind>
std::string_view wordAt(Kind kind)
{
    return wordsOf<Kind>()[static_cast<std::size_t>(kind)];
}

} // namespace

std::string_view toWord(Family family) { return wordAt(family); }
std::string_view toWord(Lean lean) { return wordAt(lean); }
std::string_view toWord(Face face) { return wordAt(face); }
std::string_view toWord(HeadKind kind) { return wordAt(kind); }
std::string_view toWord(Manner manner) { return wordAt(manner); }
std::string_view toWord(Drawing drawing) { return wordAt(drawing); }

template <typename Kind>
std::optional<Kind> fromWord(std::string_view word)
{
    const auto& words = wordsOf<Kind>();
    for (std::size_t i = 0; i < words.size(); ++i)
        if (word == words[i])
            return static_cast<Kind>(i);
    return std::nullopt;
}

template <typename Kind>
std::string allWords()
{
    std::string all;
    for (const char* word : wordsOf<Kind>())
        all += (all.empty() ? "" : ", ") + std::string(word);
    return all;
}

template std::optional<Family> fromWord(std::string_view);
template std::optional<Lean> fromWord(std::string_view);
template std::optional<Face> fromWord(std::string_view);
template std::optional<HeadKind> fromWord(std::string_view);
template std::optional<Manner> fromWord(std::string_view);
template std::optional<Drawing> fromWord(std::string_view);
template std::string allWords<Family>();
template std::string allWords<Lean>();
template std::string allWords<Face>();
template std::string allWords<HeadKind>();
template std::string allWords<Manner>();
template std::string allWords<Drawing>();

} // namespace shawlwright
