// SPDX-License-Identifier: MIT
//
// Canonical bytes: one and only one row of bytes for each record, the same on every machine and for
// ever, for storage to hash into its chain. Every text is preceded by its length and every number
// has eight bytes, so that no two different records share their bytes; the first byte is the
// version of this form, so that a later one can never be mistaken for it.

#pragma once

#include "model/journal/record.h"

namespace flarestock {

[[nodiscard]] std::vector<std::uint8_t> canonicalBytes(const Movement &movement);
[[nodiscard]] std::vector<std::uint8_t> canonicalBytes(const Record &record);
[[nodiscard]] std::vector<std::uint8_t> canonicalBytes(const BoxCheck &check);
[[nodiscard]] std::vector<std::uint8_t> canonicalBytes(const Place &place);
/// Of a row of texts, such as the name, text and author of a document.
[[nodiscard]] std::vector<std::uint8_t> canonicalBytes(const std::vector<std::string> &texts);

} // namespace flarestock
