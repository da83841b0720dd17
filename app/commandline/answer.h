// What a command gives back: its exit code and what goes to either stream.
#pragma once

#include <string>

namespace shawlwright::app {

struct Answer {
    int code = 0;
    std::string out; // the result; may be bytes of a PNG or PDF
    std::string err; // sentences, each ended by a line break
};

inline Answer refusal(const std::string& sentence)
{
    return {2, {}, "shawlwright: " + sentence + "\n"};
}

} // namespace shawlwright::app
