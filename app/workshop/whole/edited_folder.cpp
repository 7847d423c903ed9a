// SPDX-License-Identifier: MIT

#include "app/workshop/whole/edited_folder.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace flarestock {

namespace {

/// What the shop began with; it is not read again.
bool isOfTheBeginning(const std::string &name)
{
    constexpr std::array<std::string_view, 5> begun = {"shop.toml", "stock.csv", "kept.csv",
                                                       "fitted.csv", "outings.csv"};
    return std::find(begun.begin(), begun.end(), name) != begun.end();
}

/// Those of the folder that were edited there and are not in the shop as they are there. Problem:
/// one was changed in the shop as well, since the folder was written.
Result<TextFiles> changedFiles(const std::filesystem::path &folder, const AsExported &exported,
                               const TextFiles &shop)
{
    auto edited = documentsIn(folder);
    if (!edited)
        return edited;
    std::erase_if(*edited, [&](const auto &file) {
        const auto was = shop.find(file.first);
        return isOfTheBeginning(file.first) || exported.isAsThen(file.first, file.second) ||
               (was != shop.end() && was->second == file.second);
    });
    for (const auto &[name, text] : *edited) {
        const auto was = shop.find(name);
        if (was != shop.end() && exported.knows(name) && !exported.isAsThen(name, was->second))
            return problem(
                name, "was changed in the shop too since it was exported to " + folder.string(),
                "Export into a new folder, make the same edits there and import that.");
    }
    return edited;
}

/// How often each line stands in the text.
std::map<std::string_view, int> linesOf(std::string_view text)
{
    std::map<std::string_view, int> lines;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        ++lines[text.substr(0, end)];
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

} // namespace

Result<EditedFolder> EditedFolder::of(const std::filesystem::path &folder, const TextFiles &shop)
{
    auto exported = AsExported::in(folder);
    if (!exported)
        return tl::unexpected(exported.error());
    auto changed = changedFiles(folder, *exported, shop);
    if (!changed)
        return tl::unexpected(changed.error());
    return EditedFolder{std::move(*exported), std::move(*changed)};
}

ChangedLines changedLines(std::string_view before, std::string_view now)
{
    auto lines = linesOf(now);
    for (const auto &[line, times] : linesOf(before))
        lines[line] -= times;
    ChangedLines said;
    for (const auto &[line, times] : lines)
        (times > 0 ? said.added : said.gone) += std::abs(times);
    said.changed = std::min(said.added, said.gone);
    said.added -= said.changed;
    said.gone -= said.changed;
    return said;
}

} // namespace flarestock
