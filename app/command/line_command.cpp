// SPDX-License-Identifier: MIT
//
// `flarestock line`: velocity, Reynolds number and pressure drop of one line.

#include "app/command/command.h"
#include "app/stockroom/tables/line_asked.h"

#include "model/fluids/line/dash_bore.h"
#include "model/fluids/measure.h"

#include <CLI/CLI.hpp>

#include <cmath>
#include <memory>

namespace flarestock {

namespace {

/// As typed, and how it is to be said.
struct OneLineAsked : LineWords {
    bool json = false;
};

QJsonObject lineDocument(const OneLineAsked &asked, const LineFlow &line, const LineLoss &loss)
{
    QJsonObject document{
        {QStringLiteral("velocityMS"), loss.velocityMS},
        {QStringLiteral("reynolds"), loss.reynolds},
        {QStringLiteral("regime"), jsonText(text(loss.regime))},
        {QStringLiteral("frictionFactor"), loss.frictionFactor},
        {QStringLiteral("frictionPa"), loss.frictionPa},
        {QStringLiteral("minorPa"), loss.minorPa},
        {QStringLiteral("levelPa"), loss.levelPa},
        {QStringLiteral("pressureDropPa"), loss.dropPa},
    };
    if (!asked.forward.empty())
        document.insert(QStringLiteral("accelerationPa"), loss.accelerationPa);
    if (asked.dash > 0)
        document.insert(QStringLiteral("assumedBoreM"), line.boreM);
    return document;
}

/// To about four figures, never with an exponent.
std::string rounded(double number, const char *unit)
{
    const double size = std::abs(number);
    const int decimals = size >= 1000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : size >= 1 ? 3 : 4;
    return QString::number(number, 'f', decimals).toStdString() + unit;
}

/// Where density and viscosity come from, so that an estimate is not taken for a measurement.
std::string basisSentence(const OneLineAsked &asked, const LineFlow &line)
{
    const std::string values =
        rounded(line.densityKgM3, " kg/m3, ") + rounded(line.viscosityPaS * 1000, " mPa.s");
    if (!asked.density.empty() && !asked.viscosity.empty())
        return "With " + values + " as given.";
    const Liquid liquid = liquidAsked(asked).value();
    return "With " + values + ", " + std::string(text(parseFluid(asked.fluid).value())) + " at " +
           asked.temperature + " where not given (" + std::string(liquid.status) + ": " +
           std::string(liquid.source) + ").";
}

void sayLine(const OneLineAsked &asked, const LineFlow &line, const LineLoss &loss,
             CommandOutcome &outcome)
{
    outcome.print("pressure drop    " + rounded(loss.dropPa / 1000, " kPa (") +
                  rounded(in({Dimension::Pressure, loss.dropPa, {}}, "psi"), " psi)"));
    outcome.print("  friction       " + rounded(loss.frictionPa / 1000, " kPa"));
    outcome.print("  ends and bends " + rounded(loss.minorPa / 1000, " kPa"));
    outcome.print("  level          " + rounded(loss.levelPa / 1000, " kPa"));
    if (!asked.forward.empty())
        outcome.print("  acceleration   " + rounded(loss.accelerationPa / 1000, " kPa"));
    outcome.print("velocity         " + rounded(loss.velocityMS, " m/s (") +
                  rounded(in({Dimension::Velocity, loss.velocityMS, {}}, "ft/s"), " ft/s)"));
    outcome.print("Reynolds number  " + rounded(loss.reynolds, ", ") +
                  std::string(text(loss.regime)) + ", Darcy friction factor " +
                  rounded(loss.frictionFactor, ""));
    if (loss.regime == Regime::Uncertain)
        outcome.print("Between 2040 and 4000 the flow may be either; the friction is the larger, "
                      "turbulent one.");
    if (asked.dash > 0)
        outcome.print("A bore of " + rounded(line.boreM * 1000, " mm") + " is assumed for -" +
                      std::to_string(asked.dash) + " (" +
                      std::string(assumedBore(asked.dash, DashNumbering::AsTube)->source) +
                      "): measure the hose and its ends.");
    outcome.print(basisSentence(asked, line));
}

void answerLine(const OneLineAsked &asked, CommandOutcome &outcome)
{
    const auto line = lineAsked(asked);
    if (!line)
        return outcome.refuse(line.error());
    const auto loss = lineLoss(*line);
    if (!loss)
        return outcome.refuse(loss.error());
    if (asked.json)
        return outcome.print(lineDocument(asked, *line, *loss));
    sayLine(asked, *line, *loss, outcome);
}

} // namespace

void addLineCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<OneLineAsked>();
    CLI::App *command = app.add_subcommand("line", "Says what pressure a line takes from a flow.");
    command->add_option("--fluid", asked->fluid, "gives density and viscosity")
        ->capture_default_str();
    command->add_option("--temperature", asked->temperature, "of the fluid")->capture_default_str();
    auto *flow = command->add_option_group("flow", "one of these");
    flow->add_option("--flow", asked->flow, "\"255 L/h\", or by mass: \"300 lb/h\"");
    flow->add_option("--velocity", asked->velocity, "in the bore: \"1.5 m/s\"");
    flow->require_option(1);
    auto *bore = command->add_option_group("bore", "one of these");
    bore->add_option("--bore", asked->bore, "the free bore: \"8.71 mm\"");
    bore->add_option("--dash", asked->dash,
                     "the size of a hose whose bore is not known, 6 for -6: its bore is assumed")
        ->check(CLI::PositiveNumber);
    bore->require_option(1);
    command->add_option("--length", asked->length, "\"5 m\"")->required();
    command->add_option("--density", asked->density, "instead of the fluid's: \"745 kg/m3\"");
    command->add_option("--viscosity", asked->viscosity,
                        "instead of the fluid's: \"0.41 mPa.s\" or \"0.55 mm2/s\"");
    command->add_option("--roughness", asked->roughness, "\"1.5 um\"; smooth where it is not said");
    command->add_option("--k", asked->lossCoefficient,
                        "sum of the loss coefficients of ends and bends; 0 where it is not said");
    command->add_option("--rise", asked->rise, "outlet above inlet: \"1 m\"; below: \"-1 m\"");
    auto *forward = command->add_option(
        "--forward", asked->forward,
        "outlet before inlet, towards the car's nose: \"3 m\"; with --acceleration");
    auto *acceleration =
        command->add_option("--acceleration", asked->acceleration, "of the car: \"1.5 g\"");
    forward->needs(acceleration);
    acceleration->needs(forward);
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerLine(*asked, outcome); });
}

} // namespace flarestock
