#include "core/wording/writer/phrase_text.h"

#include "core/base/text.h"
#include "core/pattern/questions.h"
#include "core/wording/writer/quantity_words.h"
#include "core/wording/writer/stitch_words.h"
#include "core/wording/writer/turn_words.h"

#include <algorithm>

namespace shawlwright {
namespace {

std::string markerName(const PatternHead& head, MarkerId id)
{
    if (id == MarkerId{} || head.markers.size() == 1)
        return {};
    const Marker* marker = markerOf(head, id);
    return marker && !marker->name.empty() ? marker->name : toText(id.value);
}

std::string reachInWords(const PatternHead& head, const Reach& to)
{
    const bool atPlace = everyValueIs(to.leaving, 0);
    if (to.place == BoxUntil::RowEnd) {
        if (atPlace)
            return "to end";
        return everyValueIs(to.leaving, 1) ? "to last st" : "to last " + stitchesInWords(to.leaving);
    }
    const std::string place = to.place == BoxUntil::Marker ? markerInWords(head, to.marker) : "last turn";
    if (atPlace)
        return "to " + place;
    return "to " + stitchesInWords(to.leaving) + " before " + place +
           (to.countsDoubleStitch ? " (counting the DS)" : "");
}

constexpr char phraseBegins = '\1', phraseEnds = '\2'; // around phrases with columns; no text of a pattern has these

class Teller {
public:
    explicit Teller(const TextContext& context, bool marks = false) : m_context(context), m_marks(marks) {}

    const std::vector<const Phrase*>& marked() const { return m_marked; }

    std::string row(const Phrases& phrases)
    {
        if (phrases.size() == 1)
            if (const auto* own = std::get_if<OwnWords>(&phrases.front().is))
                return own->words;
        std::string text = wholeRow(phrases) ? start(phrases) : sequence(phrases, {});
        if (std::none_of(phrases.begin(), phrases.end(), says))
            add(text, notDrawn(phrases) ? "not drawn yet" : "no sts worked");
        for (const Phrase& phrase : phrases)
            if (const auto* yarn = std::get_if<YarnPhrase>(&phrase.is);
                yarn && yarn->act == YarnPhrase::Act::Break)
                text += (text.empty() ? "Break " : ". Break ") + yarnInWords(m_context.head, yarn->yarn);
        return begun(text, phrases) + ".";
    }

private:
    // Where a phrase stands: within a starred repeat, within how many brackets.
    struct Depth {
        bool starred = false;
        int brackets = 0;
    };

    const Stitch& stitch(StitchId id) const { return m_context.catalogue.stitch(id); }
    StitchWord word(StitchId id) const
    {
        StitchWord called =
            stitchWord(stitch(id), m_context.side, m_context.style.words, m_context.style.times);
        if (m_context.style.capitals == Capitals::Stitches && !m_marks)
            capitalise(called.word, 0);
        return called;
    }

    // Unless another stitch goes by the word with a capital.
    void capitalise(std::string& text, std::size_t at) const
    {
        if (at >= text.size() || text[at] < 'a' || text[at] > 'z')
            return;
        std::size_t letters = at + 1;
        while (letters < text.size() && text[letters] >= 'a' && text[letters] <= 'z')
            ++letters;
        const std::size_t end = std::min(text.find_first_of(" ,;.[]()*", at), text.size());
        std::string capital = text.substr(at, end - at);
        capital.front() = static_cast<char>(capital.front() - 'a' + 'A');
        for (const std::string& word :
             {capital, capital.substr(0, letters - at), capital.substr(0, letters - at) + "1"})
            if (m_context.catalogue.worked(word, m_context.side))
                return;
        text[at] = capital.front();
    }

    static void add(std::string& text, const std::string& part)
    {
        if (!part.empty())
            text += (text.empty() ? "" : ", ") + part;
    }

