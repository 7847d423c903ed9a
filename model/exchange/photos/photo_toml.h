// SPDX-License-Identifier: MIT
//
// Photo: what a part looks like, as a document of the shop beside its catalogue, one a part
// (photos/AD-8-8.toml), so that it is exported, copied and brought like any other. One without its
// picture, or an empty one, is of a part that has none any more.
//
//   part = "AD-8-8"
//   jpeg = "/9j/4AAQ…"      (base64, RFC 4648)

#pragma once

#include "model/exact/problem.h"
#include "model/exchange/catalogue_csv.h"

#include <map>
#include <string>

namespace flarestock {

/// A picture larger than this, as base64, is not taken in: documents come whole at every look.
inline constexpr std::size_t PhotoTextMost = 200'000;

/// base64 of a JPEG, by part number.
using Photos = std::map<std::string, std::string, std::less<>>;

/// What a part's photo is called among the documents: letters, digits, '-', '_' and '.' as they
/// are, every other byte as %2F (RFC 3986).
[[nodiscard]] std::string photoName(std::string_view part);
/// The document; `jpeg` is base64, or empty: it was put away.
[[nodiscard]] std::string writePhoto(std::string_view part, std::string_view jpeg);
/// Of all documents those of photos. Problem: with file, line, column and a caret: TOML that does
/// not parse, an unknown or missing key; a picture that is too large or no base64.
[[nodiscard]] Result<Photos> readPhotos(const TextFiles &documents);
/// That of one part, as base64; empty where it has none, or one that cannot be read: that keeps
/// nobody from the part.
[[nodiscard]] std::string photoOf(const TextFiles &documents, std::string_view part);
/// The documents of photos, taken out of all: to be read one by one, when they are looked at.
[[nodiscard]] TextFiles photosOutOf(TextFiles documents);

} // namespace flarestock
