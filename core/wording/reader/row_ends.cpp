// How a row begins and ends; markers and yarns.

#include "core/wording/reader/row_parser.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

RowParser::Got RowParser::start(Phrases& out)
{
    if (m_finished)
        return Got::Nothing;
    if (m_cursor.anyOf({"move all sts to left needle", "move all stitches to left needle",
                        "start at the edge", "start again at the edge"})) {
        out.push_back({StartAtEdge{}, 0, 0});
        return Got::Something;
    }
    if (m_cursor.anyOf({"not drawn yet", "no sts worked", "no stitches worked", "work no sts", "work no stitches"}))
        return Got::Something;
    const std::size_t from = m_cursor.at();
    if (!m_worked &&
        m_cursor.anyOf({"slip first", "slip the first", "sl first", "slip next", "slip the next"})) {
        std::optional<Quantity> count = quantity();
        const bool one = !count && m_cursor.anyOf({"st", "stitch"});
        if (one)
            count = Quantity(1);
        else if (count)
            m_cursor.anyOf({"sts", "st", "stitches", "stitch"});
        m_cursor.anyOf({"purlwise", "unworked"});
        if (count && m_cursor.anyOf({"to right needle", "to the right needle", "onto right needle",
                                     "onto the right needle", "to rh needle", "to right-hand needle"})) {
            m_cursor.anyOf({"purlwise", "unworked"});
            out.push_back({SlipFirst{*count}, 0, 0});
            return Got::Something;
        }
    }
    m_cursor.to(from);
    return Got::Nothing;
}

RowParser::Got RowParser::finish(Phrases& out)
{
    const auto say = [&](FinishKind kind, TurnMethod method = TurnMethod::Plain, bool all = false) {
        Finish finish;
        finish.kind = kind;
        finish.method = method;
        out.push_back({FinishPhrase{finish, 0, all}, 0, 0});
        m_finished = true;
        return Got::Something;
    };
    const std::size_t from = m_cursor.at();
    if (m_finished) {
        // "turn, leaving 6 sts unworked"
        if (m_cursor.anyOf({"leaving", "leave"})) {
            m_cursor.anyOf({"rem", "remaining", "last", "the last", "the rem", "the remaining"});
            const auto resting = m_cursor.quantity(m_words.sizes());
            m_cursor.anyOf({"sts", "st", "stitches", "stitch"});
            const bool said = m_cursor.anyOf({"unworked", "on needle", "on the needle", "on left needle"});
            for (Phrase& phrase : out)
                if (auto* finish = std::get_if<FinishPhrase>(&phrase.is); finish && resting)
                    finish->restingAhead = resting->at(0);
            return said ? Got::Something : fault(from, m_cursor.upTo(",;."), "'leaving n sts unworked'");
        }
        if (m_cursor.anyOf({"turn work", "turn", "do not turn"}))
            return Got::Something;
        m_cursor.to(from);
        return Got::Nothing;
    }
    if (m_depth > 0)
        return Got::Nothing;
    if (m_cursor.anyOf({"wrap and turn", "wrap & turn", "wrap next st and turn", "wrap next stitch and turn",
                        "wrap next st, turn", "w&t", "w & t", "w+t", "w/t", "wt",
                        "wrap the next st and turn"}))
        return say(FinishKind::TurnEarly, TurnMethod::WrapAndTurn);
    if (m_cursor.anyOf({"make twin st, turn", "make twin stitch, turn", "make twin, turn", "twin st, turn",
                        "twin, turn"}))
        return say(FinishKind::TurnEarly, TurnMethod::TwinStitch);
    if (m_cursor.anyOf({"turn for ds", "turn for double stitch", "turn for a double stitch", "turn, ds",
                        "turn and make ds", "turn, make ds"}))
        return say(FinishKind::TurnEarly, TurnMethod::DoubleStitch);
    if (m_cursor.anyOf({"turn, pin yarn", "turn and pin yarn", "turn, place pin on yarn"}))
        return say(FinishKind::TurnEarly, TurnMethod::PinnedYarn);
    if (m_cursor.anyOf({"turn, yo", "turn and yo"}))
        return say(FinishKind::TurnEarly, TurnMethod::YarnOver);
    if (m_cursor.anyOf({"turn work", "turn"})) {
        const Stretch* last = out.empty() ? nullptr : std::get_if<Stretch>(&out.back().is);
        const Group* group = out.empty() ? nullptr : std::get_if<Group>(&out.back().is);
        const Reach* to = last && last->count == 0 ? &last->to : group ? &group->to : nullptr;
        if (to && to->place == BoxUntil::RowEnd &&
            std::all_of(to->leaving.values.begin(), to->leaving.values.end(), [](int n) { return n == 0; })) {
            m_finished = true; // the turn at the end of the row
            return Got::Something;
        }
        return say(FinishKind::TurnEarly);
    }
    if (m_cursor.anyOf(
            {"slide", "slide sts", "slide work", "do not turn, slide", "do not turn; slide", "do not turn"}))
        return say(FinishKind::Slide);
    if (m_cursor.anyOf({"bind off", "cast off", "bo", "bind-off"})) {
        if (m_cursor.anyOf({"rem sts", "remaining sts", "rem stitches", "remaining stitches"}))
            return say(FinishKind::BindOff);
        if (m_cursor.anyOf({"all sts", "all stitches", "all", "knitwise", "purlwise", "loosely"})) {
            m_cursor.anyOf({"knitwise", "purlwise", "loosely", "sts", "in pattern"});
            return say(FinishKind::BindOff, TurnMethod::Plain, true);
        }
        m_cursor.blanks();
        if (m_cursor.done() || m_cursor.peek() == '.')
            return say(FinishKind::BindOff, TurnMethod::Plain, true);
        m_cursor.to(from);
    }
    return Got::Nothing;
}

