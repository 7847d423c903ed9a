// SPDX-License-Identifier: MIT

#include "app/desk/template/fresh_text.h"

#include "app/desk/template/text_read.h"
#include "model/exchange/editing/toml_edit.h"
#include "model/exchange/editing/toml_literal.h"

#include <array>

namespace flarestock {

namespace {

constexpr std::string_view TankToUser = R"(title = "New system"
system = "fuel"
fluid = "gasoline"

[[question]]
id = "feed"
title = "feed line"
form = "measure"
dimension = "length"
default = "6 ft"
least = "2 in"
most = "40 ft"

[[question]]
id = "feed-size"
title = "feed line size"
form = "dash"
default = "-8"

[[station]]
id = "tank"
title = "tank"
kind = "tank"
level = "suction"

[[station]]
id = "carburettor"
title = "carburettor"
kind = "carburettor"
level = "suction"

[[run]]
id = "feed"
level = "suction"
from = "tank.out"
to = "carburettor.in"
length = "{feed}"
dash = "{feed-size}"
)";

/// The id, or with the first number from 2 on behind it that makes it new.
std::string freeId(const std::string &wanted, const TakenIds &taken)
{
    std::string id = wanted;
    for (int number = 2; taken.contains(id); ++number)
        id = wanted + '-' + std::to_string(number);
    return id;
}

std::string withTop(const std::string &text, std::string_view key, const std::string &value)
{
    static constexpr std::array<std::string_view, 2> Order = {"id", "title"};
    const TextRead read = readText(text, {});
    if (!read.document)
        return text;
    const auto edit = TomlEdit(*read.document).setText(key, value, Order);
    return edit ? edited(text, *edit) : text;
}

} // namespace

std::string freshText(const TakenIds &taken)
{
    return "id = " + tomlText(freeId("new-system", taken)) + '\n' + std::string(TankToUser);
}

std::string copiedText(const std::string &text, const TakenIds &taken)
{
    const TextRead read = readText(text, {});
    const std::string copy = withTop(text, "id", freeId(read.top("id") + "-copy", taken));
    return withTop(copy, "title", read.top("title") + ", copied");
}

} // namespace flarestock
