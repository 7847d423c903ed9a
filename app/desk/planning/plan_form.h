// SPDX-License-Identifier: MIT
//
// Plan form: a template that was tried out becomes a build of a car by a day; the title, car and
// day of a build are changed, or a build is given up. What the answers and picks are on the desk
// goes along.

#pragma once

#include "app/desk/build/build_desk.h"
#include "app/desk/form/form.h"
#include "app/desk/shop/shop_on_desk.h"

namespace flarestock {

class PlanForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool isTriedOut READ isTriedOut NOTIFY shown)
public:
    enum class Deed : std::uint8_t { Plan, Change, GiveUp };

    PlanForm(Pen &pen, const BuildDesk &build, QObject *parent = nullptr);

    void setShop(const ShopOnDesk &shop) { m_workshop = shop.workshop; }
    /// Whether what is on the desk is no build yet.
    [[nodiscard]] bool isTriedOut() const { return m_build.isOpen() && m_build.plan().id.empty(); }

    /// "plan", "change" or "give-up". Whether it can be done; otherwise whyNot() says why.
    Q_INVOKABLE bool begin(const QString &deed);
    Q_INVOKABLE QString whyNot(const QString &deed) const;

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    void carryOut(const QVariantMap &values) override;

    /// The build that was written last and has not been asked for yet; empty: none.
    [[nodiscard]] QString takeWritten() { return std::exchange(m_written, QString()); }

Q_SIGNALS:
    void shown();
    /// What waits to be kept has to be in the shop before something is written.
    void begun();

private:
    [[nodiscard]] std::vector<const Place *> cars() const;
    /// With what was filled in. Problem: no title, no such day.
    [[nodiscard]] Result<BuildPlan> filled(const QVariantMap &values) const;

    const Pen &m_hand; ///< The form's own pen, to ask it.
    const BuildDesk &m_build;
    std::shared_ptr<const Workshop> m_workshop;
    Deed m_deed = Deed::Plan;
    QString m_written;
};

/// The title as an id: small letters, digits and dashes; with a number where it is taken already.
[[nodiscard]] std::string idOf(const std::string &title, const std::vector<BuildPlan> &builds);

} // namespace flarestock
