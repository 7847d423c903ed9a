// SPDX-License-Identifier: MIT
//
// What the desk remembers from one start to the next: the last shop and the look.

#pragma once

#include <QString>

namespace flarestock {

[[nodiscard]] QString lastShop();
void rememberShop(const QString &file);
[[nodiscard]] bool wasDark();
void rememberDark(bool dark);
/// Whose name stands below what is done at this desk; empty where nobody has said.
[[nodiscard]] QString lastWho();
void rememberWho(const QString &who);
/// The build of a shop that was last on the desk.
[[nodiscard]] QString lastBuild(const QString &shop);
void rememberBuild(const QString &shop, const QString &build);
/// What was typed of the templates of a shop and not written down, as the desk gave it.
[[nodiscard]] QString lastSketches(const QString &shop);
void rememberSketches(const QString &shop, const QString &sketches);
/// What is filled in on sheets of a shop and not written down, as the desk told it.
[[nodiscard]] QString lastSheets(const QString &shop);
void rememberSheets(const QString &shop, const QString &sheets);
/// As last chosen; where nothing was, as the person's locale has it.
[[nodiscard]] bool wasInInches();
void rememberInches(bool inInches);
/// As last chosen; where nothing was, as the person's system speaks.
[[nodiscard]] QString lastLanguage();
void rememberLanguage(const QString &language);

} // namespace flarestock
