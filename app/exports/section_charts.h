// The charts of a pattern as shapes, with what the needle knows about each row written in.
//
// Shape:   one per section of the version that has a grid, in knitting order.
#pragma once

#include "app/exports/export_options.h"
#include "core/chart/chart.h"

#include <memory>
#include <span>
#include <string>
#include <vector>

namespace shawlwright::app {

struct SectionChart {
    int section = 0; // index into the pattern
    std::string title;
    std::vector<chart::RowFacts> facts;
    std::shared_ptr<const Section> fewer{}; // without its plain WS rows; null: it is drawn whole
    std::vector<int> rows{};                // of the fewer ones, their indexes in the section
    std::vector<std::string> notShown{};    // sentences about the others
};

// The sections an export speaks of, with or without a grid.
std::vector<int> exportedSections(const Pattern& pattern, const ExportOptions& options);
// `bySize`: of the version, of each size that is told; what differs from size to size stands as "23 (29)".
std::vector<SectionChart> sectionCharts(const Pattern& pattern, const Catalogue& catalogue,
                                        std::span<const Ledger* const> bySize, const ExportOptions& options);
// "Lace, sizes Small (Large)": what the numbers beside a chart are of; empty where there is one version and one size.
std::string choiceInWords(const Pattern& pattern, const ExportOptions& options);

const Section& drawnSection(const SectionChart& chart, const Pattern& pattern);
chart::Drawing drawingOf(const SectionChart& chart, const Pattern& pattern, const Catalogue& catalogue,
                         chart::ChartOptions options);

} // namespace shawlwright::app
