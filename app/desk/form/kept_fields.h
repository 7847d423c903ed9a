// SPDX-License-Identifier: MIT
//
// Kept fields: what is filled in on one sheet while it is on the screen, for a desk that ends in
// the midst of it. The sheet says what stands in it when it opens, and whenever that changes; what
// the program itself had filled in is not kept.
//
//   KeptFields test(pen.unwritten(), [this] { return SheetNamed{"leak test|" + id, title()}; });

#pragma once

#include "app/desk/form/unwritten.h"

#include <functional>

namespace flarestock {

struct SheetNamed {
    QString name;  ///< Of the same thing, as it stands now; else it is another sheet.
    QString title; ///< What a person knows it by.
};

class KeptFields : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
public:
    /// `named`: what is on the screen, asked when the sheet opens. `unwritten` must outlive it.
    KeptFields(Unwritten &unwritten, std::function<SheetNamed()> named, QObject *parent = nullptr);

    /// The sheet is on the screen, filled in so. What stood in it when the desk ended in the midst
    /// of it, by the same keys; empty: nothing did.
    Q_INVOKABLE QVariantMap takenUp(const QVariantMap &values);
    /// What is filled in now. Nothing where the sheet is not on the screen.
    Q_INVOKABLE void keep(const QVariantMap &values);
    /// The sheet is off the screen: what was filled in is written, or not wanted.
    Q_INVOKABLE void putAway();

private:
    Unwritten &m_unwritten;
    std::function<SheetNamed()> m_named;
    SheetNamed m_sheet;     ///< On the screen; no name: none is.
    QVariantMap m_asOpened; ///< What the program itself had filled in.
};

} // namespace flarestock
