// SPDX-License-Identifier: MIT

#include "app/sheet/build/build_sheet.h"

#include "app/garage/cautions.h"
#include "app/workshop/made_up.h"
#include "model/checks/torque_card.h"

#include <QString>

#include <algorithm>

namespace flarestock {

namespace {

constexpr double NmPerLbfFt = 1.3558179483314004; // Exact, by the foot, the pound and g.

void addLine(std::string &text, const std::string &line)
{
    if (!line.empty())
        text += (text.empty() ? "" : "\n") + line;
}

void addOnce(std::vector<std::string> &lines, const std::string &line)
{
    if (std::find(lines.begin(), lines.end(), line) == lines.end())
        lines.push_back(line);
}

std::string joined(const std::vector<std::string> &lines, std::string_view between)
{
    std::string said;
    for (const std::string &line : lines)
        said.append(said.empty() ? "" : between).append(line);
    return said;
}

/// "AN -10" of a nut, whatever its gender.
std::string turnedText(const Port &port)
{
    return std::string(text(port.family)) + " " + port.size;
}

/// "45.2–54.2"
std::string range(const Torque &torque, double unit)
{
    const auto number = [unit](double nm) {
        return QString::number(nm / unit, 'f', 1).toStdString();
    };
    const std::string least = number(torque.leastNm);
    const std::string most = number(torque.mostNm);
    return least == most ? least : least + "–" + most;
}

/// What is turned in a joint, one a line: "AN -10: 45.2–54.2 or 29.0–36.0 N·m".
std::string torquesOf(const std::string &joint, const std::vector<TorqueLine> &card,
                      const Speech &speech)
{
    std::string said;
    for (const TorqueLine &line : card) {
        if (line.joint != joint)
            continue;
        std::vector<std::string> figures;
        for (const Torque &torque : line.torques)
            figures.push_back(speech.figures(range(torque, 1)));
        addLine(said, turnedText(line.asked.port) + ": " +
                          (figures.empty() ? speech.say("none published")
                                           : joined(figures, speech.say(" or ")) + " N·m"));
    }
    return said;
}

void addTorques(BuildSheet &sheet, const std::vector<TorqueLine> &card, const Speech &speech)
{
    for (const TorqueLine &line : card) {
        for (const Torque &torque : line.torques) {
            addOnce(sheet.torques,
                    turnedText(line.asked.port) + ": " +
                        speech.figures(range(torque, 1) + " N·m, " + range(torque, NmPerLbfFt)) +
                        " lbf·ft (" + std::string(torque.sourceId) +
                        (torque.halved ? speech.say(", half of it") : "") + ")");
            addOnce(sheet.sources,
                    std::string(torque.sourceId) + ": " + speech.sentence(torque.source));
        }
    }
}

std::string aidsOf(const Way &way, const Speech &speech)
{
    std::string said;
    for (const WayAid &aid : way.aids) {
        const std::string need = speech.sentence(aid.need.text());
        addLine(said, aid.part ? aid.part->number + "\n" + need
                               : speech.say("%1: not in the catalogue", {need}));
    }
    return said;
}

/// "AD-810, then HE-10S", and below it what they lead from and to.
std::string piecesOf(const PlacedJoint &joint, const Speech &speech)
{
    const std::string ports = speech.say("%1 with %2", {joint.from.text(), joint.to.text()});
    if (!joint.way)
        return speech.say("open: nothing joins these") + "\n" + ports;
    std::vector<std::string> pieces;
    for (const Piece &piece : joint.way->pieces)
        pieces.push_back(piece.part->number);
    std::string said =
        pieces.empty() ? speech.say("straight together") : joined(pieces, speech.say(", then "));
    if (joint.angleDegrees)
        said += ", " + std::to_string(*joint.angleDegrees) + "°";
    return said + "\n" + ports;
}

std::string titleOf(const Expansion &build, const std::string &station)
{
    const PlacedStation *placed = build.station(station);
    return placed == nullptr || placed->station == nullptr ? station : placed->station->title;
}

/// "inlet" of "pump inlet", in that speech; a title stays as the template has it.
std::string portSaid(const std::string &at, const std::string &title, const Speech &speech)
{
    if (!at.starts_with(title + " "))
        return at;
    const std::string port = at.substr(title.size() + 1);
    return title + " " +
           (port == "inlet"    ? speech.say("inlet")
            : port == "outlet" ? speech.say("outlet")
                               : port);
}

/// Where a joint is: "pump inlet", "pump outlet to filter inlet".
std::string placeOf(const PlacedJoint &joint, const Expansion &build, const Speech &speech)
{
    const std::string from = titleOf(build, joint.station);
    const auto run = std::find_if(build.runs.begin(), build.runs.end(),
                                  [&](const PlacedRun &one) { return one.id == joint.run; });
    const std::string to = run == build.runs.end() ? std::string() : titleOf(build, run->to);
    const auto between = to.empty() ? std::string::npos : joint.at.rfind(" to " + to + " ");
    if (between == std::string::npos || between < from.size())
        return portSaid(joint.at, from, speech);
    return speech.say("%1 to %2", {portSaid(joint.at.substr(0, between), from, speech),
                                   portSaid(joint.at.substr(between + 4), to, speech)});
}

/// One step for each hose or tube, with all lengths that come off it.
void addCuts(BuildSheet &sheet, const Expansion &build, const Speech &speech)
{
    std::vector<const Part *> lines;
    for (const PlacedRun &run : build.runs) {
        if (run.line == nullptr || run.length.amount.isZero())
            continue;
        auto at = std::find(lines.begin(), lines.end(), run.line);
        if (at == lines.end()) {
            at = lines.insert(at, run.line);
            sheet.steps.push_back(
                {BenchWork::Cut, run.line->number, run.line->description, "", ""});
        }
        addLine(sheet.steps[static_cast<std::size_t>(at - lines.begin())].what,
                speech.amount(run.length) + ": " +
                    speech.say("%1 to %2", {titleOf(build, run.from), titleOf(build, run.to)}));
    }
}

/// The test that is still to be made, with room to write it down; brakes want a second name.
BenchStep leakTest(const Expansion &build, const Speech &speech)
{
    const bool isBrakes = build.system == "brakes";
    return {BenchWork::Test,
            isBrakes ? speech.say("leak test, seen by two") : speech.say("leak test"),
            speech.say("with, at, held for, how it was:") + "\n ", "",
            isBrakes ? speech.say("signed, and by:") : speech.say("signed:")};
}

std::string cautionsOf(const Speech &speech)
{
    std::string said = speech.say("Where a system is opened:");
    for (const std::string_view one : OpeningCautions)
        said.append(" ").append(speech.sentence(one));
    return said;
}

} // namespace

std::string_view text(BenchWork work) noexcept
{
    switch (work) {
    case BenchWork::Cut:
        return "cut";
    case BenchWork::Join:
        return "join";
    case BenchWork::Swapped:
        return "built";
    case BenchWork::Test:
        return "test";
    }
    return {};
}

BuildSheet buildSheet(const WorkedBuild &build, const Workshop &workshop, const BuildPlan &plan,
                      const Speech &speech)
{
    BuildSheet sheet;
    addCuts(sheet, build.expansion, speech);
    const auto card = torqueCard(build.expansion);
    for (const PlacedJoint &joint : build.expansion.joints)
        sheet.steps.push_back({BenchWork::Join, placeOf(joint, build.expansion, speech),
                               piecesOf(joint, speech),
                               joint.way ? aidsOf(*joint.way, speech) : std::string(),
                               torquesOf(joint.id, card, speech)});
    for (const Instead &one : workshop.notes.build(plan.id).instead)
        sheet.steps.push_back({BenchWork::Swapped, speech.day(dayOf(one.at)) + ", " + one.who,
                               speech.say("%1 instead of %2", {one.used, one.planned}), "", ""});
    sheet.steps.push_back(leakTest(build.expansion, speech));
    addTorques(sheet, card, speech);
    return sheet;
}

Workbook buildSheetRows(const BuildSheet &sheet, const std::string &day)
{
    using Kind = WorkbookColumn::Kind;
    Workbook book{"build sheet", day, 0, {}, {}, {}};
    book.columns = {{"work", Kind::Text, 8},
                    {"where", Kind::Text, 26},
                    {"what", Kind::Text, 40},
                    {"with", Kind::Text, 30},
                    {"torque", Kind::Text, 50}};
    for (const BenchStep &step : sheet.steps)
        book.rows.push_back(
            {std::string(text(step.work)), step.at, step.what, step.with, step.torque});
    return book;
}

PaperWords buildSheetPaper(const BuildSheet &sheet, const BuildPlan &plan, const std::string &day,
                           PaperWords paper)
{
    const Speech &speech = *paper.speech;
    paper.title = speech.say("Build sheet");
    paper.number = plan.id;
    paper.made = day;
    putPlan(paper, plan, day);
    paper.columns = {{speech.say("Done"), 6},
                     {speech.say("Where"), 19},
                     {speech.say("What"), 28},
                     {speech.say("With"), 15},
                     {speech.say("Torque"), 32}};
    for (const BenchStep &step : sheet.steps)
        paper.rows.push_back({"[   ]", speech.word(text(step.work)) + "\n" + step.at,
                              step.work == BenchWork::Cut ? "\n" + step.what : step.what, step.with,
                              step.torque.empty() ? "" : "\n" + step.torque});
    if (!sheet.torques.empty())
        paper.note = speech.say("The part maker's torque comes first.") + " " +
                     joined(sheet.torques, "; ") + ". " + joined(sheet.sources, "; ") + ".\n";
    paper.note += cautionsOf(speech) + "\n" + speech.say("Built by:") + std::string(40, ' ') +
                  speech.say("Looked at by:");
    paper.foot = speech.sentence(AdviceOnly);
    return paper;
}

} // namespace flarestock
