// SPDX-License-Identifier: MIT
//
// Schema: the tables, indexes and triggers of every version of the shop file that there has been,
// word for word as SQLite keeps them, and how one becomes the next.

#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace flarestock::sql {

/// In order. version is 1 to SchemaVersion.
[[nodiscard]] std::span<const std::string_view> schema(std::int64_t version) noexcept;

/// From 1 to 2: what is set aside, what is made anew, and how rows and chains are taken over.
/// Between the last two the shop's own row is written, whose seal says more than it did.
[[nodiscard]] std::span<const std::string_view> setAside() noexcept;
[[nodiscard]] std::span<const std::string_view> madeAnew() noexcept;
[[nodiscard]] std::span<const std::string_view> takenOver() noexcept;

/// From 2 to 3. The layers are then written by writeLayersOfBefore().
[[nodiscard]] std::span<const std::string_view> extended() noexcept;

} // namespace flarestock::sql
