// SPDX-License-Identifier: MIT

#include "app/desk/build/working.h"

namespace flarestock {

void Working::begin(std::function<WorkOut()> by, BuildPlan plan, Done done)
{
    m_asked.push_back({std::move(by), std::move(plan), std::move(done)});
    if (!m_errand.isUnderWay())
        next();
}

void Working::next()
{
    if (m_asked.empty())
        return;
    const Asked asked = std::move(m_asked.front());
    m_asked.pop_front();
    m_isAtWork = true;
    const WorkOut workOut = asked.by();
    const auto done = [this, told = asked.done, since = m_forgotten](Result<WorkedOut> worked) {
        if (since != m_forgotten)
            return;
        m_isAtWork = false;
        told(std::move(worked));
    };
    if (m_patience < 0) {
        done(workOut(asked.plan));
        return next();
    }
    m_errand.run([this, workOut, done, plan = asked.plan]() -> Errand::Back {
        const auto worked = std::make_shared<Result<WorkedOut>>(workOut(plan));
        return [this, worked, done] {
            done(std::move(*worked));
            next();
        };
    });
    m_errand.finish(m_patience);
}

void Working::finish()
{
    while (m_errand.isUnderWay())
        m_errand.finish();
}

void Working::forget()
{
    m_asked.clear();
    m_isAtWork = false;
    ++m_forgotten;
}

} // namespace flarestock
