// Versions of a text: "Versions: ridged, ribbed" at its head, then "Version: ribbed" below the title of a
// section, or "Version from the cast-on to the end: ribbed" before all sections of one.
//
// Each version has its own needle; a section of all versions goes on with the first of them.

#include "core/base/text.h"
#include "core/wording/reader/text_reader.h"

#include <algorithm>

namespace shawlwright {
namespace {

std::vector<std::string> listed(std::string_view words)
{
    std::vector<std::string> names;
    while (!words.empty()) {
        const std::size_t comma = std::min(words.find(','), words.size());
        const std::string name(trimmed(words.substr(0, comma)));
        if (!name.empty())
            names.push_back(name);
        words.remove_prefix(std::min(comma + 1, words.size()));
    }
    return names;
}

} // namespace

bool TextReader::versionLine(const NormalText& line)
{
    Cursor cursor(line);
    const bool part = cursor.anyOf({"version from the cast-on to the end"});
    if (!part && !cursor.anyOf({"versions", "version"}))
        return false;
    const bool several = !part && line.text.find("ersions") != std::string::npos;
    if (!cursor.take(':'))
        return false;
    const std::vector<std::string> names = listed(std::string_view(line.text).substr(cursor.at()));
    std::vector<std::string>& known = m_words.head().versions;
    const bool atHead = !m_inSection && m_out.pattern.sections.empty() && !m_versionsTold;
    if (atHead && several && names.size() > 1 && names.size() <= 100 && (known.empty() || known == names)) {
        known = names;
        m_versionsTold = true;
        return true;
    }
    if (known.empty())
        return false;
    for (const std::string& name : names)
        if (std::find(known.begin(), known.end(), name) == known.end()) {
            say(ReadingNote::Weight::Warning, line.placeOf(line.text.find_first_not_of(' ')), name,
                "one of the versions at the head of the text", "a section of all versions");
            return true;
        }
    endSection();
    m_nextVersions = names;
    if (part || atHead) {
        m_partVersions = names;
        if (part)
            paragraph();
    }
    return true;
}

void TextReader::takeUpVersion()
{
    const std::vector<std::string>& known = m_words.head().versions;
    if (known.empty() || !m_needleBegun)
        return;
    const std::string& version = m_section.versions.empty() ? known.front() : m_section.versions.front();
    if (const auto knitted = m_knitted.find(version); knitted != m_knitted.end()) {
        m_needle = knitted->second.needle;
        m_yarn = knitted->second.yarn;
    } else if (!m_knitted.empty()) {
        m_needleBegun = false;
        beginNeedle();
    }
}

void TextReader::leaveVersion()
{
    const std::vector<std::string>& known = m_words.head().versions;
    for (const std::string& version : m_section.versions.empty() ? known : m_section.versions)
        m_knitted[version] = {m_needle, m_yarn};
}

const Row* TextReader::lastRowBefore() const
{
    const std::vector<std::string>& known = m_words.head().versions;
    for (auto section = m_out.pattern.sections.rbegin(); section != m_out.pattern.sections.rend();
         ++section) {
        const std::vector<std::string>& of = section->frame.versions;
        const bool here =
            known.empty() || of.empty() ||
            std::find(of.begin(), of.end(),
                      m_section.versions.empty() ? known.front() : m_section.versions.front()) != of.end();
        if (here)
            return section->rows.empty() ? nullptr : section->rows.back().get();
    }
    return nullptr;
}

} // namespace shawlwright
