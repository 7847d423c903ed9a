// SPDX-License-Identifier: MIT

#include "app/workshop/worked_build.h"

#include <algorithm>

namespace flarestock {

namespace {

const Shelf &shelfOf(const ExpandRequest &request)
{
    static const Shelf empty;
    return request.shelf ? *request.shelf : empty;
}

} // namespace

WorkedBuild::WorkedBuild(Expansion built, const ExpandRequest &request, const Currency &currency)
    : expansion(std::move(built)),
      bill(price(expansion, *request.catalogue, shelfOf(request), currency)),
      findings(check(expansion, *request.catalogue, shelfOf(request)))
{
}

int WorkedBuild::stops() const noexcept
{
    return static_cast<int>(
        std::count_if(findings.begin(), findings.end(),
                      [](const Finding &finding) { return finding.severity == Severity::Stop; }));
}

Result<WorkedBuild> workBuild(const ExpandRequest &request, const Currency &currency)
{
    auto built = expand(request);
    if (!built)
        return tl::unexpected(built.error());
    return WorkedBuild(std::move(*built), request, currency);
}

} // namespace flarestock
