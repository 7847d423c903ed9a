// SPDX-License-Identifier: MIT
//
// Slip files: what came in, written to files once it is booked: the receiving slip, its rows, and a
// label for each piece.

#pragma once

#include "app/command/papers/paper_options.h"
#include "app/command/shop_options.h"
#include "app/sheet/receipt_rows.h"

namespace flarestock {

struct SlipAsked : PaperAsked, LabelFile {};

/// --pdf, --paper, --csv, --xlsx, --labels, --size.
void addSlipOptions(CLI::App &command, SlipAsked &asked);
/// Problem: a file that cannot be written, a letterhead that does not read.
[[nodiscard]] Result<void> canWriteSlip(const SlipAsked &asked, const OpenShop &shop);
/// Writes what was asked for, of the day of the command, where the booking was done; refuses,
/// saying that it was, where that fails.
void writeSlip(const SlipAsked &asked, SlipOfReceipt came, OpenShop &shop);

} // namespace flarestock
