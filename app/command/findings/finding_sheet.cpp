// SPDX-License-Identifier: MIT

#include "app/command/findings/finding_sheet.h"

#include "app/command/command.h"

#include <array>

namespace flarestock {

namespace {

constexpr std::string_view BeforeOpening =
    "Before a system is opened: depressurise, catch the fluid, no ignition source, eye and skin\n"
    "protection, extinguisher at hand; leak-test before the first start, bond static.\n";

QJsonObject findingDocument(const Finding &finding)
{
    return {
        {QStringLiteral("severity"), jsonText(text(finding.severity))},
        {QStringLiteral("about"), jsonText(finding.about)},
        {QStringLiteral("where"), jsonText(finding.where)},
        {QStringLiteral("text"), jsonText(finding.text)},
        {QStringLiteral("source"), jsonText(finding.source)},
        {QStringLiteral("remedy"), jsonText(finding.remedy)},
    };
}

std::string titleOf(const Expansion &build, const std::string &station)
{
    const auto *placed = build.station(station);
    return placed == nullptr ? station : placed->station->title;
}

/// "at the joint rail inlet", "at the pump", "in the line from tank to pump"; for the whole build
/// as well.
std::string placeOf(const Expansion &build, const std::string &where)
{
    if (const auto *joint = build.joint(where))
        return "at the joint " + joint->at;
    if (const auto *run = build.run(where))
        return "in the line from " + titleOf(build, run->from) + " to " + titleOf(build, run->to);
    return where.empty() ? "in the whole build" : "at the " + titleOf(build, where);
}

std::string groupOf(const WorkedBuild &build, Severity severity, const std::string &title)
{
    if (build.count(severity) == 0)
        return {};
    std::string said = "\n" + title + "\n";
    for (const Finding &finding : build.findings) {
        if (finding.severity != severity)
            continue;
        said += "  " + finding.about + "\n      " + placeOf(build.expansion, finding.where);
        said += finding.where.empty() ? "\n" : " (" + finding.where + ")\n";
        for (const std::string &more : reasonsOf(finding))
            said += "      " + more + "\n";
    }
    return said;
}

struct Group {
    Severity severity;
    const char *title;
    const char *noun;
    const char *key;
};
constexpr std::array<Group, 3> Groups{{{Severity::Stop, "STOPS", "stop", "stops"},
                                       {Severity::Caution, "CAUTIONS", "caution", "cautions"},
                                       {Severity::Note, "NOTES", "note", "notes"}}};

} // namespace

QJsonObject answersDocument(const Answers &answers)
{
    QJsonObject all;
    for (const auto &[question, answer] : answers)
        all.insert(jsonText(question), jsonText(answer));
    return all;
}

QJsonArray findingsDocument(const std::vector<Finding> &findings)
{
    QJsonArray all;
    for (const Finding &finding : findings)
        all.append(findingDocument(finding));
    return all;
}

QJsonObject findingsDocument(const WorkedBuild &build)
{
    QJsonObject document{
        {QStringLiteral("template"), jsonText(build.expansion.templateId)},
        {QStringLiteral("answers"), answersDocument(build.expansion.answers)},
        {QStringLiteral("findings"), findingsDocument(build.findings)},
    };
    for (const Group &group : Groups)
        document.insert(jsonText(group.key), build.count(group.severity));
    return document;
}

std::string planHead(const Expansion &build)
{
    std::string head = build.title + "\n";
    for (const auto &[question, answer] : build.answers)
        head.append(head.ends_with('\n') ? "" : ", ").append(question).append(" ").append(answer);
    return build.answers.empty() ? head : head + "\n";
}

std::vector<std::string> reasonsOf(const Finding &finding)
{
    std::vector<std::string> reasons;
    for (const std::string &more : {finding.text, finding.remedy, "(" + finding.source + ")"})
        if (!more.empty())
            reasons.push_back(more);
    return reasons;
}

std::string findingSheet(const WorkedBuild &build)
{
    std::string said = planHead(build.expansion);
    std::string counts;
    for (const Group &group : Groups) {
        said += groupOf(build, group.severity, group.title);
        const auto count = static_cast<std::size_t>(build.count(group.severity));
        counts += (counts.empty() ? "" : ", ") + counted(count, group.noun);
    }
    return said + "\n" + (build.findings.empty() ? "no finding" : counts) + "\n\n" +
           wordsOfCaution();
}

std::string wordsOfCaution()
{
    return std::string(Advice) + std::string(BeforeOpening);
}

} // namespace flarestock
