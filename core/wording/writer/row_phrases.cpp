#include "core/wording/writer/row_phrases.h"

#include "core/wording/writer/find_repeats.h"
#include "core/wording/writer/join_runs.h"
#include "core/wording/writer/markers_passed.h"
#include "core/wording/writer/name_places.h"
#include "core/wording/writer/needless_slips.h"
#include "core/wording/writer/phrase_columns.h"
#include "core/wording/writer/quantity_words.h"
#include "core/wording/writer/row_tree.h"
#include "core/wording/writer/stitch_words.h"

#include <algorithm>

namespace shawlwright {
namespace {

class RowWriter {
public:
    explicit RowWriter(const RowToWrite& what)
        : m_what(what), m_section(what.pattern.sections[static_cast<std::size_t>(what.section)]),
          m_row(*m_section.rows[static_cast<std::size_t>(what.row)]), m_rs(m_row.side == Side::RS)
    {
        if (what.lines.empty())
            m_boxes = boxesOn(m_section, what.row);
        else if (const auto& shared = what.ledger.rows[static_cast<std::size_t>(what.lines.front())].boxes)
            m_boxes = *shared;
    }

    Phrases write()
    {
        if (!m_row.words.empty())
            return {
                {OwnWords{m_row.words}, m_row.cells.empty() ? 0 : 1, static_cast<int>(m_row.cells.size())}};
        RowSequence tree = rowTree(m_row, m_boxes, m_what.catalogue);
        if (const auto unrolled = sayMarkers(tree); !unrolled.empty()) {
            tree = rowTree(m_row, m_boxes, m_what.catalogue, unrolled);
            sayMarkers(tree);
        }
        start();
        Phrases worked = phrases(tree);
        const auto runs = [this](StitchId stitch) {
            return stitchWord(m_what.catalogue.stitch(stitch), m_row.side, Words::US).goesTo;
        };
        joinRuns(worked, runs);
        if (m_what.markers == MarkersSlipped::WhereNeeded)
            leaveOutSlips(worked);
        m_relative = std::any_of(worked.begin(), worked.end(), relative);
        if (!wholeRow(worked)) {
            findRepeats(worked, m_row, m_what.catalogue);
            if (namePlaces(worked, places(), m_row.side, m_what.catalogue, m_what.longRuns))
                m_relative = true;
            joinRuns(worked, runs);
        }
        const bool bindsOffAll = m_row.finish.kind == FinishKind::BindOff && bindsToEnd(worked);
        if (bindsOffAll)
            worked.clear(); // "bind off all sts" says it
        m_out.insert(m_out.end(), std::make_move_iterator(worked.begin()),
                     std::make_move_iterator(worked.end()));
        finish(!tree.parts.empty() && !bindsOffAll);
        return std::move(m_out);
    }

private:
    void say(auto&& phrase) { m_out.push_back({std::forward<decltype(phrase)>(phrase)}); }

    void start()
    {
        if (m_row.start.kind == StartKind::AtEdge)
            say(StartAtEdge{});
        if (m_row.start.kind == StartKind::AfterSlipping)
            say(SlipFirst{m_row.start.slip});
        if (m_row.start.joins)
            say(YarnPhrase{YarnPhrase::Act::Join, m_row.yarn});
        else if (namesYarn())
            say(YarnPhrase{YarnPhrase::Act::With, m_row.yarn});
    }

    // In the first row of a section, and where the row knitted before has another yarn.
    bool namesYarn() const
    {
        if (m_what.pattern.head.yarns.size() < 2)
            return false;
        if (m_what.row == 0)
            return true;
        if (m_what.lines.empty())
            return m_section.rows[static_cast<std::size_t>(m_what.row) - 1]->yarn != m_row.yarn;
        return std::any_of(m_what.lines.begin(), m_what.lines.end(), [&](int line) {
            const YarnId before = line > 0 ? m_what.ledger.rows[static_cast<std::size_t>(line) - 1].ref->yarn
                                           : m_what.pattern.head.castOn.yarn;
            return before != m_row.yarn;
        });
    }

