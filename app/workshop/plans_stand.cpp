// SPDX-License-Identifier: MIT

#include "app/workshop/plans_stand.h"

#include "model/exchange/template_toml.h"
#include "model/systems/expand.h"

#include <memory>

namespace flarestock {

namespace {

/// A plan worked out by one book of templates, from an empty shelf: what counts is whether it can
/// be.
Result<Expansion> workedBy(const std::shared_ptr<const TemplateBook> &book, const BuildPlan &plan,
                           const Catalogue &catalogue, const JointCloser &closer)
{
    static const Shelf Empty;
    ExpandRequest request;
    request.templateId = plan.templateId;
    request.book = book;
    request.catalogue = &catalogue;
    request.closer = &closer;
    request.shelf = &Empty;
    request.answers = plan.answers;
    request.picks = plan.picks;
    return expand(request);
}

} // namespace

Result<void> plansStand(const TextFiles &before, const TextFiles &after)
{
    const auto builds = after.find("builds.toml");
    if (builds == after.end())
        return {};
    const auto plans = readBuilds(builds->second, builds->first);
    if (!plans)
        return tl::unexpected(plans.error());
    const auto book = readTemplates(after);
    if (!book)
        return tl::unexpected(book.error());
    const auto catalogue = readCatalogue(after);
    if (!catalogue)
        return tl::unexpected(catalogue.error());
    const auto old = readTemplates(before);
    const JointCloser closer(*catalogue);
    for (const BuildPlan &plan : *plans) {
        const auto now = workedBy(*book, plan, *catalogue, closer);
        if (now || !old || !workedBy(*old, plan, *catalogue, closer))
            continue;
        const Problem &why = now.error();
        return problem("the build \"" + plan.title + '"',
                       "would not work out any more: " +
                           (why.thing.empty() ? why.wrong : why.thing + ' ' + why.wrong),
                       "Keep what it goes by, or change that build first.");
    }
    return {};
}

} // namespace flarestock
