// SPDX-License-Identifier: MIT
//
// Cutting: lengths off pieces of hose or tubing. Each cut costs its kerf; what is left below the
// smallest useful length goes to scrap with it, what is longer stays the piece that it was.

#pragma once

#include "app/stockroom/deed.h"
#include "model/parts/cutting.h"

namespace flarestock {

/// Smallest units.
struct CutLoss {
    std::int64_t kerf = 0;
    std::int64_t leastUseful = 0;
};
/// 1/16 in of kerf and 4 in of smallest useful length: common practice, no source.
[[nodiscard]] CutLoss usualCutLoss() noexcept;

/// What a cut takes, as it was typed for --kerf. Problem: no length, below zero, or more than 1/2
/// in, which no blade takes: common practice, no source.
[[nodiscard]] Result<std::int64_t> kerfAsked(const std::string &typed, const Part &part);

struct CutFrom {
    BalanceKey piece;
    std::int64_t length = 0;
};

/// CutPieces by their names, in the order of places and names.
class NamedPieces {
public:
    NamedPieces(const std::map<BalanceKey, std::int64_t> &pieces, const CutLoss &loss);
    /// Which piece a length is cut off; nothing where none holds it.
    [[nodiscard]] std::optional<CutFrom> cut(std::int64_t length);
    [[nodiscard]] std::int64_t longest() const; ///< Zero where there is none.

private:
    std::vector<BalanceKey> m_names;
    CutPieces m_pieces;
};

/// The longest length first. Problem: a length that no piece holds; says how long the longest is.
[[nodiscard]] Result<std::vector<CutFrom>>
cuttingPlan(const Part &part, std::vector<std::int64_t> lengths,
            const std::map<BalanceKey, std::int64_t> &pieces, const CutLoss &loss);

/// The movements of cuts: each length to `to`, kerfs and useless rests to scrap.
struct CutAction {
    std::string to;
    Deed deed = Deed::Cut;
    std::string document;
    std::string scrap; ///< Place id.
    CutLoss loss;
};
[[nodiscard]] std::vector<Movement> cutMovements(const std::vector<CutFrom> &cuts,
                                                 std::map<BalanceKey, std::int64_t> pieces,
                                                 const CutAction &action);

} // namespace flarestock
