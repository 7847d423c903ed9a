// SPDX-License-Identifier: MIT

#include "model/exchange/toml/fields.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"

#include <algorithm>

namespace flarestock {

namespace {

std::string inQuotes(std::string_view text)
{
    return '"' + std::string(text) + '"';
}

bool isId(std::string_view id)
{
    return !id.empty() && std::all_of(id.begin(), id.end(), [](char letter) {
        return (letter >= 'a' && letter <= 'z') || (letter >= '0' && letter <= '9') ||
               letter == '-';
    });
}

} // namespace

TomlFields::TomlFields(const Source &source, const TomlValue &table, std::string name,
                       std::span<const std::string_view> keys)
    : m_source(source), m_table(&table), m_name(std::move(name))
{
    for (const TomlEntry &entry : table.entries) {
        if (std::find(keys.begin(), keys.end(), entry.key) == keys.end())
            m_source.problems->add(
                m_source.document->at(entry, {"a " + m_name + " has no " + inQuotes(entry.key),
                                              wordRemedy(entry.key, keys)}));
    }
}

const TomlValue *TomlFields::find(std::string_view key) const noexcept
{
    const TomlEntry *const entry = m_table->find(key);
    return entry ? &entry->value : nullptr;
}

const TomlValue *TomlFields::find(std::string_view key, TomlValue::Form wanted) const
{
    const TomlValue *const value = find(key);
    if (!value || value->form == wanted)
        return value;
    const bool wantsText = wanted == TomlValue::Form::Text;
    wrong(key, {inQuotes(key) + " is " + std::string(flarestock::text(value->form)) + ", not " +
                    std::string(flarestock::text(wanted)),
                wantsText && value->form != TomlValue::Form::List &&
                        value->form != TomlValue::Form::Table
                    ? "Put it in quotes."
                    : "Write it as the description of the format says."});
    return nullptr;
}

std::string TomlFields::text(std::string_view key) const
{
    const TomlValue *const value = find(key);
    if (value && value->form == TomlValue::Form::Date)
        return value->text;
    const TomlValue *const text = find(key, TomlValue::Form::Text);
    return text ? std::string(trimmed(text->text)) : std::string();
}

std::string TomlFields::required(std::string_view key) const
{
    const TomlValue *const value = find(key);
    if (!value) {
        wrong(key, {"this " + m_name + " has no " + inQuotes(key), "Add it."});
        return {};
    }
    std::string said = text(key);
    if (said.empty() && value->form == TomlValue::Form::Text)
        wrong(key, {inQuotes(key) + " is empty", "Fill it in."});
    return said;
}

bool TomlFields::yesNo(std::string_view key, bool fallback) const
{
    const TomlValue *const value = find(key, TomlValue::Form::YesNo);
    return value ? value->yes : fallback;
}

int TomlFields::whole(std::string_view key, int most, int fallback) const
{
    const TomlValue *const value = find(key, TomlValue::Form::Whole);
    if (!value)
        return fallback;
    if (value->whole >= 0 && value->whole <= most)
        return static_cast<int>(value->whole);
    wrong(key, {inQuotes(key) + " is " + std::to_string(value->whole) + ", not from 0 to " +
                    std::to_string(most),
                "Correct the number."});
    return fallback;
}

std::vector<std::string> TomlFields::texts(std::string_view key) const
{
    std::vector<std::string> all;
    const TomlValue *const list = find(key, TomlValue::Form::List);
    if (!list)
        return all;
    for (const TomlValue &item : list->items) {
        if (item.form == TomlValue::Form::Text && !trimmed(item.text).empty())
            all.emplace_back(trimmed(item.text));
        else
            m_source.wrong(item,
                           {"an item of " + inQuotes(key) + " is " +
                                (item.form == TomlValue::Form::Text
                                     ? std::string("empty")
                                     : std::string(flarestock::text(item.form)) + ", not a text"),
                            "Write texts in quotes."});
    }
    return all;
}

std::size_t TomlFields::word(std::string_view key, std::span<const std::string_view> words,
                             std::size_t fallback) const
{
    const std::string typed = text(key);
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (sameFolded(words[i], typed))
            return i;
    }
    if (const TomlValue *const value = find(key); value && value->form == TomlValue::Form::Text)
        wrong(key,
              {inQuotes(typed) + " is not a word for " + inQuotes(key), wordRemedy(typed, words)});
    return fallback;
}

std::vector<const TomlValue *> TomlFields::tables(std::string_view key) const
{
    std::vector<const TomlValue *> all;
    const TomlValue *const list = find(key);
    if (!list)
        return all;
    const TextFault fault{inQuotes(key) + " is not a list of tables",
                          "Begin each with [[" + std::string(key) + "]]."};
    if (list->form != TomlValue::Form::List) {
        wrong(key, fault);
        return all;
    }
    for (const TomlValue &item : list->items) {
        if (item.form == TomlValue::Form::Table)
            all.push_back(&item);
        else
            m_source.wrong(item, fault);
    }
    return all;
}

std::string TomlFields::id(std::string_view key) const
{
    std::string name = required(key);
    if (!name.empty() && !isId(name))
        wrong(key, {inQuotes(name) + " is no " + inQuotes(key),
                    "Use lower case letters, digits and hyphens only."});
    return name;
}

void TomlFields::wrong(std::string_view key, TextFault fault) const
{
    const TomlValue *const value = find(key);
    m_source.wrong(value ? *value : *m_table, std::move(fault));
}

} // namespace flarestock
