// SPDX-License-Identifier: MIT

#include "model/exchange/editing/toml_literal.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::string_view ThreeQuotes = "\"\"\"";
constexpr std::string_view ThreeMarks = "'''";

bool isControl(char letter)
{
    return static_cast<unsigned char>(letter) < 0x20U || letter == 0x7F;
}

bool isPlainLiteral(std::string_view text)
{
    return std::none_of(text.begin(), text.end(),
                        [](char letter) { return letter == '\'' || isControl(letter); });
}

std::string escaped(std::string_view text, bool keepsLines)
{
    static constexpr std::string_view Digits = "0123456789ABCDEF";
    std::string out;
    for (const char letter : text) {
        if (letter == '"' || letter == '\\')
            out.append(1, '\\').append(1, letter);
        else if (letter == '\n')
            out += keepsLines ? "\n" : "\\n";
        else if (letter == '\t')
            out += "\\t";
        else if (letter == '\r')
            out += "\\r";
        else if (isControl(letter))
            out.append("\\u00")
                .append(1, Digits[static_cast<unsigned char>(letter) / 16U])
                .append(1, Digits[static_cast<unsigned char>(letter) % 16U]);
        else
            out += letter;
    }
    return out;
}

} // namespace

std::string tomlText(std::string_view text)
{
    return '"' + escaped(text, false) + '"';
}

std::string tomlTextLike(std::string_view was, std::string_view text)
{
    if (was.starts_with(ThreeQuotes)) {
        const bool beginsBelow =
            was.substr(3).starts_with('\n') || was.substr(3).starts_with("\r\n");
        // The first line feed behind the quotes is none of the text.
        const bool needsOne = beginsBelow || text.starts_with('\n');
        std::string out(ThreeQuotes);
        return out.append(needsOne ? "\n" : "").append(escaped(text, true)).append(ThreeQuotes);
    }
    if (was.starts_with('\'') && !was.starts_with(ThreeMarks) && isPlainLiteral(text))
        return '\'' + std::string(text) + '\'';
    return tomlText(text);
}

std::string tomlTexts(const std::vector<std::string> &texts)
{
    std::string out = "[";
    for (const std::string &text : texts)
        out.append(out.size() == 1 ? "" : ", ").append(tomlText(text));
    return out + ']';
}

} // namespace flarestock
