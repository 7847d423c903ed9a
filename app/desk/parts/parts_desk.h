// SPDX-License-Identifier: MIT
//
// PartsDesk: the area of parts: the catalogue as a card index. Which cards are wanted, the one that
// is looked at with all that is known of it, and what its ports meet. Book, sieve and uses are made
// away from the window; while nobody looks at the area nothing is made.

#pragma once

#include "app/desk/parts/card/card_book.h"
#include "app/desk/parts/editing/card_editor.h"
#include "app/desk/parts/importing/list_import.h"
#include "app/desk/parts/trade/trade_form.h"
#include "app/desk/stock/card/part_panel.h"
#include "app/desk/stock/sieve.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/tables/tables.h"

namespace flarestock {

class PartsDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool looking READ isLooking WRITE setLooking NOTIFY changed)
    Q_PROPERTY(bool loading READ isLoading NOTIFY changed)
    Q_PROPERTY(bool narrowed READ isNarrowed NOTIFY changed)
    Q_PROPERTY(bool inInches READ inInches WRITE setInInches NOTIFY changed)
    Q_PROPERTY(QString heading READ heading NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString nothing READ nothing NOTIFY changed)
    Q_PROPERTY(QString selected READ selected WRITE select NOTIFY changed)
    Q_PROPERTY(QString port READ port WRITE setPort NOTIFY changed)
    Q_PROPERTY(QString portWords READ portWords NOTIFY changed)
    Q_PROPERTY(QString portSource READ portSource NOTIFY changed)
    Q_PROPERTY(flarestock::StockRows *rows READ rows CONSTANT)
    Q_PROPERTY(flarestock::Rows *narrowing READ narrowing CONSTANT)
    Q_PROPERTY(flarestock::PartPanel *panel READ panel CONSTANT)
    Q_PROPERTY(flarestock::Rows *ports READ ports CONSTANT)
    Q_PROPERTY(flarestock::Rows *facts READ facts CONSTANT)
    Q_PROPERTY(flarestock::Rows *links READ links CONSTANT)
    Q_PROPERTY(flarestock::Rows *trade READ trade CONSTANT)
    Q_PROPERTY(flarestock::Rows *meetings READ meetings CONSTANT)
    Q_PROPERTY(flarestock::CardEditor *editor READ editor CONSTANT)
    Q_PROPERTY(flarestock::ListImport *importing READ importing CONSTANT)
    Q_PROPERTY(flarestock::TradeForm *tradeForm READ tradeForm CONSTANT)
    Q_PROPERTY(flarestock::Rows *offers READ offers CONSTANT)
    Q_PROPERTY(flarestock::Tables *tables READ tables CONSTANT)
public:
    explicit PartsDesk(Pen &pen, QObject *parent = nullptr);
    ~PartsDesk() override;

    /// The shop as it is now; `isOther`: not the one that was on the desk before.
    void setShop(const ShopOnDesk &shop, bool isOther);

    [[nodiscard]] bool isLooking() const { return m_isLooking; }
    void setLooking(bool looking);
    /// The book is being made, or the cards are being sought.
    [[nodiscard]] bool isLoading() const
    {
        return m_workshop && (m_making.isUnderWay() || m_sifting.isUnderWay() || !m_book);
    }
    [[nodiscard]] bool isNarrowed() const;
    [[nodiscard]] bool inInches() const { return m_units == Units::Inch; }
    void setInInches(bool inInches);
    [[nodiscard]] QString heading() const; ///< "Parts: adapter, -10"
    [[nodiscard]] QString about() const;   ///< "card 118 of 642"
    [[nodiscard]] QString nothing() const; ///< What is said where no card is let through.
    [[nodiscard]] QString selected() const { return m_panel.number(); }
    void select(const QString &number);
    [[nodiscard]] QString port() const { return m_port; } ///< A key of ports(); empty: none.
    void setPort(const QString &port);
    [[nodiscard]] QString portWords() const;  ///< "ORB -6 female"
    [[nodiscard]] QString portSource() const; ///< Where the figures of its size are from.
    [[nodiscard]] StockRows *rows() { return &m_rows; }
    [[nodiscard]] Rows *narrowing() { return &m_fields; }
    [[nodiscard]] PartPanel *panel() { return &m_panel; }
    [[nodiscard]] Rows *ports() { return &m_ports; }
    [[nodiscard]] Rows *facts() { return &m_facts; }
    [[nodiscard]] Rows *links() { return &m_links; }
    [[nodiscard]] Rows *trade() { return &m_trade; }
    [[nodiscard]] Rows *meetings() { return &m_meetings; }
    [[nodiscard]] CardEditor *editor() { return &m_editor; }
    [[nodiscard]] ListImport *importing() { return &m_importing; }
    [[nodiscard]] TradeForm *tradeForm() { return &m_tradeForm; }
    /// Of the card in hand, each to be changed.
    [[nodiscard]] Rows *offers() { return &m_offers; }
    [[nodiscard]] Tables *tables() { return &m_tables; }

    Q_INVOKABLE void find(const QString &typed);
    /// A field of narrowing() and the number of its choice; 0 is any.
    Q_INVOKABLE void narrow(const QString &field, int choice);
    Q_INVOKABLE void clear();
    /// A part number. Whether it is one of a card.
    Q_INVOKABLE bool scan(const QString &code);
    /// The card of that number, whatever is narrowed; nothing where there is none.
    Q_INVOKABLE void goTo(const QString &number);

Q_SIGNALS:
    void changed();
    /// A code has led to a card, which is selected now.
    void arrived();
    /// What was typed to find something holds no more.
    void forgotten();

private:
    void make();
    void sift();
    void workOutUses();
    void take(const std::shared_ptr<const CardBook> &book);
    void forget();
    void showFields();
    void showCard();
    void showPorts(const Part *card);
    void showMeetings();
    [[nodiscard]] const Part *part() const;
    [[nodiscard]] const PartPort *portInHand() const;

    std::shared_ptr<const Workshop> m_workshop;
    std::shared_ptr<const CardBook> m_book;
    std::shared_ptr<const WhereUsed> m_used;
    std::shared_ptr<std::atomic<bool>> m_stopUses;
    bool m_isLooking = false;
    bool m_isStale = true;    ///< The book is of a shop of before.
    bool m_siftAgain = false; ///< Something else was asked for while cards were sought.
    QString m_wanted;         ///< To be selected once it is there.
    Units m_units = Units::Metric;
    Narrowing m_asked;
    QString m_port;
    const Part *m_portsOf = nullptr; ///< Whose ports are shown; of m_book.
    StockRows m_rows;
    Rows m_fields;
    PartPanel m_panel;
    Rows m_ports; ///< name port detail fits says
    Rows m_facts;
    Rows m_links;
    Rows m_trade;
    Rows m_meetings;
    CardEditor m_editor;
    ListImport m_importing;
    TradeForm m_tradeForm;
    Rows m_offers; ///< label says
    Tables m_tables;
    Errand m_making; ///< Last: they wait for their workers before the rest goes.
    Errand m_sifting;
    Errand m_working;
};

} // namespace flarestock
