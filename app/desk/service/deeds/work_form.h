// SPDX-License-Identifier: MIT
//
// Work form: the work that is being filled in, with its fields; and which work there is for the
// position in hand.

#pragma once

#include "app/desk/form/form.h"
#include "app/desk/service/deeds/work_deed.h"

namespace flarestock {

class WorkForm : public flarestock::Form {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(flarestock::Rows *deeds READ deeds CONSTANT)
    Q_PROPERTY(QString noWash READ noWash NOTIFY changed)
public:
    explicit WorkForm(Pen &pen, QObject *parent = nullptr);

    /// What is in hand now.
    void show(const WorkSubject &subject);

    [[nodiscard]] QString title() const override;
    [[nodiscard]] QString about() const override;
    [[nodiscard]] QString button() const override;
    [[nodiscard]] QString caution() const override;
    [[nodiscard]] Rows *deeds() { return &m_deeds; }
    /// Why the piece in hand is not washed, where somebody could think that it is; else empty.
    [[nodiscard]] QString noWash() const;

    /// Begins to fill in a work, by its name or its letter. Whether it can be done.
    Q_INVOKABLE bool begin(const QString &deed);
    /// Why it cannot; also whether it is a work at all: empty where it is none.
    Q_INVOKABLE QString whyNot(const QString &deed) const;
    QString fieldOf(const QString &code) const override;
    void carryOut(const QVariantMap &values) override;

private:
    WorkSubject m_subject;
    WorkSubject m_begun; ///< As it was when the form was begun.
    std::optional<CarDeed> m_deed;
    Rows m_deeds;
};

} // namespace flarestock