    std::string sequence(const Phrases& phrases, Depth depth)
    {
        std::string text;
        for (std::size_t i = 0; i < phrases.size(); ++i) {
            const Phrase* before = i > 0 ? &phrases[i - 1] : nullptr;
            const Phrase* next = i + 1 < phrases.size() ? &phrases[i + 1] : nullptr;
            const std::size_t mark = m_marked.size();
            const bool marks = m_marks && phrases[i].firstColumn > 0;
            if (marks)
                m_marked.push_back(&phrases[i]);
            const std::string part =
                std::visit([&](const auto& is) { return tell(is, before, next, depth); }, phrases[i].is);
            if (marks && part.empty())
                m_marked.resize(mark);
            add(text, marks && !part.empty() ? phraseBegins + part + phraseEnds : part);
        }
        return text;
    }

    // The only work of the row is one plain stitch to its end.
    static const Stretch* onlyStretch(const Phrases& phrases)
    {
        const Stretch* only = nullptr;
        for (const Phrase& phrase : phrases) {
            const auto* stretch = std::get_if<Stretch>(&phrase.is);
            if (const auto* finish = std::get_if<FinishPhrase>(&phrase.is)) {
                if (finish->finish.kind != FinishKind::Slide)
                    return nullptr;
            } else if (stretch && !only) {
                only = stretch;
            } else if (!std::holds_alternative<YarnPhrase>(phrase.is) &&
                       !std::holds_alternative<StartAtEdge>(phrase.is)) {
                return nullptr;
            }
        }
        return only;
    }

    bool wholeRow(const Phrases& phrases) const
    {
        const Stretch* only = onlyStretch(phrases);
        return only && only->count == 0 && only->to.place == BoxUntil::RowEnd &&
               everyValueIs(only->to.leaving, 0) && only->yarn == YarnId{} &&
               plainlyWorked(stitch(only->stitch), m_context.side);
    }

    std::string start(const Phrases& phrases)
    {
        std::string text;
        for (const Phrase& phrase : phrases) {
            if (const auto* stretch = std::get_if<Stretch>(&phrase.is)) {
                std::string word = abbreviation(stitch(stretch->stitch), m_context.side) == "k" ? "knit" : "purl";
                if (m_marks && phrase.firstColumn > 0) {
                    m_marked.push_back(&phrase);
                    word = phraseBegins + word + phraseEnds;
                }
                add(text, word);
            }
            else
                add(text,
                    std::visit([&](const auto& is) { return tell(is, nullptr, nullptr, {}); }, phrase.is));
        }
        return text;
    }

    static bool says(const Phrase& phrase)
    {
        return !std::holds_alternative<YarnPhrase>(phrase.is) &&
               !std::holds_alternative<StartAtEdge>(phrase.is);
    }

    // Rows begin with a capital where a sentence does, with the abbreviation where they begin with a stitch.
    std::string begun(std::string text, const Phrases& phrases) const
    {
        if (m_marks)
            return text;
        if (m_context.style.capitals != Capitals::Small) {
            capitalise(text, text.find_first_not_of("*[("));
            return text;
        }
        const bool sentence =
            std::holds_alternative<YarnPhrase>(phrases.empty() ? Phrase{}.is : phrases.front().is) ||
            (!phrases.empty() && (std::holds_alternative<SlipFirst>(phrases.front().is) ||
                                  std::holds_alternative<StartAtEdge>(phrases.front().is)));
        if (sentence && text.front() >= 'a' && text.front() <= 'z')
            text.front() = static_cast<char>(text.front() - 'a' + 'A');
        return text;
    }

    std::string inYarn(YarnId yarn) const
    {
        return yarn == YarnId{} ? std::string() : " in " + yarnInWords(m_context.head, yarn);
    }

    static std::string bracketed(const std::string& inside, int brackets)
    {
        return brackets % 2 == 0 ? "[" + inside + "]" : "(" + inside + ")";
    }

    // A run of plain knits or purls, two or more, in the row's yarn: what may follow binding off without a
    // word.
    bool plainRun(const Phrase* phrase) const
    {
        const auto* run = phrase ? std::get_if<Stretch>(&phrase->is) : nullptr;
        return run && run->yarn == YarnId{} && run->count != 1 &&
               plainlyWorked(stitch(run->stitch), m_context.side);
    }

    static bool works(const Phrase* phrase)
    {
        return phrase && !std::holds_alternative<FinishPhrase>(phrase->is) &&
               !std::holds_alternative<YarnPhrase>(phrase->is);
    }

