#include "core/needle/needle.h"

#include "core/base/text.h"

#include <algorithm>

namespace shawlwright {

Needle castOn(int stitches, YarnId yarn, Side firstSide)
{
    Needle needle;
    Loop loop;
    loop.kind = LoopKind::CastOn;
    loop.yarn = yarn;
    needle.loops.assign(static_cast<std::size_t>(std::max(0, stitches)), loop);
    needle.tip = firstSide == Side::RS ? 0 : needle.count();
    needle.lastSide = otherSide(firstSide);
    if (yarn != YarnId{})
        needle.yarns.push_back({yarn, needle.tip});
    return needle;
}

std::vector<int> segments(const Needle& needle)
{
    std::vector<int> result;
    int from = 0;
    for (const MarkerAt& marker : needle.markers) {
        result.push_back(marker.position - from);
        from = marker.position;
    }
    result.push_back(needle.count() - from);
    return result;
}

namespace {

// The innermost gaps: right one (of a wrong-side row) and left one (of a right-side row); -1: none.
std::pair<int, int> innermostGaps(const Needle& needle)
{
    int right = -1;
    int left = -1;
    for (const TurnAt& turn : needle.turns) {
        if (turn.side == Side::WS)
            right = std::max(right, turn.position);
        else
            left = left < 0 ? turn.position : std::min(left, turn.position);
    }
    return {right, left};
}

} // namespace

int betweenTurns(const Needle& needle)
{
    const auto [right, left] = innermostGaps(needle);
    return right < 0 || left < 0 ? -1 : std::max(0, left - right);
}

std::string dump(const Needle& needle)
{
    const auto [right, left] = innermostGaps(needle);
    const int restRight = std::max(0, right);
    const int restLeft = left < 0 ? needle.count() : left;
    std::vector<std::pair<int, std::string>> cuts;
    const auto cut = [&](int position, const char* sign) { cuts.emplace_back(position, sign); };
    for (const MarkerAt& marker : needle.markers)
        cut(marker.position, "|");
    if (restRight > 0) {
        cuts.insert(cuts.begin(), {0, "("});
        cut(restRight, ")");
    }
    if (restLeft < needle.count()) {
        cut(restLeft, "(");
        cut(needle.count(), ")");
    }
    std::stable_sort(cuts.begin(), cuts.end(), [](const auto& a, const auto& b) { return a.first < b.first; });

    std::string text;
    int from = 0;
    const auto number = [&](int to) {
        if (to > from)
            text += (text.empty() || text.back() == '(' ? "" : " ") + toText(to - from);
        from = to;
    };
    for (const auto& [position, sign] : cuts) {
        number(position);
        const bool closes = sign == ")";
        text += (text.empty() || closes ? "" : " ") + sign;
    }
    number(needle.count());
    return text.empty() ? "0" : text;
}

} // namespace shawlwright
