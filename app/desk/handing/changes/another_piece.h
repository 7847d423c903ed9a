// SPDX-License-Identifier: MIT
//
// Another piece: the car got another one than was planned. The planned one goes back to its place,
// the as-built record follows, and the form says what that does to the joints.

#pragma once

#include "app/desk/handing/changes/build_form.h"
#include "app/desk/handing/handed_out.h"
#include "app/stockroom/as_built.h"

namespace flarestock {

class AnotherPiece : public flarestock::BuildForm {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
public:
    explicit AnotherPiece(Pen &pen, QObject *parent = nullptr) : BuildForm(pen, parent) {}

    /// Begins with what is in the car, which is to go back to that place.
    void begin(const OnDesk &onDesk, const HandedOut::InCar &planned, const QString &home);

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override { return tr("It went in"); }
    [[nodiscard]] QString caution() const override;
    /// A part or a lot is what went in, a bin is where the planned one goes.
    QString fieldOf(const QString &code) const override;
    void carryOut(const QVariantMap &values) override;

protected:
    [[nodiscard]] Says saysOf(const QVariantMap &values) const override;

private:
    [[nodiscard]] InsteadWords wordsOf(const QVariantMap &values) const;

    OnDesk m_onDesk;
    std::optional<HandedOut::InCar> m_planned;
};

} // namespace flarestock
