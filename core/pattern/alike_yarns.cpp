#include "core/pattern/alike_yarns.h"

#include "core/base/text.h"

#include <cmath>
#include <optional>

namespace shawlwright {
namespace {

std::string tenths(double number)
{
    return toText(std::floor(number * 10) / 10); // rounded down: never as good as the least where it isn't
}

const char* eyes(ColourVision vision)
{
    switch (vision) {
    case ColourVision::NoRed:
        return "to eyes that don't see red (protanopia)";
    case ColourVision::NoGreen:
        return "to eyes that don't see green (deuteranopia)";
    case ColourVision::NoBlue:
        return "to eyes that don't see blue (tritanopia)";
    case ColourVision::Full:
        break;
    }
    return "";
}

std::string whatToDo(const Yarn& one, const Yarn& two)
{
    const bool darker = relativeLuminance(one.colour) <= relativeLuminance(two.colour);
    const Yarn& dark = darker ? one : two;
    const Yarn& light = darker ? two : one;
    return "make " + dark.code + " darker or " + light.code + " lighter";
}

std::optional<AlikeYarns> alike(const Yarn& one, const Yarn& two)
{
    AlikeYarns found;
    found.one = one.id;
    found.two = two.id;
    const std::string both = one.code + " and " + two.code;
    found.number = colourDifference(one.colour, two.colour);
    if (found.number < leastColourDifference) {
        found.message = both + " look alike: their colours lie " + tenths(found.number) + " apart, from " +
                        toText(leastColourDifference) + " on they are told apart well; " + whatToDo(one, two);
        return found;
    }
    for (const ColourVision vision : {ColourVision::NoRed, ColourVision::NoGreen, ColourVision::NoBlue}) {
        const double apart = colourDifference(seenWith(vision, one.colour), seenWith(vision, two.colour));
        if (apart < leastColourDifference && (found.vision == ColourVision::Full || apart < found.number)) {
            found.where = AlikeYarns::Where::ToSomeEyes;
            found.vision = vision;
            found.number = apart;
        }
    }
    if (found.where == AlikeYarns::Where::ToSomeEyes) {
        found.message = both + " look alike " + eyes(found.vision) + ": their colours lie " + tenths(found.number) +
                        " apart then, from " + toText(leastColourDifference) + " on they are told apart well; " +
                        whatToDo(one, two);
        return found;
    }
    found.number = contrastRatio(one.colour, two.colour);
    if (found.number >= leastContrast)
        return std::nullopt;
    found.where = AlikeYarns::Where::WithoutColour;
    found.message = both + " are hard to tell apart in black and white: their contrast is " + tenths(found.number) + " : 1, " +
                    toText(leastContrast) + " : 1 is enough; for such a print " + whatToDo(one, two);
    return found;
}

} // namespace

std::vector<AlikeYarns> alikeYarns(std::span<const Yarn> yarns)
{
    std::vector<AlikeYarns> found;
    for (std::size_t i = 0; i < yarns.size(); ++i)
        for (std::size_t j = i + 1; j < yarns.size(); ++j)
            if (auto pair = alike(yarns[i], yarns[j]))
                found.push_back(std::move(*pair));
    return found;
}

} // namespace shawlwright
