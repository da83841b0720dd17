#include "core/wording/writer/find_repeats.h"

#include "core/wording/writer/name_places.h"
#include "core/wording/writer/needless_slips.h"
#include "core/wording/writer/phrase_columns.h"
#include "core/wording/writer/shortest_text.h"
#include "core/wording/writer/stitch_words.h"

#include <algorithm>
#include <optional>

namespace shawlwright {
namespace {

constexpr int mostPlaces = 4 * mostColumns; // more are not searched

int phrasesIn(const Phrases& phrases)
{
    int count = 0;
    for (const Phrase& phrase : phrases) {
        const auto* group = std::get_if<Group>(&phrase.is);
        count += group ? phrasesIn(group->inside) : isSlip(phrase) ? 0 : 1;
    }
    return count;
}

// How often a group over so many of all places must be told to lead a row: beside other things a short one is
// counted as easily.
int leadingTimes(const Phrases& inside, int places, int all)
{
    const int told = phrasesIn(inside);
    if (2 * places < all)
        return mostCount;
    if (told < 2)
        return countedAtSight + 1;
    if (4 * places >= 3 * all || told >= 4)
        return told >= 6 ? 2 : 3;
    return 6;
}

// Alike in words; the columns don't matter.
bool sameWords(const Phrase& a, const Phrase& b)
{
    const auto* inner = std::get_if<Group>(&a.is);
    const auto* other = std::get_if<Group>(&b.is);
    if (!inner || !other)
        return a.is == b.is;
    return inner->times == other->times && inner->to == other->to &&
           std::equal(inner->inside.begin(), inner->inside.end(), other->inside.begin(), other->inside.end(),
                      sameWords);
}

bool toPlace(const Phrase& phrase)
{
    const auto* run = std::get_if<Stretch>(&phrase.is);
    const auto* group = std::get_if<Group>(&phrase.is);
    return (run && run->count == 0) ||
           (group && (group->to.place != BoxUntil::Times ||
                      std::any_of(group->inside.begin(), group->inside.end(), toPlace)));
}

// Never part of a found repeat.
bool standsApart(const Phrase& phrase)
{
    if (const auto* group = std::get_if<Group>(&phrase.is))
        return toPlace(phrase) || std::any_of(group->inside.begin(), group->inside.end(), standsApart);
    return toPlace(phrase) || (!isSlip(phrase) && !std::holds_alternative<Stretch>(phrase.is));
}

int heightOf(const Phrases& phrases)
{
    int height = 0;
    for (const Phrase& phrase : phrases)
        if (const auto* group = std::get_if<Group>(&phrase.is))
            height = std::max(height, 1 + heightOf(group->inside));
    return height;
}

// One way to tell the phrases of a row.
class Telling {
public:
    // The phrases must outlive it.
    Telling(const Phrases& phrases, const Row& row, const Catalogue& catalogue, TextLength& length)
        : m_phrases(phrases), m_row(row), m_catalogue(catalogue), m_length(length)
    {
        for (const Phrase& phrase : m_phrases)
            add(phrase);
        m_places = m_tokens.empty() ? 0 : m_tokens.back().begins + m_tokens.back().places;
    }

    // False where there is nothing to be found.
    bool search(int depth)
    {
        if (m_tokens.size() < 4 || m_places > mostPlaces || m_places == 0)
            return false;
        const std::vector<bool> may = mayBegin();
        ShortestText text(
            m_tokens, [this](int token, int places) { return letters(token, places); }, may, m_length);
        m_pieces = text.pieces(depth);
        return std::any_of(m_pieces.begin(), m_pieces.end(),
                           [](const Piece& piece) { return piece.times > 1; });
    }

    Phrases told() const { return told(m_pieces, {0}); }

