// The parts of a pattern file that stand before its sections: yarns, markers, stitches of its own, gauge,
// cast-on.
//
// Errors:  noted in the list of faults; a part with a fault is given as well as it could be read, so that
// what refers to
//          it isn't taken for a second fault.
#pragma once

#include "core/files/cells_text.h"
#include "core/files/checked_values.h"

namespace shawlwright::files {

inline constexpr int mostYarns = 250;
inline constexpr int mostMarkers = 1000;
inline constexpr int mostOwnStitches = 1000;
inline constexpr int mostNames = 100;            // of versions, of sizes
inline constexpr double mostMeasure = 1'000'000; // millimetres, metres, grams, stitches of a gauge

PatternHead readHead(FaultList& faults, Fields& file);

YarnId yarnNamed(FaultList& faults, Fields& in, std::string_view key, const YarnNames& yarns);

} // namespace shawlwright::files
