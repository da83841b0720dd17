#include "tests/commandline/sample.h"

#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"

namespace shawlwright::tests {

namespace {

Knit wing()
{
    Knit knit(7);
    knit.pattern().head.title = "Grüße <& Co>";
    knit.pattern().head.designer = "A. Tester";
    knit.pattern().sections.front().frame.title = "Wing";
    knit.rs("k*3 |A k*4");
    knit.ws("k*7");
    knit.rs("k*2 yo k*5");
    knit.ws("k*3 . . . . . turn:wt"); // over the left three stitches
    knit.rs(". . . . . k*3");
    knit.ws("k*8");
    return knit;
}

} // namespace

Pattern smallShawl()
{
    return wing().section("Border").rs("k*8").ws("k*8").times(2, 3).done();
}

Pattern faultyShawl()
{
    return wing().section("Border").rs("k*9").done();
}

std::string fileOf(const Pattern& pattern)
{
    return writePattern(pattern, builtInCatalogue());
}

} // namespace shawlwright::tests
