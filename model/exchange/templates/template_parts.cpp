// SPDX-License-Identifier: MIT

#include "model/exact/nearest_word.h"
#include "model/exchange/templates/template_reader.h"
#include "model/exchange/templates/template_words.h"

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

constexpr int SpareElementsMax = 1000;
constexpr int ClampSpacingMax = 100'000;
constexpr std::int64_t ExtraCountMax = 1'000'000;

class PartsReading {
public:
    PartsReading(const TomlFields &top, Template &form)
        : m_top(top), m_form(form), m_values(top.source(), form.questions)
    {
    }
    void run();

private:
    void readStation(const TomlFields &fields);
    void readRun(const TomlFields &fields);
    void readModule(const TomlFields &fields);
    void readExtra(const TomlFields &fields);
    [[nodiscard]] Level readLevel(const TomlFields &fields) const;
    [[nodiscard]] Run::Place readPlace(const TomlFields &fields, std::string_view key) const;
    [[nodiscard]] Decimal readCount(const TomlFields &fields) const;
    void claimId(const TomlFields &fields, const std::string &id);

    const TomlFields &m_top;
    Template &m_form;
    VaryingReader m_values;
    std::map<std::string, std::string> m_ids; ///< Id to what has it.
};

void PartsReading::run()
{
    const auto &source = m_top.source();
    for (const TomlValue *const table : m_top.tables("module"))
        readModule(TomlFields(source, *table, "module", keysOf(Paragraph::Module)));
    for (const TomlValue *const table : m_top.tables("station"))
        readStation(TomlFields(source, *table, "station", keysOf(Paragraph::Station)));
    for (const TomlValue *const table : m_top.tables("run"))
        readRun(TomlFields(source, *table, "run", keysOf(Paragraph::Run)));
    for (const TomlValue *const table : m_top.tables("extra"))
        readExtra(TomlFields(source, *table, "extra", keysOf(Paragraph::Extra)));
}

/// Stations and modules share one room of names, as they do in "filters/prefilter"; runs have
/// theirs.
void PartsReading::claimId(const TomlFields &fields, const std::string &id)
{
    const std::string room = fields.name() == "run" ? "run " : "place ";
    const auto [known, isNew] = m_ids.emplace(room + id, fields.name());
    if (!isNew && !id.empty())
        fields.wrong("id", {"the id \"" + id + "\" is that of another " + known->second,
                            "Give one of them another id."});
}

Level PartsReading::readLevel(const TomlFields &fields) const
{
    (void)fields.required("level");
    return static_cast<Level>(fields.word("level", wordsOf(Paragraph::Run, "level"), 1));
}

void PartsReading::readStation(const TomlFields &fields)
{
    Station station;
    station.id = fields.id("id");
    claimId(fields, station.id);
    station.title = fields.required("title");
    station.level = readLevel(fields);
    const std::string kindWord = fields.required("kind");
    if (const auto kind = parseKind(kindWord))
        station.demand.kind = *kind;
    else if (!kindWord.empty())
        fields.wrong("kind", {kind.error().wrong, kind.error().remedy});
    station.demand.words = fields.texts("words");
    station.demand.part = m_values.varying(fields, "part", LiteralForm::PartNumber);
    station.demand.micron = m_values.varying(fields, "micron", LiteralForm::Microns);
    station.demand.flow = m_values.varying(fields, "flow", LiteralForm::Flow);
    station.demand.pressure = m_values.varying(fields, "pressure", LiteralForm::Pressure);
    station.demand.rated = m_values.varying(fields, "rated", LiteralForm::Pressure);
    station.when = m_values.condition(fields, "when");
    station.bracketed = fields.yesNo("bracketed", true);
    station.plugged = fields.texts("plugged");
    station.spareElements = fields.whole("spare-elements", SpareElementsMax, 0);
    m_form.stations.push_back(std::move(station));
}

