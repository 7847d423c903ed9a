// SPDX-License-Identifier: MIT
//
// `flarestock torque`: how tight a nut or stud is turned, by each published table; of one port, or
// of every joint of a template or a planned build as a card.

#include "app/command/plan_asked.h"
#include "app/command/text_table.h"
#include "app/stockroom/tables/torque_asked.h"

#include "model/checks/torque_card.h"
#include "model/fluids/measure.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

constexpr std::string_view Advice =
    "Published figures, not the maker's of your part: his come first, and the series' rulebook; "
    "have fuel and brake work checked by someone qualified.";

struct TorqueWords {
    std::string port;
    std::string on = "fitting";
    std::string metal = "steel";
    PlanAsked plan; ///< For a card; its --json and --shop are the command's.
};

std::string figure(double number)
{
    return QString::number(number, 'f', 1).toStdString();
}

std::string range(double least, double most, const char *unit)
{
    const auto low = figure(least);
    const auto high = figure(most);
    return (low == high ? low : low + " to " + high) + " " + unit;
}

std::string sourceText(const Torque &torque)
{
    std::string said(torque.source);
    if (torque.halved)
        said += "; half of it, as it says where not all is ferrous";
    if (!torque.note.empty())
        said.append("; ").append(torque.note);
    return said;
}

std::string differText(double factor)
{
    return "The sources differ by a factor of " + figure(factor) +
           ": keep to the part maker's figure, or to one source, and write down which.";
}

QJsonObject torqueDocument(const Torque &torque)
{
    return {
        {QStringLiteral("leastNm"), torque.leastNm},
        {QStringLiteral("mostNm"), torque.mostNm},
        {QStringLiteral("published"), jsonText(torque.published)},
        {QStringLiteral("for"), jsonText(torque.metal)},
        {QStringLiteral("halved"), torque.halved},
        {QStringLiteral("note"), jsonText(torque.note)},
        {QStringLiteral("source"), jsonText(torque.source)},
        {QStringLiteral("sourceStands"), jsonText(torque.sourceStands)},
    };
}

QJsonObject askedDocument(const TorqueAsked &asked, const std::vector<Torque> &torques)
{
    QJsonArray all;
    for (const Torque &torque : torques)
        all.append(torqueDocument(torque));
    const auto factor = disagreement(torques);
    return {
        {QStringLiteral("port"), jsonText(asked.port.text())},
        {QStringLiteral("on"), jsonText(text(asked.on))},
        {QStringLiteral("metal"),
         asked.ferrous ? QStringLiteral("steel") : QStringLiteral("aluminium")},
        {QStringLiteral("torques"), all},
        {QStringLiteral("differ"), factor ? QJsonValue(*factor) : QJsonValue()},
    };
}

void sayTorques(const std::vector<Torque> &torques, CommandOutcome &outcome)
{
    for (const Torque &torque : torques)
        outcome.print("  " + range(torque.leastNm, torque.mostNm, "N.m") + " (" +
                      range(torque.leastNm / 1.3558179483314004, torque.mostNm / 1.3558179483314004,
                            "lbf.ft") +
                      "), for " + std::string(torque.metal) + ": " + sourceText(torque));
    if (const auto factor = disagreement(torques))
        outcome.print(differText(*factor));
}

/// ", its nut on hose": what the tables of flare nuts distinguish.
std::string nutText(const TorqueAsked &asked)
{
    const Family family = asked.port.family;
    if (family != Family::An && family != Family::Jic)
        return {};
    return ", its nut on " + std::string(text(asked.on));
}

void answerPort(const TorqueWords &words, CommandOutcome &outcome)
{
    const auto asked = torqueAsked({words.port, words.on, words.metal});
    if (!asked)
        return outcome.refuse(asked.error());
    const auto torques = torquesFor(*asked);
    if (words.plan.json)
        return outcome.print(askedDocument(*asked, torques));
    outcome.print(asked->port.text() + nutText(*asked) +
                  (asked->ferrous ? ", all of steel" : ", not all of steel"));
    if (torques.empty())
        outcome.print("  no table that is known here publishes a torque for it");
    sayTorques(torques, outcome);
    outcome.print(Advice);
}

QJsonObject cardDocument(const std::string &build, const std::vector<TorqueLine> &card)
{
    QJsonArray joints;
    for (const TorqueLine &line : card) {
        auto document = askedDocument(line.asked, line.torques);
        document.insert(QStringLiteral("at"), jsonText(line.at));
        document.insert(QStringLiteral("joint"), jsonText(line.joint));
        document.insert(QStringLiteral("into"), jsonText(line.into.text()));
        const JointRating &rating = line.rating;
        document.insert(QStringLiteral("ratedKpa"),
                        rating.pressureKpa ? QJsonValue(*rating.pressureKpa) : QJsonValue());
        document.insert(QStringLiteral("weakest"),
                        rating.weakest ? jsonText(rating.weakest->number) : QJsonValue());
        document.insert(QStringLiteral("highestC"),
                        rating.highC ? QJsonValue(*rating.highC) : QJsonValue());
        joints.append(document);
    }
    return {{QStringLiteral("build"), jsonText(build)}, {QStringLiteral("joints"), joints}};
}

