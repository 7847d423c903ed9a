// SPDX-License-Identifier: MIT

#include "model/exchange/templates/worked_defaults.h"

#include "model/exchange/templates/template_words.h"

#include <algorithm>

namespace flarestock {

namespace {

TemplateWords questionWords(std::string_view key)
{
    return wordsOf(Paragraph::Question, key);
}

constexpr int PumpsMost = 16;

class WorkedDefaultReading {
public:
    WorkedDefaultReading(const TomlFields &fields, const std::vector<Question> &earlier)
        : m_fields(fields), m_earlier(earlier), m_values(fields.source(), earlier)
    {
    }

    std::optional<WorkedDefault> read(const Question &question)
    {
        const bool isWorked = m_fields.find("worked-out") != nullptr;
        if (isWorked && m_fields.required("worked-out").empty())
            return std::nullopt;
        const TemplateWords all = questionWords("worked-out");
        m_made.by = static_cast<WorkedDefault::By>(m_fields.word("worked-out", all, all.size()));
        const bool isKnown = static_cast<std::size_t>(m_made.by) < all.size();
        if (isWorked && !isKnown)
            return std::nullopt; // Said already.
        refuseOthers(isWorked);
        if (!isWorked)
            return std::nullopt;
        switch (m_made.by) {
        case WorkedDefault::By::FuelDemand:
            readDemand(question);
            break;
        case WorkedDefault::By::PumpPressure:
            wantMeasure(question, Dimension::Pressure);
            readSet(true);
            break;
        case WorkedDefault::By::LineSize:
            readLine(question);
            break;
        }
        return std::move(m_made);
    }

private:
    void refuseOthers(bool isWorked) const
    {
        const std::string_view by = // Of no calculation there is no word.
            isWorked ? questionWords("worked-out")[static_cast<std::size_t>(m_made.by)] : "";
        const TemplateWords taken = keysWorkedOutBy(by);
        for (const std::string_view key : workedOutKeys().subspan(1)) {
            const bool takes =
                isWorked && std::find(taken.begin(), taken.end(), key) != taken.end();
            if (takes || !m_fields.find(key))
                continue;
            m_fields.wrong(
                key, {isWorked ? "a " + std::string(by) + " has no \"" + std::string(key) + '"'
                               : '"' + std::string(key) + "\" is only for what is worked out",
                      isWorked ? "Remove it." : "Add worked-out, or remove it."});
        }
    }

    void wantMeasure(const Question &question, Dimension dimension) const
    {
        if (question.form != Question::Form::Measured || question.dimension != dimension)
            m_fields.wrong("worked-out",
                           {"a " + m_fields.text("worked-out") + " is a " +
                                std::string(text(dimension)) + ", which is not asked here",
                            "Write form = \"measure\" and dimension = \"" +
                                std::string(text(dimension)) + "\"."});
    }

    void readDemand(const Question &question)
    {
        wantMeasure(question, Dimension::VolumeFlow);
        const auto power = std::find_if(m_earlier.begin(), m_earlier.end(),
                                        [](const Question &asked) { return asked.id == "power"; });
        if (power == m_earlier.end() || power->dimension != Dimension::Power)
            m_fields.wrong("worked-out",
                           {"a fuel demand goes by the power, and no question \"power\" of that "
                            "dimension stands before it",
                            "Ask for the power first."});
        m_made.feed = static_cast<Feed>(m_fields.word("feed", questionWords("feed"), 0));
        m_made.sharedBy = std::max(1, m_fields.whole("shared-by", PumpsMost, 1));
    }

    void readSet(bool wanted)
    {
        if (wanted || m_fields.find("delivery"))
            (void)m_fields.required("delivery");
        m_made.delivery =
            static_cast<FuelSystem>(m_fields.word("delivery", questionWords("delivery"), 1));
        if (wanted && !m_fields.find("set-pressure"))
            (void)m_fields.required("set-pressure");
        m_made.setPressure = m_values.varying(m_fields, "set-pressure", LiteralForm::Pressure);
    }

    void readLine(const Question &question)
    {
        if (!question.isDash)
            m_fields.wrong("worked-out", {"a line size is a dash size, which is not asked here",
                                          "Write form = \"dash\"."});
        (void)m_fields.required("line");
        m_made.line =
            static_cast<WorkedDefault::Line>(m_fields.word("line", questionWords("line"), 0));
        const bool isSet = m_made.line == WorkedDefault::Line::BeforeRegulator ||
                           m_made.line == WorkedDefault::Line::BehindRegulator;
        readSet(isSet && m_fields.find("line") != nullptr);
        if (!m_fields.find("flow"))
            (void)m_fields.required("flow");
        m_made.flow = m_values.varying(m_fields, "flow", LiteralForm::Flow);
        m_made.pumps = m_fields.texts("pumps");
        m_made.pumpsApart = m_fields.yesNo("pumps-apart", false);
        const TomlValue *const lengths = m_fields.find("lengths", TomlValue::Form::List);
        if (!lengths && !m_fields.find("lengths"))
            (void)m_fields.required("lengths");
        if (lengths) {
            if (lengths->items.empty())
                m_fields.wrong("lengths", {"\"lengths\" is empty", "Name one length at least."});
            for (const TomlValue &item : lengths->items)
                m_made.lengths.push_back(m_values.varying(item, "lengths", LiteralForm::Length));
        }
        m_made.construction = m_values.varying(m_fields, "construction", LiteralForm::Construction);
        m_made.rise = m_values.varying(m_fields, "rise", LiteralForm::Rise);
        m_made.otherLoss = m_values.varying(m_fields, "other-loss", LiteralForm::Pressure);
    }

    const TomlFields &m_fields;
    const std::vector<Question> &m_earlier;
    VaryingReader m_values;
    WorkedDefault m_made;
};

} // namespace

std::optional<WorkedDefault> readWorkedDefault(const TomlFields &fields, const Question &question,
                                               const std::vector<Question> &earlier)
{
    return WorkedDefaultReading(fields, earlier).read(question);
}

} // namespace flarestock
