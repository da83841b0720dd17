// Where two stitches take up, leave and lean alike, how they are worked tells them apart: a small touch to the drawing.
#pragma once

#include "core/stitches/stitch.h"

#include <cstdint>

namespace shawlwright::chart {

enum class Touch : std::uint8_t {
    None,
    PassedOver,    // the leg on top was slipped and passed over: its head ends in a hook
    Twisted,       // worked through the back: a loop at the foot of the leg on top
    SecondOnTop,   // nearly centred: the second stitch lies on top, the head leans a little
    FrontAndBack,  // into both legs of the stitch: a loop at the foot
    FromTheMiddle, // the heads rise from one place, not from each ring
    YarnBehind,    // slipped, with a strand behind it
    Knitwise,      // slipped, turned on its way
    OtherWay,      // the yarn laid the other way round
    Bobble,        // knitted to and fro: a ring instead of a disc
    ClosedAtOnce,  // a nupp that is closed in its own row: a lid
    Twist,         // a crossing knitted without a cable needle
    Loop,          // a backward loop
    PickedUp,      // drawn up through an edge
    WithDouble, WithWrap, WithYarnOver, WithPin, WithTwin, // closes a turn made by that method
    EdgeStitch
};

Touch touchOf(const Stitch& stitch);

} // namespace shawlwright::chart
