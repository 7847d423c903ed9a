// SPDX-License-Identifier: MIT

#include "app/workshop/worked_build.h"

#include <algorithm>

namespace flarestock {

namespace {

const Shelf &shelfIn(const ExpandRequest &request)
{
    static const Shelf empty;
    return request.shelf ? *request.shelf : empty;
}

/// What expand() has to say that no check can see, behind what the checks say.
std::vector<Finding> findingsOf(const Expansion &expansion, const ExpandRequest &request)
{
    auto findings = check(expansion, *request.catalogue, shelfIn(request));
    for (const std::string &note : expansion.notes) {
        Finding finding;
        finding.severity = Severity::Note;
        finding.matter = Matter::Stock;
        finding.about = note.substr(0, note.find_last_not_of('.') + 1);
        finding.text = "The template asks for something that the catalogue does not have.";
        finding.source = "template " + expansion.templateId + " and the shop's catalogue";
        finding.remedy = "Enter it in the catalogue, pick another part, or mend the template.";
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

WorkedBuild::WorkedBuild(Expansion built, const ExpandRequest &request, const Currency &currency)
    : expansion(std::move(built)),
      bill(price(expansion, *request.catalogue, shelfIn(request), currency)),
      findings(findingsOf(expansion, request))
{
}

int WorkedBuild::count(Severity severity) const noexcept
{
    return static_cast<int>(
        std::count_if(findings.begin(), findings.end(),
                      [severity](const Finding &finding) { return finding.severity == severity; }));
}

bool WorkedBuild::isReady() const noexcept
{
    return count(Severity::Stop) == 0 && bill.complete;
}

Result<WorkedBuild> workBuild(const ExpandRequest &request, const Currency &currency)
{
    auto built = expand(request);
    if (!built)
        return tl::unexpected(built.error());
    return WorkedBuild(std::move(*built), request, currency);
}

Lying WorkedBuild::lyingAt(std::size_t line) const
{
    if (line < lying.size())
        return lying[line];
    return {{}, bill.lines.at(line).free, {}, {}};
}

namespace {

/// The request says how long may be searched; the rest of it is put in here.
Result<WorkedBuild> workedIn(const Workshop &workshop, const BuildPlan &plan, ExpandRequest request)
{
    const auto preference = parsePreference(plan.preference);
    if (!preference)
        return tl::unexpected(preference.error());
    const Shelf &shelf = *request.shelf;
    request.templateId = plan.templateId;
    request.book = workshop.templates;
    request.catalogue = &workshop.catalogue;
    request.closer = workshop.closer.get();
    request.answers = plan.answers;
    request.picks = plan.picks;
    request.preference = *preference;
    request.together = true;
    auto built = workBuild(request, workshop.settings.currency);
    if (!built)
        return built;
    const auto barred = barredLots(workshop.notes.lots, plan.car, plan.by);
    for (const PricedLine &line : built->bill.lines) {
        Lying lying = lyingOf(line, workshop.ledger, {plan.id, &barred, &workshop.bars});
        const auto stock = shelf.find(line.line->part->number);
        if (stock != shelf.end() &&
            stock->second.level) { // Nobody counts it: no place has so much.
            lying.here += lying.inTrailer;
            lying.inTrailer = {};
        }
        built->lying.push_back(std::move(lying));
    }
    return built;
}

} // namespace

Result<WorkedBuild> workBuild(const Workshop &workshop, const BuildPlan &plan, const Shelf &shelf,
                              const JointSearch &search)
{
    ExpandRequest request;
    request.shelf = &shelf;
    request.searchWithin = search.within;
    request.waysWished = search.waysWished;
    return workedIn(workshop, plan, std::move(request));
}

Result<WorkedBuild> workBuild(const Workshop &workshop, const BuildPlan &plan)
{
    const Shelf shelf = workshop.shelfFor(plan);
    ExpandRequest request;
    request.shelf = &shelf;
    return workedIn(workshop, plan, std::move(request));
}

} // namespace flarestock
