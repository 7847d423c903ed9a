// SPDX-License-Identifier: MIT
//
// Port meetings: what a port meets among all the ports that the shop's cards have, by verdict, with
// how many cards have them and how many of those are on the shelf. Each distinct port is asked
// once, however many cards have it.
//
//   const auto met = shop->meetings(Port::parse("ORB -6 female").value(), units);

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/stock/stock_book.h"

namespace flarestock {

/// Of the cards whose ports go onto a port: all, and those of which some is free.
struct FittingCards {
    int cards = 0;
    int onShelf = 0;
};

/// mark port verdict detail figure says
[[nodiscard]] QStringList meetingCells();

class PortsOfShop {
public:
    /// The cards of a book; what is made up or lies in tins has none.
    explicit PortsOfShop(const StockBook &book);

    /// Without the card of that number.
    [[nodiscard]] FittingCards fitting(const Port &port, const std::string &besides = {}) const;
    /// What fits, the best first; then what starts or screws home and must not be taken. What does
    /// not even start is not told.
    [[nodiscard]] std::vector<Row> meetings(const Port &port) const;

private:
    struct Holder {
        std::uint32_t card = 0; ///< Its place in the catalogue.
        bool isFree = false;
    };
    struct Known {
        Port port;
        std::vector<Holder> holders; ///< By card, each once.
    };

    std::vector<Known> m_ports;
    const Catalogue *m_catalogue = nullptr;
    std::shared_ptr<const Workshop> m_workshop; ///< Whose catalogue it is.
};

/// "14 cards fit, 9 of them on the shelf"
[[nodiscard]] QString saidFitting(const FittingCards &fitting);

} // namespace flarestock
