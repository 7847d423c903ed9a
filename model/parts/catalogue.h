// SPDX-License-Identifier: MIT
//
// Catalogue: every part and offer that the shop knows, immutable once built, with each part
// interned to a dense index so that hot loops need no look-up by name.

#pragma once

#include "model/parts/parts_by_port.h"
#include "model/parts/purchase.h"

#include <map>

namespace flarestock {

class Catalogue {
public:
    Catalogue() = default;
    Catalogue(const Catalogue &) = delete; ///< Parts are pointed at; share it instead.
    Catalogue &operator=(const Catalogue &) = delete;
    Catalogue(Catalogue &&) noexcept;
    Catalogue &operator=(Catalogue &&) noexcept;
    ~Catalogue(); // Not inline: GCC 12 sees a free() inside Result<Catalogue> that is not there.
    /// References (box, fitting, element, substitutes, offers) are spelt as the part they name.
    /// Problem: an empty number; a part number or supplier id twice; a box, fitting, element,
    /// substitute or offer that names an unknown part or supplier, or the part itself; an element
    /// that is none; an offer without prices, or with prices out of order, below zero, or from more
    /// than the least that can be bought. thing names the part.
    [[nodiscard]] static Result<Catalogue>
    of(std::vector<Part> parts, std::vector<Supplier> suppliers, std::vector<Offer> offers);

    [[nodiscard]] std::span<const Part> parts() const noexcept { return m_parts; }
    [[nodiscard]] std::span<const Supplier> suppliers() const noexcept { return m_suppliers; }
    [[nodiscard]] const Part *
    find(std::string_view number) const; ///< Case folded; nullptr if none.
    [[nodiscard]] PartIndex
    index(const Part &part) const noexcept; ///< Of a part of this catalogue.
    [[nodiscard]] std::span<const Part *const> ofKind(Kind kind) const noexcept; ///< By number.
    /// Those that have any of the ports, however it turns. By number.
    [[nodiscard]] std::vector<PartIndex> withAny(std::span<const Port> ports) const
    {
        return m_byPort.ofAny(ports);
    }
    [[nodiscard]] std::span<const Offer>
    offers(const Part &part) const noexcept; ///< By currency, then price each of the least.
    /// The cheapest offer for a quantity, by the price of what must be bought (whole packs,
    /// minimum, price breaks); ties to the shorter lead, then the supplier's id. nullptr where
    /// nobody sells it. Amounts of two currencies do not compare: only offers in `only` count;
    /// without it, those in the currency of the part's first offer.
    [[nodiscard]] const Offer *bestOffer(const Part &part, const Decimal &quantity,
                                         const std::optional<Currency> &only = {}) const;
    /// The same with what must be bought and what it costs; nothing where nobody sells it.
    [[nodiscard]] std::optional<Purchase>
    bestPurchase(const Part &part, const Decimal &quantity,
                 const std::optional<Currency> &only = {}) const;

private:
    std::vector<Part> m_parts;                                       ///< By number.
    std::vector<Supplier> m_suppliers;                               ///< By id.
    std::vector<Offer> m_offers;                                     ///< By part.
    std::vector<std::pair<std::uint32_t, std::uint32_t>> m_offersOf; ///< By part: first and end.
    std::unordered_map<std::string, PartIndex> m_byNumber;           ///< Folded number.
    std::vector<std::vector<const Part *>> m_byKind;
    PartsByPort m_byPort;
};

} // namespace flarestock
