// SPDX-License-Identifier: MIT
//
// Which fields a paragraph has, and what may stand in each.

#include "app/desk/template/form/template_fields.h"
#include "model/exact/case_fold.h"
#include "model/fluids/measure.h"
#include "model/parts/kind.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

using KeyWord = std::string_view;
constexpr std::array<KeyWord, 5> ListKeys = {"choices", "words", "plugged", "pumps", "lengths"};
constexpr std::array<KeyWord, 2> YesNoKeys = {"bracketed", "pumps-apart"};
constexpr std::array<KeyWord, 4> NumberKeys = {"clamps-each", "count", "shared-by",
                                               "spare-elements"};
constexpr std::array<KeyWord, 13> PlainKeys = {"id",    "title", "from",      "to",   "template",
                                               "why",   "fluid", "dimension", "form", "default",
                                               "least", "most",  "kind"};
constexpr std::array<KeyWord, 11> RequiredKeys = {
    "id", "title", "kind", "level", "form", "from", "to", "template", "why", "system", "default"};
constexpr std::array<KeyWord, 4> OfferedKeys = {"from", "to", "template", "fluid"};
constexpr std::array<KeyWord, 10> NameKeys = {"id",  "title", "from",  "to",      "template",
                                              "why", "fluid", "words", "plugged", "pumps"};
constexpr std::array<KeyWord, 5> FreeKeys = {"choices", "micron", "tubing", "rated", "forward"};

template <std::size_t Count>
bool isOneOf(KeyWord key, const std::array<KeyWord, Count> &keys)
{
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

bool isOneOf(KeyWord key, TemplateWords keys)
{
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

std::string saidIn(const TomlValue &table, KeyWord key)
{
    const TomlEntry *const entry = table.find(key);
    if (entry == nullptr)
        return {};
    if (entry->value.form == TomlValue::Form::YesNo)
        return entry->value.yes ? "yes" : "no";
    return entry->value.text;
}

/// Whether a question of that form has the key at all.
bool isAskedSo(KeyWord key, const TomlValue &table)
{
    const std::string form = saidIn(table, "form");
    if (key == "choices")
        return form == "choice" || form == "dash";
    if (key == "dimension" || key == "least" || key == "most")
        return form == "measure";
    if (!isOneOf(key, workedOutKeys()))
        return true;
    if (key == "worked-out")
        return form == "measure" || form == "dash";
    return isOneOf(key, keysWorkedOutBy(saidIn(table, "worked-out")));
}

bool belongsTo(Paragraph paragraph, KeyWord key, const TomlValue &table)
{
    if (table.find(key) != nullptr)
        return true;
    if (paragraph == Paragraph::Top)
        return !isOneOf(key, headers());
    if (paragraph == Paragraph::Question)
        return isAskedSo(key, table);
    if (paragraph != Paragraph::Station)
        return true;
    const std::string kind = saidIn(table, "kind");
    if (key == "micron" || key == "spare-elements")
        return kind == "filter" || kind == "element";
    return key != "pressure" || kind == "regulator" || kind == "pump";
}

std::vector<std::string> dimensions()
{
    std::vector<std::string> all = {"count"};
    for (auto at = static_cast<int>(Dimension::Length);
         at <= static_cast<int>(Dimension::Acceleration); ++at)
        all.emplace_back(text(static_cast<Dimension>(at)));
    return all;
}

std::vector<std::string> answersOf(const TomlValue &question)
{
    if (saidIn(question, "form") == "yes/no")
        return {"yes", "no"};
    std::vector<std::string> all;
    if (const TomlEntry *const choices = question.find("choices"))
        for (const TomlValue &one : choices->value.items)
            all.push_back(one.text);
    return all;
}

std::vector<std::string> allChoices(Paragraph paragraph, KeyWord key, const TomlValue &table)
{
    if (isOneOf(key, YesNoKeys))
        return {"yes", "no"};
    if (key == "kind") {
        std::vector<std::string> kinds;
        for (std::size_t at = 0; at < KindCount; ++at)
            kinds.emplace_back(text(static_cast<Kind>(at)));
        std::sort(kinds.begin(), kinds.end());
        return kinds;
    }
    if (key == "dimension")
        return dimensions();
    if (paragraph == Paragraph::Question && key == "default")
        return answersOf(table);
    const TemplateWords words = wordsOf(paragraph, key);
    return {words.begin(), words.end()};
}

} // namespace

FieldForm formOf(Paragraph kind, std::string_view key, const TomlValue &table)
{
    if (isOneOf(key, YesNoKeys))
        return FieldForm::YesNo;
    if (!allChoices(kind, key, table).empty())
        return FieldForm::Word;
    if (isOneOf(key, ListKeys))
        return FieldForm::Texts;
    if (isOneOf(key, NumberKeys))
        return FieldForm::Whole;
    if (key == "when")
        return FieldForm::Condition;
    return isOneOf(key, PlainKeys) ? FieldForm::Text : FieldForm::Varying;
}

bool canBeMeasured(std::string_view key)
{
    return !isOneOf(key, NameKeys);
}

std::vector<std::string_view> fieldsOf(Paragraph kind, const TomlValue &table)
{
    std::vector<std::string_view> keys;
    for (const std::string_view key : keysOf(kind)) {
        const bool isTables =
            key == "answers" || (kind == Paragraph::Top && isOneOf(key, headers()));
        if (!isTables && belongsTo(kind, key, table))
            keys.push_back(key);
    }
    return keys;
}

std::vector<std::string> choicesOf(Paragraph kind, std::string_view key, const TomlValue &table)
{
    std::vector<std::string> all = allChoices(kind, key, table);
    const std::string now = saidIn(table, key);
    const bool isOne = std::any_of(all.begin(), all.end(),
                                   [&now](const std::string &one) { return sameFolded(one, now); });
    if (!isOneOf(key, RequiredKeys) || !isOne)
        all.insert(all.begin(), std::string());
    return all;
}

bool isOffered(Paragraph kind, std::string_view key, const TomlValue &table)
{
    if (isOneOf(key, FreeKeys))
        return false;
    const FieldForm form = formOf(kind, key, table);
    return form == FieldForm::Varying || form == FieldForm::Condition || form == FieldForm::Texts ||
           isOneOf(key, OfferedKeys);
}

bool areAlternatives(const TomlValue &value)
{
    return value.form == TomlValue::Form::List && !value.items.empty() &&
           value.items.front().form == TomlValue::Form::Table;
}

} // namespace flarestock
