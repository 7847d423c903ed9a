// SPDX-License-Identifier: MIT
//
// Closing: finds the ways to close one joint between two ports with the catalogue's adapters,
// bulkheads and hose ends, best first.
//
//   const JointCloser closer(catalogue);
//   closer.ways({.from = pumpInlet, .to = hoseCutEnd, .preference = Preference::Shelf}, shelfLeft);

#pragma once

#include "model/joints/way.h"
#include "model/parts/free_stock.h"

#include <functional>
#include <memory>
#include <optional>

namespace flarestock {

/// What is still free of a part while a build is being put together (earlier joints have taken
/// theirs). The part's own unit; never negative.
using FreeLeft = std::function<Decimal(const Part &)>;

struct JointRequest {
    Port from;
    Port to;                    ///< Another component's port, or a HOSE or TUBE end.
    std::optional<Fluid> fluid; ///< Pieces whose maker forbids it, or whose seal it ruins, are out.
    std::optional<int> angleDegrees; ///< Hose end wanted; straight where absent.
    Preference preference = Preference::Shelf;
    std::size_t best = 4;      ///< How many ways to return at most.
    std::size_t piecesMax = 4; ///< Longest way considered, hose end included.
};

/// What a shelf has for the joints of one build, and what a closer has worked out from it. One at a
/// time may use it.
class JointShelf {
public:
    ~JointShelf();
    JointShelf(JointShelf &&) noexcept;
    JointShelf &operator=(JointShelf &&) noexcept;

    /// Something was taken: so much of the part is left, in its unit; no more than before. A part
    /// that joins nothing is passed over.
    void setLeft(const Part &part, const Decimal &left);

private:
    friend class JointCloser;
    struct Known;
    explicit JointShelf(std::unique_ptr<Known> known);
    std::unique_ptr<Known> m_known;
};

/// The graph of a catalogue's joining pieces; made once for a catalogue, which it must not outlive.
class JointCloser {
public:
    explicit JointCloser(const Catalogue &catalogue);
    ~JointCloser();
    JointCloser(JointCloser &&) noexcept;
    JointCloser &operator=(JointCloser &&) noexcept;

    /// Thousandths of the price of one that each of any joining piece or aid costs at least,
    /// however many are bought: 900 where ten are a tenth cheaper, and nothing else falls as far.
    [[nodiscard]] int pricesFallTo() const noexcept;

    /// Before anything is taken. Closer and shelf outlive it.
    [[nodiscard]] JointShelf jointShelf(const Shelf &shelf) const;

    /// Best first by the request's preference; ties by key(), so that the answer never depends on
    /// the order of the catalogue. Empty where nothing closes the joint. Only links that fit
    /// (Fits, or FitsWithCaution) are used, with the aids that they need.
    [[nodiscard]] std::vector<Way> ways(const JointRequest &request, JointShelf &shelf) const;
    /// The same for a single question: it looks at each part of the catalogue once.
    [[nodiscard]] std::vector<Way> ways(const JointRequest &request, const Shelf &shelf,
                                        const FreeLeft &left) const;

    /// The way that a builder has decided on, by part numbers in order, judged as it is: its links
    /// may well leak. Problem: an unknown part, or one without two ports to join by.
    [[nodiscard]] Result<Way> judged(const JointRequest &request,
                                     const std::vector<std::string> &numbers, const Shelf &shelf,
                                     const FreeLeft &left) const;

private:
    struct Graph;
    std::unique_ptr<Graph> m_graph;
};

} // namespace flarestock
