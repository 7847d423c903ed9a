// SPDX-License-Identifier: MIT

#include "app/desk/launch/rewriting.h"

#include "app/desk/launch/open_shop.h"
#include "app/workshop/clock.h"
#include "app/workshop/taking_in.h"

#include <algorithm>

namespace flarestock {

namespace {

/// A document that was not there yet: a table as nothing but its headings, anything else empty.
std::string headOf(const std::string &name, const std::string &text)
{
    if (name.ends_with(".toml"))
        return {};
    return text.substr(0, std::min(text.size(), text.find('\n') + 1));
}

} // namespace

Result<std::shared_ptr<const Wrote>> rewriteShop(const std::filesystem::path &path,
                                                 const MakeTexts &make, const std::string &who)
{
    auto file = ShopFile::open(path, OpenMode::ReadWrite);
    if (!file)
        return tl::unexpected(file.error());
    const auto before = file->documents();
    if (!before)
        return tl::unexpected(before.error());
    const auto changed = make(*before);
    if (!changed)
        return tl::unexpected(changed.error());
    if (const auto taken = takeIn(*changed, *before, *file, {who, nowMilliseconds()}); !taken)
        return tl::unexpected(taken.error());
    auto after = openShopFile(path.string());
    if (!after)
        return tl::unexpected(after.error());
    Wrote::Texts texts{{}, *changed};
    for (const auto &[name, text] : *changed) {
        const auto was = before->find(name);
        texts.before.emplace(name, was == before->end() ? headOf(name, text) : was->second);
    }
    return std::make_shared<const Wrote>(
        Wrote{{}, std::move(*after), std::nullopt, std::move(texts)});
}

} // namespace flarestock
