// SPDX-License-Identifier: MIT

#include "model/systems/sizing/line_working.h"

#include "model/exact/case_fold.h"
#include "model/fluids/bounds.h"
#include "model/fluids/demand/specific_consumption.h"
#include "model/fluids/line/loss_coefficient.h"
#include "model/fluids/line/sizing.h"
#include "model/fluids/liquid.h"
#include "model/fluids/liquids/vapour_pressure.h"
#include "model/fluids/pump/atmosphere.h"
#include "model/systems/expanding/pump_curve.h"
#include "model/systems/sizing/flow_conditions.h"
#include "model/systems/sizing/hose_bores.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace flarestock {

namespace {

constexpr double LitreHour = 1 / 3.6e6;
/// Both ends of a run, one of them bent by 90 degrees, and the steps of bore at them (estimate).
constexpr double EndsK = 2;

using Line = WorkedDefault::Line;

LineRole roleOf(Line line)
{
    if (line == Line::Suction || line == Line::Gravity)
        return LineRole::Suction;
    return line == Line::Return ? LineRole::Return : LineRole::Pressure;
}

BudgetedLine budgetedAs(Line line)
{
    if (line == Line::Return)
        return BudgetedLine::Return;
    return line == Line::BehindRegulator ? BudgetedLine::BehindRegulator
                                         : BudgetedLine::BeforeRegulator;
}

double openingsK(Line line)
{
    if (line == Line::Suction || line == Line::Gravity)
        return openingCoefficient(Opening::SharpEntrance).k;
    return line == Line::Return ? openingCoefficient(Opening::Exit).k : 0;
}

class LineWorking {
public:
    LineWorking(const LineQuestion &asked, WorkedAnswer &made)
        : m_asked(asked), m_by(*asked.question.workedOut), m_made(made),
          m_conditions(conditionsOf(asked.answers)),
          m_fluid(fluidAnswered(asked.form, asked.answers)),
          m_setPa(answeredSi(m_by.setPressure, Dimension::Pressure, asked.answers))
    {
        if (m_setPa)
            *m_setPa += m_conditions.boostPa;
    }

    void run()
    {
        WorkedAnswer::Sizes sizes;
        if (!readLine(sizes.line))
            return;
        bound(sizes);
        const auto said = m_by.construction.with(m_asked.answers).value_or("");
        std::vector<int> dashes;
        for (const std::string &choice : m_asked.question.choices)
            dashes.push_back(dashOfChoice(choice));
        sizes.tried = triedSizes(
            sizes.line, hoseBores(dashes, {trimmed(said), m_fluid}, m_asked.known.catalogue));
        choose(sizes, said);
    }

private:
    bool fail(std::string why)
    {
        m_made.why = std::move(why);
        return false;
    }

    /// What the pump gives at the pressure that is set; 0 where it is not known.
    [[nodiscard]] double pumpM3S(const std::string &id) const
    {
        if (!m_asked.known.pumps)
            return 0;
        const auto found = m_asked.known.pumps->find(id);
        const auto *facts =
            found == m_asked.known.pumps->end() ? nullptr : found->second->as<PumpFacts>();
        if (!facts)
            return 0;
        auto flow = m_setPa ? pumpFlowLh(*facts, *m_setPa / 1e3) : std::nullopt;
        if (!flow)
            flow = mostFlowLh(*facts);
        return flow.value_or(0) * LitreHour;
    }

    /// All that the named pumps give together, or the one of them that gives most.
    double pumpsM3S()
    {
        double all = 0;
        for (const std::string &pump : m_by.pumps) {
            const std::string id = m_asked.known.prefix + pump;
            m_made.pumps.push_back(id);
            const double one = pumpM3S(id);
            all = m_by.pumpsApart ? std::max(all, one) : all + one;
        }
        return all;
    }

    bool readLine(LineAsked &line)
    {
        const double pumps = pumpsM3S();
        const auto flow = answeredSi(m_by.flow, Dimension::VolumeFlow, m_asked.answers);
        line.flowM3S = std::max(flow.value_or(0), pumps);
        if (line.flowM3S <= 0)
            return fail("no flow is known of it");
        const auto liquid =
            m_fluid ? liquidAt(*m_fluid, m_conditions.fuelC) : Result<Liquid>(problem("", "", ""));
        if (!liquid)
            return fail("the fluid is not known as warm as it is");
        line.densityKgM3 = liquid->densityKgM3;
        line.viscosityPaS = liquid->viscosityPaS;
        line.minorK = openingsK(m_by.line);
        for (const Varying &length : m_by.lengths) {
            const auto metres = answeredSi(length, Dimension::Length, m_asked.answers);
            line.lengthM += metres.value_or(0);
            line.minorK += metres ? EndsK : 0;
        }
        line.otherPa = answeredSi(m_by.otherLoss, Dimension::Pressure, m_asked.answers).value_or(0);
        line.riseM = answeredSi(m_by.rise, Dimension::Length, m_asked.answers).value_or(0);
        return true;
    }

