// SPDX-License-Identifier: MIT
//
// `flarestock claim`: what suppliers owe: listed, raised, promised, settled.

#include "app/buyer/order_words.h"
#include "app/buyer/receiving/claiming.h"
#include "app/command/buying/receiving_sheet.h"
#include "app/command/papers/paper_options.h"
#include "app/sheet/claim_rows.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <algorithm>
#include <memory>

namespace flarestock {

namespace {

struct ClaimAsked : ShopAsked, RaiseWords, SettleWords, PaperAsked {
    std::string named; ///< Number or id.
    std::string day;
    std::string of; ///< Of a list: only this supplier's; empty: of all.
    bool open = false;
    bool strict = false;
};

/// As papers. Problem: a letter, of no claim or to several suppliers; a file that cannot be
/// written.
Result<void> writeClaims(const ClaimAsked &asked, const ClaimsSaid &claims, const OpenShop &shop)
{
    const auto today = dayAsked({}, shop.by.at);
    if (!today)
        return tl::unexpected(today.error());
    const bool isOfSeveral = std::any_of(claims.begin(), claims.end(), [&](const auto *one) {
        return one->now.supplier != claims.front()->now.supplier;
    });
    if (!asked.pdf.empty() && isOfSeveral)
        return problem("--pdf", "is a letter to one supplier, and these claims are of several",
                       "Name him: --supplier.");
    if (!asked.pdf.empty() && claims.empty())
        return problem("--pdf", "has no claim to write of", "Look: flarestock claim list.");
    return writePapers(asked, shop.file,
                       {[&](PaperWords paper) {
                            return claimLetter(claims, *shop.workshop, *today, std::move(paper));
                        },
                        [&] { return claimRows(claims, *shop.workshop, *today); }});
}

void answerList(const ClaimAsked &asked, OpenShop &shop)
{
    std::string only;
    if (!asked.of.empty()) {
        const auto supplier = supplierAsked(asked.of, shop.workshop->catalogue);
        if (!supplier)
            return shop.outcome.refuse(supplier.error());
        only = (*supplier)->id;
    }
    ClaimsSaid told;
    QJsonArray all;
    std::string said;
    std::size_t open = 0;
    for (const ClaimStanding &claim : shop.workshop->bought.claims.claims) {
        if (!only.empty() && claim.now.supplier != only)
            continue;
        open += claim.now.isSettled() ? 0 : 1;
        if (asked.open && claim.now.isSettled())
            continue;
        told.push_back(&claim);
        all.append(claimDocument(claim, *shop.workshop));
        said += claimSentence(claim, *shop.workshop) + "\n";
    }
    if (const auto written = writeClaims(asked, told, shop); !written)
        return shop.outcome.refuse(written.error());
    if (asked.strict && open > 0)
        shop.outcome.ending = Ending::Attention;
    if (shop.asked.json)
        return shop.outcome.print(QJsonObject{{QStringLiteral("claims"), all},
                                              {QStringLiteral("open"), static_cast<int>(open)}});
    shop.outcome.print(said + (open == 0 ? "nothing is owed" : counted(open, "claim") + " open"));
}

/// The claim that was named, to be looked at; said and nothing where there is none.
std::optional<ClaimStanding> named(const ClaimAsked &asked, OpenShop &shop)
{
    const auto claim = shop.workshop->bought.claims.find(asked.named);
    if (claim)
        return **claim;
    shop.outcome.refuse(claim.error());
    return std::nullopt;
}

void answerShow(const ClaimAsked &asked, OpenShop &shop)
{
    const auto claim = named(asked, shop);
    if (!claim)
        return;
    if (const auto written = writeClaims(asked, {&*claim}, shop); !written)
        return shop.outcome.refuse(written.error());
    QJsonArray steps;
    std::string said = claimSentence(*claim, *shop.workshop) + "\n";
    for (const SupplierClaim &step : claim->steps) {
        steps.append(QJsonObject{
            {QStringLiteral("record"), jsonText(step.id.text())},
            {QStringLiteral("state"), jsonText(text(step.state))},
            {QStringLiteral("day"), step.day.empty() ? QJsonValue() : jsonText(step.day)},
            {QStringLiteral("note"), jsonText(step.note)},
            {QStringLiteral("who"), jsonText(step.who)},
            {QStringLiteral("at"), static_cast<qint64>(step.at)}});
        said += "  " + std::string(text(step.state)) +
                (step.day.empty() ? "" : ", by " + step.day) +
                (step.who.empty() ? "" : ", " + step.who) + "\n";
    }
    if (shop.asked.json) {
        QJsonObject document = claimDocument(*claim, *shop.workshop);
        document.insert(QStringLiteral("steps"), steps);
        return shop.outcome.print(document);
    }
    said.pop_back();
    shop.outcome.print(said);
}

/// Whether an action of that id was done before, which is then said.
bool wasStepped(const OpenShop &shop)
{
    return wasWritten(shop,
                      [](const Record &one) { return one.kind == RecordKind::SupplierClaim; }) ||
           wasDone(shop, [](const Movement &one) {
               return one.deed == Deed::Receive || one.deed == Deed::Move;
           });
}

void write(OpenShop &shop, const SupplierClaim &step)
{
    Action action;
    action.records.push_back(step.asRecord());
    const ClaimStanding standing{step, {step}, 0};
    appendAction(shop, action, "claim " + claimSentence(standing, *shop.workshop),
                 claimDocument(standing, *shop.workshop));
}

void answerRaise(const ClaimAsked &asked, OpenShop &shop)
{
    if (wasStepped(shop))
        return;
    const auto claim = raised(asked, shop.workshop->bought, *shop.workshop, shop.by);
    if (!claim)
        return shop.outcome.refuse(claim.error());
    write(shop, *claim);
}

void answerPromise(const ClaimAsked &asked, OpenShop &shop)
{
    const auto claim = wasStepped(shop) ? std::nullopt : named(asked, shop);
    if (!claim)
        return;
    const auto step = promisedBy(*claim, asked.day, shop.by);
    if (!step)
        return shop.outcome.refuse(step.error());
    write(shop, *step);
}

void answerSettle(const ClaimAsked &asked, OpenShop &shop)
{
    const auto claim = wasStepped(shop) ? std::nullopt : named(asked, shop);
    if (!claim)
        return;
    const auto made =
        settled(*claim, asked, {shop.workshop->bought, shop.file, *shop.workshop}, shop.by);
    if (!made)
        return shop.outcome.refuse(made.error());
    if (made->look) {
        if (const auto looked = shop.file.record(*made->look); !looked)
            return shop.outcome.refuse(looked.error());
    }
    ClaimStanding now{made->step.value_or(claim->now), {}, claim->came};
    std::string said = "claim " + claimSentence(now, *shop.workshop);
    QJsonObject document = claimDocument(now, *shop.workshop);
    if (!asked.came.empty())
        said += ", " + asked.came + " came with a value of " + valueText(made->value);
    document.insert(QStringLiteral("value"), jsonText(valueText(made->value)));
    document.insert(QStringLiteral("costChange"),
                    jsonText(valueText(made->late ? made->late->amount : 0)));
    appendAction(shop, made->action, said, document);
}

CLI::App *step(CLI::App &claim, const char *name, const char *what,
               const std::shared_ptr<ClaimAsked> &asked)
{
    CLI::App *command = claim.add_subcommand(name, what);
    addShopOptions(*command, *asked);
    return command;
}

/// What a step does with the shop.
struct Doing {
    OpenMode mode = OpenMode::ReadWrite;
    void (*answer)(const ClaimAsked &, OpenShop &) = nullptr;
};

void answerWith(CLI::App &command, const std::shared_ptr<ClaimAsked> &asked, const Doing &doing,
                CommandOutcome &outcome)
{
    command.callback([asked, doing, &outcome] {
        withShop(*asked, doing.mode, outcome, [&](OpenShop &shop) { doing.answer(*asked, shop); });
    });
}

void addRaise(CLI::App &claim, const std::shared_ptr<ClaimAsked> &asked, CommandOutcome &outcome)
{
    CLI::App *raise = step(claim, "raise", "Says that a supplier owes something.", asked);
    RaiseWords &words = *asked;
    raise->add_option("PART", words.part, "what is owed")->required();
    raise->add_option("QUANTITY", words.quantity, "how much of it")->required();
    raise->add_option("--fault", words.fault, "missing, wrong part, damaged, short delivery")
        ->required();
    raise->add_option("--order", words.order, "the order that it belongs to");
    raise->add_option("--supplier", words.supplier, "who owes it, where there was no order");
    raise->add_option("--box-of", words.boxOf, "the part whose box lacked it");
    raise->add_option("--box-lot", words.boxLot, "the lot or serial of that part");
    raise->add_option("--note", words.note, "in words");
    answerWith(*raise, asked, {OpenMode::ReadWrite, answerRaise}, outcome);
}

void addSettle(CLI::App &claim, const std::shared_ptr<ClaimAsked> &asked, CommandOutcome &outcome)
{
    CLI::App *settle = step(claim, "settle", "Ends a claim: the piece, a credit, given up.", asked);
    SettleWords &words = *asked;
    settle->add_option("CLAIM", asked->named, "its number or id")->required();
    settle->add_option("--came", words.came, "so much of it came: 1");
    settle->add_option("--to", words.to, "where it goes; not said: into the box that lacked it");
    settle->add_option("--lot", words.lot, "its lot or serial");
    settle->add_option("--value", words.value,
                       "what it carries; not said: what the order still has for it, or nothing");
    settle->add_option("--credit", words.credit, "what is paid back, in the shop's currency");
    settle->add_flag("--given-up", words.givenUp, "nothing will come of it");
    settle->add_option("--note", words.note, "in words");
    answerWith(*settle, asked, {OpenMode::ReadWrite, answerSettle}, outcome);
}

} // namespace

void addClaimCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<ClaimAsked>();
    CLI::App *claim = app.add_subcommand("claim", "What suppliers owe, from raised to settled.");
    claim->require_subcommand(1);
    CLI::App *list = step(*claim, "list", "All claims.", asked);
    list->add_option("--supplier", asked->of, "only what this one owes");
    list->add_flag("--open", asked->open, "only those that are not settled");
    list->add_flag("--strict", asked->strict, "exit status 1 where one is open");
    addPaperOptions(*list, *asked, "them (the paper is a letter to the supplier)");
    answerWith(*list, asked, {OpenMode::ReadOnly, answerList}, outcome);
    CLI::App *show = step(*claim, "show", "One claim and its steps.", asked);
    show->add_option("CLAIM", asked->named, "its number or id")->required();
    addPaperOptions(*show, *asked, "the claim (the paper is a letter to the supplier)");
    answerWith(*show, asked, {OpenMode::ReadOnly, answerShow}, outcome);
    addRaise(*claim, asked, outcome);
    CLI::App *promise = step(*claim, "promise", "The supplier has named a day for it.", asked);
    promise->add_option("CLAIM", asked->named, "its number or id")->required();
    promise->add_option("--by", asked->day, "the day: 2026-12-01")->required();
    answerWith(*promise, asked, {OpenMode::ReadWrite, answerPromise}, outcome);
    addSettle(*claim, asked, outcome);
}

} // namespace flarestock
