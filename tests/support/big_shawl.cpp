#include "tests/support/big_shawl.h"

#include "core/files/builtin_catalogue.h"

namespace shawlwright::tests {

Pattern bigShawl(int stitches, int rows)
{
    const Catalogue& catalogue = builtInCatalogue();
    const StitchId k = catalogue.require("k");
    const StitchId p = catalogue.require("p");
    const StitchId yo = catalogue.require("yo");
    const StitchId k2tog = catalogue.require("k2tog");
    const StitchId ssk = catalogue.require("ssk");
    Pattern pattern;
    pattern.head.title = "Measured shawl";
    pattern.head.yarns = {{YarnId{1}, "MC", "clay", 0xb5651d, 1, 400, 100}, {YarnId{2}, "CC", "sky", 0x7fb2d6, 1, 400, 100}};
    pattern.head.castOn = {Quantity(stitches), YarnId{1}, "", Side::RS};
    Section section;
    section.id = SectionId{1};
    section.frame.title = "All of it";
    section.frame.columns = stitches;
    for (int r = 0; r < rows; ++r) {
        Row row;
        row.id = RowId{static_cast<std::uint32_t>(r + 1)};
        row.side = r % 2 == 0 ? Side::RS : Side::WS;
        row.yarn = r / 2 % 8 < 6 ? YarnId{1} : YarnId{2};
        row.start.joins = row.side == Side::RS && r / 2 % 8 == 6;
        row.cells.resize(static_cast<std::size_t>(stitches));
        for (int c = 0; c < stitches; ++c) {
            StitchId id = row.side == Side::RS ? k : (r / 2) % 5 == 4 ? p : k;
            if (row.side == Side::RS && c >= 4 && c < stitches - 6) {
                const int at = (c + 3 * (r / 2)) % 12;
                if (at == 0 && c % 12 < 10)
                    id = yo;
            }
            row.cells[static_cast<std::size_t>(c)].stitch = id;
        }
        // A decrease beside each yarn over, on alternating sides.
        for (int c = 5; c < stitches - 1 && row.side == Side::RS; ++c)
            if (row.cells[static_cast<std::size_t>(c) - 1].stitch == yo)
                row.cells[static_cast<std::size_t>(c)].stitch = r % 4 == 0 ? k2tog : ssk;
        section.rows.push_back(std::make_shared<const Row>(std::move(row)));
    }
    pattern.sections.push_back(std::move(section));
    return pattern;
}

} // namespace shawlwright::tests
