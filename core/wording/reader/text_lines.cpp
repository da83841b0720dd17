// Lines of a text: what each of them is.

#include "core/base/text.h"
#include "core/wording/reader/shaping_words.h"
#include "core/wording/reader/head_facts.h"
#include "core/wording/reader/text_reader.h"
#include "core/wording/reader/told_prose.h"
#include "core/wording/yarn_words.h"

#include <algorithm>
#include <utility>

namespace shawlwright {

TextReader::TextReader(const Catalogue& catalogue, const ReadOptions& options)
    : m_words(catalogue, options.head)
{
    if (!options.onward)
        return;
    m_needle = options.onward->before;
    m_needleBegun = m_haveCastOn = true;
    m_columnsThere = options.onward->columns;
    m_firstSide = options.onward->side;
    m_yarn = options.onward->yarn;
}

ReadText TextReader::read(std::string_view text)
{
    if (text.size() > mostTextBytes) {
        say(ReadingNote::Weight::Error, {},
            "a text of " + toText(static_cast<double>(text.size())) + " bytes",
            "at most " + toText(static_cast<int>(mostTextBytes)), {});
        return std::move(m_out);
    }
    std::vector<NormalText> all = normalLines(text);
    if (!m_needleBegun)
        takeProse(text, all, m_words.head());
    decideFirstSide(all);
    lines(all);
    endRow();
    if (m_inSection)
        endSection();
    for (const NormalText& line : m_prose)
        if (!line.blank()) {
            PatternHead& head = m_words.head();
            const std::string words(trimmed(line.text));
            if (!m_titled && m_out.pattern.sections.empty() && head.title.empty())
                head.title = words;
            else
                head.notes += (head.notes.empty() ? "" : "\n") + words;
        }
    beginNeedle();
    m_out.pattern.head = m_words.head();
    std::stable_sort(m_out.notes.begin(), m_out.notes.end(), [](const ReadingNote& a, const ReadingNote& b) {
        return a.at.line != b.at.line ? a.at.line < b.at.line : a.at.column < b.at.column;
    });
    return std::move(m_out);
}

// The side of the first row: said there, or counted back from the first row that says one.
void TextReader::decideFirstSide(const std::vector<NormalText>& all)
{
    std::optional<int> first, before;
    bool blank = false;
    for (const NormalText& line : all) {
        const bool afterBlank = std::exchange(blank, line.blank());
        if (line.blank())
            continue;
        const auto head = rowHead(line);
        if (first && !head && afterBlank && !rowRepeat(line, m_words.sizes()))
            return; // the title of another section
        if (!head || head->onlyAlso) {
            if (const auto castOn = castOnWords(line, m_words.sizes()); castOn && castOn->wrongSideFaces) {
                m_firstSide = Side::WS;
                return;
            }
            continue;
        }
        const auto number = head->labels.empty() ? std::nullopt : readInt(head->labels.front());
        if (!first) {
            if (head->side || head->round) {
                m_firstSide = head->side.value_or(Side::RS);
                return;
            }
            if (!number)
                return;
            first = number;
        }
        if (!number || (before && *number <= *before))
            return; // another section, or rows that can't be counted
        before = number;
        if (head->side && number) {
            m_firstSide = (*number - *first) % 2 == 0 ? *head->side : otherSide(*head->side);
            return;
        }
    }
}

RowWords TextReader::rowWords(const NormalText& text, Side side, const std::vector<int>& choices)
{
    RowWords words = readRowWords(text, side, m_words, choices);
    m_out.steps += words.steps;
    return words;
}

void TextReader::lines(const std::vector<NormalText>& all)
{
    for (const NormalText& one : all)
        line(one);
}

bool TextReader::special(const NormalText& line)
{
    Cursor cursor(line);
    if (cursor.word("counts after rows are those of size")) {
        m_countsOfOneSize = true;
        return true;
    }
    if (versionLine(line))
        return true;
    if (cursor.anyOf({"version"}) && cursor.take(':')) {
        say(ReadingNote::Weight::Note, line.placeOf(0), std::string(trimmed(line.text)), {},
            "the only version of this text");
        return true;
    }
    return sizesLine(line);
}

// "Sizes: Small (Medium, Large)"; of one size: "Size: Large".
bool TextReader::sizesLine(const NormalText& line)
{
    Cursor cursor(line);
    if (!cursor.anyOf({"sizes", "size"}) || !cursor.take(':'))
        return false;
    const std::string rest(trimmed(std::string_view(line.text).substr(cursor.at())));
    std::vector<std::string> names;
    std::string name;
    const auto add = [&] {
        const std::string one(trimmed(name));
        if (!one.empty())
            names.push_back(one);
        name.clear();
    };
    for (const char c : rest)
        if (c == '(' || c == ')' || c == ',')
            add();
        else
            name += c;
    add();
    const bool bracketed = rest.find('(') != std::string::npos;
    const bool measured = rest.find_first_of("0123456789") != std::string::npos; // "Size: 180 cm wide"
    PatternHead& head = m_words.head();
    if (!bracketed && !measured && names.size() == 1 && head.sizes.empty()) {
        head.sizes = names;
        return true;
    }
    if (!bracketed || names.size() < 2 || names.size() > 100)
        return false;
    if (head.sizes.size() > 1 && head.sizes.size() != names.size())
        say(ReadingNote::Weight::Warning, line.placeOf(0), toText(static_cast<int>(names.size())) + " sizes",
            toText(static_cast<int>(head.sizes.size())) + ", as before", "the sizes of this line");
    head.sizes = names;
    return true;
}

// Rows told by a length, and triples of Japanese shaping: kept as words, and said.
bool TextReader::noRow(const NormalText& line)
{
    if (m_rowHead && continues(line) && !m_rowText.blank())
        return false;
    const std::string words(trimmed(line.text));
    Cursor cursor(line);
    const bool works = cursor.anyOf({"rep", "repeat", "work", "cont", "continue", "knit", "purl", "k", "p"});
    const auto until = works ? lengthToWorkTo(words) : std::nullopt;
    const auto triple = shapingInWords(words);
    if (!until && !triple)
        return false;
    endRow();
    const bool kept = m_inSection && !m_section.rows.empty();
    if (until)
        say(ReadingNote::Weight::Warning, line.placeOf(line.text.find(words) + *until),
            words.substr(*until, 60),
            "how many times, or until how many stitches: a length depends on the gauge",
            kept ? "a note to the row before" : "words");
    else
        say(ReadingNote::Weight::Warning, line.placeOf(line.text.find_first_not_of(' ')), words.substr(0, 60),
            "the rows written out: " + *triple, kept ? "a note to the row before" : "words");
    if (kept) {
        DraftRow& last = m_section.rows.back();
        last.base.note += (last.base.note.empty() ? "" : " ") + words;
        last.compact.row.note = last.base.note;
    } else {
        prose(line);
    }
    m_afterBlank = false;
    return true;
}

// A line goes on with the row before it.
bool TextReader::continues(const NormalText& line)
{
    const std::string_view before = trimmed(m_rowText.text);
    const std::string_view here = trimmed(line.text);
    if (before.empty())
        return true;
    const char last = before.back();
    const char first = here.front();
    if (last == ',' || last == ';' || last == '*' || last == '[' || last == '(' || last == '-')
        return true;
    const bool starts = (first >= 'a' && first <= 'z') || (first >= '0' && first <= '9') || first == '[' ||
                        first == '(' || first == '*';
    if (starts)
        return true;
    if (last == '.' || last == ')')
        return false;
    const std::size_t stitches = m_words.head().stitches.size();
    const RowWords words = rowWords(line, m_rowHead->side.value_or(Side::RS));
    return words.understood && m_words.head().stitches.size() == stitches;
}

void TextReader::line(const NormalText& line)
{
    m_out.steps += static_cast<long long>(line.text.size());
    if (ofThisWriter(line))
        return;
    if (line.blank()) {
        endRow();
        m_afterBlank = true;
        if (!m_prose.empty())
            m_prose.push_back(line);
        return;
    }
    if (headLine(line))
        return;
    if (const auto repeat = rowRepeat(line, m_words.sizes())) {
        endRow();
        m_afterBlank = false;
        return repeatRows(*repeat, line.placeOf(line.text.find_first_not_of(' ')),
                          std::string(trimmed(line.text)));
    }
    if (noRow(line))
        return;
    if (const auto rows = plainRows(line)) {
        endRow();
        if (!m_inSection || !m_prose.empty())
            beginSection();
        for (int n = 0; n < rows->count; ++n)
            oneRow({}, std::nullopt, rows->round, {}, rows->words);
        m_afterBlank = false;
        return;
    }
    if (m_rowHead && continues(line))
        return append(m_rowText, part(line, 0));
    if (const auto words = castOnWords(line, m_words.sizes()); words && !m_inSection) {
        endRow();
        paragraph();
        m_afterBlank = false;
        return castOn(*words, line.placeOf(0));
    }
    endRow();
    if (!special(line))
        prose(line);
    m_afterBlank = false;
}

bool TextReader::headLine(const NormalText& line)
{
    auto head = rowHead(line);
    if (!head)
        return false;
    NormalText words = part(line, head->end);
    if (!head->sure && (words.text.empty() || !rowWords(words, head->side.value_or(Side::RS)).understood))
        return false;
    endRow();
    m_rowHead = std::move(head);
    m_rowText = std::move(words);
    return true;
}

// What stands before the cast-on is about the pattern.
void TextReader::paragraph()
{
    PatternHead& head = m_words.head();
    std::string* to = &head.introduction;
    bool apart = false;
    for (const NormalText& line : m_prose) {
        if (line.blank()) {
            apart = true;
            continue;
        }
        const std::string text(trimmed(line.text));
        if (!m_titled) {
            head.title = text;
            m_titled = true;
        } else if (text == "Notes" && apart) {
            to = &head.notes;
        } else if (!headFact(text)) {
            *to += (to->empty() ? "" : apart ? "\n\n" : "\n") + text;
        }
        apart = false;
    }
    m_titled = true;
    m_prose.clear();
}

bool TextReader::headFact(const std::string& line)
{
    PatternHead& head = m_words.head();
    if (readHeadFact(line, head))
        return true;
    constexpr std::string_view yarnWord = "Yarn ";
    if (!line.starts_with(yarnWord))
        return false;
    const auto told = yarnFromWords(std::string_view(line).substr(yarnWord.size()));
    if (!told)
        return false;
    // "Yarn needed: 400 m" is no yarn called "needed".
    const bool inFull = told->weight >= 0 || told->metresPerBall > 0;
    const bool code = std::none_of(told->code.begin(), told->code.end(), [](char c) { return c == ' ' || (c >= 'a' && c <= 'z'); });
    if (!inFull && (told->name.empty() || !(code || m_words.knownYarn(told->code))))
        return false;
    const YarnId id = m_words.yarn(told->code);
    for (Yarn& yarn : head.yarns)
        if (yarn.id == id) {
            yarn.name = told->name;
            yarn.weight = told->weight;
            yarn.metresPerBall = told->metresPerBall;
            yarn.gramsPerBall = told->gramsPerBall;
        }
    return true;
}

void TextReader::prose(const NormalText& line)
{
    m_prose.push_back(line);
}

void TextReader::endRow()
{
    if (!m_rowHead)
        return;
    const RowHead head = std::move(*m_rowHead);
    const NormalText words = std::move(m_rowText);
    m_rowHead.reset();
    m_rowText = {};
    const std::size_t rows = m_section.rows.size();
    // A sentence between rows whose numbers go on belongs to the row before.
    const auto number = head.labels.empty() ? std::nullopt : labelNumber(head.labels.front());
    if (m_inSection && rows > 0 && number && *number == m_lastNumber + 1 && !m_prose.empty() &&
        !m_afterBlank) {
        const bool sentences = std::all_of(m_prose.begin(), m_prose.end(), [](const NormalText& line) {
            return line.blank() || trimmed(line.text).back() == '.';
        });
        if (sentences) {
            Row& last = m_section.rows.back().base;
            for (const NormalText& line : m_prose)
                if (!line.blank()) {
                    last.note += (last.note.empty() ? "" : " ") + std::string(trimmed(line.text));
                    say(ReadingNote::Weight::Note, line.placeOf(0),
                        std::string(trimmed(line.text)).substr(0, 60), "a row", "a note to the row before");
                }
            m_prose.clear();
        }
    }
    rowBlock(head, words);
    m_afterBlank = false;
    if (m_section.rows.empty())
        return;
    // "Row 4: purl. Rep Rows 1-4 twice more." on one line.
    const DraftRow& last = m_section.rows.back();
    if (last.rest.empty() || !last.base.words.empty() || !words.text.ends_with(last.rest))
        return;
    const NormalText rest = part(words, words.text.size() - last.rest.size());
    if (const auto repeat = rowRepeat(rest, m_words.sizes())) {
        forgetNote(rest);
        repeatRows(*repeat, rest.placeOf(0), rest.text);
    } else if (const auto next = rowHead(rest); next && next->sure) {
        forgetNote(rest);
        headLine(rest);
        endRow();
    }
}

// A note that turned out to be more than that.
void TextReader::forgetNote(const NormalText& note)
{
    DraftRow& row = m_section.rows.back();
    row.base.note = row.closing;
    row.compact.row.note = row.closing;
    row.rest.clear();
    const Place at = note.placeOf(0);
    std::erase_if(m_out.notes, [&](const ReadingNote& one) {
        return one.at == at && one.weight == ReadingNote::Weight::Note && one.chosen == "a note to the row";
    });
}

} // namespace shawlwright
