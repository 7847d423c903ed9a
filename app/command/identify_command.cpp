// SPDX-License-Identifier: MIT
//
// `flarestock identify`: what an unmarked fitting can be, from a caliper and a pitch gauge.

#include "app/command/command.h"
#include "app/stockroom/asked.h"

#include "model/exact/case_fold.h"
#include "model/fluids/measure.h"
#include "model/ports/identify.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <cmath>
#include <memory>

namespace flarestock {

namespace {

struct IdentifyAsked {
    bool male = false;
    bool female = false;
    std::string outside;
    std::string inside;
    std::string pitch;
    std::string seat;
    bool tapered = false;
    bool json = false;
};

Result<double> measured(const char *option, const std::string &typed, Dimension dimension)
{
    auto measure = Measure::parse(typed, dimension);
    if (!measure)
        return tl::unexpected(wrongIn(option, measure.error()));
    if (dimension != Dimension::Angle && measure->si <= 0)
        return problem(option, "is not more than zero", "Measure again.");
    return measure->si;
}

/// Gender and diameter, which belong together: a male is measured outside, a female inside.
Result<Caliper> diameterOf(const IdentifyAsked &asked)
{
    if (asked.male == asked.female)
        return problem("identify",
                       asked.male ? "cannot be both male and female"
                                  : "does not know whether it is male or female",
                       "Write --male or --female.");
    const auto &typed = asked.male ? asked.outside : asked.inside;
    const char *option = asked.male ? "--od" : "--id";
    if (typed.empty())
        return problem(option, "is missing",
                       asked.male ? "Measure the male over its crests."
                                  : "Measure the female between its crests.");
    const auto diameter = measured(option, typed, Dimension::Length);
    if (!diameter)
        return tl::unexpected<Problem>(diameter.error());
    Caliper caliper;
    caliper.gender = asked.male ? Gender::Male : Gender::Female;
    caliper.diameterMm = *diameter * 1000;
    return caliper;
}

Result<Caliper> caliperOf(const IdentifyAsked &asked)
{
    auto caliper = diameterOf(asked);
    if (!caliper)
        return caliper;
    caliper->tapered = asked.tapered;
    if (!asked.pitch.empty()) {
        const auto pitch = measured("--pitch", asked.pitch, Dimension::Pitch);
        if (!pitch)
            return tl::unexpected<Problem>(pitch.error());
        caliper->pitchMm = *pitch * 1000;
    }
    if (sameFolded(trimmed(asked.seat), "flat")) {
        caliper->flatSeat = true;
    } else if (!asked.seat.empty()) {
        const auto seat = measured("--seat", asked.seat, Dimension::Angle);
        if (!seat)
            return tl::unexpected<Problem>(seat.error());
        caliper->seatDegrees = *seat * 180 / 3.14159265358979323846;
    }
    return caliper;
}

std::string deviationText(double mm)
{
    const long hundredths = std::lround(mm * 100);
    const auto below = std::to_string(std::abs(hundredths) % 100);
    return (hundredths < 0 ? "-" : "+") + std::to_string(std::abs(hundredths) / 100) + "." +
           (below.size() < 2 ? "0" : "") + below + " mm";
}

QJsonObject identifyDocument(const Identification &said)
{
    QJsonArray candidates;
    for (const auto &candidate : said.candidates) {
        QJsonArray ports;
        for (const auto &port : candidate.ports)
            ports.append(jsonText(port.text()));
        candidates.append(QJsonObject{
            {QStringLiteral("thread"), jsonText(candidate.thread)},
            {QStringLiteral("ports"), ports},
            {QStringLiteral("deviation"), jsonText(deviationText(candidate.deviationMm))}});
    }
    return {{QStringLiteral("candidates"), candidates},
            {QStringLiteral("ask"), jsonText(text(said.ask))},
            {QStringLiteral("why"), jsonText(said.why)}};
}

void answerIdentify(const IdentifyAsked &asked, CommandOutcome &outcome)
{
    const auto caliper = caliperOf(asked);
    if (!caliper)
        return outcome.refuse(caliper.error());
    const auto said = identify(*caliper);
    if (asked.json)
        return outcome.print(identifyDocument(said));
    for (const auto &candidate : said.candidates) {
        std::string ports;
        for (const auto &port : candidate.ports)
            ports += (ports.empty() ? "" : ", ") + port.text();
        outcome.print(candidate.thread + " (" + deviationText(candidate.deviationMm) +
                      " off nominal): " + ports);
    }
    outcome.print(said.why);
    if (said.ask != Ask::None)
        outcome.print(
            "Next, give the " + std::string(text(said.ask)) + ": --" + std::string(text(said.ask)) +
            (said.ask == Ask::Pitch ? " \"14 tpi\" or \"1.5 mm\"" : " \"37 deg\" or flat"));
}

} // namespace

void addIdentifyCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<IdentifyAsked>();
    CLI::App *command =
        app.add_subcommand("identify", "Says what an unmarked fitting can be, by caliper.");
    command->add_flag("--male", asked->male, "it has its thread outside");
    command->add_flag("--female", asked->female, "it has its thread inside");
    command->add_option("--od", asked->outside, "a male over its crests: \"22.1 mm\"");
    command->add_option("--id", asked->inside, "a female between its crests: \"20.3 mm\"");
    command->add_option("--pitch", asked->pitch, "by pitch gauge: \"14 tpi\" or \"1.5 mm\"");
    command->add_option("--seat", asked->seat,
                        "half angle of the cone, \"37 deg\" (or the whole, \"74 deg\"), or flat");
    command->add_flag("--tapered", asked->tapered, "the thread visibly tapers");
    command->add_flag("--json", asked->json, JsonHelp);
    command->callback([asked, &outcome] { answerIdentify(*asked, outcome); });
}

} // namespace flarestock
