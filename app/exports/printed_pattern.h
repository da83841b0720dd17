// The pages of a printed pattern: cover, charts, key, abbreviations, words.
//
// Shape:   composed once, then painted page by page with a footer; the number of pages is known beforehand.
// Errors:  none; a pattern without rows still has its cover.
#pragma once

#include "app/exports/page_flow.h"
#include "app/exports/section_charts.h"
#include "core/wording/writer/gather.h"

#include <QString>

#include <map>
#include <memory>

namespace shawlwright::app {

class PrintedPattern {
public:
    // Pattern and catalogue must outlive it.
    PrintedPattern(const Pattern& pattern, const Catalogue& catalogue, const ExportOptions& options,
                   QSizeF paper);

    int pages() const { return m_flow.pages(); }
    void paintPage(QPainter& painter, int page) const; // from 1

private:
    // Where the parts of each section begin; asked for only while painting, when all of them are known.
    struct Contents {
        std::map<int, int> chart, words;
        int key = 0, abbreviations = 0;
    };

    void composeCover();
    void composeFacts();
    void composeContents();
    void composeCharts();
    void composeChart(const SectionChart& chart, bool first);
    void composeKey();
    void composeAbbreviations();
    void composeWords();
    int heading(const QString& words, double with);
    void fact(const QString& name, const QString& words, YarnId swatch = {});

    const Pattern& m_pattern;
    const Catalogue& m_catalogue;
    ExportOptions m_options;
    ToldRuns m_told;
    std::vector<int> m_sections;
    PageFlow m_flow;
    std::shared_ptr<Contents> m_contents;
    std::map<int, std::vector<WrittenLine>> m_words; // by section, but for those in the designer's own words
};

} // namespace shawlwright::app
