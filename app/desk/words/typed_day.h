// SPDX-License-Identifier: MIT
//
// Days that are typed: how a day stands in a field, in the person's locale, and the day that was
// typed there.
//
// A form that is read in two ways (12/09/2026) is never shown: there a day stands as ISO says it,
// which is taken everywhere.
//
//   dayAsTyped("2026-12-09")   // "09.12.2026" under de_DE, "2026-12-09" under en_GB
//   dayTyped("9.12.26")        // "2026-12-09" under de_DE

#pragma once

#include <QLocale>
#include <QString>
#include <QVariantMap>

#include <string>
#include <string_view>

namespace flarestock {

/// An ISO day as one can type it back, its year with four digits; the text itself where it is none.
[[nodiscard]] QString dayAsTyped(std::string_view iso, const QLocale &locale = QLocale());

/// The ISO day of what was typed: as ISO, or as the locale writes it in numbers, with or without
/// leading zeros, the year with four digits or two (of this century). What is no day stays as it
/// was typed, so that a refusal speaks of that.
[[nodiscard]] std::string dayTyped(const QString &typed, const QLocale &locale = QLocale());
/// The same of a field of a form.
[[nodiscard]] std::string dayTyped(const QVariantMap &values, const char *field);

} // namespace flarestock