    // The same with the markers said that stand outside of groups.
    Phrases toldWith(const std::vector<NeedlessSlip>& slips) const
    {
        Phrases out;
        auto slip = slips.begin();
        const auto say = [&] { out.push_back((slip++)->phrase); };
        for (const Piece& piece : m_pieces) {
            while (slip != slips.end() && slip->at <= piece.from)
                say();
            if (piece.times > 1) {
                append(out, piece, {0});
                while (slip != slips.end() && slip->at < piece.to)
                    ++slip;
                continue;
            }
            int from = piece.from;
            while (slip != slips.end() && slip->at < piece.to) {
                append(out, {from, slip->at, 1, 0, {}}, {0});
                from = slip->at;
                say();
            }
            append(out, {from, piece.to, 1, 0, {}}, {0});
        }
        while (slip != slips.end())
            say();
        return out;
    }

private:
    void add(const Phrase& phrase)
    {
        Token token;
        token.apart = standsApart(phrase);
        if (!m_tokens.empty())
            token.begins = m_tokens.back().begins + m_tokens.back().places;
        if (const auto* run = std::get_if<Stretch>(&phrase.is); run && run->count > 0) {
            token.isRun = true;
            token.places = run->count;
        }
        if (const auto* group = std::get_if<Group>(&phrase.is))
            token.height = 1 + heightOf(group->inside);
        token.kind = kindOf(phrase);
        m_tokens.push_back(token);
    }

    std::uint32_t kindOf(const Phrase& phrase)
    {
        const auto* run = std::get_if<Stretch>(&phrase.is);
        const auto known = std::find_if(m_kinds.begin(), m_kinds.end(), [&](std::size_t i) {
            const Phrase& other = m_phrases[i];
            if (const auto* begun = std::get_if<Stretch>(&other.is))
                return run && run->stitch == begun->stitch && run->yarn == begun->yarn;
            return (isSlip(phrase) && isSlip(other)) || sameWords(phrase, other);
        });
        if (known != m_kinds.end())
            return static_cast<std::uint32_t>(known - m_kinds.begin());
        m_kinds.push_back(m_tokens.size());
        return static_cast<std::uint32_t>(m_kinds.size() - 1);
    }

    int letters(int token, int places) const
    {
        const Phrase& phrase = m_phrases[static_cast<std::size_t>(token)];
        if (const auto* run = std::get_if<Stretch>(&phrase.is))
            return m_length.run(run->stitch, run->yarn, places);
        return m_length.phrase(phrase);
    }

    // After binding off the run that follows is told with it ("bo 5, k11"): no group begins there.
    std::vector<bool> mayBegin() const
    {
        std::vector<bool> may(static_cast<std::size_t>(m_places) + 1, true);
        for (std::size_t i = 0; i + 1 < m_tokens.size(); ++i)
            if (const auto* run = std::get_if<Stretch>(&m_phrases[i].is);
                run && m_catalogue.stitch(run->stitch).manner == Manner::BoundOff)
                may[static_cast<std::size_t>(m_tokens[i + 1].begins)] = m_tokens[i + 1].places == 1;
        return may;
    }

    std::size_t tokenAt(int place) const
    {
        const auto after = std::upper_bound(m_tokens.begin(), m_tokens.end(), place,
                                            [](int at, const Token& token) { return at < token.begins; });
        return static_cast<std::size_t>(after - m_tokens.begin()) - 1;
    }

    Phrase part(std::size_t token, int from, int to) const
    {
        const Token& at = m_tokens[token];
        const Phrase& phrase = m_phrases[token];
        return at.isRun ? partOfRun(phrase, from - at.begins, to - at.begins, m_row, m_catalogue) : phrase;
    }

    // `times`: how far on each of the times round lies in which a piece is worked.
    void append(Phrases& out, const Piece& piece, const std::vector<int>& times) const
    {
        if (piece.times == 1) {
            const std::size_t token = tokenAt(piece.from);
            Phrase phrase = part(token, piece.from, piece.to);
            if (isSlip(phrase))
                for (const int on : times)
                    if (!(m_phrases[tokenAt(piece.from + on)].is == phrase.is))
                        std::get<MarkerPhrase>(phrase.is).marker = MarkerId{};
            out.push_back(std::move(phrase));
            return;
        }
        std::vector<int> each;
        for (int n = 0; n < piece.times; ++n)
            for (const int on : times)
                each.push_back(on + n * piece.period);
        Phrase group{Group{told(piece.inside, each), Quantity(piece.times), {}, GroupFrom::Found}, 0, 0};
        for (int at = piece.from; at < piece.to;) {
            const std::size_t token = tokenAt(at);
            const int end = std::min(piece.to, m_tokens[token].begins + m_tokens[token].places);
            cover(group, part(token, at, end));
            at = end;
        }
        out.push_back(std::move(group));
    }

