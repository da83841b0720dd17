// What the writer knows about the rows of one section before it words them: labels, where each row stands in
// the runs, which side is due, and the row repeats.
//
// Shape:   by row index in the section.
#pragma once

#include "core/wording/writer/runs.h"

namespace shawlwright {

struct RowRepeatFacts {
    int first = 0, last = 0; // rows
    const Quantity* times = nullptr;
};

class SectionFacts {
public:
    SectionFacts(const Pattern& pattern, const Runs& runs, int section);

    int rows() const { return static_cast<int>(m_section.rows.size()); }
    const Row& row(int at) const { return *m_section.rows[static_cast<std::size_t>(at)]; }
    const std::string& label(int at) const { return m_labels[static_cast<std::size_t>(at)]; }
    // The label's number where it is a plain one.
    std::optional<int> number(int at) const { return m_numbers[static_cast<std::size_t>(at)]; }
    // In the round: the row is one, or ends with binding off a tube.
    bool round(int at) const;
    // The side that faces when the row before has ended; of the first row of a section, as the section before
    // it in this version ends.
    Side dueSide(int at) const;
    bool surprises(int at) const { return row(at).side != dueSide(at); }

    std::size_t runs() const { return m_runs.bySize.size(); }
    const std::vector<int>& lines(std::size_t run, int at) const
    {
        return m_lines[run][static_cast<std::size_t>(at)];
    }
    // The same in each of the pattern's runs that are there to be asked.
    const RunLines& everyLines(int at) const { return m_everyLines[static_cast<std::size_t>(at)]; }
    RunLines lines(int at) const;
    RunLines lines(std::span<const int> rows) const; // of all of them

    // Outer ones first, as they are worked out when knitting; without those worked once.
    const std::vector<RowRepeatFacts>& repeats() const { return m_repeats; }
    // The lines after which a row repeat is done.
    RunLines endingLines(std::size_t repeat) const;

    const Pattern& pattern() const { return m_pattern; }
    const Section& section() const { return m_section; }
    int sectionAt() const { return m_at; }
    const Runs& told() const { return m_runs; }

private:
    const Pattern& m_pattern;
    Runs m_runs;
    int m_at;
    const Section& m_section;
    Side m_firstDue = Side::RS;
    std::vector<std::string> m_labels;
    std::vector<std::optional<int>> m_numbers;
    std::vector<RunLines> m_lines;     // by run, by row
    std::vector<RunLines> m_everyLines; // by row, by run
    std::vector<RowRepeatFacts> m_all; // those worked once among them
    std::vector<RowRepeatFacts> m_repeats;
    std::vector<std::size_t> m_place; // of m_repeats in m_all
};

} // namespace shawlwright
