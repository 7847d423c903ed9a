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
std::string torquesOf(const std::string &joint, const std::vector<TorqueLine> &card)
{
    std::string said;
    for (const TorqueLine &line : card) {
        if (line.joint != joint)
            continue;
        std::vector<std::string> figures;
        for (const Torque &torque : line.torques)
            figures.push_back(range(torque, 1));
        addLine(said, turnedText(line.asked.port) + ": " +
                          (figures.empty() ? "none published" : joined(figures, " or ") + " N·m"));
    }
    return said;
}

void addTorques(BuildSheet &sheet, const std::vector<TorqueLine> &card)
{
    for (const TorqueLine &line : card) {
        for (const Torque &torque : line.torques) {
            addOnce(sheet.torques, turnedText(line.asked.port) + ": " + range(torque, 1) +
                                       " N·m, " + range(torque, NmPerLbfFt) + " lbf·ft (" +
                                       std::string(torque.sourceId) +
                                       (torque.halved ? ", half of it)" : ")"));
            addOnce(sheet.sources,
                    std::string(torque.sourceId) + ": " + std::string(torque.source));
        }
    }
}

std::string aidsOf(const Way &way)
{
    std::string said;
    for (const WayAid &aid : way.aids)
        addLine(said, aid.part ? aid.part->number + "\n" + aid.need.text()
                               : aid.need.text() + ": not in the catalogue");
    return said;
}

/// "AD-810, then HE-10S", and below it what they lead from and to.
std::string piecesOf(const PlacedJoint &joint)
{
    const std::string ports = joint.from.text() + " to " + joint.to.text();
    if (!joint.way)
        return "open: nothing joins these\n" + ports;
    std::vector<std::string> pieces;
    for (const Piece &piece : joint.way->pieces)
        pieces.push_back(piece.part->number);
    std::string said = pieces.empty() ? "straight together" : joined(pieces, ", then ");
    if (joint.angleDegrees)
        said += ", " + std::to_string(*joint.angleDegrees) + "°";
    return said + "\n" + ports;
}

std::string titleOf(const Expansion &build, const std::string &station)
{
    const PlacedStation *placed = build.station(station);
    return placed == nullptr || placed->station == nullptr ? station : placed->station->title;
}

/// One step for each hose or tube, with all lengths that come off it.
void addCuts(BuildSheet &sheet, const Expansion &build)
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
                run.length.spoken() + ": " + titleOf(build, run.from) + " to " +
                    titleOf(build, run.to));
    }
}

/// The test that is still to be made, with room to write it down; brakes want a second name.
BenchStep leakTest(const Expansion &build)
{
    const bool isBrakes = build.system == "brakes";
    return {BenchWork::Test, isBrakes ? "leak test, seen by two" : "leak test",
            "with, at, held for, how it was:\n ", "", isBrakes ? "signed, and by:" : "signed:"};
}

std::string cautionsOf()
{
    std::string said = "Where a system is opened:";
    for (const std::string_view one : OpeningCautions)
        said.append(" ").append(one);
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

BuildSheet buildSheet(const WorkedBuild &build, const Workshop &workshop, const BuildPlan &plan)
{
    BuildSheet sheet;
    addCuts(sheet, build.expansion);
    const auto card = torqueCard(build.expansion);
    for (const PlacedJoint &joint : build.expansion.joints)
        sheet.steps.push_back({BenchWork::Join, joint.at, piecesOf(joint),
                               joint.way ? aidsOf(*joint.way) : std::string(),
                               torquesOf(joint.id, card)});
    for (const Instead &one : workshop.notes.build(plan.id).instead)
        sheet.steps.push_back({BenchWork::Swapped, dayOf(one.at) + ", " + one.who,
                               one.used + " instead of " + one.planned, "", ""});
    sheet.steps.push_back(leakTest(build.expansion));
    addTorques(sheet, card);
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
    paper.title = "Build sheet";
    paper.number = plan.id;
    paper.made = day;
    paper.facts = {{"Build", plan.title.empty() ? plan.id : plan.title}, {"As of", day}};
    if (!plan.car.empty())
        paper.facts.emplace_back("For", plan.car);
    if (!plan.by.empty())
        paper.facts.emplace_back("By", plan.by);
    paper.columns = {{"Done", 6}, {"Where", 19}, {"What", 28}, {"With", 15}, {"Torque", 32}};
    for (const BenchStep &step : sheet.steps)
        paper.rows.push_back({"[   ]", std::string(text(step.work)) + "\n" + step.at,
                              step.work == BenchWork::Cut ? "\n" + step.what : step.what, step.with,
                              step.torque.empty() ? "" : "\n" + step.torque});
    if (!sheet.torques.empty())
        paper.note = "The part maker's torque comes first. " + joined(sheet.torques, "; ") + ". " +
                     joined(sheet.sources, "; ") + ".\n";
    paper.note += cautionsOf() + "\nBuilt by:                                        Looked at by:";
    paper.foot = AdviceOnly;
    return paper;
}

} // namespace flarestock