    bool bindsOff(const Phrase* phrase) const
    {
        const auto* run = phrase ? std::get_if<Stretch>(&phrase->is) : nullptr;
        return run && run->count > 0 && run->yarn == YarnId{} &&
               stitch(run->stitch).manner == Manner::BoundOff;
    }

    std::string tell(const Stretch& run, const Phrase* before, const Phrase* next, Depth depth)
    {
        const Stitch& what = stitch(run.stitch);
        const StitchWord called = word(run.stitch);
        const std::string yarn = inYarn(run.yarn);
        if (run.count == 0) {
            const std::string rest = " " + reachInWords(m_context.head, run.to);
            return lettersOf(called) + yarn + rest + remainder(what, next, depth, false);
        }
        const bool oneDone =
            run.count > 1 && run.yarn == YarnId{} && bindsOff(before) && plainlyWorked(what, m_context.side);
        const int count = run.count - (oneDone ? 1 : 0);
        const std::string after = remainder(what, next, depth, run.yarn == YarnId{} && plainRun(next));
        if (called.form != CountForm::Other)
            return called.times(toText(count)) + yarn + after;
        const std::string one = called.word + yarn;
        if (count == 1)
            return one + after;
        const bool yarnOver = isYarnOver(what) && what.leaves == 1;
        if (yarnOver && count <= 3) { // "yo twice" is one stitch of two loops
            std::string each;
            for (int i = 0; i < count; ++i)
                add(each, one);
            return each;
        }
        return (yarnOver ? one : bracketed(one, depth.brackets)) + " " +
               timesInWords(count, m_context.style.times) + after;
    }

    static std::string lettersOf(const StitchWord& called)
    {
        return called.form == CountForm::Plain ? std::string(trimmed(called.word)) + called.tail
                                               : called.word;
    }

    // After binding off one stitch stands on the right needle. `told`: the number of the run that follows
    // tells it.
    std::string remainder(const Stitch& what, const Phrase* next, Depth depth, bool told) const
    {
        const bool follows = works(next) || (!next && (depth.brackets > 0 || depth.starred));
        return what.manner == Manner::BoundOff && follows && !told ? " (st on right needle counts as next st)"
                                                                   : "";
    }

    std::string tell(const Group& group, const Phrase*, const Phrase* next, Depth depth)
    {
        const bool leads = group.from == GroupFrom::FoundLeading;
        if (leads && m_context.style.repeats == RepeatForm::Asterisk && mayStar(depth))
            return starred(group, depth,
                           group.to.place != BoxUntil::Times ? reachInWords(m_context.head, group.to)
                                                             : moreTimes(group.times));
        if (!leads && group.to.place != BoxUntil::Times)
            return repeatTo(group, depth);
        if (everyValueIs(group.times, 1))
            return sequence(group.inside, depth);
        if (group.inside.size() == 1)
            if (const auto* run = std::get_if<Stretch>(&group.inside.front().is); run && run->count == 1) {
                const StitchWord called = word(run->stitch);
                if (called.form != CountForm::Other)
                    return called.times(inWords(group.times)) + inYarn(run->yarn) +
                           remainder(stitch(run->stitch), next, depth, false);
            }
        const int brackets = depth.brackets;
        ++depth.brackets;
        return bracketed(sequence(group.inside, depth), brackets) + " " +
               timesInWords(group.times, m_context.style.times);
    }

    bool mayStar(Depth depth) const { return !depth.starred && depth.brackets == 0 && m_stars < 2; }

    // "rep from * twice more": Josephine Kush, Row Repeats.
    std::string moreTimes(Quantity times) const
    {
        for (int& n : times.values)
            --n;
        const TimesForm form = m_context.style.times;
        return everyValueIs(times, 2) && form != TimesForm::Figures ? "twice more"
                                                                    : moreTimesInWords(times, form);
    }

    std::string starred(const Group& group, Depth depth, const std::string& reach)
    {
        const std::string star(static_cast<std::size_t>(++m_stars), '*');
        depth.starred = true;
        return star + sequence(group.inside, depth) + "; " + repeatWord() + " from " + star + " " + reach;
    }

    const char* repeatWord() const
    {
        return m_context.style.repeatWord == RepeatWord::Repeat ? "repeat" : "rep";
    }