Run::Place PartsReading::readPlace(const TomlFields &fields, std::string_view key) const
{
    const std::string typed = fields.required(key);
    const std::size_t dot = typed.rfind('.');
    if (typed.empty())
        return {};
    if (dot == std::string::npos || dot == 0 || dot + 1 == typed.size()) {
        fields.wrong(key, {'"' + typed + "\" is no port of a station", "Write station.port."});
        return {};
    }
    Run::Place place{typed.substr(0, dot), typed.substr(dot + 1)};
    // Of a station inside a module only the module is known here; the rest when all are read.
    const std::size_t slash = place.station.find('/');
    const std::string first = place.station.substr(0, slash);
    std::vector<std::string_view> names;
    if (slash == std::string::npos) {
        for (const Station &station : m_form.stations)
            names.push_back(station.id);
    } else {
        for (const Module &inner : m_form.modules)
            names.push_back(inner.id);
    }
    if (std::find(names.begin(), names.end(), first) == names.end())
        fields.wrong(key,
                     {std::string(slash == std::string::npos ? "there is no station \""
                                                             : "there is no module \"") +
                          first + "\" here",
                      names.empty() ? "Add it, or correct the name." : wordRemedy(first, names)});
    return place;
}

void PartsReading::readRun(const TomlFields &fields)
{
    Run run;
    run.id = fields.id("id");
    claimId(fields, run.id);
    run.level = readLevel(fields);
    run.from = readPlace(fields, "from");
    run.to = readPlace(fields, "to");
    if (!run.from.station.empty() && run.from.station == run.to.station &&
        run.from.port == run.to.port)
        fields.wrong("to", {"the run ends where it begins", "Name two ports."});
    run.length = m_values.varying(fields, "length", LiteralForm::Length);
    run.dash = m_values.varying(fields, "dash", LiteralForm::Dash);
    run.construction = m_values.varying(fields, "construction", LiteralForm::Construction);
    run.tubing = m_values.varying(fields, "tubing", LiteralForm::TubeSize);
    run.rise = m_values.varying(fields, "rise", LiteralForm::Rise);
    run.forward = m_values.varying(fields, "forward", LiteralForm::Rise);
    run.startAngle = m_values.varying(fields, "start-angle", LiteralForm::Degrees);
    run.endAngle = m_values.varying(fields, "end-angle", LiteralForm::Degrees);
    run.bend = m_values.varying(fields, "bend", LiteralForm::Length);
    run.when = m_values.condition(fields, "when");
    run.clampsEach = fields.whole("clamps-each", ClampSpacingMax, 0);
    m_form.runs.push_back(std::move(run));
}

void PartsReading::readModule(const TomlFields &fields)
{
    Module inner;
    inner.id = fields.id("id");
    claimId(fields, inner.id);
    inner.templateId = fields.id("template");
    if (const TomlValue *const answers = fields.find("answers", TomlValue::Form::Table)) {
        for (const TomlEntry &entry : answers->entries)
            inner.answers[entry.key] =
                m_values.varying(entry.value, entry.key, LiteralForm::Anything);
    }
    inner.when = m_values.condition(fields, "when");
    m_form.modules.push_back(std::move(inner));
}

Decimal PartsReading::readCount(const TomlFields &fields) const
{
    const TomlValue *const value = fields.find("count");
    if (!value)
        return 1;
    // A fraction stands in quotes: a TOML fraction is a double, and a count is exact.
    const auto count = value->form == TomlValue::Form::Text ? Decimal::parse(value->text)
                                                            : Result<Decimal>(value->whole);
    const bool isNumber =
        value->form == TomlValue::Form::Text || value->form == TomlValue::Form::Whole;
    if (isNumber && count && count->sign() > 0 && *count <= Decimal(ExtraCountMax))
        return *count;
    fields.wrong("count", {"the count is not a number above 0 and up to 1000000",
                           "Write digits; a fraction stands in quotes, as \"0.5\"."});
    return 1;
}

void PartsReading::readExtra(const TomlFields &fields)
{
    Extra extra;
    if (!fields.find("part"))
        fields.wrong("part", {"this extra has no \"part\"", "Add it."});
    extra.part = m_values.varying(fields, "part", LiteralForm::PartNumber);
    extra.count = readCount(fields);
    extra.why = fields.required("why");
    extra.when = m_values.condition(fields, "when");
    m_form.extras.push_back(std::move(extra));
}

} // namespace

void readParts(const TomlFields &top, Template &form)
{
    PartsReading(top, form).run();
}

} // namespace flarestock
