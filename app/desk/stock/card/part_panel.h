// SPDX-License-Identifier: MIT
//
// Part panel: the part of the stock that is looked at: its ports, where it lies, what is said of it
// below, and which of its pieces are in hand. What happened is read away from the window.

#pragma once

#include "app/desk/shop/errand.h"
#include "app/desk/shop/shop_on_desk.h"
#include "app/desk/stock/card/part_card.h"
#include "app/desk/stock/overtime/over_time.h"

#include <QTimer>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

/// The body that a part is drawn with, as PartDrawing has it; empty where nothing is drawn.
[[nodiscard]] QString bodyOf(Kind kind, bool hasPorts);

class PartPanel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(QString number READ number NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString about READ about NOTIFY changed)
    Q_PROPERTY(QString sum READ sum NOTIFY changed)
    Q_PROPERTY(QString body READ body NOTIFY changed)
    Q_PROPERTY(int bend READ bend NOTIFY changed)
    Q_PROPERTY(QStringList portTexts READ portTexts NOTIFY changed)
    Q_PROPERTY(QString pieces READ pieces WRITE setPieces NOTIFY changed)
    Q_PROPERTY(bool hasMore READ hasMore NOTIFY changed)
    Q_PROPERTY(bool allShown READ isAllShown WRITE setAllShown NOTIFY changed)
    Q_PROPERTY(bool reading READ isReading NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(flarestock::OverTime *time READ time CONSTANT)
    Q_PROPERTY(flarestock::Rows *ports READ ports CONSTANT)
    Q_PROPERTY(flarestock::Rows *lying READ lying CONSTANT)
    Q_PROPERTY(flarestock::Rows *lines READ lines CONSTANT)
public:
    using History = std::function<Result<std::vector<Movement>>(const std::string &part)>;

    explicit PartPanel(QObject *parent = nullptr);

    /// How long the part of before stays on the panel while what happened to another is read, so
    /// that all of it is shown at once and not line by line.
    static constexpr int PatienceMs = 40;

    /// Which pieces come into hand by themselves: those that lie at `where`, as Narrowing::where
    /// has it, of a part those of the lot that is meant; else none. Nothing said: the first.
    struct Meant {
        std::string where;
        std::string part;
        std::string lot;
    };
    void mean(const Meant &meant);
    /// A part of a book; none where its number is not in it.
    void show(const std::shared_ptr<const StockBook> &book, const QString &number);
    void setHistory(const History &history) { m_history = history; }
    void setUnits(Units units);

    [[nodiscard]] const StockEntry *entry() const { return m_entry; }
    /// The pieces in hand, where they lie; nothing where none are.
    [[nodiscard]] std::optional<BalanceKey> key() const;

    [[nodiscard]] QString number() const { return m_number; }
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString about() const;
    [[nodiscard]] QString sum() const;
    [[nodiscard]] QString body() const; ///< As PartDrawing has it.
    [[nodiscard]] int bend() const;     ///< Of a hose end, in degrees.
    [[nodiscard]] QStringList portTexts() const;
    [[nodiscard]] QString pieces() const { return m_pieces; } ///< A key of lying().
    void setPieces(const QString &key);
    /// More happened than is shown at first.
    [[nodiscard]] bool hasMore() const
    {
        return m_movements && m_movements->size() > EventsAtFirst;
    }
    [[nodiscard]] bool isAllShown() const { return m_isAllShown; }
    void setAllShown(bool shown);
    [[nodiscard]] bool isReading() const { return m_movements == nullptr && m_problem.isEmpty(); }
    [[nodiscard]] QString problem() const { return m_problem; } ///< Why nothing could be read.
    [[nodiscard]] OverTime *time() { return &m_time; }          ///< How much was on hand.
    [[nodiscard]] Rows *ports() { return &m_ports; }
    [[nodiscard]] Rows *lying() { return &m_lying; }
    [[nodiscard]] Rows *lines() { return &m_lines; }
    [[nodiscard]] const Rows &ports() const { return m_ports; }
    [[nodiscard]] const Rows &lying() const { return m_lying; }
    [[nodiscard]] const Rows &lines() const { return m_lines; }

Q_SIGNALS:
    void changed();
    void taken(); ///< Another part is in hand; that it is shown is told by changed().

private:
    [[nodiscard]] CardAsked asked() const;
    [[nodiscard]] QString meantOf(const std::vector<Row> &lying) const;
    void showRows();
    void read();

    std::shared_ptr<const StockBook> m_book;
    QString m_number;
    const StockEntry *m_entry = nullptr; ///< Of m_book.
    QString m_pieces;
    Meant m_meant;
    Units m_units = Units::Metric;
    bool m_isAllShown = false;
    History m_history;
    std::shared_ptr<const std::vector<Movement>> m_movements; ///< Nothing: not read yet.
    OnHand m_hand;
    OverTime m_time;
    QString m_problem;
    bool m_readAgain = false; ///< Another part was asked for while one was read.
    Rows m_ports;
    Rows m_lying;
    Rows m_lines;
    QString m_shown; ///< The part whose rows are shown.
    QTimer m_patience;
    Errand m_reading; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
