// SPDX-License-Identifier: MIT
//
// Receiving sheet: the options of `flarestock receive` that are about an order, and what it says.

#pragma once

#include "app/buyer/receiving/receiving_words.h"
#include "app/command/papers/slip_files.h"

namespace flarestock {

/// --order, --line, --all, --scan, --serial, --missing … ; --to, --lot and --document are those
/// that the command has without an order.
void addReceivingOptions(CLI::App &command, ReceivingWords &asked);

/// Books in what came of the order, and says what of it is still to come. `without` is whatever was
/// said that belongs to the command without an order, which is refused.
void receiveOrder(const ReceivingWords &asked, const std::string &without, const SlipAsked &slip,
                  OpenShop &shop);

/// A claim as a document: number, state, part, quantity, order …
[[nodiscard]] QJsonObject claimDocument(const ClaimStanding &claim, const Workshop &workshop);
/// "C-12: 1 BK-460 missing (box of EP-460, SN32), raised"
[[nodiscard]] std::string claimSentence(const ClaimStanding &claim, const Workshop &workshop);

} // namespace flarestock
