// SPDX-License-Identifier: MIT
//
// Shop options: what every command that writes into a shop asks for, and how it opens it.

#pragma once

#include "app/command/command.h"
#include "app/stockroom/deed.h"

#include <functional>

namespace flarestock {

struct ShopAsked {
    std::string shop;
    std::string who;
    std::string why;
    std::string id;
    bool json = false;
};

/// --shop, --who, --why, --id, --json.
void addShopOptions(CLI::App &command, ShopAsked &asked);

/// An open shop of which nothing was read yet.
struct OpenShopFile {
    ShopFile file;
    By by;
    const ShopAsked &asked;
    CommandOutcome &outcome;
};
/// Opens it, and runs `answer`; refuses where it cannot, or where the id is none.
void withShopFile(const ShopAsked &asked, OpenMode mode, CommandOutcome &outcome,
                  const std::function<void(OpenShopFile &)> &answer);

/// An open shop and what it holds.
struct OpenShop {
    ShopFile file;
    std::shared_ptr<const Workshop> workshop;
    By by;
    const ShopAsked &asked;
    CommandOutcome &outcome;
};
/// The same, with all that it holds; refuses also where that cannot be read.
void withShop(const ShopAsked &asked, OpenMode mode, CommandOutcome &outcome,
              const std::function<void(OpenShop &)> &answer);

/// Whether the journal has an action of this id already, which is then said to have been done; or
/// refused, where it was another deed or another part (empty: any). Only where an id was given.
[[nodiscard]] bool wasDone(const OpenShop &shop, Deed deed, const std::string &part);
/// The same by whatever tells that its first movement is of the same action.
[[nodiscard]] bool wasDone(const OpenShop &shop,
                           const std::function<bool(const Movement &)> &isSame);
/// The same of an action that begins with a record.
[[nodiscard]] bool wasWritten(const OpenShop &shop,
                              const std::function<bool(const Record &)> &isSame);

/// Of an id that stands in the journal: that it was done before, or that it was another action.
/// `key`: "movement", "record".
void sayDone(const OpenShop &shop, bool sameAction, const QString &key);

/// Appends the action and says the id of its first movement (of its first record, where it has
/// none) and whether it was there before; `said` is the sentence for people, where it was not.
/// `more` goes into the JSON document.
void appendAction(OpenShop &shop, const Action &action, const std::string &said,
                  QJsonObject more = {});

/// 10^-6 of the currency, with all six decimals: "12.345678".
[[nodiscard]] std::string valueText(std::int64_t micros);
/// The same as people say it: "18.50 USD"; more decimals only where there are any.
[[nodiscard]] std::string moneyText(std::int64_t micros, const Currency &currency);

/// Movements as a document: part, quantity, unit, from, to, lot, value, deed …
[[nodiscard]] QJsonObject movementDocument(const Movement &movement, const Workshop &workshop);

} // namespace flarestock
