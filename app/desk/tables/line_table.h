// SPDX-License-Identifier: MIT
//
// LineTable: what pressure one line takes from a flow, and how fast it flows there, as somebody
// types it: fluid, temperature, flow, size or bore, length. At each key.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

#include <QStringList>
#include <QVariantMap>

namespace flarestock {

class LineTable : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QStringList fluids READ fluids NOTIFY said)
    Q_PROPERTY(bool reckoned READ isReckoned NOTIFY said)
    Q_PROPERTY(QString notes READ notes NOTIFY said)
    Q_PROPERTY(QString wrong READ wrong NOTIFY said)
    Q_PROPERTY(flarestock::Rows *figures READ figures CONSTANT)
public:
    explicit LineTable(QObject *parent = nullptr);

    [[nodiscard]] static QStringList fluids();
    [[nodiscard]] bool isReckoned() const { return m_figures.count() > 0; }
    /// What the figures rest on, a sentence a line.
    [[nodiscard]] QString notes() const { return m_notes; }
    /// Why it cannot be reckoned; empty where it can, or where something is not typed yet.
    [[nodiscard]] QString wrong() const { return m_wrong; }
    [[nodiscard]] Rows *figures() { return &m_figures; }

    /// "fluid" the number of one of fluids(), "temperature" "flow" "size" "length" as typed; a size
    /// is a dash ("-6") or a bore ("8.71 mm").
    Q_INVOKABLE void consider(const QVariantMap &typed);

    void setUnits(Units units);
    /// Says it once more: in another language.
    void say();

Q_SIGNALS:
    void said();

private:
    void reckon();

    QVariantMap m_typed;
    Units m_units = Units::Metric;
    QString m_notes;
    QString m_wrong;
    Rows m_figures; ///< label says
};

} // namespace flarestock
