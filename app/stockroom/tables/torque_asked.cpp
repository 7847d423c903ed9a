// SPDX-License-Identifier: MIT

#include "app/stockroom/tables/torque_asked.h"

#include "app/stockroom/asked.h"

namespace flarestock {

namespace {

/// A port, also without its gender: "AN -6" is the nut of its size.
Result<Port> portAsked(const std::string &typed)
{
    auto port = Port::parse(typed);
    if (port)
        return port;
    const auto male = Port::parse(typed + " male");
    return male ? male : port;
}

} // namespace

Result<TorqueAsked> torqueAsked(const TightenedWords &words)
{
    const auto port = portAsked(words.port);
    if (!port)
        return tl::unexpected(port.error());
    const auto on = parseNutOn(words.on);
    if (!on)
        return tl::unexpected(wrongIn("--on", on.error()));
    if (words.metal != "steel" && words.metal != "aluminium")
        return problem("--metal", "\"" + words.metal + "\" is neither steel nor aluminium",
                       "Say aluminium where one of the two sides is not of steel.");
    return TorqueAsked{*port, *on, words.metal == "steel"};
}

} // namespace flarestock
