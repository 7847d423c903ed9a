// SPDX-License-Identifier: MIT
//
// Weighing: what the whole build would come to with each of the other parts of what is open: the
// difference of its total, the lines that it would leave short, the joints that nothing would
// close.
//
// Every answer is a build worked out to the end, so it is as exact as the bill; one takes as long
// as a change of an answer does. They are worked out one by one, away from the window, once the
// hand rests.

#pragma once

#include "app/desk/opened/opened.h"
#include "app/desk/shop/errand.h"

#include <QTimer>

namespace flarestock {

class Weighing : public QObject {
    Q_OBJECT
public:
    /// How long nothing else has been opened before the first is worked out.
    static constexpr int RestMs = 120;
    /// Others beyond these are shown by their own price alone.
    static constexpr int OthersMax = 12;

    /// `opened` outlives it.
    explicit Weighing(Opened &opened, QObject *parent = nullptr);

    /// Begins with the ways of what is open now. `now` is the build of `plan`.
    void begin(const WorkOut &workOut, const BuildPlan &plan, const WorkedOut &now);
    void stop();
    [[nodiscard]] bool isDone() const { return !m_soon.isActive() && !m_errand.isUnderWay(); }

private:
    void weighNext();

    Opened &m_opened;
    QTimer m_soon;
    WorkOut m_workOut;
    BuildPlan m_plan;
    WorkedOut m_now;
    int m_next = 0;
    int m_begun = 0; ///< How often it began or was stopped.
    Errand m_errand;
};

/// What changes from one worked-out state of a build to another.
[[nodiscard]] Weighed weighed(const WorkedOut &now, const WorkedOut &then);

} // namespace flarestock
