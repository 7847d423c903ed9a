// SPDX-License-Identifier: MIT
//
// Server schema: the tables and guards of a shop on a PostgreSQL server. They hold what the tables
// of a shop file hold; what is only added to is refused to be changed by triggers, whoever asks,
// and besides, the role that seats work as has no right to.

#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <string_view>

namespace flarestock::sql {

/// The newest schema on servers that this program knows.
inline constexpr std::int64_t ServerSchemaVersion = 2;

/// What a sequence counts on by: so many entries of one action stand together in the order.
inline constexpr std::int64_t LamportBlock = 1000;

/// Makes everything, in order, in an empty schema "flarestock" that the search path names.
[[nodiscard]] std::span<const std::string_view> serverSchema() noexcept;
/// From 1 to 2. The layers are then written by writeLayersOfBefore().
[[nodiscard]] std::span<const std::string_view> serverExtended() noexcept;
/// The rights of those who work in the shop; %1 is their role as SQL names it.
[[nodiscard]] std::span<const std::string_view> serverRights() noexcept;
/// The triggers that have to be there, each "table.name".
[[nodiscard]] std::span<const std::string_view> serverGuards() noexcept;

} // namespace flarestock::sql
