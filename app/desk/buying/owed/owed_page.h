// SPDX-License-Identifier: MIT
//
// Owed page: what suppliers owe, from the day on which somebody found it lacking to the piece that
// came, the credit, or that it was dropped; and the letter to the supplier.

#pragma once

#include "app/desk/buying/owed/claim_form.h"
#include "app/desk/shop/errand.h"
#include "app/desk/words/units.h"

#include <QUrl>

namespace flarestock {

class OwedPage : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString selected READ selected WRITE select NOTIFY changed)
    Q_PROPERTY(QString heading READ heading NOTIFY changed)
    Q_PROPERTY(QString nothing READ nothing NOTIFY changed)
    Q_PROPERTY(int open READ open NOTIFY changed)
    Q_PROPERTY(bool writing READ isWriting NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *claims READ claims CONSTANT)
    Q_PROPERTY(flarestock::Rows *facts READ facts CONSTANT)
    Q_PROPERTY(flarestock::Rows *deeds READ deeds CONSTANT)
    Q_PROPERTY(flarestock::ClaimForm *form READ form CONSTANT)
public:
    explicit OwedPage(Pen &pen, QObject *parent = nullptr);

    /// nullptr: nothing is known yet. `claims` are its claimListRows().
    void show(const std::shared_ptr<const Workshop> &workshop, std::vector<Row> claims);
    void setShop(const ShopOnDesk &shop, const std::string &today);
    void setUnits(Units units) { m_units = units; } ///< Of the letter.
    void find(const QString &typed);

    [[nodiscard]] QString selected() const { return m_selected; }
    void select(const QString &number);
    [[nodiscard]] QString heading() const;            ///< "C-12, Ridgemoor Fittings"
    [[nodiscard]] QString nothing() const;            ///< What is said where no claim is shown.
    [[nodiscard]] int open() const { return m_open; } ///< So many are not settled.
    [[nodiscard]] bool isWriting() const { return m_writing.isUnderWay(); }
    [[nodiscard]] Rows *claims() { return &m_claims; }
    [[nodiscard]] Rows *facts() { return &m_facts; }
    /// label ready detail; "promise", "came", "credit", "drop".
    [[nodiscard]] Rows *deeds() { return &m_deeds; }
    [[nodiscard]] ClaimForm *form() { return &m_form; }

    /// "raise", or a deed of deeds(). Whether its form is ready.
    Q_INVOKABLE bool begin(const QString &deed);
    /// The letter to the supplier about the claim in hand, as a PDF: "pdf" in the desk's language,
    /// or "english".
    Q_INVOKABLE void writeLetter(const QString &kind, const QUrl &file);
    Q_INVOKABLE QString keyAt(int row) const;

Q_SIGNALS:
    void changed();
    void told(const QString &sentence); ///< The letter was written, or why not.

private:
    void showList();
    void showSelected();
    [[nodiscard]] const ClaimStanding *inHand() const;
    [[nodiscard]] QString firstOpen() const;

    std::shared_ptr<const Workshop> m_workshop;
    std::function<Result<void>(const LookUp &)> m_read;
    std::string m_today;
    Units m_units = Units::Metric;
    int m_open = 0;
    std::vector<Row> m_all;
    QString m_typed;
    QString m_selected;
    Rows m_claims;
    Rows m_facts;
    Rows m_deeds;
    ClaimForm m_form;
    Errand m_writing; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
