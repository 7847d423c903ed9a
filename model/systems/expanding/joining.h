// SPDX-License-Identifier: MIT
//
// Joining: makes the runs between the stations that stand already: picks each run's line, closes
// the joints at its ends and the ports that no run uses, all out of one allotment.

#pragma once

#include "model/systems/expand.h"
#include "model/systems/expanding/line_choice.h"

#include <map>

namespace flarestock {

class Joining {
public:
    /// What is settled for it from outside: ways by joint, as picks say them, that are the
    /// program's own choice all the same.
    struct Settled {
        const ExpandRequest &request;
        const Picks &ways;
    };
    /// All outlive it. `into` has its stations; runs, joints and notes are added to it.
    Joining(const Settled &settled, Allotment &allotment, Expansion &into);

    /// Problem: a pick that is no way to close a joint.
    [[nodiscard]] Result<void> makeRun(const FlatRun &run, const std::optional<LineWish> &wish);
    /// Closes the plugged ports of a station with plugs and caps.
    [[nodiscard]] Result<void> closePlugged(const PlacedStation &station,
                                            std::optional<Fluid> fluid);

private:
    /// One side of a run: a port of a station's part; no port where the part has none of that name.
    struct Side {
        const PlacedStation *station = nullptr;
        std::string_view name;
        const Port *port = nullptr;
    };
    /// A joint that is to be closed; `known` where both of its ports are.
    struct Plan {
        PlacedJoint joint;
        JointRequest request;
        bool known = false;
    };

    [[nodiscard]] Side sideOf(std::size_t station, std::string_view port);
    [[nodiscard]] Plan planFor(const Side &side, std::optional<Fluid> fluid) const;
    [[nodiscard]] Result<void> joinDirectly(const FlatRun &run, const Side &from, const Side &to);
    [[nodiscard]] Result<void> joinByLine(const FlatRun &run, const LineWish &wish,
                                          const Side &from, const Side &to);
    [[nodiscard]] const Part *chosenLine(const LineWish &wish, const Plan &start, const Plan &end);
    [[nodiscard]] bool closes(const Plan &plan, const Part &line);
    [[nodiscard]] Result<void> close(Plan plan);
    [[nodiscard]] Result<void> decide(Plan plan, std::vector<Way> ways,
                                      std::optional<Way> settled = {});
    void take(const Way &way);
    void tellLeft(const Part &part); ///< Of what is left to m_jointShelf.

    const ExpandRequest &m_request;
    const Picks &m_ways;
    Allotment &m_allotment;
    Expansion &m_into;
    const Shelf m_none;
    const Shelf &m_shelf;
    FreeLeft m_left;
    JointShelf m_jointShelf; ///< As m_left.
    std::map<std::tuple<Port, Port, int>, bool> m_closes;
};

} // namespace flarestock
