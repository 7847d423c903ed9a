// SPDX-License-Identifier: MIT
//
// Parts of a joint for the tests of joints, made in code.

#pragma once

#include "model/joints/closing.h"

namespace flarestock {

inline Part piece(const std::string &number, Kind kind, const char *a, const char *b)
{
    Part part;
    part.number = number;
    part.kind = kind;
    part.ports = {{"a", Port::parse(a).value(), PortRole::Either},
                  {"b", Port::parse(b).value(), PortRole::Either}};
    return part;
}

inline Part hoseEnd(const std::string &number, int dash, const char *end)
{
    const auto hose = "HOSE PT -" + std::to_string(dash);
    Part part = piece(number, Kind::HoseEnd, hose.c_str(), end);
    part.facts = HoseEndFacts{{"PT"}, dash, 0, {}, {}};
    return part;
}

inline Part ring(const std::string &designation)
{
    Part part;
    part.number = designation;
    part.kind = Kind::Ring;
    part.facts = RingFacts{designation};
    return part;
}

/// A part that stands for the component, so that the catalogue knows its port.
inline Part body(const std::string &number, const char *port)
{
    Part part;
    part.number = number;
    part.kind = Kind::Pump;
    part.ports = {{"p", Port::parse(port).value(), PortRole::Either}};
    return part;
}

inline Offer offer(const std::string &part, const Decimal &price)
{
    return {part, "S", {}, 1, 1, 1, Currency::parse("USD").value(), {{1, price}}, 0};
}

inline const FreeLeft NothingLeft = [](const Part &) { return Decimal(0); };

inline std::vector<std::string> keys(const std::vector<Way> &ways)
{
    std::vector<std::string> said;
    for (const auto &way : ways)
        said.push_back(way.key());
    return said;
}

} // namespace flarestock
