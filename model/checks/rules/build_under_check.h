// SPDX-License-Identifier: MIT
//
// Build under check: an expansion with the ways to walk it that the rules share. Stations are
// walked along the runs; a run on the return level leads back to the tank and is not followed, so
// that "before" and "after" mean what they mean at the bench.

#pragma once

#include "model/checks/flow/system_flow.h"
#include "model/parts/free_stock.h"
#include "model/systems/expansion.h"

#include <functional>

namespace flarestock {

class BuildUnderCheck {
public:
    /// All three outlive it.
    BuildUnderCheck(const Expansion &expansion, const Catalogue &catalogue, const Shelf &shelf);

    [[nodiscard]] const Expansion &expansion() const noexcept { return m_expansion; }
    [[nodiscard]] const Catalogue &catalogue() const noexcept { return m_catalogue; }
    [[nodiscard]] const FreeStock *stock(const Part &part) const;

    using Stations = std::vector<const PlacedStation *>;
    using Ends = std::function<bool(const PlacedStation &)>; ///< Where a walk goes no further.
    /// Those after it along the flow, nearest first; a station where `ends` holds is the last of
    /// its branch. The station itself is not among them.
    [[nodiscard]] Stations after(const PlacedStation &station, const Ends &ends) const;
    [[nodiscard]] Stations before(const PlacedStation &station, const Ends &ends) const;

    /// The measure that a station's demand names, with the answers that hold there; nothing where
    /// it names none.
    [[nodiscard]] std::optional<Measure> wanted(const PlacedStation &station,
                                                const Varying &demand) const;
    /// A text of a run, with the answers that hold where its template stands (a module has its
    /// own); nothing where it is not said.
    [[nodiscard]] std::optional<std::string> said(const PlacedRun &run, const Varying &text) const;
    /// The highest pressure that regulators and pumps of the build are set to; nothing if none is.
    [[nodiscard]] std::optional<Measure> systemPressure() const;
    /// Whether it is a brake system, by its template or by its fluid.
    [[nodiscard]] bool isBrakes() const noexcept;
    /// What flows in its lines, worked out when it is first asked for.
    [[nodiscard]] const SystemFlow &flow() const;
    /// "pump PU-1", "pre-filter": the title with its part.
    [[nodiscard]] static std::string named(const PlacedStation &station);
    /// Title with a capital, to begin a sentence.
    [[nodiscard]] static std::string capital(std::string words);

private:
    [[nodiscard]] Stations walk(const PlacedStation &station, const Ends &ends, bool forward) const;

    const Expansion &m_expansion;
    const Catalogue &m_catalogue;
    const Shelf &m_shelf;
    mutable std::optional<SystemFlow> m_flow;
};

/// What of a station keeps dirt out: a filter, or a tank whose pick-up has a sock.
struct DirtStop {
    const PlacedStation *station = nullptr;
    std::optional<MicronRating> rating;
    bool sock = false;
};
[[nodiscard]] std::optional<DirtStop> dirtStop(const PlacedStation &station);

/// The injectors that the bill takes beside the stations: they stand behind the rail.
[[nodiscard]] std::vector<const Part *> injectorsOf(const Expansion &expansion);

/// "A, B and C"; of more than six the first six and how many more.
[[nodiscard]] std::string listed(const std::vector<std::string> &names);

/// Whether a part of this kind suffers from dirt: pump, carburettor, rail, injector, regulator.
[[nodiscard]] bool wantsCleanFluid(Kind kind) noexcept;

} // namespace flarestock
