#include "tests/app/window/every_dialog.h"

#include "core/edits/marks.h"
#include "core/edits/sections.h"

#include <algorithm>

namespace shawlwright::app {

std::vector<ActionId> askingActions()
{
    using enum ActionId;
    std::vector<ActionId> ids;
    for (const ActionEntry& entry : actionTable())
        if (QString::fromUtf8(entry.text).endsWith(QStringLiteral("...")) && entry.id != Open && entry.id != SaveAs &&
            entry.id != SaveMotif && entry.id != RowHead && entry.id != RenameMotif && entry.id != ChangeOwnStitch)
            ids.push_back(entry.id);
    for (const ActionId id : {RepeatSelection, RepeatSelectedRows})
        if (std::find(ids.begin(), ids.end(), id) == ids.end())
            ids.push_back(id);
    return ids;
}

void prepareForDialogs(Seat& seat)
{
    seat.paintRow(0, "k");
    PatternHead head = seat.pattern().head;
    if (head.yarns.size() < 2) {
        head.yarns.push_back(head.yarns.front());
        head.yarns.back().id = YarnId{2};
        head.yarns.back().code = "CC";
        seat.document().performOrTell(setHead(seat.pattern(), head, "yarns"));
    }
    seat.document().performOrTell(placeNewMarker(seat.pattern(), seat.section().id, 0, 5));
    seat.window().canvas().select(Area{0, 1, 2, 4});
    seat.settle();
}

void inEveryDialog(Seat& seat, const std::function<void(const std::string&, QDialog&)>& look)
{
    for (const ActionId id : askingActions()) {
        const std::string name = actionEntry(id).text;
        ASSERT_TRUE(seat.window().action(id)->isEnabled()) << name;
        seat.inDialog([&] { seat.act(id); }, [&](QDialog& dialog) { look(name, dialog); });
    }
}

} // namespace shawlwright::app
