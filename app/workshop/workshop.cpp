// SPDX-License-Identifier: MIT

#include "app/workshop/workshop.h"

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

/// The text of a document, or an empty one: a shop may have no builds yet.
std::string documentNamed(const TextFiles &documents, std::string_view name)
{
    const auto found = documents.find(name);
    return found == documents.end() ? std::string() : found->second;
}

} // namespace

Shelf shelfOf(const Ledger &ledger, const Catalogue &catalogue, const std::vector<BoxCheck> &looks)
{
    Shelf shelf = ledger.shelf(catalogue);
    std::map<std::pair<std::string, std::string>, std::vector<std::string>> newest;
    for (const auto &look : looks)
        newest[{look.part, look.lot}] = look.missing;
    for (const auto &[box, missing] : newest) {
        const auto found = shelf.find(box.first);
        if (found != shelf.end() && found->second.free.amount.sign() > 0)
            found->second.missing.insert(found->second.missing.end(), missing.begin(),
                                         missing.end());
    }
    return shelf;
}

Result<std::shared_ptr<const Workshop>> Workshop::read(const ShopFile &file)
{
    const auto documents = file.documents();
    if (!documents)
        return tl::unexpected(documents.error());
    auto catalogue = readCatalogue(*documents);
    if (!catalogue)
        return tl::unexpected(catalogue.error());
    auto templates = readTemplates(*documents);
    if (!templates)
        return tl::unexpected(templates.error());
    auto builds = readBuilds(documentNamed(*documents, "builds.toml"), "builds.toml");
    if (!builds)
        return tl::unexpected(builds.error());
    auto ledger = file.ledger();
    if (!ledger)
        return tl::unexpected(ledger.error());
    const auto looks = file.boxChecks();
    if (!looks)
        return tl::unexpected(looks.error());
    auto shelf = shelfOf(*ledger, *catalogue, *looks);
    auto made = std::make_shared<Workshop>(
        Workshop{file.settings(), file.path(), std::move(*catalogue), std::move(*templates),
                 std::move(*builds), std::move(*ledger), std::move(shelf), nullptr});
    made->closer = std::make_unique<const JointCloser>(made->catalogue);
    return std::shared_ptr<const Workshop>(std::move(made));
}

Result<std::shared_ptr<const Workshop>> Workshop::open(const std::filesystem::path &path)
{
    if (path.string().starts_with("postgresql:"))
        return problem(path.string(), "names a server, and this version reads shop files only",
                       "Name a shop file.");
    const auto file = ShopFile::open(path, OpenMode::ReadOnly);
    if (!file)
        return tl::unexpected(file.error());
    return read(*file);
}

const BuildPlan *Workshop::build(std::string_view id) const noexcept
{
    const auto found = std::find_if(builds.begin(), builds.end(),
                                    [id](const BuildPlan &build) { return build.id == id; });
    return found == builds.end() ? nullptr : &*found;
}

} // namespace flarestock
