#include "core/base/result.h"

namespace shawlwright {

std::string toText(const Fault& fault)
{
    std::string text;
    if (fault.at.line > 0)
        text = "line " + std::to_string(fault.at.line) + ", column " + std::to_string(fault.at.column);
    if (!fault.where.empty())
        text += (text.empty() ? "" : ", ") + fault.where;
    return text.empty() ? fault.message : text + ": " + fault.message;
}

} // namespace shawlwright
