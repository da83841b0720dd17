// What an export is given, and nothing else: never the screen's zoom or theme. Colours are the light ones.
//
// Units:   millimetres, dots per inch.
#pragma once

#include "core/edits/areas.h"
#include "core/needle/ledger.h"

#include <optional>

namespace shawlwright::app {

enum class Paper { A4, Letter };
enum class Lettering {
    Text,
    Outlines
}; // in an SVG: letters that can be searched, or shapes for a printer without the font

struct ExportOptions {
    RunChoice choice;          // version and size
    bool everyVersion = false; // in a text; charts and a PDF are of the one that is chosen
    bool everySize = false;    // all sizes, as "23 (29)"; else everything is told as of the one that is chosen
    std::optional<SectionId> section; // nothing: every section of the version
    Areas part;                       // of that section, without title and key, as copied; empty: all of it
    bool plainWsRows = true;          // false: charts leave them out and say so; not in a part
    double cellMm = 5;                // width of a stitch in the chart
    int dpi = 300;                    // of a PNG
    Paper paper = Paper::A4;          // of a PDF
    Lettering lettering = Lettering::Text;
};

inline constexpr double leastPrintedCellMm =
    3; // a PDF's cells are no smaller, or symbols cannot be told apart on paper

} // namespace shawlwright::app
