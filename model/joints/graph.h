// SPDX-License-Identifier: MIT
//
// The graph of a catalogue's joining pieces. Its nodes are port types, each interned to a dense
// number; an arc is a piece gone through from one of its ports to the other; a hop leads from the
// port type at which a path stands to one that mates with it. Rows lie one after the other (CSR),
// and no text is looked at once the graph is built.
//
// Pieces are adapters, bulkheads, hose ends and tube nuts with exactly two ports: one with more
// would leave a port open. A hose end has an arc for each hose that its maker lists.

#pragma once

#include "model/joints/links.h"

#include <map>
#include <optional>
#include <span>

namespace flarestock {

using TypeIndex = std::uint32_t;

/// Arcs of one row that are left by the same port type: places in the row.
struct Bundle {
    TypeIndex out;
    std::uint32_t begin;
    std::uint32_t end;
};

/// Rows of T, one for each port type, in one block.
template <class T>
struct Rows {
    std::vector<std::uint32_t> begins{0};
    std::vector<T> all;
    [[nodiscard]] std::span<const T> of(TypeIndex type) const noexcept
    {
        return {all.data() + begins[type], all.data() + begins[type + 1]};
    }
    void close() { begins.push_back(static_cast<std::uint32_t>(all.size())); }
};

struct Hop {
    TypeIndex to;
    std::uint32_t link;   ///< Place in the LinkBook.
    std::uint32_t burden; ///< The link's.
};

struct Arc {
    StockedIndex piece;
    TypeIndex in;
    TypeIndex out;
    std::uint16_t ruinedBy;    ///< One bit a fluid: its maker forbids it, or it ruins the seal.
    std::int16_t angleDegrees; ///< Of a hose end; -1 for other pieces.
    std::uint8_t inPort;       ///< Places in Part::ports.
    std::uint8_t outPort;
};

class JointGraph {
public:
    explicit JointGraph(const Catalogue &catalogue);

    [[nodiscard]] const Catalogue &catalogue() const noexcept { return *m_catalogue; }
    [[nodiscard]] std::size_t size() const noexcept { return m_types.size(); }
    [[nodiscard]] const Port &type(TypeIndex type) const noexcept { return m_types[type]; }
    [[nodiscard]] int dashOf(TypeIndex type) const noexcept { return m_dashes[type]; } ///< Or 0.
    /// Nothing: no part of the catalogue has such a port.
    [[nodiscard]] std::optional<TypeIndex> find(const Port &port) const;

    [[nodiscard]] const StockedParts &stocked() const noexcept { return m_stocked; }
    /// The fluids that rule it out, as in Arc.
    [[nodiscard]] std::uint16_t ruinedBy(StockedIndex index) const { return m_ruinedBy[index]; }
    [[nodiscard]] const LinkBook &links() const noexcept { return *m_links; }
    [[nodiscard]] std::span<const Hop> hops(TypeIndex from) const noexcept
    {
        return m_hops.of(from);
    }
    /// By the port type by which they are left, then by part number.
    [[nodiscard]] std::span<const Arc> arcs(TypeIndex in) const noexcept { return m_arcs.of(in); }
    /// As arcs().
    [[nodiscard]] const Rows<Bundle> &bundles() const noexcept { return m_bundles; }

    /// Cut ends and weld ends. The one takes a line and the other is welded, so that neither joins
    /// two pieces of a way: between two tube nuts there would be no tube.
    [[nodiscard]] bool isEnd(TypeIndex type) const noexcept { return m_ends[type]; }

private:
    void internStocked();
    void internTypes();
    void layArcs();
    void layHops();
    void addHop(std::vector<Hop> &row, TypeIndex to, std::uint32_t link) const;
    void markEnds();
    TypeIndex intern(const Port &port);
    void addArcs(StockedIndex index, std::vector<std::vector<Arc>> &byIn);

    const Catalogue *m_catalogue;
    std::vector<Port> m_types;
    std::vector<int> m_dashes;
    std::map<Port, TypeIndex> m_typeOf;
    StockedParts m_stocked; ///< Pieces and aids.
    std::vector<std::uint16_t> m_ruinedBy;
    std::optional<LinkBook> m_links;
    Rows<Hop> m_hops;
    Rows<Arc> m_arcs;
    Rows<Bundle> m_bundles;
    std::vector<bool> m_ends;
};

/// The fluids that rule a part out, one bit each: its maker's list lacks them, or they ruin its
/// seal.
[[nodiscard]] std::uint16_t fluidsThatRuin(const Part &part);

/// The ports by which a piece can be gone through: its own, or for a hose end's cut side one for
/// each hose that its maker lists. `place` is the place in Part::ports.
[[nodiscard]] std::vector<Port> portsOf(const Part &part, std::size_t place);
[[nodiscard]] bool isJoiningPiece(const Part &part) noexcept;

} // namespace flarestock
