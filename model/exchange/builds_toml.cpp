// SPDX-License-Identifier: MIT

#include "model/exact/case_fold.h"
#include "model/exchange/template_toml.h"
#include "model/exchange/toml/fields.h"

#include <algorithm>
#include <array>
#include <chrono>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 1> BuildsKeys = {"build"};
constexpr std::array<std::string_view, 8> BuildKeys = {"id", "title",  "template", "car",
                                                       "by", "prefer", "answers",  "picks"};
constexpr std::array<std::string_view, 3> PreferenceWords = {"shelf", "joints", "money"};

/// "2026-12-12", and a day that there is.
bool isDate(std::string_view text)
{
    const auto digits = [text](std::size_t from, std::size_t count) {
        int value = 0;
        for (const char digit : text.substr(from, count))
            value = digit >= '0' && digit <= '9' && value >= 0 ? value * 10 + (digit - '0') : -1;
        return value;
    };
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return false;
    const int year = digits(0, 4);
    const int month = digits(5, 2);
    const int day = digits(8, 2);
    if (year < 0 || month < 0 || day < 0)
        return false;
    return std::chrono::year_month_day(std::chrono::year(year),
                                       std::chrono::month(static_cast<unsigned>(month)),
                                       std::chrono::day(static_cast<unsigned>(day)))
        .ok();
}

/// The texts of an inline table: answers or picks.
std::map<std::string, std::string, std::less<>> readTexts(const TomlFields &fields,
                                                          std::string_view key)
{
    std::map<std::string, std::string, std::less<>> texts;
    const TomlValue *const table = fields.find(key, TomlValue::Form::Table);
    if (!table)
        return texts;
    for (const TomlEntry &entry : table->entries) {
        if (entry.value.form == TomlValue::Form::Text)
            texts[entry.key] = entry.value.text;
        else if (entry.value.form == TomlValue::Form::YesNo)
            texts[entry.key] = entry.value.yes ? "yes" : "no";
        else
            fields.source().wrong(
                entry.value,
                {'"' + entry.key + "\" is " + std::string(text(entry.value.form)) + ", not a text",
                 "Put it in quotes."});
    }
    return texts;
}

BuildPlan readBuild(const TomlFields &fields)
{
    BuildPlan build;
    build.id = fields.id("id");
    build.title = fields.required("title");
    build.templateId = fields.id("template");
    build.car = fields.text("car");
    build.by = fields.text("by");
    if (!build.by.empty() && !isDate(build.by))
        fields.wrong("by", {'"' + build.by + "\" is no date", "Write for example 2026-12-12."});
    build.preference = PreferenceWords[fields.word("prefer", PreferenceWords, 0)];
    build.answers = readTexts(fields, "answers");
    build.picks = readTexts(fields, "picks");
    return build;
}

/// A TOML basic string: quotes, backslashes and control characters escaped.
std::string quotedText(std::string_view text)
{
    constexpr std::string_view Hexadecimal = "0123456789ABCDEF";
    std::string quoted = "\"";
    for (const char letter : text) {
        const auto code = static_cast<unsigned char>(letter);
        if (letter == '"' || letter == '\\') {
            quoted += '\\';
            quoted += letter;
        } else if (letter == '\n') {
            quoted += "\\n";
        } else if (code < 0x20U || code == 0x7FU) {
            quoted += "\\u00";
            quoted += Hexadecimal[code >> 4U];
            quoted += Hexadecimal[code & 0xFU];
        } else {
            quoted += letter;
        }
    }
    return quoted + '"';
}

std::string tableText(const std::map<std::string, std::string, std::less<>> &texts)
{
    std::string table = "{";
    for (const auto &[key, text] : texts)
        table += (table.size() > 1 ? ", " : " ") + quotedText(key) + " = " + quotedText(text);
    return table + (texts.empty() ? "}" : " }");
}

} // namespace

Result<std::vector<BuildPlan>> readBuilds(std::string_view text, std::string file)
{
    const auto document = TomlDocument::read(text, std::move(file));
    if (!document)
        return tl::unexpected(document.error());
    Problems problems(1);
    const TomlFields::Source source{&*document, &problems};
    const TomlFields top(source, document->root(), "list of builds", BuildsKeys);
    std::vector<BuildPlan> builds;
    for (const TomlValue *const table : top.tables("build")) {
        const TomlFields fields(source, *table, "build", BuildKeys);
        BuildPlan build = readBuild(fields);
        const bool isThere =
            std::any_of(builds.begin(), builds.end(),
                        [&build](const BuildPlan &other) { return other.id == build.id; });
        if (isThere)
            fields.wrong("id", {"the build \"" + build.id + "\" stands twice",
                                "Give one of them another id."});
        builds.push_back(std::move(build));
    }
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return builds;
}

std::string writeBuilds(const std::vector<BuildPlan> &builds)
{
    std::string all;
    for (const BuildPlan &build : builds) {
        const auto line = [&all](std::string_view key, const std::string &value) {
            all += std::string(key) + " = " + value + "\n";
        };
        all += all.empty() ? "[[build]]\n" : "\n[[build]]\n";
        line("id", quotedText(build.id));
        line("title", quotedText(build.title));
        line("template", quotedText(build.templateId));
        if (!build.car.empty())
            line("car", quotedText(build.car));
        if (!build.by.empty())
            line("by", quotedText(build.by));
        line("prefer", quotedText(build.preference));
        if (!build.answers.empty())
            line("answers", tableText(build.answers));
        if (!build.picks.empty())
            line("picks", tableText(build.picks));
    }
    return all;
}

} // namespace flarestock
