// SPDX-License-Identifier: MIT
//
// What is this?: an unmarked fitting by caliper, pitch gauge and a look at its seat: what it can
// be, how many of each lie on the shelf, and what to measure next, with the answers that would
// decide it.

#pragma once

#include "app/desk/rows/rows.h"
#include "app/desk/stock/stock_book.h"
#include "model/ports/identify.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class WhatIsThis : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool male READ isMale WRITE setMale NOTIFY changed)
    Q_PROPERTY(QString diameter READ diameter WRITE setDiameter NOTIFY changed)
    Q_PROPERTY(QString pitch READ pitch WRITE setPitch NOTIFY changed)
    Q_PROPERTY(QString seat READ seat WRITE setSeat NOTIFY changed)
    Q_PROPERTY(QString ask READ ask NOTIFY changed)
    Q_PROPERTY(QString why READ why NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(QString reading READ reading NOTIFY changed)
    Q_PROPERTY(bool measured READ isMeasured NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *candidates READ candidates CONSTANT)
    Q_PROPERTY(flarestock::Rows *answers READ answers CONSTANT)
public:
    explicit WhatIsThis(QObject *parent = nullptr);

    void setBook(const std::shared_ptr<const StockBook> &book);

    [[nodiscard]] bool isMale() const { return m_male; }
    void setMale(bool male);
    [[nodiscard]] QString diameter() const { return m_diameter; }
    void setDiameter(const QString &typed); ///< "22.1 mm", "0.87 in"; bare: mm.
    [[nodiscard]] QString pitch() const { return m_pitch; }
    void setPitch(const QString &typed); ///< "14 tpi", "1.5 mm"; empty: not measured.
    [[nodiscard]] QString seat() const { return m_seat; }
    /// "37", "45", "30", "12", "60": half angle of a cone; "flat", "tapered"; empty: not looked at.
    void setSeat(const QString &seat);

    [[nodiscard]] QString ask() const; ///< "pitch", "seat", or empty: nothing more.
    [[nodiscard]] QString why() const; ///< Why that, or why it is decided.
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] QString reading() const; ///< As the jaws show it: "22.10 mm".
    [[nodiscard]] bool isMeasured() const { return m_caliper.diameterMm > 0; }
    [[nodiscard]] Rows *candidates() { return &m_candidates; }
    [[nodiscard]] Rows *answers() { return &m_answers; }

    /// The ports of a candidate, of all of them for -1.
    [[nodiscard]] std::vector<Port> portsOf(int candidate) const;
    /// What was typed in one line, "od 22.1 mm 14 tpi"; whether it is such a line.
    bool read(const QString &typed);
    Q_INVOKABLE void begin(); ///< Forgets what was measured.

Q_SIGNALS:
    void changed();

private:
    void identifyAnew();
    void showRows();
    [[nodiscard]] QString onShelf(const Candidate &candidate) const;

    std::shared_ptr<const StockBook> m_book;
    bool m_male = true;
    QString m_diameter;
    QString m_pitch;
    QString m_seat;
    QString m_problem;
    Caliper m_caliper;
    Identification m_said;
    Rows m_candidates; ///< thread ports deviation here says
    Rows m_answers;    ///< label value: of what is to be measured next
};

} // namespace flarestock
