#include "core/files/read_stitch.h"

namespace shawlwright::files {

Stitch readStitch(FaultList& faults, Fields& in)
{
    const std::size_t faultsBefore = faults.count();
    Stitch stitch;
    stitch.key = in.text("key");
    stitch.name = in.text("name");
    stitch.family = in.word("family", familyWords, stitch.family);
    stitch.takesUp = in.neededWhole("takesUp", 0, mostLoopsPerStitch).value_or(1);
    stitch.leaves = in.neededWhole("leaves", 0, mostLoopsPerStitch).value_or(1);
    stitch.columns = in.whole("columns", 0, mostLoopsPerStitch, 0);
    stitch.lean = in.word("lean", leanWords, stitch.lean);
    stitch.manner = in.word("manner", mannerWords, stitch.manner);
    for (const JsonAt head : in.list("heads", mostLoopsPerStitch))
        stitch.heads.push_back(in.enumAt(head, headWords, HeadKind::Knit));
    stitch.face = in.word("face", faceWords, stitch.face);
    stitch.sameOnBothSides = in.truth("sameOnBothSides");
    stitch.onRS = in.text("onRS");
    stitch.onWS = in.text("onWS");
    stitch.onRSUK = in.text("onRSUK");
    stitch.onWSUK = in.text("onWSUK");
    stitch.howToRS = in.text("howToRS");
    stitch.howToWS = in.text("howToWS");
    stitch.mirror = in.text("mirror");
    stitch.source = in.text("source");
    stitch.drawing = in.word("drawing", drawingWords, stitch.drawing);
    stitch.drawingNumber = in.whole("drawingNumber", 0, mostLoopsPerStitch, 0);
    if (const auto value = in.find("crossing")) {
        Fields crossing(faults, *value);
        stitch.crossing.front = crossing.whole("front", 0, mostLoopsPerStitch, 0);
        stitch.crossing.back = crossing.whole("back", 0, mostLoopsPerStitch, 0);
        stitch.crossing.backPurled = crossing.truth("backPurled");
        stitch.crossing.unknown = crossing.unknown();
    }
    stitch.strokes = in.text("strokes");
    stitch.unknown = in.unknown();
    if (faults.count() == faultsBefore)
        if (const auto fine = checked(stitch); !fine.ok())
            faults.add(in.at(), fine.fault().message);
    return stitch;
}

} // namespace shawlwright::files
