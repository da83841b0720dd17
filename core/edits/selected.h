// Makers of edits on all that is selected, rectangle after rectangle, as one edit.
//
// Errors:  the first Fault that one of them meets, of the maker for one rectangle; nothing is changed then.
#pragma once

#include "core/edits/areas.h"

#include <functional>

namespace shawlwright {

Result<Edit> fill(const Pattern&, const Catalogue&, SectionId, const Areas&, StitchId, YarnId yarn = {});
Result<Edit> erase(const Pattern&, const Catalogue&, SectionId, const Areas&);
Result<Edit> deleteRows(const Pattern&, SectionId, const std::vector<IndexRun>& rows);
Result<Edit> deleteColumns(const Pattern&, const Catalogue&, SectionId, const std::vector<IndexRun>& columns);

// Makers that each see the pattern as the one before left it, as one edit of that name.
using Maker = std::function<Result<Edit>(const Pattern&)>;
Result<Edit> inTurn(const Pattern&, std::string name, const std::vector<Maker>& makers);

} // namespace shawlwright