/// Each source once, by its id, with what it says of itself.
void saySources(const std::vector<TorqueLine> &card, CommandOutcome &outcome)
{
    std::map<std::string_view, std::string> sources;
    for (const TorqueLine &line : card)
        for (const Torque &torque : line.torques)
            sources.emplace(torque.sourceId, std::string(torque.source) + " (" +
                                                 std::string(torque.sourceStands) + ")");
    for (const auto &[id, said] : sources)
        outcome.print(std::string(id) + "  " + said);
}

std::string whole(double number)
{
    return QString::number(number, 'f', 0).toStdString();
}

/// "6895 kPa by HE-6, 120 °C by NB-6": the lowest of what its pieces are rated for.
std::string standsText(const JointRating &rating)
{
    std::string said = "pressure not published";
    if (rating.pressureKpa)
        said = whole(*rating.pressureKpa) + " kPa by " + rating.weakest->number;
    if (rating.highC)
        said += ", " + whole(*rating.highC) + " °C by " + rating.tenderest->number;
    return said;
}

void sayCard(const std::string &title, const std::vector<TorqueLine> &card, CommandOutcome &outcome)
{
    TextTable table({{"at", TextTable::Side::Left},
                     {"turn", TextTable::Side::Left},
                     {"into", TextTable::Side::Left},
                     {"torque", TextTable::Side::Left},
                     {"source", TextTable::Side::Left},
                     {"stands", TextTable::Side::Left}});
    double widest = 0;
    for (const TorqueLine &line : card) {
        std::vector<std::string> cells{
            line.at, line.asked.port.text(), line.into.text(), "none published",
            "",      standsText(line.rating)};
        for (const Torque &torque : line.torques) {
            cells[3] = range(torque.leastNm, torque.mostNm, "N.m");
            cells[4] = std::string(torque.sourceId) + (torque.halved ? ", half" : "");
            table.add(cells);
            cells[0] = cells[1] = cells[2] = cells[5] = "";
        }
        if (line.torques.empty())
            table.add(cells);
        widest = std::max(widest, line.disagreement.value_or(0));
    }
    outcome.print("TORQUES: " + title);
    outcome.out += table.text();
    saySources(card, outcome);
    if (widest > 0)
        outcome.print(differText(widest));
    outcome.print(Advice);
}

void answerCard(const PlanAsked &asked, CommandOutcome &outcome)
{
    answerBuild(asked, outcome, [&](const WorkedBuild &build, const Workshop &workshop) {
        const auto card = torqueCard(build.expansion);
        const BuildPlan *const planned = workshop.build(asked.build);
        if (asked.json)
            outcome.print(cardDocument(planned ? planned->id : build.expansion.templateId, card));
        else
            sayCard(planned ? planned->title : build.expansion.title, card, outcome);
    });
}

void answerTorque(const TorqueWords &words, CommandOutcome &outcome)
{
    const bool wantsCard = !words.plan.build.empty() || !words.plan.form.empty();
    if (words.port.empty() != wantsCard)
        return outcome.refuse({"flarestock torque",
                               "takes a port, or a template or build, and not both",
                               "Say flarestock torque \"AN -6\", or --build ID --shop FILE."});
    if (!wantsCard)
        return answerPort(words, outcome);
    if (words.plan.shop.empty())
        return outcome.refuse({words.plan.build.empty() ? "--template" : "--build",
                               "is of no shop that was named", "Add --shop FILE."});
    answerCard(words.plan, outcome);
}

void addCardOptions(CLI::App &command, PlanAsked &asked)
{
    asked.command = "flarestock torque";
    command.add_option("--build", asked.build, "every joint of a planned build, as a card");
    command.add_option("--template", asked.form, "every joint of a template, as a card");
    addAnswerOptions(command, asked);
    command.add_option("--shop", asked.shop, ShopHelp);
    command.add_flag("--json", asked.json, JsonHelp);
}

} // namespace

void addTorqueCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto words = std::make_shared<TorqueWords>();
    CLI::App *command = app.add_subcommand(
        "torque", "Says how tight a nut or stud is turned, by each published table.");
    command->add_option("PORT", words->port, "a port: \"AN -6\", \"ORB -8 male\"");
    command
        ->add_option("--on", words->on,
                     "what a flare nut holds: fitting, hose, aluminium tube, "
                     "steel tube, other tube")
        ->capture_default_str();
    command
        ->add_option("--metal", words->metal,
                     "steel, or aluminium where one of the two sides is not of steel")
        ->capture_default_str();
    addCardOptions(*command, words->plan);
    command->callback([words, &outcome] { answerTorque(*words, outcome); });
}

} // namespace flarestock
