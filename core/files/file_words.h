// The words of the pattern file for what the program keeps as numbers; reader and writer share them.
//
// Shape:   one table per kind, in the order in which a message lists the words.
#pragma once

#include "core/pattern/pattern.h"

#include <array>
#include <string_view>

namespace shawlwright::files {

template <typename Enum>
struct Word {
    Enum value;
    std::string_view word;
};
template <typename Enum>
Word(Enum, std::string_view) -> Word<Enum>; // clang before 17 deduces none for an aggregate

inline constexpr std::array sideWords{Word{Side::RS, "RS"}, Word{Side::WS, "WS"}};

inline constexpr std::array startWords{Word{StartKind::Continue, "continue"},
                                       Word{StartKind::AfterSlipping, "after slipping"},
                                       Word{StartKind::AtEdge, "at the edge"}};

inline constexpr std::array finishWords{Word{FinishKind::Turn, "turn"},
                                        Word{FinishKind::TurnEarly, "turn early"},
                                        Word{FinishKind::Slide, "slide"}, Word{FinishKind::Round, "round"},
                                        Word{FinishKind::BindOff, "bind off"}};

inline constexpr std::array methodWords{Word{TurnMethod::Plain, "plain"},
                                        Word{TurnMethod::WrapAndTurn, "wrap and turn"},
                                        Word{TurnMethod::DoubleStitch, "double stitch"},
                                        Word{TurnMethod::YarnOver, "yarn over"},
                                        Word{TurnMethod::PinnedYarn, "pinned yarn"},
                                        Word{TurnMethod::TwinStitch, "twin stitch"}};

// The word is the key that names the marker.
inline constexpr std::array moveWords{Word{MoveKind::Place, "place"}, Word{MoveKind::Remove, "remove"},
                                      Word{MoveKind::Shift, "shift"}};

inline constexpr std::array untilWords{Word{BoxUntil::Times, "times"}, Word{BoxUntil::RowEnd, "row end"},
                                       Word{BoxUntil::Marker, "marker"},
                                       Word{BoxUntil::LastTurn, "last turn"}};

// A stitch is described as in resources/stitches.json.
inline constexpr std::array familyWords{
    Word{Family::Basic, "basic"},       Word{Family::YarnOver, "yarn-over"},
    Word{Family::Increase, "increase"}, Word{Family::Decrease, "decrease"},
    Word{Family::Slip, "slip"},         Word{Family::Brioche, "brioche"},
    Word{Family::Nupp, "nupp"},         Word{Family::Cable, "cable"},
    Word{Family::Wrap, "wrap"},         Word{Family::ShortRow, "short-row"},
    Word{Family::Edge, "edge"}};

inline constexpr std::array leanWords{Word{Lean::None, "none"}, Word{Lean::Right, "right"},
                                      Word{Lean::Left, "left"}, Word{Lean::Centred, "centred"}};

inline constexpr std::array mannerWords{
    Word{Manner::Worked, "worked"},      Word{Manner::Slipped, "slipped"},
    Word{Manner::PairMade, "pair-made"}, Word{Manner::PairWorked, "pair-worked"},
    Word{Manner::BoundOff, "bound-off"}, Word{Manner::CastOn, "cast-on"},
    Word{Manner::Dropped, "dropped"},    Word{Manner::DoubleTurn, "double-turn"}};

inline constexpr std::array faceWords{Word{Face::Knit, "knit"}, Word{Face::Purl, "purl"}};

inline constexpr std::array headWords{Word{HeadKind::Knit, "knit"}, Word{HeadKind::Purl, "purl"},
                                      Word{HeadKind::YarnOver, "yarn-over"}};

inline constexpr std::array drawingWords{Word{Drawing::Empty, "empty"},
                                         Word{Drawing::Bar, "bar"},
                                         Word{Drawing::ByLoops, "by-loops"},
                                         Word{Drawing::Ring, "ring"},
                                         Word{Drawing::Slip, "slip"},
                                         Word{Drawing::ThroughBack, "through-back"},
                                         Word{Drawing::Hood, "hood"},
                                         Word{Drawing::SlipHood, "slip-hood"},
                                         Word{Drawing::Raised, "raised"},
                                         Word{Drawing::Cap, "cap"},
                                         Word{Drawing::Cup, "cup"},
                                         Word{Drawing::Disc, "disc"},
                                         Word{Drawing::Crossing, "crossing"},
                                         Word{Drawing::Dashed, "dashed"},
                                         Word{Drawing::Wrapped, "wrapped"},
                                         Word{Drawing::Hook, "hook"},
                                         Word{Drawing::DoubleLeg, "double-leg"},
                                         Word{Drawing::Elongated, "elongated"}};

template <typename Enum, std::size_t count>
std::string_view wordFor(const std::array<Word<Enum>, count>& words, Enum value)
{
    for (const Word<Enum>& word : words)
        if (word.value == value)
            return word.word;
    return words.front().word;
}

} // namespace shawlwright::files