// A name after "pm", "sm", "marker": one that is known, or a new word where one may be made.
MarkerId RowParser::markerName(bool mayBeNew)
{
    const std::size_t from = m_cursor.at();
    m_cursor.blanks();
    const std::size_t start = m_cursor.at();
    const std::string& text = m_cursor.text();
    const bool bracketed = m_cursor.peek() == '(';
    if (bracketed)
        m_cursor.to(start + 1);
    const std::size_t at = m_cursor.at();
    // The longest known name first; names may hold blanks.
    MarkerId best;
    std::size_t end = at;
    const PatternHead& head = m_words.head();
    for (const bool exactly : {true, false})
        for (const Marker& marker : head.markers) {
            const std::string name = marker.name.empty() ? std::to_string(marker.id.value) : marker.name;
            if (best != MarkerId{} && at + name.size() <= end)
                continue;
            std::string there = text.substr(at, name.size());
            std::string want = name;
            if (!exactly) {
                there = lowered(there);
                want = lowered(want);
            }
            const std::size_t after = at + name.size();
            const bool whole = after >= text.size() || !Cursor::letterOrDigit(text[after]);
            if (there == want && whole && !name.empty()) {
                best = marker.id;
                end = after;
            }
        }
    if (best != MarkerId{}) {
        m_cursor.to(end);
        if (bracketed && !m_cursor.take(')'))
            m_cursor.to(from);
        return best;
    }
    if (mayBeNew && start > from) {
        std::size_t stop = at;
        while (stop < text.size() && Cursor::letterOrDigit(text[stop]))
            ++stop;
        const std::string name = text.substr(at, stop - at);
        const char next = stop < text.size() ? text[stop] : '\0';
        const bool apart =
            next == '\0' || next == ',' || next == ';' || next == '.' || next == ']' || next == ')';
        const bool word = m_words.literal(text, at, m_side).has_value() || lowered(name) == "turn";
        Phrases nothing;
        if (!name.empty() && name.size() <= 20 && apart && !word && (bracketed || !isStitch(at))) {
            m_cursor.to(stop);
            if (!bracketed || m_cursor.take(')'))
                return m_words.marker(name);
        }
    }
    m_cursor.to(from);
    return MarkerId{};
}

bool RowParser::isStitch(std::size_t at)
{
    const std::size_t here = m_cursor.at();
    m_cursor.to(at);
    Phrases nothing;
    const bool bind = m_afterBindOff;
    const bool worked = m_worked;
    const bool is = numbered(nothing) == Got::Something;
    m_afterBindOff = bind;
    m_worked = worked;
    m_cursor.to(here);
    return is;
}

RowParser::Got RowParser::marker(Phrases& out)
{
    using Act = MarkerPhrase::Act;
    const auto say = [&](Act act, bool mayBeNew) {
        out.push_back({MarkerPhrase{act, markerName(mayBeNew)}, 0, 0});
        return Got::Something;
    };
    if (m_finished)
        return Got::Nothing;
    if (m_cursor.anyOf({"pm", "place marker", "place m", "place a marker", "replace marker", "rpm"}))
        return say(Act::Place, true);
    if (m_cursor.anyOf({"sm", "slip marker", "sl marker", "slip m", "sl m", "slm"}))
        return say(Act::Slip, false);
    if (m_cursor.anyOf({"rm", "remove marker", "remove m", "take off marker"}))
        return say(Act::Remove, false);
    return Got::Nothing;
}

