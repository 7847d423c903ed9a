// SPDX-License-Identifier: MIT

#include "app/desk/handing/changes/build_form.h"

#include "app/workshop/clock.h"

namespace flarestock {

void BuildForm::lookAhead(const QVariantMap &values)
{
    m_values = values;
    m_again = m_reckoning.isUnderWay();
    if (!m_again)
        reckon();
}

void BuildForm::reckon()
{
    const Says says = saysOf(m_values);
    if (!says)
        return forget();
    const By by{pen().who().toStdString(), {}, nowMilliseconds(), {}};
    m_reckoning.run([this, says, by]() -> Errand::Back {
        const QStringList said = says(by);
        return [this, said] {
            if (std::exchange(m_again, false))
                return reckon();
            m_says = said;
            Q_EMIT outlookChanged();
        };
    });
}

void BuildForm::forget()
{
    m_says.clear();
    Q_EMIT outlookChanged();
}

} // namespace flarestock
