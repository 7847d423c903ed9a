// SPDX-License-Identifier: MIT

#include "model/checks/flow/flow_paths.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::size_t PathsMost = 64;

bool takesNothing(const PlacedStation &station)
{
    const Kind kind = station.station->demand.kind;
    return kind == Kind::Gauge || kind == Kind::Sender || kind == Kind::RolloverValve;
}

bool leavesByReturn(const Expansion &expansion, const PlacedRun &run)
{
    if (run.run->level == Level::Return)
        return true;
    const auto *from = expansion.station(run.from);
    const auto *port =
        from == nullptr || from->part == nullptr ? nullptr : from->part->port(run.run->from.port);
    return port != nullptr && port->role == PortRole::Return;
}

bool endsAt(const PlacedStation &station, Course course)
{
    const Kind kind = station.station->demand.kind;
    if (kind == Kind::Tank)
        return true;
    if (course != Course::Pushed)
        return false;
    return kind == Kind::Regulator || kind == Kind::Pump || kind == Kind::Carburettor ||
           kind == Kind::Injector;
}

class Walk {
public:
    Walk(const Expansion &expansion, Course course) : m_expansion(expansion), m_course(course) {}

    std::vector<FlowPath> from(const PlacedStation &station)
    {
        FlowPath path;
        follow(station, path);
        if (m_course == Course::Drawn) {
            for (auto &found : m_found)
                std::reverse(found.runs.begin(), found.runs.end());
        }
        return std::move(m_found);
    }

private:
    struct Step {
        const PlacedRun *run = nullptr;
        const PlacedStation *to = nullptr;
    };

    [[nodiscard]] bool isOnCourse(const PlacedRun &run, bool first) const
    {
        const bool byReturn = leavesByReturn(m_expansion, run);
        return m_course == Course::Returned ? byReturn || !first : !byReturn;
    }

    [[nodiscard]] std::vector<Step> stepsFrom(const PlacedStation &station,
                                              const FlowPath &path) const
    {
        const bool backwards = m_course == Course::Drawn;
        std::vector<Step> steps;
        for (const auto &run : m_expansion.runs) {
            if ((backwards ? run.to : run.from) != station.id ||
                !isOnCourse(run, path.runs.empty()))
                continue;
            const auto *next = m_expansion.station(backwards ? run.from : run.to);
            const bool walked =
                std::find(path.runs.begin(), path.runs.end(), &run) != path.runs.end();
            if (next != nullptr && !walked && !takesNothing(*next))
                steps.push_back({&run, next});
        }
        return steps;
    }

    void follow(const PlacedStation &station, FlowPath &path)
    {
        const bool ended = !path.runs.empty() && endsAt(station, m_course);
        const auto steps = ended ? std::vector<Step>() : stepsFrom(station, path);
        if (steps.empty() && !path.runs.empty() && m_found.size() < PathsMost) {
            m_found.push_back(path);
            m_found.back().end = &station;
        }
        for (const auto &step : steps) {
            if (m_found.size() >= PathsMost)
                return;
            const double share = path.share;
            path.share /= static_cast<double>(steps.size());
            path.runs.push_back(step.run);
            follow(*step.to, path);
            path.runs.pop_back();
            path.share = share;
        }
    }

    const Expansion &m_expansion;
    Course m_course;
    std::vector<FlowPath> m_found;
};

} // namespace

std::vector<FlowPath> flowPaths(const Expansion &expansion, const PlacedStation &station,
                                Course course)
{
    return Walk(expansion, course).from(station);
}

bool isBypass(const PlacedStation &station) noexcept
{
    const auto *facts = station.part == nullptr ? nullptr : station.part->as<RegulatorFacts>();
    return facts != nullptr && facts->bypass;
}

} // namespace flarestock
