// SPDX-License-Identifier: MIT

#include "model/exchange/papers/letterhead_toml.h"

#include "model/exchange/toml/fields.h"

#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 3> Keys = {"name", "lines", "foot"};

} // namespace

Result<Letterhead> readLetterhead(std::string_view text, std::string file)
{
    const auto document = TomlDocument::read(text, std::move(file));
    if (!document)
        return tl::unexpected(document.error());
    Problems problems(1);
    const TomlFields fields({&*document, &problems}, document->root(), "letterhead", Keys);
    Letterhead letterhead{fields.required("name"), fields.texts("lines"), fields.text("foot")};
    if (!problems.isEmpty())
        return tl::unexpected(problems.all().front());
    return letterhead;
}

} // namespace flarestock
