// SPDX-License-Identifier: MIT
//
// Part running: which cars have a part, how many of it, and how far its pieces run at an event.

#pragma once

#include "app/workshop/workshop.h"
#include "model/spares/carry/spending.h"

namespace flarestock {

class PartRunning {
public:
    /// How many each car has: `each` where it is said, else as spares.csv says, else as they lie at
    /// the cars, else one in every car of the season. `outings` say how far a car has run, where
    /// they do; else what was expected counts. All of them must outlive this.
    struct Known {
        const Workshop &workshop;
        const PartSpending *spending = nullptr;
        const std::vector<Record> &outings;
        std::optional<std::int64_t> each = std::nullopt;
        std::optional<RunningIn> per = std::nullopt; ///< Nothing: as spares.csv says, or by events.
    };
    PartRunning(const Part &part, const Known &known);

    [[nodiscard]] RunningIn per() const noexcept { return m_per; }
    [[nodiscard]] const std::map<std::string, std::int64_t> &fitted() const { return m_fitted; }
    [[nodiscard]] bool goesTo(const Event &event) const;
    /// How far a car ran there, or is expected to; nothing where nobody says.
    [[nodiscard]] std::optional<Decimal> ranAt(const Event &event, const std::string &car) const;
    /// Of every piece that is fitted; nothing where a car's is not known.
    [[nodiscard]] std::optional<Decimal> allAt(const Event &event) const;

private:
    const std::vector<Record> &m_outings;
    std::map<std::string, std::int64_t> m_fitted; ///< By car.
    RunningIn m_per = RunningIn::Events;
};

} // namespace flarestock
