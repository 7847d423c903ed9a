// SPDX-License-Identifier: MIT

#include "app/desk/shop/kept_plan.h"

#include "app/desk/words/spoken.h"
#include "model/exchange/template_toml.h"

#include <algorithm>

namespace flarestock {

namespace {

/// The name under which they wait.
QString changedBuilds()
{
    return QStringLiteral("builds that were changed");
}

QString textOf(const BuildPlan &plan)
{
    return said(writeBuilds({plan}));
}

/// Nothing where it is no text of one build.
std::optional<BuildPlan> planOf(const QVariant &text)
{
    const auto read = readBuilds(text.toString().toStdString(), changedBuilds().toStdString());
    return read && read->size() == 1 ? std::optional(read->front()) : std::nullopt;
}

auto ofBuild(const std::string &id)
{
    return [id](const ChangedPlan &owed) { return owed.plan.id == id; };
}

} // namespace

const ChangedPlan *OwedPlans::find(const std::string &id) const
{
    const auto found = std::find_if(m_plans.begin(), m_plans.end(), ofBuild(id));
    return found == m_plans.end() ? nullptr : &*found;
}

void OwedPlans::add(const ChangedPlan &changed)
{
    const auto found = std::find_if(m_plans.begin(), m_plans.end(), ofBuild(changed.plan.id));
    if (found == m_plans.end())
        m_plans.push_back(changed);
    else
        found->plan = changed.plan;
    remember();
}

void OwedPlans::settle(const ChangedPlan &kept)
{
    const auto found = std::find_if(m_plans.begin(), m_plans.end(), ofBuild(kept.plan.id));
    if (found == m_plans.end())
        return;
    if (found->plan == kept.plan)
        m_plans.erase(found);
    else
        found->before = kept.plan;
    remember();
}

void OwedPlans::drop(const std::string &id)
{
    if (std::erase_if(m_plans, ofBuild(id)) > 0)
        remember();
}

void OwedPlans::showIn(std::vector<BuildPlan> &builds, const std::string &butNot) const
{
    for (BuildPlan &plan : builds) {
        const ChangedPlan *owed = plan.id == butNot ? nullptr : find(plan.id);
        if (owed != nullptr)
            plan = owed->plan;
    }
}

bool OwedPlans::takeUp()
{
    if (!m_plans.empty())
        return false;
    const QVariantMap left = m_unwritten->takeUp(changedBuilds());
    for (const QVariant &one : left) {
        const auto plan = planOf(one.toMap().value(QStringLiteral("plan")));
        const auto before = planOf(one.toMap().value(QStringLiteral("before")));
        if (plan && before)
            m_plans.push_back({*plan, *before});
    }
    return !m_plans.empty();
}

void OwedPlans::remember() const
{
    QVariantMap left;
    QStringList titles;
    for (const ChangedPlan &owed : m_plans) {
        left.insert(said(owed.plan.id),
                    QVariantMap{{QStringLiteral("plan"), textOf(owed.plan)},
                                {QStringLiteral("before"), textOf(owed.before)}});
        titles.append(said(owed.plan.title));
    }
    m_unwritten->keep(changedBuilds(), titles.join(QStringLiteral(", ")), left);
}

} // namespace flarestock
