#include "core/wording/writer/turn_words.h"

namespace shawlwright {

std::string turnInWords(TurnMethod method)
{
    switch (method) {
    case TurnMethod::WrapAndTurn:
        return "w&t";
    case TurnMethod::DoubleStitch:
        return "turn for DS";
    case TurnMethod::YarnOver:
        return "turn, yo";
    case TurnMethod::PinnedYarn:
        return "turn, pin yarn";
    case TurnMethod::TwinStitch:
        return "make twin st, turn";
    case TurnMethod::Plain:
        break;
    }
    return "turn";
}

std::string slideInWords()
{
    return "slide";
}

std::string bindOffInWords(bool all, Words words)
{
    return std::string(words == Words::UK ? "cast off " : "bind off ") + (all ? "all sts" : "rem sts");
}

} // namespace shawlwright
