// SPDX-License-Identifier: MIT
//
// Working: plans are worked out away from the window, one after the other. What is done soon is
// waited for, so that a change is on the screen with the next frame; what takes longer comes later,
// and the window stays awake.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/shop/errand.h"
#include "model/exchange/template_toml.h"

#include <deque>

namespace flarestock {

class Working : public QObject {
    Q_OBJECT
public:
    using Done = std::function<void(Result<WorkedOut> worked)>;
    /// How long a change is waited for where somebody sits at the window, of a frame's 16.
    static constexpr int AtTheWindowMs = 6;

    using QObject::QObject;

    /// At first there is no end to it: what is begun is done when begin() returns.
    void setPatience(int milliseconds) { m_patience = milliseconds; }
    /// `by`: asked when its turn comes, as the shop may be another one by then.
    void begin(std::function<WorkOut()> by, BuildPlan plan, Done done);
    /// Whether any is not done yet.
    [[nodiscard]] bool isBusy() const { return m_isAtWork || !m_asked.empty(); }
    void finish(); ///< Waits for all of them.
    void forget(); ///< None of them is done any more.

private:
    struct Asked {
        std::function<WorkOut()> by;
        BuildPlan plan;
        Done done;
    };
    void next();

    std::deque<Asked> m_asked;
    Errand m_errand;
    int m_patience = -1;
    int m_forgotten = 0;     ///< How often.
    bool m_isAtWork = false; ///< One that is not forgotten.
};

} // namespace flarestock
