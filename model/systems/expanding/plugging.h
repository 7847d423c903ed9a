// SPDX-License-Identifier: MIT
//
// Plugging: closes a port that no run uses, by a plug or cap that mates with it, or through one
// adapter where none does. The plug is the last piece of the way, so that there are as many links
// as pieces.

#pragma once

#include "model/joints/closing.h"
#include "model/systems/expanding/allotment.h"

namespace flarestock {

class Plugging {
public:
    /// All outlive it; `jointShelf` has what the allotment has left.
    Plugging(const JointCloser &closer, const Shelf &shelf, JointShelf &jointShelf,
             Allotment &allotment);

    /// `request.from` is the port; `to` is not looked at. Best first, at most `request.best`.
    [[nodiscard]] std::vector<Way> ways(const JointRequest &request);
    /// The way a builder has decided on; the last number is the plug.
    /// Problem: no part, an unknown one, or one without a port.
    [[nodiscard]] Result<Way> judged(const JointRequest &request,
                                     std::vector<std::string> numbers) const;

private:
    void find(const JointRequest &request, std::size_t adaptersMax, std::vector<Way> &found);
    [[nodiscard]] Way withPlug(Way way, const Part &plug) const;

    const JointCloser &m_closer;
    const Shelf &m_shelf;
    JointShelf &m_jointShelf;
    Allotment &m_allotment;
    FreeLeft m_left;
};

} // namespace flarestock
