#include "core/wording/reader/row_head.h"

#include "core/base/text.h"
#include "core/wording/reader/count_words.h"

#include <algorithm>

namespace shawlwright {
namespace {

constexpr int mostRowsInHead = 500;

bool figure(char c)
{
    return c >= '0' && c <= '9';
}

std::string label(Cursor& cursor)
{
    cursor.blanks();
    std::string text;
    while (Cursor::letterOrDigit(cursor.peek())) {
        text += cursor.peek();
        cursor.to(cursor.at() + 1);
    }
    return text;
}

bool looksLikeLabel(const std::string& text)
{
    return !text.empty() && text.size() <= 12 &&
           (figure(text[0]) || (text.size() > 1 && figure(text.back()) && text.size() <= 4));
}

std::optional<Side> side(Cursor& cursor)
{
    if (cursor.anyOf({"rs", "right side"}))
        return Side::RS;
    if (cursor.anyOf({"ws", "wrong side"}))
        return Side::WS;
    return std::nullopt;
}

// "5th", "21st": the number; taken as a label where "row" follows.
bool ordinal(Cursor& cursor, RowHead& head)
{
    const std::size_t from = cursor.at();
    for (;;) {
        cursor.blanks();
        const std::size_t at = cursor.at();
        std::string number;
        while (figure(cursor.peek())) {
            number += cursor.peek();
            cursor.to(cursor.at() + 1);
        }
        const bool ends = !number.empty() && number.size() <= 6 && cursor.anyOf({"st", "nd", "rd", "th"});
        if (!ends || cursor.at() != at + number.size() + 2)
            break;
        head.labels.push_back(number);
        const bool more = cursor.take(',') || cursor.word("and") || cursor.take('&');
        const bool range = !more && (cursor.take('-') || cursor.word("to"));
        if (more || range) {
            cursor.word("and");
            head.range = head.range || range;
            continue;
        }
        head.round = cursor.anyOf({"rnds", "rnd", "rounds", "round"});
        if (!head.round && !cursor.anyOf({"rows", "row"}))
            break;
        if (head.range && head.labels.size() == 2) {
            const auto a = readInt(head.labels[0]);
            const auto b = readInt(head.labels[1]);
            if (!a || !b || *a >= *b || *b - *a >= mostRowsInHead)
                break;
            head.labels.clear();
            for (int n = *a; n <= *b; ++n)
                head.labels.push_back(toText(n));
        }
        return true;
    }
    cursor.to(from);
    head.labels.clear();
    head.range = false;
    return false;
}

// "R5 (RS):", "R5:"
bool shortLabel(Cursor& cursor)
{
    const std::size_t from = cursor.at();
    cursor.blanks();
    const bool r = cursor.peek() == 'R' || cursor.peek() == 'r';
    if (r && figure(cursor.peek(1))) {
        cursor.to(cursor.at() + 1);
        std::size_t at = cursor.at();
        while (at < cursor.text().size() && figure(cursor.text()[at]))
            ++at;
        if (at + 1 < cursor.text().size() && cursor.text()[at] >= 'a' && cursor.text()[at] <= 'z' &&
            !Cursor::letterOrDigit(cursor.text()[at + 1]))
            ++at; // "R12a"
        // "r5, k2" is no row: a colon, a side or a range of rows must follow.
        const std::string_view rest = std::string_view(cursor.text()).substr(at);
        const std::size_t next = rest.find_first_not_of(' ');
        if (next != std::string_view::npos && (rest[next] == ':' || rest[next] == '(' || rest[next] == '-'))
            return true;
        if (next != std::string_view::npos && rest.substr(next).starts_with("and "))
            return true;
        if (next != std::string_view::npos && rest[next] == ',') { // "R2, 4 and 6:"
            const std::size_t another = rest.find_first_not_of(' ', next + 1);
            return another != std::string_view::npos && figure(rest[another]);
        }
    }
    cursor.to(from);
    return false;
}

// "1, 3 and 5", "2-8", "1a"
bool labels(Cursor& cursor, RowHead& head)
{
    for (;;) {
        std::size_t from = cursor.at();
        const std::string first = label(cursor);
        if (!looksLikeLabel(first)) {
            cursor.to(from);
            return !head.labels.empty();
        }
        head.labels.push_back(first);
        from = cursor.at();
        if (cursor.take('-') || cursor.anyOf({"to", "through", "thru"})) {
            const std::string last = label(cursor);
            const auto a = readInt(first);
            const auto b = readInt(last);
            if (a && b && *a < *b && *b - *a < mostRowsInHead) {
                for (int n = *a + 1; n <= *b; ++n)
                    head.labels.push_back(toText(n));
                head.range = true;
            } else {
                cursor.to(from);
                return true;
            }
        }
        from = cursor.at();
        if (!(cursor.take(',') ? (cursor.word("and"), true) : (cursor.word("and") || cursor.take('&'))))
            return true;
        const std::size_t next = cursor.at();
        if (!looksLikeLabel(label(cursor))) {
            cursor.to(from);
            return true;
        }
        cursor.to(next);
        if (head.labels.size() > mostRowsInHead)
            return false;
    }
}

bool shortRow(Cursor& cursor)
{
    cursor.blanks();
    if ((cursor.peek() != 'R' && cursor.peek() != 'r') || !figure(cursor.peek(1)))
        return false;
    cursor.to(cursor.at() + 1);
    return true;
}

// "to Row 12" behind "and all WS rows"
int untilRow(Cursor& cursor)
{
    const std::size_t from = cursor.at();
    if (cursor.anyOf({"to", "through", "thru", "up to"})) {
        RowHead last;
        if (ordinal(cursor, last))
            return readInt(last.labels.back()).value_or(0);
        if (cursor.anyOf({"row", "rnd", "round"}) || shortRow(cursor))
            if (const auto number = cursor.figures())
                return *number;
    }
    cursor.to(from);
    return 0;
}

// "and all following WS rows", "and every alternate row"
bool also(Cursor& cursor, RowHead& head)
{
    const std::size_t from = cursor.at();
    cursor.take(',');
    cursor.anyOf({"and", "&"});
    if (!cursor.anyOf({"all", "every"})) {
        cursor.to(from);
        return false;
    }
    using Also = RowHead::Also;
    Also kind = Also::None;
    for (bool more = true; more;) {
        more = false;
        if (cursor.anyOf({"following", "foll", "subsequent", "remaining", "rem"}))
            more = true;
        else if (const auto which = side(cursor))
            kind = *which == Side::RS ? Also::RS : Also::WS, more = true;
        else if (cursor.anyOf({"odd-numbered", "odd numbered", "odd"}))
            kind = Also::Odd, more = true;
        else if (cursor.anyOf({"even-numbered", "even numbered", "even"}))
            kind = Also::Even, more = true;
        else if (cursor.anyOf({"other", "alternate", "alt"}))
            kind = kind == Also::None ? Also::Same : kind, more = true;
    }
    if (!cursor.anyOf({"rows", "row", "rnds", "rnd", "rounds", "round"}) || kind == Also::None) {
        cursor.to(from);
        return false;
    }
    head.also = kind;
    head.until = untilRow(cursor);
    return true;
}

void sideInBrackets(Cursor& cursor, RowHead& head, bool& told)
{
    const std::size_t from = cursor.at();
    const char closer = cursor.take('(') ? ')' : cursor.take('[') ? ']' : '\0';
    const auto found = side(cursor);
    if (closer == '\0') {
        if (found && cursor.peek() == ':')
            head.side = found;
        else
            cursor.to(from);
        return;
    }
    if (found) {
        cursor.anyOf({"facing", "row"});
        if (cursor.word("first"))
            head.range = true;
        const bool yarn = cursor.take(',') || cursor.word("with");
        cursor.blanks();
        const std::string rest = cursor.upTo(")]");
        if (yarn)
            head.yarn = rest;
        cursor.to(cursor.at() + rest.size());
    } else {
        cursor.blanks();
        head.yarn = cursor.upTo(")],");
        cursor.to(cursor.at() + head.yarn.size());
    }
    if (!cursor.take(closer) || head.yarn.size() > 20) {
        head.yarn.clear();
        cursor.to(from);
        return;
    }
    if (found)
        head.side = found;
    told = found.has_value();
}

} // namespace

std::optional<int> labelNumber(std::string_view label)
{
    std::size_t end = 0;
    while (end < label.size() && figure(label[end]))
        ++end;
    if (end + 1 < label.size())
        return std::nullopt;
    return readInt(label.substr(0, end));
}

std::optional<RowHead> rowHead(const NormalText& line)
{
    Cursor cursor(line);
    RowHead head;
    bool told = false;
    if (also(cursor, head)) {
        head.onlyAlso = true;
    } else {
        const bool named = cursor.anyOf({"set-up", "setup", "set up", "foundation", "next", "first"});
        cursor.anyOf({"short", "inc", "dec", "increase", "decrease", "edging"});
        const bool bySide = !named && cursor.at() == 0 && side(cursor).has_value();
        if (bySide) {
            cursor.to(0);
            head.side = side(cursor);
        }
        const bool numbered = ordinal(cursor, head);
        if (numbered || cursor.anyOf({"rows", "row"}) || shortLabel(cursor))
            head.round = head.round && numbered;
        else if (cursor.anyOf({"rnds", "rnd", "rounds", "round"}))
            head.round = true;
        else
            return std::nullopt;
        if (!numbered && !labels(cursor, head) && !named && !bySide)
            return std::nullopt;
    }
    sideInBrackets(cursor, head, told);
    if (!head.onlyAlso)
        also(cursor, head);
    if (!told)
        sideInBrackets(cursor, head, told);
    cursor.anyOf({"(inc row)", "(dec row)", "(increase row)", "(decrease row)", "(inc)", "(dec)",
                  "(increase)", "(decrease)", "(setup)", "(set-up)", "(buttonhole)", "inc row", "dec row"});
    cursor.blanks();
    const bool ended = cursor.take(':') || (!head.labels.empty() && (cursor.take('.') || cursor.take('-')));
    if (!ended && !told && head.labels.empty())
        return std::nullopt;
    head.sure = ended || told;
    cursor.blanks();
    head.end = cursor.at();
    if (!head.side && !head.onlyAlso && (head.also == RowHead::Also::RS || head.also == RowHead::Also::WS))
        head.side = head.also == RowHead::Also::RS ? Side::RS : Side::WS;
    return head;
}

std::optional<PlainRows> plainRows(const NormalText& line)
{
    Cursor cursor(line);
    PlainRows rows;
    cursor.blanks();
    const std::size_t from = cursor.at();
    const bool even = cursor.anyOf({"work even", "work straight"});
    if (!even && !cursor.anyOf({"knit", "purl", "k", "p", "work"}))
        return std::nullopt;
    const bool work = !even && cursor.at() - from == 4 && lowered(line.text.substr(from, 4)) == "work";
    rows.words = part(line, from, cursor.at());
    if (even)
        cursor.anyOf({"in pattern"}), cursor.word("for");
    const auto count = cursor.number();
    if (!count || *count < 1 || *count > mostRowsInHead)
        return std::nullopt;
    rows.count = *count;
    cursor.word("more");
    if (cursor.anyOf({"rnds", "rnd", "rounds", "round"}))
        rows.round = true;
    else if (!cursor.anyOf({"rows", "row"}))
        return std::nullopt;
    if (work) { // "Work 4 rows even."
        if (!cursor.anyOf({"even", "straight"}))
            return std::nullopt;
        rows.words.text = "work even";
        rows.words.at.assign(rows.words.text.size() + 1, line.placeOf(from));
    }
    cursor.take('.');
    cursor.blanks();
    return cursor.done() ? std::optional(rows) : std::nullopt;
}

std::optional<RowRepeat> rowRepeat(const NormalText& line, int sizes, bool afterHead)
{
    Cursor cursor(line);
    RowRepeat repeat;
    repeat.work = !cursor.anyOf({"rep", "repeat", "rpt"});
    const bool said = !repeat.work || cursor.word("work");
    const bool as = afterHead && repeat.work && cursor.anyOf({"the same as", "same as", "as for", "as in", "as"});
    if (!said && !as)
        return std::nullopt;
    cursor.anyOf({"the last", "last", "these", "previous", "the previous", "the"});
    bool counted = false;
    RowHead named;
    if (ordinal(cursor, named)) { // "Rep 3rd-6th rows"
        counted = true;
        repeat.first = named.labels.front();
        repeat.last = named.labels.back();
    } else if (const auto rows = cursor.number()) {
        repeat.rows = *rows;
        counted = true;
    }
    if (named.labels.empty() && !cursor.anyOf({"rows", "row", "rnds", "rnd", "rounds", "round"}) &&
        !shortRow(cursor))
        return std::nullopt;
    if (!counted) {
        const std::size_t from = cursor.at();
        repeat.first = label(cursor);
        if (repeat.first.empty() || numberWord(lowered(repeat.first)) ||
            !std::any_of(repeat.first.begin(), repeat.first.end(), figure)) {
            cursor.to(from);
            repeat.first.clear();
            repeat.rows = 1;
        } else {
            repeat.last = repeat.first;
            const std::size_t after = cursor.at();
            if (cursor.take('-') || cursor.anyOf({"to", "through", "thru", "and"})) {
                repeat.last = label(cursor);
                if (repeat.last.empty()) {
                    cursor.to(after);
                    repeat.last = repeat.first;
                }
            }
        }
    }
    cursor.take(',');
    cursor.word("(repeats included)");
    cursor.take(',');
    const std::size_t from = cursor.at();
    using Means = RowRepeat::Means;
    const bool another = cursor.word("another");
    auto number = cursor.quantity(sizes);
    if (number && cursor.anyOf({"more times", "more time", "times more", "time more"})) {
        repeat.times = *number;
    } else {
        cursor.to(from);
        cursor.anyOf({"another", "for"});
        const bool inAll = cursor.anyOf({"a total of", "in total"});
        number = cursor.times(sizes);
        if (number) {
            repeat.times = *number;
            if (cursor.word("more") || another)
                repeat.means = Means::More;
            else if (inAll || cursor.anyOf({"in all", "total", "in total", "altogether"}))
                repeat.means = Means::InAll;
            else
                repeat.means = Means::Unsaid;
        } else {
            cursor.to(from);
            if (cursor.word("until")) {
                cursor.anyOf({"there are", "you have"});
                number = cursor.quantity(sizes);
                if (!number || !cursor.anyOf({"sts", "st", "stitches"}))
                    return std::nullopt;
                cursor.anyOf(
                    {"remain", "rem", "are on needle", "on needle", "are on the needle", "on the needle"});
                repeat.times = *number;
                repeat.means = Means::UntilStitches;
            } else {
                repeat.times = 1;
                repeat.means = Means::Unsaid;
                cursor.blanks();
                if (!cursor.done() && cursor.peek() != '.' && cursor.peek() != '(')
                    return std::nullopt;
            }
        }
    }
    cursor.take('.');
    if (const auto count = countWords(cursor, sizes))
        repeat.total = count->total;
    cursor.blanks();
    repeat.rest = std::string(trimmed(std::string_view(cursor.text()).substr(cursor.at())));
    return repeat;
}

std::optional<CastOnWords> castOnWords(const NormalText& line, int sizes)
{
    Cursor cursor(line);
    CastOnWords words;
    if (cursor.anyOf({"with", "using"})) {
        cursor.blanks();
        words.yarn = cursor.upTo(",");
        cursor.to(cursor.at() + words.yarn.size());
        cursor.take(',');
    }
    if (cursor.word("begin without sts")) {
        words.stitches = 0;
    } else {
        if (!cursor.anyOf({"cast on", "co", "cast-on"}))
            return std::nullopt;
        const auto stitches = cursor.quantity(sizes);
        if (!stitches)
            return std::nullopt;
        words.stitches = *stitches;
        cursor.anyOf({"sts", "st", "stitches", "stitch"});
    }
    for (bool more = true; more;) {
        more = false;
        cursor.take(',');
        cursor.take(';');
        cursor.word("and");
        if (cursor.anyOf({"with", "in"})) {
            cursor.blanks();
            words.yarn = cursor.upTo(",;.(");
            cursor.to(cursor.at() + words.yarn.size());
            more = true;
        } else if (cursor.take('(')) {
            const std::size_t from = cursor.at();
            int open = 1;
            while (!cursor.done() && open > 0) {
                open += cursor.peek() == '(' ? 1 : cursor.peek() == ')' ? -1 : 0;
                cursor.to(cursor.at() + 1);
            }
            words.method = cursor.text().substr(from, cursor.at() - from - (open == 0 ? 1 : 0));
            more = true;
        } else if (cursor.word("using")) {
            cursor.anyOf({"the", "a"});
            cursor.blanks();
            words.method = cursor.upTo(",;.(");
            cursor.to(cursor.at() + words.method.size());
            more = true;
        } else if (cursor.anyOf({"pm after", "placing markers after", "place markers after",
                                 "place marker after", "placing marker after"})) {
            while (const auto at = cursor.number()) {
                words.markersAfter.push_back(*at);
                cursor.anyOf({"sts", "st", "stitches"});
                cursor.take(',');
                cursor.word("and");
                cursor.word("after");
            }
            cursor.anyOf({"sts", "st", "stitches"});
            more = !words.markersAfter.empty();
        } else if (cursor.take('.')) {
            more = true;
        } else if (cursor.anyOf({"the ws faces for the first row", "ws faces for the first row"})) {
            words.wrongSideFaces = true;
            more = true;
        }
    }
    cursor.blanks();
    words.rest = std::string(trimmed(std::string_view(cursor.text()).substr(cursor.at())));
    return words;
}

} // namespace shawlwright
