#include "core/chart/touches.h"

#include <algorithm>
#include <string_view>

namespace shawlwright::chart {

namespace {

struct Entry {
    std::string_view key;
    Touch touch;
};

constexpr Entry entries[] = {
    {"skp", Touch::PassedOver},           {"sk2p", Touch::PassedOver},
    {"sk3p", Touch::PassedOver},          {"rdd_pass", Touch::PassedOver},
    {"k2tog_tbl", Touch::Twisted},        {"p2tog_tbl", Touch::Twisted},
    {"k3tog_tbl", Touch::Twisted},        {"p3tog_tbl", Touch::Twisted},
    {"s2k2p", Touch::SecondOnTop},        {"s2k3p", Touch::SecondOnTop},
    {"kfb", Touch::FrontAndBack},         {"kfbf", Touch::FrontAndBack},
    {"pfb", Touch::FrontAndBack},         {"klfb", Touch::FrontAndBack},
    {"yo2_k1p1k1p1", Touch::FromTheMiddle}, {"sl_wyib", Touch::YarnBehind},
    {"sl1k", Touch::Knitwise},            {"sl1k_wyif", Touch::Knitwise},
    {"yo_rev", Touch::OtherWay},          {"mb3", Touch::Bobble},
    {"mb5", Touch::Bobble},               {"nupp5_at_once", Touch::ClosedAtOnce},
    {"nupp7_at_once", Touch::ClosedAtOnce}, {"rt", Touch::Twist},
    {"lt", Touch::Twist},                 {"co_bl", Touch::Loop},
    {"pu", Touch::PickedUp},              {"ds_close_k", Touch::WithDouble},
    {"ds_close_p", Touch::WithDouble},    {"wt_close_k", Touch::WithWrap},
    {"wt_close_p", Touch::WithWrap},      {"yo_close_k", Touch::WithYarnOver},
    {"yo_close_p", Touch::WithYarnOver},  {"pin_close_k", Touch::WithPin},
    {"pin_close_p", Touch::WithPin},      {"twin_close_k", Touch::WithTwin},
    {"twin_close_p", Touch::WithTwin},    {"selv", Touch::EdgeStitch},
};

} // namespace

Touch touchOf(const Stitch& stitch)
{
    const auto* found =
        std::find_if(std::begin(entries), std::end(entries), [&](const Entry& e) { return e.key == stitch.key; });
    return found == std::end(entries) ? Touch::None : found->touch;
}

} // namespace shawlwright::chart
