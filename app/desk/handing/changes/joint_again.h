// SPDX-License-Identifier: MIT
//
// Joint again: a joint of the build that was closed is opened for service. Its rings and crush
// washers have done their work once; the form says which fresh ones it takes before it takes them.

#pragma once

#include "app/desk/handing/changes/build_form.h"
#include "app/stockroom/renewing.h"

namespace flarestock {

class JointAgain : public flarestock::BuildForm {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
public:
    explicit JointAgain(Pen &pen, QObject *parent = nullptr) : BuildForm(pen, parent) {}

    /// Begins with a joint by its id. Whether the build has it.
    bool begin(const OnDesk &onDesk, const std::string &joint);

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override { return tr("Fresh ones in"); }
    [[nodiscard]] QString caution() const override;
    void carryOut(const QVariantMap &values) override;

protected:
    [[nodiscard]] Says saysOf(const QVariantMap &values) const override;

private:
    OnDesk m_onDesk;
    std::string m_joint;
    QString m_at; ///< "pump inlet"
};

} // namespace flarestock
