// Rows of a text: read, understood on the needle, kept as drafts.

#include "core/wording/reader/text_reader.h"

#include "core/base/text.h"
#include "core/wording/writer/phrase_text.h"

#include <algorithm>
#include <cstdlib>

namespace shawlwright {
namespace {

bool countFault(const Finding& finding)
{
    return finding.severity == Severity::Error;
}

} // namespace

void TextReader::say(ReadingNote::Weight weight, Place at, std::string found, std::string expected,
                     std::string chosen)
{
    if (static_cast<int>(m_out.notes.size()) < mostNotes)
        m_out.notes.push_back({weight, at, std::move(found), std::move(expected), std::move(chosen)});
}

int TextReader::work(Needle& needle, const PlacedRow& row, bool startsSection, Trace* trace) const
{
    if (!mayWork())
        return 0;
    std::vector<Box> boxes = row.boxes;
    std::uint32_t id = 0;
    for (Box& box : boxes)
        box.id = BoxId{++id};
    std::stable_sort(boxes.begin(), boxes.end(), [](const Box& a, const Box& b) {
        return a.lastColumn - a.firstColumn > b.lastColumn - b.firstColumn;
    });
    const RowContext context{m_words.catalogue(), m_words.head(), boxes, 0, startsSection};
    const LedgerLine line = workRow(needle, row.row, context, trace);
    m_worked += needle.count() + line.worked + rowItself;
    return static_cast<int>(std::count_if(line.findings.begin(), line.findings.end(), countFault));
}

Side TextReader::nextSide() const
{
    if (m_section.rows.empty() && m_out.pattern.sections.empty())
        return m_firstSide.value_or(Side::RS);
    const Row* last = m_section.rows.empty() ? lastRowBefore() : &m_section.rows.back().base;
    if (!last)
        return m_firstSide.value_or(Side::RS);
    const bool same = last->finish.kind == FinishKind::Slide || last->finish.kind == FinishKind::Round;
    return same ? last->side : otherSide(last->side);
}

// A line that tells rows but could not be read as such: nothing is lost.
void TextReader::keepUnread(const std::string& label, NormalText words, Place at)
{
    DraftRow row;
    row.base.id = RowId{++m_rowId};
    row.base.side = nextSide();
    row.base.yarn = m_yarn;
    row.label = label;
    row.words = std::move(words);
    row.at = at;
    keepAsWords(row);
    m_section.rows.push_back(std::move(row));
    ++m_out.rowsNot;
    m_sure = false;
}

void TextReader::keepAsWords(DraftRow& row)
{
    row.draft = {};
    row.base.words = row.words.text;
    row.base.moves.clear();
    row.compact = {};
    row.compact.row = row.base;
}

TextReader::Tried TextReader::tried(const DraftRow& base, const NormalText& text,
                                    const std::vector<int>& choices)
{
    Tried result;
    result.row = base;
    Row& row = result.row.base;
    RowWords words = rowWords(text, row.side, choices);
    result.notes = std::move(words.notes);
    result.doubts = std::move(words.doubts);
    result.understood = words.understood;
    if (!words.sameAs.empty() && words.understood) {
        if (const NormalText* other = wordsOfRow(words.sameAs)) {
            RowWords again = rowWords(*other, row.side, choices);
            words.phrases = std::move(again.phrases);
            result.understood = again.understood && again.sameAs.empty();
        } else {
            result.understood = false;
        }
        if (!result.understood)
            result.notes.push_back({ReadingNote::Weight::Error,
                                    base.at,
                                    "Row " + words.sameAs,
                                    "a row told before this one in the section",
                                    {}});
    }
    if (!result.understood) {
        result.after = m_needle;
        return result;
    }
    row.note = noteOf(words);
    result.row.closing = words.closing;
    result.row.rest = words.note;
    if (words.stated && (m_words.sizes() == 1 || !words.stated->single() || !m_countsOfOneSize))
        row.stated = words.stated;
    // Where it starts and ends.
    for (const Phrase& phrase : words.phrases) {
        if (const auto* slip = std::get_if<SlipFirst>(&phrase.is)) {
            row.start.kind = StartKind::AfterSlipping;
            row.start.slip = slip->count;
        } else if (std::holds_alternative<StartAtEdge>(phrase.is)) {
            row.start.kind = StartKind::AtEdge;
        } else if (const auto* yarn = std::get_if<YarnPhrase>(&phrase.is)) {
            if (yarn->act == YarnPhrase::Act::Break) {
                row.finish.breaksYarn = true;
            } else {
                if (yarn->yarn != YarnId{})
                    row.yarn = yarn->yarn;
                row.start.joins = row.start.joins || yarn->act == YarnPhrase::Act::Join;
            }
        } else if (const auto* finish = std::get_if<FinishPhrase>(&phrase.is)) {
            const bool breaks = row.finish.breaksYarn;
            row.finish = finish->finish;
            row.finish.breaksYarn = breaks;
        }
    }
    const SenseContext context{m_needle, row, 0, base.at};
    Phrases phrases;
    for (Phrase& phrase : words.phrases) {
        const auto* own = std::get_if<OwnWords>(&phrase.is);
        if (!own) {
            phrases.push_back(std::move(phrase));
            continue;
        }
        for (Phrase& run : asLoopsFace(context, m_words.catalogue()))
            phrases.push_back(std::move(run));
        if (m_words.sizes() > 1)
            result.notes.push_back({ReadingNote::Weight::Warning, base.at, asTheyFace,
                                    "stitches told for each size", "the stitches of the first size"});
    }
    const bool firstRow = m_section.rows.empty() && m_out.pattern.sections.empty();
    if (firstRow && !m_castOnMarkers.empty())
        phrases = withCastOnMarkers(std::move(phrases), result.row, result.notes);
    else
        phrases = inSense(std::move(phrases), context, m_words, result.notes);
    result.row.placesCastOn = firstRow && !m_castOnMarkers.empty();
    showBindOff(phrases);
    tellTurn(phrases, result.row, result.notes);
    const auto draft = draftOf(phrases, m_words.catalogue());
    if (!draft) {
        result.understood = false;
        result.notes.push_back({ReadingNote::Weight::Error,
                                base.at,
                                "a row of more than " + toText(mostColumns) + " columns",
                                "a shorter row, or repeats: '[k1] 5000 times'",
                                {}});
        result.after = m_needle;
        return result;
    }
    result.row.draft = *draft;
    result.row.compact = placed(*draft, row, compact(*draft), draft->width());
    result.after = m_needle;
    Trace trace;
    result.faults = work(result.after, result.row.compact, m_section.rows.empty(), &trace);
    result.row.eachTime = words.counts.eachTime;
    tellCounts(words.counts, result);
    for (const Phrase& phrase : phrases)
        if (const auto* finish = std::get_if<FinishPhrase>(&phrase.is); finish && finish->restingAhead > 0)
            tellResting(finish->restingAhead, result);
    tellNeverWorked(result, trace);
    return result;
}

// The first row places what the cast-on tells of.
Phrases TextReader::withCastOnMarkers(Phrases phrases, const DraftRow& row, std::vector<ReadingNote>& notes)
{
    for (std::size_t i = 0; i < m_castOnMarkers.size(); ++i)
        if (m_castOnMarkers[i].marker == MarkerId{})
            m_castOnMarkers[i].marker = m_words.marker(std::string(1, static_cast<char>('A' + i % 26)) +
                                                       (i < 26 ? "" : toText(static_cast<int>(i / 26))));
    const Needle needle = withMarkers(m_needle, m_castOnMarkers, row.base.side);
    phrases = inSense(std::move(phrases), {needle, row.base, 0, row.at}, m_words, notes);
    MarkersPlaced placed = placedInRow(phrases, m_castOnMarkers, m_needle.count(), m_words.catalogue());
    for (const int after : placed.left)
        notes.push_back({ReadingNote::Weight::Warning, row.at,
                         "a marker after " + counted(after, "cast-on stitch", "cast-on stitches"),
                         "a first row that can be parted there", "no marker"});
    return std::move(placed.phrases);
}

// "Bind off all sts" alone is drawn as binding off to the row's end.
void TextReader::showBindOff(Phrases& phrases) const
{
    const auto bindOff = m_words.catalogue().find("bo");
    const auto worked = [](const Phrase& phrase) {
        return std::holds_alternative<Stretch>(phrase.is) || std::holds_alternative<Group>(phrase.is) ||
               std::holds_alternative<SlipFirst>(phrase.is);
    };
    if (!bindOff || m_needle.count() == 0 || std::any_of(phrases.begin(), phrases.end(), worked))
        return;
    const auto end = std::find_if(phrases.begin(), phrases.end(), [](const Phrase& phrase) {
        const auto* finish = std::get_if<FinishPhrase>(&phrase.is);
        return finish && finish->finish.kind == FinishKind::BindOff;
    });
    if (end != phrases.end())
        phrases.insert(end, {Stretch{*bindOff, {}, 0, {BoxUntil::RowEnd, {}, Quantity(0), false}}, 0, 0});
}

// "leaving 44 sts unworked" says again what the needle knows.
void TextReader::tellResting(int said, Tried& row) const
{
    const int there = row.row.base.side == Side::RS ? row.after.count() - row.after.tip : row.after.tip;
    if (m_sure && mayWork() && row.faults == 0 && m_needle.owed.fault == RowId{} && m_words.sizes() == 1 &&
        there != said)
        row.notes.push_back(
            {ReadingNote::Weight::Warning, row.row.at, "leaving " + counted(said, "st") + " unworked",
             toText(there) + ", as the stitches before it come out", "the stitches that are told"});
}

// "*k2tog, yo; rep from * to marker" with no stitches left before the marker. Nobody writes lace that is never worked;
// "k to marker" may find none.
void TextReader::tellNeverWorked(Tried& row, const Trace& trace) const
{
    const PlacedRow& placed = row.row.compact;
    if (!m_sure || !mayWork() || row.faults > 0 || m_needle.owed.fault != RowId{})
        return;
    for (const Box& box : placed.boxes) {
        const auto within = [&](int column) { return box.firstColumn <= column && column <= box.lastColumn; };
        const bool stitches = box.until != BoxUntil::Times && box.lastColumn > box.firstColumn;
        if (!stitches || std::any_of(trace.cells.begin(), trace.cells.end(),
                                         [&](const WorkedCell& cell) { return within(cell.column); }))
            continue;
        std::string words;
        const bool rs = row.row.base.side == Side::RS;
        for (int n = 0; n <= box.lastColumn - box.firstColumn; ++n) {
            const Cell cell = cellAt(placed.row, rs ? box.firstColumn + n : box.lastColumn - n);
            if (cell.stitch != noStitch && cell.part == 0)
                words += (words.empty() ? "" : ", ") +
                         abbreviation(m_words.catalogue().stitch(cell.stitch), row.row.base.side);
        }
        row.notes.push_back({ReadingNote::Weight::Warning, row.row.at, words.substr(0, 60),
                             "room for it: where its repeat begins no stitches are left before its end",
                             "a repeat that is not worked here"});
    }
}

// "(2 sts inc)" and "(12 sts worked, 5 unworked)" have no place in the model; they are compared with what
// comes out.
void TextReader::tellCounts(const CountWords& counts, Tried& row) const
{
    if (!m_sure || !mayWork() || row.faults > 0 || m_needle.owed.fault != RowId{} || m_words.sizes() > 1)
        return;
    const auto compare = [&](const std::optional<Quantity>& said, int is, const auto& inWords) {
        if (said && said->single() && said->at(0) != is)
            row.notes.push_back({ReadingNote::Weight::Warning, row.row.at, "(" + inWords(said->at(0)) + ")",
                                 inWords(is) + ", as the row comes out", "no count"});
    };
    const int change = row.after.count() - m_needle.count();
    compare(counts.change, change, [](int n) {
        return counted(std::abs(n), "st") + (n < 0 ? " dec" : n > 0 ? " inc" : " more or less");
    });
    const bool rs = row.row.base.side == Side::RS;
    const int resting = rs ? row.after.count() - row.after.tip : row.after.tip;
    // Of those ahead, or of all that the row leaves.
    const bool ofAll = counts.unworked && counts.worked &&
                       counts.worked->at(0) + counts.unworked->at(0) == row.after.count();
    if (!ofAll)
        compare(counts.unworked, resting, [](int n) { return counted(n, "st") + " unworked"; });
    if (!counts.eachTime.empty() && counts.eachTime.front() != row.after.count())
        row.notes.push_back({ReadingNote::Weight::Warning, row.row.at, counted(counts.eachTime.front(), "st"),
                             toText(row.after.count()) + ", as the row comes out", "no count"});
}

// "to 3 sts before last turn" after a double stitch: which of them are the three?
void TextReader::tellTurn(const Phrases& phrases, const DraftRow& row, std::vector<ReadingNote>& notes) const
{
    const auto last = std::find_if(m_needle.turns.rbegin(), m_needle.turns.rend(),
                                   [&](const TurnAt& t) { return t.side == row.base.side; });
    if (last == m_needle.turns.rend() || last->method != TurnMethod::DoubleStitch)
        return;
    for (const Phrase& phrase : phrases) {
        const auto* run = std::get_if<Stretch>(&phrase.is);
        const auto* group = std::get_if<Group>(&phrase.is);
        const Reach* to = run ? &run->to : group ? &group->to : nullptr;
        if (to && to->place == BoxUntil::LastTurn && to->leaving.at(0) > 0 && !to->countsDoubleStitch)
            notes.push_back({ReadingNote::Weight::Note, row.at,
                             counted(to->leaving.at(0), "st") + " before last turn",
                             "'(counting the DS)' or the stitches before the DS",
                             "counted from the gap, the double stitch among them"});
    }
}

// Tries the other readings of doubtful words where the first doesn't come out.
void TextReader::settle(Tried& best, const DraftRow& base, const NormalText& text)
{
    std::vector<int> chosen(best.doubts.size(), 0);
    const auto stated = [&](const Tried& one) {
        return one.row.base.stated && one.row.base.stated->at(0) != one.after.count() ? 1 : 0;
    };
    const bool able = m_sure && m_needle.owed.fault == RowId{} && mayWork();
    int fitting = 0;
    if (able && best.faults > 0 && !best.doubts.empty()) {
        std::vector<int> next(best.doubts.size(), 0);
        for (int tries = 0; tries < 24; ++tries) {
            std::size_t at = 0;
            while (at < next.size() && ++next[at] >= static_cast<int>(best.doubts[at].readings.size()))
                next[at++] = 0;
            if (at == next.size())
                break;
            Tried other = tried(base, text, next);
            if (!other.understood || other.doubts.size() != next.size() || other.faults + stated(other) > 0)
                continue;
            if (++fitting == 1) {
                chosen = next;
                best = std::move(other);
                if (next.size() > 3)
                    break;
            }
        }
    }
    for (std::size_t i = 0; i < best.doubts.size(); ++i) {
        const Doubt& doubt = best.doubts[i];
        if (!doubt.alwaysSay && chosen[i] == 0)
            continue;
        std::string expected;
        for (std::size_t r = 0; r < doubt.readings.size(); ++r)
            expected += (r > 0 ? " or " : "") + std::string("'") + doubt.readings[r] + "'";
        const bool only = able && best.faults == 0 && fitting == 1;
        best.notes.push_back({ReadingNote::Weight::Warning, doubt.at, doubt.found, expected + " said in full",
                              doubt.readings[static_cast<std::size_t>(chosen[i])] +
                                  (only ? ", the only reading that comes out on the needle" : "")});
    }
}

void TextReader::oneRow(const std::string& label, std::optional<Side> side, bool round,
                        const std::string& yarn, const NormalText& words)
{
    if (!m_needleBegun && !m_haveCastOn)
        guessCastOn(words, side.value_or(nextSide()));
    beginNeedle();
    if (static_cast<int>(m_section.rows.size()) >= mostRows) {
        say(ReadingNote::Weight::Error, words.placeOf(0), "more than " + toText(mostRows) + " rows",
            "another section", {});
        ++m_out.rowsNot;
        return;
    }
    DraftRow base;
    base.base.id = RowId{++m_rowId};
    base.base.side = side.value_or(round ? Side::RS : nextSide());
    base.base.yarn = m_yarn;
    base.label = label;
    base.words = words;
    base.at = words.placeOf(0);
    if (round)
        base.base.finish.kind = FinishKind::Round;
    if (!yarn.empty())
        base.base.yarn = m_words.yarn(yarn);
    if (m_section.rows.empty())
        m_section.start = m_needle;

    Tried best = tried(base, words, {});
    if (best.understood)
        settle(best, base, words);
    DraftRow& row = best.row;
    for (ReadingNote& note : best.notes)
        if (static_cast<int>(m_out.notes.size()) < mostNotes)
            m_out.notes.push_back(std::move(note));
    if (!best.understood) {
        keepAsWords(row);
        ++m_out.rowsNot;
        m_sure = false;
    } else {
        ++m_out.rowsRead;
        // "k10, turn" and then "DS, k to end": the turn was for a double stitch.
        if (!row.draft.cells.empty() && !m_section.rows.empty() &&
            m_words.catalogue().stitch(row.draft.cells.front().cell.stitch).manner == Manner::DoubleTurn) {
            DraftRow& before = m_section.rows.back();
            if (before.base.finish.kind == FinishKind::TurnEarly &&
                before.base.finish.method == TurnMethod::Plain) {
                before.base.finish.method = before.compact.row.finish.method = TurnMethod::DoubleStitch;
                m_needle.lastMethod = TurnMethod::DoubleStitch;
                for (TurnAt& turn : m_needle.turns)
                    if (turn.row == before.base.id)
                        turn.method = TurnMethod::DoubleStitch;
                best.after = m_needle;
                work(best.after, row.compact, false);
            }
        }
        m_needle = std::move(best.after);
        row.after = m_needle.count();
    }
    m_yarn = row.base.yarn;
    // "12a" after Row 14 is counted as rowLabels() counts it: the fifteenth.
    const auto number = labelNumber(label);
    if (label.empty() || (number && *number < m_lastNumber && !readInt(label)))
        ++m_lastNumber;
    else if (number)
        m_lastNumber = *number;
    m_section.rows.push_back(std::move(row));
}

const NormalText* TextReader::wordsOfRow(const std::string& label) const
{
    for (auto row = m_section.rows.rbegin(); row != m_section.rows.rend(); ++row)
        if (row->label == label)
            return &row->words;
    return nullptr;
}

// A row that an earlier head promised: "Rows 2, 4 and 6", "and all WS rows".
bool TextReader::fillOne(int number)
{
    if (const auto waiting = m_waiting.find(number); waiting != m_waiting.end()) {
        const Template told = waiting->second;
        m_waiting.erase(waiting);
        oneRow(toText(number), told.head.side, told.head.round, told.head.yarn, told.words);
        return true;
    }
    for (auto one = m_templates.rbegin(); one != m_templates.rend(); ++one) {
        using Also = RowHead::Also;
        const bool odd = number % 2 != 0;
        const Side side = nextSide();
        const Also also = one->head.also;
        const bool fits = (also == Also::RS && side == Side::RS) || (also == Also::WS && side == Side::WS) ||
                          (also == Also::Odd && odd) || (also == Also::Even && !odd) ||
                          (also == Also::Same && (number - one->from) % 2 == 0);
        if (!fits || number < one->from || (one->head.until > 0 && number > one->head.until))
            continue;
        const Template told = *one;
        const bool sided = also == Also::RS || also == Also::WS;
        oneRow(toText(number), sided ? std::optional(also == Also::RS ? Side::RS : Side::WS) : told.head.side,
               told.head.round, told.head.yarn, told.words);
        return true;
    }
    return false;
}

void TextReader::fillTo(int number)
{
    while (m_inSection && !m_section.rows.empty() && m_lastNumber + 1 < number) {
        const int next = m_lastNumber + 1;
        if (!fillOne(next)) {
            const auto later = m_waiting.lower_bound(next);
            if (later == m_waiting.end() || later->first >= number)
                return;
            fillOne(later->first);
        }
    }
}

// Of the notes from a number on those that were said before: the rows of one line share its words.
void TextReader::forgetTwice(std::size_t notes)
{
    for (std::size_t n = m_out.notes.size(); n-- > notes;) {
        const auto here = m_out.notes.begin() + static_cast<std::ptrdiff_t>(n);
        if (std::find(m_out.notes.begin(), here, *here) != here)
            m_out.notes.erase(here);
    }
}

void TextReader::rowBlock(const RowHead& head, const NormalText& words)
{
    const int number = head.labels.empty() ? 0 : labelNumber(head.labels.front()).value_or(0);
    // Numbers that begin again after a blank line begin another part.
    if (m_inSection && m_prose.empty() && m_afterBlank && number == 1 && head.labels.front() == "1" &&
        m_lastNumber > 1 && !m_section.rows.empty())
        endSection();
    if (!m_inSection || !m_prose.empty())
        beginSection();
    if (head.onlyAlso) {
        m_templates.push_back({head, words, m_lastNumber + 1});
        return;
    }
    if (m_paintedTo && number > *m_paintedTo)
        m_lastNumber = std::max(m_lastNumber, *m_paintedTo);
    else if (m_paintedTo)
        forgetPainted();
    m_paintedTo.reset();
    // A row that is numbered out of turn ("12a") comes after those that wait for their turn.
    const auto promised = [this](int next) {
        return m_waiting.contains(next) ||
               std::any_of(m_templates.begin(), m_templates.end(),
                           [next](const Template& one) { return one.head.until >= next; });
    };
    while (number > 0 && number <= m_lastNumber && promised(m_lastNumber + 1) && fillOne(m_lastNumber + 1))
        ;
    fillTo(number);
    if (repeatsUnder(head, words))
        return;
    if (head.labels.empty()) {
        oneRow({}, head.side, head.round, head.yarn, words);
    } else {
        std::optional<Side> side = head.side;
        const std::size_t notes = m_out.notes.size();
        for (std::size_t i = 0; i < head.labels.size(); ++i) {
            const auto at = labelNumber(head.labels[i]);
            // Later ones of "Rows 2, 4 and 6" wait for the rows between.
            if (i > 0 && at && readInt(head.labels[i]) && *at > m_lastNumber + 1 && m_waiting.size() < 5000) {
                m_waiting[*at] = {head, words, *at};
                continue;
            }
            oneRow(head.labels[i], side, head.round, head.yarn, words);
            if (head.range && side && !head.round)
                side = m_section.rows.back().base.finish.kind == FinishKind::Slide ? *side : otherSide(*side);
        }
        forgetTwice(notes);
    }
    if (head.also != RowHead::Also::None)
        m_templates.push_back({head, words, m_lastNumber});
}

} // namespace shawlwright
