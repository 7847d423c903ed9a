// SPDX-License-Identifier: MIT
//
// LinkBook: the pairs of port types that fit, each once, with what they need and which parts of the
// catalogue answer that.

#pragma once

#include "model/joints/supplies.h"

#include <cstdint>
#include <map>

namespace flarestock {

/// What a link needs: the need, and the parts of the catalogue that answer it.
struct NeedKind {
    Need need;
    std::string thread;                ///< For washers, folded.
    std::vector<StockedIndex> answers; ///< Rising, and so by part number.
};

/// What a link takes of a way: its needs, and whether it has a caution. Many links share one.
struct LinkBurden {
    std::vector<std::uint32_t> needs; ///< Places in LinkBook::needs.
    bool caution = false;
    friend auto operator<=>(const LinkBurden &, const LinkBurden &) = default;
};

/// A pair of port types that fit.
struct LinkKind {
    Mating mating;
    std::uint32_t burden = 0; ///< Place in LinkBook::burdens.
};

class LinkBook {
public:
    explicit LinkBook(const std::vector<Stocked> &stocked);

    /// The place in links() where the two fit, as `a` and `b` of a way; nothing where they do not.
    /// `madeForClamp`: `a` is a hose whose maker lets it be clamped on the barb `b`.
    [[nodiscard]] std::optional<std::uint32_t> link(const Port &a, const Port &b,
                                                    bool madeForClamp = false);
    /// The link by which a piece holds a cut end.
    [[nodiscard]] std::uint32_t hold(const Port &cut);

    [[nodiscard]] const LinkKind &operator[](std::uint32_t place) const { return m_links[place]; }
    [[nodiscard]] const std::vector<NeedKind> &needs() const noexcept { return m_needs; }
    [[nodiscard]] const std::vector<LinkBurden> &burdens() const noexcept { return m_burdens; }

    /// The need with its answers, whether or not the book has it.
    [[nodiscard]] NeedKind kind(const Need &need, const Port &a, const Port &b) const;

private:
    std::uint32_t add(Mating mating, const Port &a, const Port &b);

    std::vector<std::pair<StockedIndex, const Part *>> m_aids;
    std::vector<LinkKind> m_links;
    std::vector<NeedKind> m_needs;
    std::vector<LinkBurden> m_burdens;
    std::map<std::string, std::uint32_t> m_needPlaces;
    std::map<LinkBurden, std::uint32_t> m_burdenPlaces;
};

/// The part answers the need: its kind, its designation, the thread or size that it goes over.
[[nodiscard]] bool answersNeed(const Part &part, const NeedKind &kind);

} // namespace flarestock