    // Gives the repeats that had better be told time by time.
    std::vector<Unrolled> sayMarkers(RowSequence& tree)
    {
        for (const MarkerMove& move : m_row.moves) {
            if (move.kind == MoveKind::Shift)
                continue;
            const auto act =
                move.kind == MoveKind::Place ? MarkerPhrase::Act::Place : MarkerPhrase::Act::Remove;
            if (auto* gap = gapOf(tree, m_row, m_boxes, move))
                gap->push_back({act, move.marker});
        }
        std::vector<Unrolled> unrolled =
            sayMarkersPassed(tree, m_row, m_what.pattern, m_what.catalogue, m_what.ledger, m_what.lines);
        std::erase_if(unrolled,
                      [this](const Unrolled& one) { return !oneWay() || movesMarkersIn(*one.box); });
        for (const MarkerMove& move : m_row.moves) {
            const MarkerPhrase slip{MarkerPhrase::Act::Slip, move.marker};
            if (move.kind == MoveKind::Shift && !says(tree, slip))
                if (auto* gap = gapOf(tree, m_row, m_boxes, move))
                    gap->push_back(slip);
        }
        return unrolled;
    }

    bool movesMarkersIn(const Box& box) const
    {
        return std::any_of(m_row.moves.begin(), m_row.moves.end(), [&box](const MarkerMove& move) {
            const bool within = box.firstColumn - 1 < move.boundary && move.boundary < box.lastColumn;
            const bool atEdge = move.boundary == box.firstColumn - 1 || move.boundary == box.lastColumn;
            return within || (atEdge && move.reach == MoveReach::EachTime);
        });
    }

    static bool says(const RowSequence& sequence, const MarkerPhrase& phrase)
    {
        for (const auto& gap : sequence.gaps)
            if (std::find(gap.begin(), gap.end(), phrase) != gap.end())
                return true;
        return std::any_of(sequence.parts.begin(), sequence.parts.end(),
                           [&](const RowPart& part) { return part.inside && says(*part.inside, phrase); });
    }

    Phrases phrases(const RowSequence& sequence)
    {
        Phrases out;
        for (std::size_t i = 0; i <= sequence.parts.size(); ++i) {
            for (const MarkerPhrase& marker : sequence.gaps[i])
                out.push_back({marker});
            if (i == sequence.parts.size())
                break;
            const RowPart& part = sequence.parts[i];
            Phrase phrase = part.inside ? repeat(part) : one(part);
            // A repeat worked once is told without brackets.
            auto* group = std::get_if<Group>(&phrase.is);
            if (group && group->to.place == BoxUntil::Times && everyValueIs(group->times, 1)) {
                for (Phrase& each : group->inside)
                    append(out, std::move(each));
            } else {
                append(out, std::move(phrase));
            }
        }
        return out;
    }

    YarnId yarnOf(const RowPart& part) const
    {
        return part.cell.yarn == m_row.yarn ? YarnId{} : part.cell.yarn;
    }

    Phrase one(const RowPart& part) const
    {
        return {Stretch{part.cell.stitch, yarnOf(part), 1, {}}, part.column, part.column + part.width - 1};
    }

    Phrase repeat(const RowPart& part)
    {
        const Box& box = *part.box;
        Reach to;
        if (box.until != BoxUntil::Times) {
            to.place = box.until;
            to.leaving = box.leaving;
            if (box.until == BoxUntil::Marker)
                to.marker = box.marker;
            to.countsDoubleStitch =
                box.until == BoxUntil::LastTurn && !everyValueIs(box.leaving, 0) && turnedForDouble();
        }
        Phrases inside = phrases(*part.inside);
        Phrase phrase;
        for (const Phrase& each : inside)
            cover(phrase, each);
        if (inside.size() == 1 && box.until != BoxUntil::Times)
            if (const auto* stretch = std::get_if<Stretch>(&inside.front().is);
                stretch && stretch->count == 1 && goesTo(*stretch)) {
                phrase.is = Stretch{stretch->stitch, stretch->yarn, 0, to};
                return phrase;
            }
        phrase.is = Group{std::move(inside), box.until == BoxUntil::Times ? box.times : Quantity(1), to};
        return phrase;
    }

    bool goesTo(const Stretch& stretch) const
    {
        return stitchWord(m_what.catalogue.stitch(stretch.stitch), m_row.side, Words::US).goesTo;
    }

