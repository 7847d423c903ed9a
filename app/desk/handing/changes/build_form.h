// SPDX-License-Identifier: MIT
//
// Build form: a form about the build on the desk that says, while it is filled in, what it would
// come to; that is reckoned away from the window.

#pragma once

#include "app/desk/build/worked_out.h"
#include "app/desk/form/form.h"
#include "app/desk/shop/errand.h"
#include "app/desk/words/units.h"
#include "app/stockroom/deed.h"

namespace flarestock {

class BuildForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
public:
    /// The build on the desk as it is now.
    struct OnDesk {
        WorkedOut worked;
        BuildPlan plan;
        Units units = Units::Metric;
    };
    explicit BuildForm(Pen &pen, QObject *parent = nullptr) : Form(pen, parent) {}

    [[nodiscard]] QString outlook() const override { return m_says.join(u'\n'); }
    [[nodiscard]] bool isReckoning() const { return m_reckoning.isUnderWay(); }
    void lookAhead(const QVariantMap &values) override;

protected:
    using Says = std::function<QStringList(const By &by)>;
    /// What says what these values would come to; it is called on another thread. Empty: nothing.
    [[nodiscard]] virtual Says saysOf(const QVariantMap &values) const = 0;
    /// Nothing is said any more.
    void forget();

private:
    void reckon();

    QVariantMap m_values;
    bool m_again = false; ///< Something else was filled in meanwhile.
    QStringList m_says;
    Errand m_reckoning; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