// A yarn by its code or name; a new one by letters that look like a code, or "yarn B".
std::optional<YarnId> RowParser::yarnName(bool mayBeNew)
{
    const std::size_t from = m_cursor.at();
    m_cursor.blanks();
    const std::size_t at = m_cursor.at();
    const std::string& text = m_cursor.text();
    std::optional<YarnId> best;
    std::size_t end = at;
    for (const bool exactly : {true, false})
        for (const Yarn& yarn : m_words.head().yarns)
            for (const std::string& name :
                 {yarn.code, yarn.name,
                  yarn.code.empty() && yarn.name.empty() ? "yarn " + std::to_string(yarn.id.value) : ""}) {
                const std::size_t after = at + name.size();
                if (name.empty() || after <= end || after > text.size())
                    continue;
                const std::string there = text.substr(at, name.size());
                const bool whole = after == text.size() || !Cursor::letterOrDigit(text[after]);
                if (whole && (exactly ? there == name : lowered(there) == lowered(name))) {
                    best = yarn.id;
                    end = after;
                }
            }
    if (best) {
        m_cursor.to(end);
        return best;
    }
    m_cursor.anyOf({"yarn", "colour", "color"});
    m_cursor.blanks();
    const std::size_t start = m_cursor.at();
    std::size_t stop = start;
    while (stop < text.size() && Cursor::letterOrDigit(text[stop]))
        ++stop;
    const std::string name = text.substr(start, stop - start);
    if (const auto known = m_words.knownYarn(name)) {
        m_cursor.to(stop);
        return known;
    }
    const bool code = !name.empty() && name.size() <= 4 && std::all_of(name.begin(), name.end(), [](char c) {
        return (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    }) && name[0] >= 'A';
    if (mayBeNew && code) {
        remark(ReadingNote::Weight::Note, start, name, "a yarn of its own");
        m_cursor.to(stop);
        return m_words.yarn(name);
    }
    m_cursor.to(from);
    return std::nullopt;
}

RowParser::Got RowParser::yarn(Phrases& out)
{
    using Act = YarnPhrase::Act;
    const std::size_t from = m_cursor.at();
    std::optional<Act> act;
    bool mayBeNew = true;
    if (m_cursor.anyOf({"break", "cut", "break off", "fasten off"})) {
        act = Act::Break;
    } else if (m_finished) {
        return Got::Nothing;
    } else if (m_cursor.anyOf({"join", "attach", "rejoin"})) {
        act = Act::Join;
    } else if (m_cursor.anyOf({"with", "using", "change to", "switch to"})) {
        act = Act::With;
    } else if (m_cursor.word("in")) {
        act = Act::With;
        mayBeNew = false;
    } else if (m_cursor.anyOf(
                   {"do not break yarn", "do not cut yarn", "don't cut yarn", "don't break yarn"})) {
        return Got::Something;
    } else {
        return Got::Nothing;
    }
    auto yarn = yarnName(true);
    const bool any = !yarn && act != Act::With && m_cursor.anyOf({"yarn", "the yarn"});
    if (!yarn && !any) {
        // A yarn by a name not heard before: what stands up to the next comma, a few words at most.
        m_cursor.blanks();
        const std::size_t at = m_cursor.at();
        const std::string name = m_cursor.upTo(",;.:()[]*");
        const std::string low = " " + lowered(name) + " ";
        const auto has = [&low](std::string_view word) { return low.find(word) != std::string::npos; };
        const bool noYarn = has(" side ") || has(" facing ") || has(" needle ") || has(" row ") ||
                            has(" round ") || low.starts_with(" in ") || low.starts_with(" for ") ||
                            low.starts_with(" to ");
        if (name.empty() || name.size() > 40 || act == Act::Break || noYarn || !mayBeNew ||
            std::count(name.begin(), name.end(), ' ') > 3) {
            m_cursor.to(from);
            return Got::Nothing;
        }
        remark(ReadingNote::Weight::Note, at, name, "a yarn of its own");
        yarn = m_words.yarn(name);
        m_cursor.to(at + name.size());
    }
    if (act == Act::With && m_worked) {
        m_inYarn = *yarn;
        return Got::Something;
    }
    out.push_back({YarnPhrase{*act, yarn.value_or(YarnId{})}, 0, 0});
    return Got::Something;
}

} // namespace shawlwright
