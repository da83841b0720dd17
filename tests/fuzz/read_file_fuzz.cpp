// Any bytes as a pattern file: a fault with its place, or a sound pattern that is written and opened again
// the same.

#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"
#include "core/pattern/questions.h"

#include <cstdlib>

using namespace shawlwright;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size > 1u << 18)
        return 0;
    const Catalogue& builtIn = builtInCatalogue();
    const ReadPattern opened = readPattern(std::string(reinterpret_cast<const char*>(data), size), builtIn);
    if (!opened.pattern) {
        if (opened.faults.empty())
            std::abort();
        return 0;
    }
    const Catalogue catalogue = builtIn.with(opened.pattern->head.stitches);
    if (!faultsOf(*opened.pattern, catalogue).empty())
        std::abort();
    const ReadPattern again = readPattern(writePattern(*opened.pattern, builtIn), builtIn);
    if (!again.pattern || !(*again.pattern == *opened.pattern))
        std::abort();
    return 0;
}
