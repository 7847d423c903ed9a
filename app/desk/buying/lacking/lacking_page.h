// SPDX-License-Identifier: MIT
//
// Lacking page: what is short by the day on which it is needed: the strip of days, the list, and
// what is known of the line in hand.

#pragma once

#include "app/desk/buying/lacking/day_strip.h"
#include "app/desk/rows/rows.h"
#include "app/desk/words/units.h"

#include <QtQml/qqmlregistration.h>

namespace flarestock {

class LackingPage : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString selected READ selected WRITE select NOTIFY selectedChanged)
    Q_PROPERTY(QString part READ part NOTIFY changed)
    Q_PROPERTY(QString what READ what NOTIFY changed)
    Q_PROPERTY(QString nothing READ nothing NOTIFY changed)
    Q_PROPERTY(QStringList notes READ notes NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *days READ days CONSTANT)
    Q_PROPERTY(flarestock::Rows *lines READ lines CONSTANT)
    Q_PROPERTY(flarestock::Rows *facts READ facts CONSTANT)
public:
    explicit LackingPage(QObject *parent = nullptr);

    /// What is worked out of a book before it is shown.
    struct Made {
        std::vector<Row> lines; ///< Its lackingRows().
        DayStrip strip;
    };
    /// nullptr: nothing is known yet.
    void show(const std::shared_ptr<const BuyersBook> &book, Made made, Units units);
    /// Only the lines in which all that was typed stands.
    void find(const QString &typed);

    [[nodiscard]] QString selected() const { return m_selected; }
    void select(const QString &key);
    /// The first line of a part. Whether there is one.
    bool selectPart(const QString &part);
    [[nodiscard]] QString part() const; ///< Of the line in hand; empty where none is.
    [[nodiscard]] QString what() const;
    [[nodiscard]] QString nothing() const; ///< What is said where no line is shown.
    [[nodiscard]] QStringList notes() const { return m_notes; }
    [[nodiscard]] Rows *days() { return &m_days; }
    [[nodiscard]] Rows *lines() { return &m_lines; }
    [[nodiscard]] Rows *facts() { return &m_facts; }

    /// The line in hand becomes the first that is needed on that day or later.
    Q_INVOKABLE void goToDay(const QString &day);
    /// The key of a row; empty where there is none.
    Q_INVOKABLE QString keyAt(int row) const;

Q_SIGNALS:
    void changed();
    void selectedChanged();

private:
    void showLines();
    void showSelected();
    void showFacts();
    [[nodiscard]] const Shortage *inHand() const;

    std::shared_ptr<const BuyersBook> m_book;
    Units m_units = Units::Metric;
    DayStrip m_strip;
    std::vector<Row> m_all;
    QString m_typed;
    QString m_selected;
    QStringList m_notes;
    Rows m_days;
    Rows m_lines;
    Rows m_facts;
};

} // namespace flarestock