    std::string repeatTo(const Group& group, Depth depth)
    {
        const std::string reach = reachInWords(m_context.head, group.to);
        if (m_context.style.repeats == RepeatForm::Asterisk && mayStar(depth))
            return starred(group, depth, reach);
        const int brackets = depth.brackets;
        ++depth.brackets;
        return std::string(repeatWord()) + " " + bracketed(sequence(group.inside, depth), brackets) + " " +
               reach;
    }

    std::string tell(const MarkerPhrase& marker, const Phrase*, const Phrase*, Depth) const
    {
        const std::string name = markerName(m_context.head, marker.marker);
        const std::string named = name.empty() ? std::string() : " " + name;
        switch (marker.act) {
        case MarkerPhrase::Act::Place:
            return "pm" + named;
        case MarkerPhrase::Act::Remove:
            return "remove marker" + named;
        case MarkerPhrase::Act::Slip:
            break;
        }
        return "sm" + named;
    }

    std::string tell(const YarnPhrase& yarn, const Phrase*, const Phrase*, Depth) const
    {
        switch (yarn.act) {
        case YarnPhrase::Act::With:
            return "with " + yarnInWords(m_context.head, yarn.yarn);
        case YarnPhrase::Act::Join:
            return "join " + yarnInWords(m_context.head, yarn.yarn);
        case YarnPhrase::Act::Break:
            break; // a sentence of its own
        }
        return {};
    }

    std::string tell(const SlipFirst& slip, const Phrase*, const Phrase*, Depth) const
    {
        return "slip first " + (everyValueIs(slip.count, 1) ? "st" : stitchesInWords(slip.count)) +
               " to right needle";
    }

    std::string tell(const StartAtEdge&, const Phrase*, const Phrase*, Depth) const
    {
        return "move all sts to left needle";
    }

    std::string tell(const FinishPhrase& finish, const Phrase*, const Phrase*, Depth) const
    {
        switch (finish.finish.kind) {
        case FinishKind::TurnEarly:
            return turnInWords(finish.finish.method) +
                   (finish.restingAhead > 0
                        ? ", leaving " + stitchesInWords(finish.restingAhead) + " unworked"
                        : "");
        case FinishKind::Slide:
            return slideInWords();
        case FinishKind::BindOff:
            return bindOffInWords(finish.bindsAll, m_context.style.words);
        default:
            return {};
        }
    }

    std::string tell(const OwnWords& own, const Phrase*, const Phrase*, Depth) const { return own.words; }

    const TextContext& m_context;
    bool m_marks;
    std::vector<const Phrase*> m_marked;
    int m_stars = 0;
};

} // namespace

std::vector<PhraseSpan> phraseSpans(const Phrases& phrases, const TextContext& context)
{
    Teller teller(context, true);
    const std::string text = teller.row(phrases);
    std::vector<PhraseSpan> spans;
    std::vector<std::size_t> open;
    std::size_t at = 0;
    for (const char letter : text) {
        if (letter == phraseBegins) {
            const Phrase& phrase = *teller.marked()[spans.size()];
            open.push_back(spans.size());
            spans.push_back({at, at, phrase.firstColumn, phrase.lastColumn});
        } else if (letter == phraseEnds) {
            spans[open.back()].end = at;
            open.pop_back();
        } else {
            ++at;
        }
    }
    return spans;
}

bool notDrawn(const Phrases& phrases)
{
    return std::all_of(phrases.begin(), phrases.end(),
                       [](const Phrase& phrase) { return std::holds_alternative<YarnPhrase>(phrase.is); });
}

std::string inWords(const Phrases& phrases, const TextContext& context)
{
    return Teller(context).row(phrases);
}

std::string yarnInWords(const PatternHead& head, YarnId id)
{
    const Yarn* yarn = yarnOf(head, id);
    if (yarn && !yarn->code.empty())
        return yarn->code;
    return yarn && !yarn->name.empty() ? yarn->name : "yarn " + toText(id.value);
}

std::string markerInWords(const PatternHead& head, MarkerId marker)
{
    const std::string name = markerName(head, marker);
    return name.empty() ? "marker" : "marker " + name;
}

} // namespace shawlwright