    Phrases told(const std::vector<Piece>& pieces, const std::vector<int>& times) const
    {
        Phrases out;
        for (const Piece& piece : pieces)
            append(out, piece, times);
        return out;
    }

    const Phrases& m_phrases;
    const Row& m_row;
    const Catalogue& m_catalogue;
    TextLength& m_length;
    std::vector<Token> m_tokens;
    std::vector<std::size_t> m_kinds; // the first token of each
    int m_places = 0;
    std::vector<Piece> m_pieces;
};

class Finder {
public:
    Finder(const Row& row, const Catalogue& catalogue)
        : m_row(row), m_catalogue(catalogue), m_length(catalogue, row.side)
    {
    }

    void find(Phrases& phrases, int depth)
    {
        for (Phrase& phrase : phrases)
            if (auto* group = std::get_if<Group>(&phrase.is))
                find(group->inside, depth - 1);
        if (depth <= 0)
            return;
        Telling telling(phrases, m_row, m_catalogue, m_length);
        std::optional<Phrases> told;
        if (telling.search(depth))
            told = telling.told();
        if (auto other = toldWithoutSlips(phrases, depth);
            other && m_length.phrases(*other) < m_length.phrases(told ? *told : phrases))
            told = std::move(other);
        if (told)
            phrases = std::move(*told);
    }

private:
    std::optional<Phrases> toldWithoutSlips(const Phrases& phrases, int depth)
    {
        if (std::none_of(phrases.begin(), phrases.end(), isSlip))
            return std::nullopt;
        std::vector<NeedlessSlip> slips;
        const Phrases bare = withoutNeedlessSlips(phrases, m_catalogue, slips);
        if (slips.empty())
            return std::nullopt;
        Telling telling(bare, m_row, m_catalogue, m_length);
        return telling.search(depth) ? std::optional(telling.toldWith(slips)) : std::nullopt;
    }

    const Row& m_row;
    const Catalogue& m_catalogue;
    TextLength m_length;
};

int placesOf(const Phrase& phrase)
{
    if (const auto* run = std::get_if<Stretch>(&phrase.is))
        return std::max(1, run->count);
    int places = 0;
    if (const auto* group = std::get_if<Group>(&phrase.is))
        for (const Phrase& each : group->inside)
            places += placesOf(each) * (group->from == GroupFrom::Box ? 1 : group->times.at(0));
    return places;
}

// "[k2tog] 20 times": a run that the words tell as a group.
bool toldAsGroup(const Phrase& phrase, Side side, const Catalogue& catalogue)
{
    const auto* run = std::get_if<Stretch>(&phrase.is);
    if (!run || run->count == 0)
        return false;
    const Stitch& stitch = catalogue.stitch(run->stitch);
    return stitch.takesUp > 0 && stitchWord(stitch, side, Words::US).form == CountForm::Other;
}

void chooseLeading(Phrases& phrases, Side side, const Catalogue& catalogue)
{
    int all = 0;
    Phrase* widest = nullptr;
    int most = 0;
    for (Phrase& phrase : phrases) {
        const int places = placesOf(phrase);
        all += places;
        const auto* group = std::get_if<Group>(&phrase.is);
        if (group && group->to.place != BoxUntil::Times)
            return; // that one has the asterisk
        const bool found = group ? group->from == GroupFrom::Found : toldAsGroup(phrase, side, catalogue);
        if (found && places > most) {
            widest = &phrase;
            most = places;
        }
    }
    if (!widest)
        return;
    if (const auto* run = std::get_if<Stretch>(&widest->is)) {
        const Quantity times(run->count);
        Phrase once = *widest;
        std::get<Stretch>(once.is).count = 1;
        const Phrases inside{std::move(once)};
        if (times.at(0) >= leadingTimes(inside, most, all))
            widest->is = Group{inside, times, {}, GroupFrom::FoundLeading};
    } else if (auto& group = std::get<Group>(widest->is);
               group.times.at(0) >= leadingTimes(group.inside, most, all)) {
        group.from = GroupFrom::FoundLeading;
    }
}

} // namespace

void findRepeats(Phrases& phrases, const Row& row, const Catalogue& catalogue)
{
    Finder(row, catalogue).find(phrases, deepest);
    chooseLeading(phrases, row.side, catalogue);
}

} // namespace shawlwright