    // The last turn of a row of this side left a double stitch, each time the row is knitted.
    bool turnedForDouble() const
    {
        return !m_what.lines.empty() && std::all_of(m_what.lines.begin(), m_what.lines.end(), [&](int line) {
            const auto& turns = m_what.ledger.before[static_cast<std::size_t>(line)].turns;
            const auto last = std::find_if(turns.rbegin(), turns.rend(),
                                           [&](const TurnAt& t) { return t.side == m_row.side; });
            return last != turns.rend() && last->method == TurnMethod::DoubleStitch;
        });
    }

    int ahead(const LedgerLine& line) const { return m_rs ? line.restingLeft : line.restingRight; }
    int behind(const LedgerLine& line) const { return m_rs ? line.restingRight : line.restingLeft; }

    // Numbers of one run can be printed only where every size and version is knitted the same.
    bool oneWay() const
    {
        return m_what.comparedWithAll ||
               (sizeCount(m_what.pattern) == 1 &&
                (versionCount(m_what.pattern) == 1 || m_section.frame.versions.size() == 1));
    }

    bool bindsToEnd(const Phrases& worked) const
    {
        const auto* stretch = worked.size() == 1 ? std::get_if<Stretch>(&worked.front().is) : nullptr;
        return stretch && stretch->count == 0 && stretch->to.place == BoxUntil::RowEnd &&
               everyValueIs(stretch->to.leaving, 0) &&
               m_what.catalogue.stitch(stretch->stitch).manner == Manner::BoundOff;
    }

    void leaveOutSlips(Phrases& phrases) const
    {
        std::vector<NeedlessSlip> left;
        phrases = withoutNeedlessSlips(phrases, m_what.catalogue, left);
        for (Phrase& phrase : phrases)
            if (auto* group = std::get_if<Group>(&phrase.is))
                leaveOutSlips(group->inside);
    }

    // "k12" over all there is becomes "k to end", which is printed as "knit"; markers within need no word.
    bool wholeRow(Phrases& worked) const
    {
        if (!oneWay() || m_row.finish.kind == FinishKind::TurnEarly ||
            m_row.finish.kind == FinishKind::BindOff ||
            (m_what.longRuns == LongRuns::Counted && worked.size() == 1) || !fits())
            return false;
        Phrase whole;
        Stretch stretch;
        for (const Phrase& phrase : worked) {
            if (const auto* marker = std::get_if<MarkerPhrase>(&phrase.is);
                marker && marker->act == MarkerPhrase::Act::Slip)
                continue;
            const auto* run = std::get_if<Stretch>(&phrase.is);
            if (!run || run->count == 0 || run->yarn != YarnId{} ||
                !plainlyWorked(m_what.catalogue.stitch(run->stitch), m_row.side) ||
                (stretch.stitch != noStitch && stretch.stitch != run->stitch))
                return false;
            stretch.stitch = run->stitch;
            cover(whole, phrase);
        }
        if (stretch.stitch == noStitch)
            return false;
        stretch.count = 0;
        stretch.to.place = BoxUntil::RowEnd;
        whole.is = stretch;
        worked = {std::move(whole)};
        return true;
    }

    bool fits() const
    {
        return comesOut() &&
               agreed(m_what.ledger, m_what.lines, [this](const LedgerLine& l) { return ahead(l); }) == 0;
    }

    bool comesOut() const
    {
        return !m_what.lines.empty() && std::all_of(m_what.lines.begin(), m_what.lines.end(), [&](int at) {
            const LedgerLine& line = m_what.ledger.lines[static_cast<std::size_t>(at)];
            return std::none_of(line.findings.begin(), line.findings.end(), [](const Finding& f) {
                return f.kind == FindingKind::TooFewStitches || f.kind == FindingKind::StitchesLeftOver ||
                       f.kind == FindingKind::RepeatDoesNotFit;
            });
        });
    }

