// SPDX-License-Identifier: MIT

#include "app/command/trailer/carry_shop.h"

#include "app/command/trailer/carry_wanted.h"
#include "app/command/trailer/carry_words.h"
#include "app/garage/garage.h"
#include "app/trailer/carried_kit.h"
#include "model/exchange/papers/order_csv.h"

#include <QJsonArray>

namespace flarestock {

namespace {

Result<std::vector<PartCarry>> carriesOf(const std::vector<const Part *> &parts,
                                         const OpenShop &shop, const SpareBook &book,
                                         const CarryWanted &wanted)
{
    std::vector<PartCarry> carries;
    for (const Part *part : parts) {
        auto carry = carryOf(*part, *shop.workshop, book, wanted);
        if (!carry)
            return tl::unexpected(carry.error());
        carries.push_back(std::move(*carry));
    }
    return carries;
}

QJsonObject documentOf(const PartCarry &carry)
{
    QJsonObject said = carryDocument(carry.line);
    QJsonArray events;
    for (const Event *event : carry.events)
        events.append(jsonText(event->id));
    QJsonArray seen;
    for (const std::string &event : carry.seenAt)
        seen.append(jsonText(event));
    said.insert(QStringLiteral("description"), jsonText(carry.part->description));
    said.insert(QStringLiteral("events"), events);
    said.insert(QStringLiteral("fitted"), jsonText(carry.fitted));
    said.insert(QStringLiteral("seenAt"), seen);
    if (!carry.until.empty())
        said.insert(QStringLiteral("until"), jsonText(carry.until));
    return said;
}

std::string sentencesOf(const PartCarry &carry)
{
    std::string said = carrySentences(carry.line);
    std::string events;
    for (const Event *event : carry.events)
        events += (events.empty() ? "" : ", ") + event->id;
    said += "  for " + events + (carry.until.empty() ? "" : ": until " + carry.until) +
            "; fitted in " + carry.fitted + "\n";
    return said;
}

std::string csvOf(const std::vector<PartCarry> &carries)
{
    std::string all = "part,description,carry,covered,spent by,mean,sum\r\n";
    for (const PartCarry &carry : carries)
        all += csvCell(carry.part->number) + "," + csvCell(carry.part->description) + "," +
               std::to_string(carry.line.carry) + "," +
               (carry.line.covered ? probabilityText(*carry.line.covered) : "") + "," +
               std::string(text(carry.line.spending)) + "," + csvCell(carry.line.mean) + "," +
               csvCell(carry.line.sum) + "\r\n";
    return all;
}

void answerTogether(const std::vector<PartCarry> &carries, const CarryShopAsked &asked,
                    double certainty, OpenShop &shop)
{
    const auto kit = carriedKit(carries, *shop.workshop, certainty);
    if (!kit)
        return shop.outcome.refuse(kit.error());
    QJsonArray counted;
    std::string sentences;
    for (const PartCarry &carry : kit->besides) {
        counted.append(documentOf(carry));
        sentences += sentencesOf(carry);
    }
    const SaidKit said{kit->plan,  kit->parts,
                       kit->lines, std::string(shop.workshop->settings.currency.code()),
                       certainty,  kit->besidesCost};
    if (asked.json) {
        QJsonObject document = kitDocument(said);
        document.insert(QStringLiteral("counted"), counted);
        return shop.outcome.print(document);
    }
    shop.outcome.out += kitSentences(said) + sentences;
}

void answerKeep(const std::vector<PartCarry> &carries, const CarryShopAsked &asked, OpenShop &shop)
{
    const auto drawer = placeAsked(asked.keep, shop.workshop->ledger);
    if (!drawer)
        return shop.outcome.refuse(drawer.error());
    if ((*drawer)->kind != PlaceKind::Drawer)
        return shop.outcome.refuse({"--keep " + asked.keep, "is no drawer of the trailer",
                                    "Name a place of the kind drawer."});
    if (wasWritten(shop, [](const Record &record) { return record.kind == RecordKind::Keeping; }))
        return;
    std::vector<CarriedPart> parts;
    QJsonArray kept;
    std::string said;
    for (const PartCarry &carry : carries) {
        parts.push_back({carry.part->number, (*drawer)->id, carry.line.carry});
        kept.append(documentOf(carry));
        said += (said.empty() ? "" : ", ") + std::to_string(carry.line.carry) + " " +
                carry.part->number;
    }
    appendAction(
        shop, keptInDrawers(parts, shop.by), (*drawer)->id + " is to hold " + said,
        {{QStringLiteral("place"), jsonText((*drawer)->id)}, {QStringLiteral("parts"), kept}});
}

void sayCarries(const std::vector<PartCarry> &carries, const CarryShopAsked &asked, OpenShop &shop)
{
    if (asked.csv) {
        shop.outcome.out += csvOf(carries);
        return;
    }
    if (!asked.json) {
        for (const PartCarry &carry : carries)
            shop.outcome.out += sentencesOf(carry);
        return;
    }
    QJsonArray parts;
    for (const PartCarry &carry : carries)
        parts.append(documentOf(carry));
    QJsonObject document{{QStringLiteral("parts"), parts}};
    if (carries.size() == 1)
        for (const char *key : {"carry", "covered"})
            document.insert(QLatin1String(key), parts.at(0).toObject().value(QLatin1String(key)));
    shop.outcome.print(document);
}

void answerOf(const CarryShopAsked &asked, const CarryNumbers &numbers, OpenShop &shop)
{
    auto book = SpareBook::of(shop.file);
    if (!book)
        return shop.outcome.refuse(book.error());
    auto garage = Garage::of(*shop.workshop, shop.file);
    if (!garage)
        return shop.outcome.refuse(garage.error());
    book->lives = std::move(garage->lives);
    const auto wanted = wantedOf(asked, numbers, shop);
    if (!wanted)
        return shop.outcome.refuse(wanted.error());
    const auto parts = partsAsked(asked, shop, *book);
    if (!parts)
        return shop.outcome.refuse(parts.error());
    const auto carries = carriesOf(*parts, shop, *book, *wanted);
    if (!carries)
        return shop.outcome.refuse(carries.error());
    if (!asked.keep.empty())
        return answerKeep(*carries, asked, shop);
    if (asked.together)
        return answerTogether(*carries, asked, wanted->certainty, shop);
    sayCarries(*carries, asked, shop);
}

} // namespace

void answerCarryOfShop(const CarryShopAsked &asked, const CarryNumbers &numbers,
                       CommandOutcome &outcome)
{
    for (const auto &[typed, option] :
         {std::pair(&numbers.rate, "--rate"), std::pair(&numbers.failures, "--failures"),
          std::pair(&numbers.cars, "--cars"), std::pair(&numbers.lasts, "--lasts"),
          std::pair(&numbers.crash, "--crash"), std::pair(&numbers.runs, "--runs"),
          std::pair(&numbers.hours, "--hours")})
        if (!typed->empty())
            return outcome.refuse(
                {option, "is for a sum of numbers, not for a shop's own history",
                 "Leave out --shop, or this option; season.csv and spares.csv say "
                 "it of the shop."});
    withShop(asked, asked.keep.empty() ? OpenMode::ReadOnly : OpenMode::ReadWrite, outcome,
             [&](OpenShop &shop) { answerOf(asked, numbers, shop); });
}

} // namespace flarestock