    void bound(WorkedAnswer::Sizes &sizes)
    {
        const VelocityLimit &limit = velocityLimit(roleOf(m_by.line));
        sizes.line.mostMS = limit.cautionMS;
        sizes.velocitySource = limit.source;
        if (m_by.line == Line::Gravity) {
            sizes.line.mostPa = 0; // What falls is all that there is.
            sizes.budgetSource = "what the height of the tank gives";
        } else if (m_by.line == Line::Suction) {
            boundInlet(sizes);
        } else if (m_setPa) {
            const auto budget = lineBudget(m_by.delivery, budgetedAs(m_by.line), *m_setPa);
            sizes.line.mostPa = budget.cautionPa;
            sizes.budgetSource = budget.source;
        }
        if (m_by.line == Line::BeforeRegulator && m_fluid)
            addPractice(sizes);
    }

    void boundInlet(WorkedAnswer::Sizes &sizes)
    {
        const auto vapour = vapourPressure(*m_fluid, m_conditions.fuelC, m_conditions.reidPa);
        const auto air = atmospherePa(m_conditions.altitudeM);
        if (!vapour || !air)
            return;
        const double most = *air - vapour->pascal - inletBounds().cautionPa;
        if (most <= sizes.line.otherPa) {
            m_made.why = "the fuel is too near to boiling for any size; taken by its velocity";
            return;
        }
        sizes.line.mostPa = most;
        sizes.budgetSource = inletBounds().source;
    }

    void addPractice(WorkedAnswer::Sizes &sizes)
    {
        const auto power = m_asked.answers.find("power");
        const auto watts = power == m_asked.answers.end()
                               ? Result<Measure>(problem("", "", ""))
                               : Measure::parse(power->second, Dimension::Power);
        if (watts)
            sizes.practice =
                practiceOf(*m_fluid, watts->si / wattsOf(1, PowerUnit::MechanicalHorsepower));
    }

    void choose(WorkedAnswer::Sizes &sizes, const std::string &construction)
    {
        const SizeTried *chosen = smallestThatKeeps(sizes.tried);
        if (!chosen) {
            for (const SizeTried &one : sizes.tried)
                if (one.size.offered)
                    chosen = &one;
            if (!chosen) {
                m_made.why = "the catalogue has no hose " + construction + " of these sizes";
                return;
            }
            m_made.why = whyNoneKeeps(sizes, *chosen);
        }
        sizes.worked = sizes.taken = chosen->size.dash;
        m_made.worked = "-" + std::to_string(sizes.worked);
        m_made.sizes = std::move(sizes);
    }

    static std::string whyNoneKeeps(const WorkedAnswer::Sizes &sizes, const SizeTried &largest)
    {
        std::string why = "no size keeps to its bounds: the largest takes " +
                          shortNumber(std::round(largest.dropPa / 100) / 10) + " kPa at " +
                          shortNumber(std::round(largest.velocityMS * 100) / 100) + " m/s";
        if (sizes.line.mostPa)
            why += ", " + shortNumber(std::round(*sizes.line.mostPa / 100) / 10) + " kPa and";
        else
            why += ",";
        return why + " " + shortNumber(sizes.line.mostMS) + " m/s are wanted";
    }

    const LineQuestion &m_asked;
    const WorkedDefault &m_by;
    WorkedAnswer &m_made;
    FlowConditions m_conditions;
    std::optional<Fluid> m_fluid;
    std::optional<double> m_setPa;
};

} // namespace

int dashOfChoice(std::string_view choice) noexcept
{
    int dash = 0;
    choice.remove_prefix(choice.starts_with('-') ? 1 : 0);
    std::from_chars(choice.data(), choice.data() + choice.size(), dash);
    return dash;
}

void workLineOut(const LineQuestion &asked, WorkedAnswer &made)
{
    LineWorking(asked, made).run();
}

} // namespace flarestock