    // The places that words can name, where they are the same each time the row is knitted.
    std::vector<NamedPlace> places() const
    {
        std::vector<NamedPlace> all;
        if (!oneWay() || m_row.finish.kind == FinishKind::BindOff || !comesOut())
            return all;
        const bool early = m_row.finish.kind == FinishKind::TurnEarly;
        const auto left =
            agreed(m_what.ledger, m_what.lines, [this](const LedgerLine& l) { return ahead(l); });
        if (left && (early || *left == 0))
            all.push_back({{BoxUntil::RowEnd, {}, Quantity(0), false}, -*left});
        const auto before = [this](int line) -> const Needle& {
            return m_what.ledger.before[static_cast<std::size_t>(line)];
        };
        for (const MarkerAt& marker : before(m_what.lines.front()).markers)
            if (const auto at =
                    sameEachTime([&](int line) { return onlyMarker(before(line), marker.marker); }))
                all.push_back({{BoxUntil::Marker, marker.marker, Quantity(0), false}, *at});
        if (early)
            if (const auto at = sameEachTime([&](int line) -> std::optional<int> {
                    const auto& turns = before(line).turns;
                    const auto last = std::find_if(turns.rbegin(), turns.rend(),
                                                   [&](const TurnAt& t) { return t.side == m_row.side; });
                    return last == turns.rend() ? std::nullopt : std::optional(last->position);
                }))
                all.push_back({{BoxUntil::LastTurn, {}, Quantity(0), turnedForDouble()}, *at});
        return all;
    }

    // Where a marker stands that the row leaves alone, if there is one of that name only.
    std::optional<int> onlyMarker(const Needle& needle, MarkerId id) const
    {
        if (std::any_of(m_row.moves.begin(), m_row.moves.end(), [id](const MarkerMove& move) {
                return move.marker == id && move.kind != MoveKind::Shift;
            }))
            return std::nullopt;
        std::optional<int> position;
        for (const MarkerAt& marker : needle.markers) {
            if (marker.marker == id && position)
                return std::nullopt;
            if (marker.marker == id)
                position = marker.position;
        }
        return position;
    }

    // The stitches between a position and the end of what the row takes up; below zero past that end.
    template <typename Position>
    std::optional<int> sameEachTime(const Position& position) const
    {
        std::optional<int> same;
        for (const int at : m_what.lines) {
            const std::optional<int> there = position(at);
            if (!there)
                return std::nullopt;
            const LedgerLine& line = m_what.ledger.lines[static_cast<std::size_t>(at)];
            const int fromEnd = m_rs ? line.lastTaken - *there : *there - line.firstTaken;
            if (same && *same != fromEnd)
                return std::nullopt;
            same = fromEnd;
        }
        return same;
    }

    void finish(bool works)
    {
        if (m_row.finish.kind == FinishKind::TurnEarly || m_row.finish.kind == FinishKind::Slide ||
            m_row.finish.kind == FinishKind::BindOff) {
            FinishPhrase phrase{m_row.finish};
            phrase.finish.breaksYarn = false;
            if (m_row.finish.kind == FinishKind::TurnEarly && !m_relative)
                phrase.restingAhead = resting();
            if (m_row.finish.kind == FinishKind::BindOff)
                phrase.bindsAll = !works && m_row.start.kind != StartKind::AfterSlipping &&
                                  agreed(m_what.ledger, m_what.lines, [this](const LedgerLine& l) {
                                      return behind(l);
                                  }).value_or(0) == 0;
            say(phrase);
        }
        if (m_row.finish.breaksYarn)
            say(YarnPhrase{YarnPhrase::Act::Break, m_row.yarn});
    }

    static bool relative(const Phrase& phrase)
    {
        if (const auto* stretch = std::get_if<Stretch>(&phrase.is))
            return stretch->count == 0;
        const auto* group = std::get_if<Group>(&phrase.is);
        return group && (group->to.place != BoxUntil::Times ||
                         std::any_of(group->inside.begin(), group->inside.end(), relative));
    }

    int resting() const
    {
        if (!oneWay())
            return 0;
        return agreed(m_what.ledger, m_what.lines, [this](const LedgerLine& l) { return ahead(l); })
            .value_or(0);
    }

    const RowToWrite& m_what;
    const Section& m_section;
    const Row& m_row;
    bool m_rs;
    std::vector<Box> m_boxes;
    bool m_relative = false; // the words say where a row that is turned early ends
    Phrases m_out;
};

} // namespace

Phrases rowPhrases(const RowToWrite& what)
{
    return RowWriter(what).write();
}

} // namespace shawlwright
