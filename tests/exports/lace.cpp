#include "tests/exports/lace.h"

#include "core/base/text.h"
#include "core/files/builtin_catalogue.h"

namespace shawlwright::tests {

Pattern lace(int columns, int rows)
{
    Knit knit(columns);
    PatternHead& head = knit.pattern().head;
    head.title = "Fir Cone Shawl <&>";
    head.designer = "A. Tester";
    head.introduction = "A shawl that flows, with fine filigree.";
    knit.pattern().sections.front().frame.title = "Lace";
    for (int row = 1; row <= rows; ++row) {
        if (row % 2 == 0) {
            knit.ws("k*2 p*" + toText(columns - 4) + " k*2");
            continue;
        }
        // A different number of plain stitches at the edge each time, so that no two rows say the same.
        const int lead = 2 + row / 2 % (columns - 10);
        std::string words = "k*" + toText(lead) + " yo k2tog";
        int left = columns - lead - 2;
        for (; left >= 6; left -= 4)
            words += " k ssk yo k";
        words += " k*" + toText(left);
        knit.rs(words);
    }
    return knit.done();
}

const Catalogue& catalogue()
{
    return builtInCatalogue();
}

std::string text(const QByteArray& bytes)
{
    return bytes.toStdString();
}

std::string squeezed(const std::string& text)
{
    std::string out;
    for (const char c : text) {
        const bool blank = c == ' ' || c == '\n' || c == '\t' || c == '\f' || c == '\r';
        if (!blank)
            out += c;
        else if (!out.empty() && out.back() != ' ')
            out += ' ';
    }
    return out;
}

int occurrences(const std::string& text, const std::string& part)
{
    int found = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
        ++found;
    return found;
}

} // namespace shawlwright::tests
