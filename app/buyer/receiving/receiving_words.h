// SPDX-License-Identifier: MIT
//
// Receiving words: what a hand says that came of an order, line by line or by scanning, made into
// pieces: each with its lot or serial, its place, what is wrong with it and what its box lacks.
//
//   receive --order 2026-0007 --line EP-460 2 --serial EP-460=SN31 --serial EP-460=SN32
//           --missing EP-460=BK-460=SN32

#pragma once

#include "app/stockroom/asked.h"
#include "model/buying/bought.h"

#include <tuple>

namespace flarestock {

struct ReceivingWords {
    using Two = std::pair<std::string, std::string>;
    using Three = std::tuple<std::string, std::string, std::string>;
    std::string order;
    bool all = false;
    bool over = false;
    std::vector<std::string> lines;    ///< "EP-460 2", "PT-6 40 ft": as of an order.
    std::vector<std::string> scanned;  ///< A part number or the supplier's: a piece each.
    std::vector<Three> wrong;          ///< Part, quantity, the part that was ordered.
    std::vector<Two> damaged;          ///< Part, and how much of what came.
    std::vector<Two> lacking;          ///< Part, and how much the paper says that did not come.
    std::vector<std::string> lots;     ///< "EL-10=B7", "PT-6=COIL-17=20 ft".
    std::vector<std::string> serials;  ///< "EP-460=SN31": of one piece.
    std::vector<std::string> unmarked; ///< Parts that bear no mark although their kind should.
    std::vector<std::string> missing;  ///< "EP-460=BK-460", "EP-460=BK-460=SN31".
    std::vector<std::string> complete; ///< Parts whose boxes were looked into and lack nothing.
    std::vector<std::string> to;       ///< "H5", "EP-460=H5".
    std::string document;
};

/// So much of one part that came alike.
struct ComingPiece {
    const Part *part = nullptr;
    std::int64_t quantity = 0; ///< Smallest units; more than zero.
    std::string to;            ///< Place id.
    std::string lot = {};
    PieceCondition condition = PieceCondition::New;
    std::string insteadOf = {};            ///< The part that was ordered; empty where it is that.
    std::vector<std::string> missing = {}; ///< Part numbers, one a piece.
    bool complete = false;                 ///< Somebody has looked, and its box lacks nothing.
};
/// So much that the supplier's paper says and that did not come.
struct Lacking {
    const Part *part = nullptr;
    std::int64_t quantity = 0;
};
struct Coming {
    const BookedOrder *order = nullptr;
    std::vector<ComingPiece> pieces;
    std::vector<Lacking> lacking;
    std::string document;
    bool over = false; ///< More than was ordered is taken in.
};

/// Where most of a part lies already, and so where more of it goes; empty where none does.
[[nodiscard]] std::string whereItLies(const Part &part, const Ledger &ledger);

/// Problem: no such order, or one of which nothing is awaited; a part that is not on it; no
/// quantity; a mark, a damage or a hole of what did not come; a pump without a serial, an element
/// without its batch, a piece of hose without a name; nowhere to put it.
[[nodiscard]] Result<Coming> comingAsked(const ReceivingWords &asked, const Bought &bought,
                                         const Workshop &workshop);

} // namespace flarestock
