// SPDX-License-Identifier: MIT

#include "model/exchange/wanted_toml.h"

#include "model/exchange/toml/fields.h"
#include "model/netting/over_time/calendar_day.h"

#include <array>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 4> FileKeys = {"first", "item", "need", "due"};
constexpr std::array<std::string_view, 7> ItemKeys = {"id",    "on-hand", "minimum", "lead",
                                                      "least", "lot",     "made-of"};
constexpr std::array<std::string_view, 5> NeedKeys = {"item", "period", "day", "quantity", "for"};
constexpr std::array<std::string_view, 5> DueKeys = {"item", "period", "day", "quantity", "order"};
constexpr int DaysMost = 1'000'000;

class ReadingWanted {
public:
    ReadingWanted(const TomlDocument &document, Problems &problems) : m_source{&document, &problems}
    {
    }

    WantedFile done(DayNumber today)
    {
        const TomlFields top(m_source, m_source.document->root(), "plan", FileKeys);
        for (const TomlValue *table : top.tables("item"))
            readItem(TomlFields(m_source, *table, "item", ItemKeys));
        for (const TomlValue *table : top.tables("need")) {
            const TomlFields fields(m_source, *table, "need", NeedKeys);
            m_file.wanted.wanted.push_back({fields.required("item"), day(fields),
                                            number(fields, "quantity"), fields.text("for")});
        }
        for (const TomlValue *table : top.tables("due")) {
            const TomlFields fields(m_source, *table, "due", DueKeys);
            m_file.wanted.due.push_back({fields.required("item"), day(fields),
                                         number(fields, "quantity"), fields.text("order")});
        }
        readFirst(top, today);
        return std::move(m_file);
    }

private:
    /// A whole number, or a decimal in quotes; not below zero.
    Decimal asNumber(const TomlValue &value)
    {
        if (value.form == TomlValue::Form::Whole && value.whole >= 0)
            return value.whole;
        if (value.form == TomlValue::Form::Text)
            if (const auto read = Decimal::parse(value.text); read && read->sign() >= 0)
                return *read;
        m_source.wrong(value, {"this is no number from zero on",
                               "Write 12, or a decimal in quotes: \"12.5\"."});
        return {};
    }

    Decimal number(const TomlFields &fields, std::string_view key)
    {
        const TomlValue *value = fields.find(key);
        if (value)
            return asNumber(*value);
        if (key == "quantity")
            fields.wrong(key, {"this " + fields.name() + " has no quantity", "Add it."});
        return {};
    }

    void readItem(const TomlFields &fields)
    {
        NettedItem item;
        item.id = fields.required("id");
        item.onHand = number(fields, "on-hand");
        item.minimum = number(fields, "minimum");
        item.lead = fields.whole("lead", DaysMost, 0);
        item.least = number(fields, "least");
        item.lot = number(fields, "lot");
        if (const TomlValue *made = fields.find("made-of", TomlValue::Form::Table))
            for (const TomlEntry &entry : made->entries)
                item.madeOf.push_back({entry.key, asNumber(entry.value)});
        m_file.wanted.items.push_back(std::move(item));
    }

    DayNumber asDay(const TomlValue &value)
    {
        const bool isPeriod = value.form == TomlValue::Form::Whole;
        const bool isDate =
            value.form == TomlValue::Form::Date || value.form == TomlValue::Form::Text;
        const auto date = isDate ? dayNumber(value.text) : std::nullopt;
        if (!(isPeriod && value.whole >= -DaysMost && value.whole <= DaysMost) && !date) {
            m_source.wrong(value, {"this is no period and no day",
                                   "Write a whole number, or a day such as 2026-12-12."});
            return 1;
        }
        if (m_isSaid && m_file.isCalendar == isPeriod)
            m_source.wrong(value, {"periods and days stand in one plan",
                                   "Write all of them as periods, or all as days."});
        m_isSaid = true;
        m_file.isCalendar = !isPeriod;
        return isPeriod ? value.whole : *date;
    }

    DayNumber day(const TomlFields &fields)
    {
        const TomlValue *period = fields.find("period");
        const TomlValue *date = fields.find("day");
        if ((period != nullptr) != (date != nullptr))
            return asDay(period ? *period : *date);
        fields.wrong("item", {"this " + fields.name() + " does not say when, or says it twice",
                              "Add a period, or a day."});
        return 1;
    }

    void readFirst(const TomlFields &top, DayNumber today)
    {
        const TomlValue *first = top.find("first");
        if (first)
            m_file.wanted.first = asDay(*first);
        else
            m_file.wanted.first = m_file.isCalendar ? today : 1;
    }

    TomlFields::Source m_source;
    WantedFile m_file;
    bool m_isSaid = false; ///< Some day has been read.
};

} // namespace

Result<WantedFile> readWanted(std::string_view text, std::string file, DayNumber today)
{
    const auto document = TomlDocument::read(text, std::move(file));
    if (!document)
        return tl::unexpected(document.error());
    Problems problems(1);
    WantedFile wanted = ReadingWanted(*document, problems).done(today);
    if (!problems.isEmpty())
        return tl::unexpected(std::move(problems.all().front()));
    return wanted;
}

} // namespace flarestock
