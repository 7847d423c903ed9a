// SPDX-License-Identifier: MIT
//
// Trouble form: what is wrong with a line of a box: it came damaged, the paper says it and it is
// not in the box, or another part came in its place. Nothing is written until the box is put away.

#pragma once

#include "app/buyer/receiving/receiving_words.h"
#include "app/desk/buying/box/ticks.h"
#include "app/desk/form/form.h"

namespace flarestock {

/// So much of a part, and what is wrong with it.
struct Trouble {
    ClaimFault fault = ClaimFault::Damaged;
    std::string part;     ///< That was ordered.
    std::string quantity; ///< As it was typed.
    std::string came;     ///< The part that came in its place; empty unless that is it.

    void tell(ReceivingWords &words) const;
};

/// What is said not to have come, or to be another part, is not among what is ticked.
void leaveOut(const std::vector<Trouble> &troubles, const Workshop &workshop, Ticks &ticks);

class TroubleForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
public:
    explicit TroubleForm(Pen &pen, QObject *parent = nullptr) : Form(pen, parent) {}

    void begin(const std::shared_ptr<const Workshop> &workshop, const std::string &part);

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    [[nodiscard]] QString fieldOf(const QString &code) const override;
    void lookAhead(const QVariantMap &values) override;
    void carryOut(const QVariantMap &values) override;

Q_SIGNALS:
    void noted(const flarestock::Trouble &trouble);

private:
    std::shared_ptr<const Workshop> m_workshop;
    std::string m_part;
};

} // namespace flarestock
