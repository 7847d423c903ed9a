// SPDX-License-Identifier: MIT
//
// What is away: what lies at places that went along with a copy of the shop. It is the copy's until
// that is brought back: here it is neither moved, counted nor promised, unless somebody has said
// that the shop uses the place all the same.

#pragma once

#include "model/journal/ledger.h"
#include "model/journal/notes/trip.h"
#include "model/storage/shop_connection.h"

namespace flarestock {

class WhatIsAway {
public:
    WhatIsAway() = default; ///< Nothing is.
    /// What is away from this very shop: a copy has its own places with it. Throws StorageFailure.
    [[nodiscard]] static WhatIsAway in(const ShopConnection &connection);

    /// Who has a place: "with the copy "lakeside", which Ada Berg has, out since 2026-11-27"; empty
    /// where it is here.
    [[nodiscard]] std::string whoHas(const std::string &place) const;
    /// The same where a promise could only be kept out of what is away; `ledger` knows the part.
    [[nodiscard]] std::string keepsFrom(const Promise &promise, const Ledger &ledger,
                                        const Bars &bars) const;
    [[nodiscard]] const Trips &trips() const noexcept { return m_trips; }

private:
    Trips m_trips; ///< Without the one that this shop is the copy of.
};

} // namespace flarestock
