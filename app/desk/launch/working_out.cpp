// SPDX-License-Identifier: MIT

#include "app/desk/launch/working_out.h"

#include "app/desk/shop/aside.h"
#include "app/workshop/worked_build.h"
#include "app/workshop/workshop.h"

#include <array>
#include <mutex>

namespace flarestock {

namespace {

/// A worked-out build with the snapshot that it points into.
struct Worked {
    std::shared_ptr<const Workshop> workshop;
    std::shared_ptr<const Shelf> shelf; ///< What is free to this build.
    WorkedBuild built;
};

/// What is free to a build is the same whatever is answered and picked, so that it is looked for
/// once in a snapshot. For any thread.
class ShelfInHand {
public:
    [[nodiscard]] std::shared_ptr<const Shelf> of(const Workshop &workshop, const BuildPlan &plan)
    {
        const std::lock_guard held(m_mutex);
        const std::array key{plan.id, plan.car, plan.by};
        if (!m_shelf || m_key != key)
            m_shelf = std::make_shared<const Shelf>(workshop.shelfFor(plan));
        m_key = key;
        return m_shelf;
    }

private:
    std::mutex m_mutex;
    std::array<std::string, 3> m_key;
    std::shared_ptr<const Shelf> m_shelf;
};

Result<WorkedOut> workedOut(const std::shared_ptr<const Workshop> &workshop, ShelfInHand &inHand,
                            const BuildPlan &plan)
{
    const auto shelf = inHand.of(*workshop, plan);
    auto built = workBuild(*workshop, plan, *shelf);
    if (!built)
        return tl::unexpected(built.error());
    const auto worked =
        goesAside(std::make_shared<const Worked>(Worked{workshop, shelf, std::move(*built)}));
    WorkedOut out;
    out.alive = worked;
    out.form = workshop->templates->at(plan.templateId).get();
    out.expansion = &worked->built.expansion;
    out.bill = &worked->built.bill;
    out.findings = &worked->built.findings;
    out.catalogue = &workshop->catalogue;
    out.shelf = worked->shelf.get();
    out.lying = &worked->built.lying;
    out.workshop = workshop.get();
    out.built = &worked->built;
    return out;
}

} // namespace

WorkOut workOutIn(const std::shared_ptr<const Workshop> &workshop)
{
    return [workshop, inHand = std::make_shared<ShelfInHand>()](const BuildPlan &plan) {
        return workedOut(workshop, *inHand, plan);
    };
}

} // namespace flarestock
