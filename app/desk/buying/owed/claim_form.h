// SPDX-License-Identifier: MIT
//
// Claim form: what is filled in when a supplier names a day, when the piece comes, when he pays
// something back, or when somebody finds that he owes something. The buyer's own code makes the
// step, as it does for the commands.

#pragma once

#include "app/desk/form/form.h"
#include "app/workshop/workshop.h"

namespace flarestock {

enum class ClaimDeed : std::uint8_t { Raise, Promise, Came, Credit, Drop };

/// The claim that it is done with; a new one has no number.
struct ClaimSubject {
    std::shared_ptr<const Workshop> workshop;
    QString number;
};

class ClaimForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
public:
    explicit ClaimForm(Pen &pen, QObject *parent = nullptr) : Form(pen, parent) {}

    void begin(ClaimDeed deed, const ClaimSubject &subject);

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    [[nodiscard]] QString fieldOf(const QString &code) const override;
    void carryOut(const QVariantMap &values) override;

private:
    std::optional<ClaimDeed> m_deed;
    ClaimSubject m_subject;
};

/// The fields of its form.
[[nodiscard]] std::vector<Row> claimFields(ClaimDeed deed, const ClaimSubject &subject);
/// What was filled in as an action; a claim that has gone on since is refused.
[[nodiscard]] Pen::MadeBy claimStep(ClaimDeed deed, const ClaimSubject &subject,
                                    const QVariantMap &values);

} // namespace flarestock
