// SPDX-License-Identifier: MIT
//
// Order paper: an order as the words that stand on its paper, and the PDF that flarestock-paper
// makes of them.

#pragma once

#include "app/workshop/workshop.h"
#include "model/exchange/papers/letterhead_toml.h"

#include <QByteArray>

namespace flarestock {

/// The shop's letterhead.toml; without one its title alone. Problem: it does not read.
[[nodiscard]] Result<Letterhead> letterheadOf(const ShopFile &file);
/// The document that flarestock-paper reads. `size`: "A4" or "Letter".
[[nodiscard]] QByteArray orderPaper(const Order &order, const Catalogue &catalogue,
                                    const Letterhead &from, const std::string &size);
/// Such a document as a PDF. Problem: flarestock-paper does not lie beside this program, or says
/// what is wrong.
[[nodiscard]] Result<QByteArray> printed(const QByteArray &paper);

} // namespace flarestock
