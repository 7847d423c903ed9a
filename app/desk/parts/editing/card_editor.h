// SPDX-License-Identifier: MIT
//
// CardEditor: a new card, or one that is changed: its fields, its ports, what each port meets while
// it is typed, and what is wrong with a cell, as the import would say it. Nothing is in the shop
// before it is written down, by the pen; then the card is in it as a whole.

#pragma once

#include "app/desk/parts/card/card_book.h"
#include "app/desk/parts/editing/port_fields.h"
#include "app/desk/shop/pen.h"

namespace flarestock {

class CardEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(bool isOfBefore READ isOfBefore NOTIFY changed)
    Q_PROPERTY(QString number READ number NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString standing READ standing NOTIFY changed)
    Q_PROPERTY(QString body READ body NOTIFY changed)
    Q_PROPERTY(int bend READ bend NOTIFY changed)
    Q_PROPERTY(QStringList portTexts READ portTexts NOTIFY changed)
    Q_PROPERTY(QString meets READ meets NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *fields READ fields CONSTANT)
    Q_PROPERTY(flarestock::Rows *ports READ ports CONSTANT)
    Q_PROPERTY(flarestock::Rows *meetings READ meetings CONSTANT)
public:
    explicit CardEditor(Pen &pen, QObject *parent = nullptr);

    void setShop(const ShopOnDesk &shop);
    void setBook(const std::shared_ptr<const CardBook> &book);

    [[nodiscard]] bool isOpen() const { return m_isOpen; }
    /// Filled in when the desk ended in the midst of it.
    [[nodiscard]] bool isOfBefore() const { return m_isOfBefore; }
    [[nodiscard]] QString number() const; ///< Of the card, as far as it is typed.
    [[nodiscard]] QString title() const;
    /// Whether it could be written down: "2 fields are not right yet".
    [[nodiscard]] QString standing() const;
    [[nodiscard]] bool isWhole() const { return m_wrong.empty() && m_wrongAtPort.empty(); }
    [[nodiscard]] QString body() const; ///< As PartDrawing has it.
    [[nodiscard]] int bend() const;
    [[nodiscard]] QStringList portTexts() const;
    [[nodiscard]] QString meets() const; ///< The port that meetings() are of; empty: none.
    [[nodiscard]] Rows *fields() { return &m_fieldRows; }
    [[nodiscard]] Rows *ports() { return &m_portRows; }
    [[nodiscard]] Rows *meetings() { return &m_meetings; }

    Q_INVOKABLE void beginNew();
    /// Reads the card as it stands in the shop, away from the window; opened() says that it is
    /// here.
    Q_INVOKABLE void beginChange(const QString &number);
    Q_INVOKABLE void close();
    /// What stands in a field now: words, or the number of a choice.
    Q_INVOKABLE void fill(const QString &heading, const QVariant &filled);
    Q_INVOKABLE void addPort();
    Q_INVOKABLE void dropPort(const QString &key);
    Q_INVOKABLE void namePort(const QString &key, const QString &name);
    Q_INVOKABLE void wordPort(const QString &key, const QString &words);
    Q_INVOKABLE void setRole(const QString &key, int role);
    /// Shows what that port meets.
    Q_INVOKABLE void lookAt(const QString &key);
    /// Writes it down; where something is wrong, says it at each field.
    Q_INVOKABLE void finish();

Q_SIGNALS:
    void changed();
    void opened();

private:
    void begin(const RowCells &cells);
    void takeUp(); ///< What a desk that ended had typed on this card.
    void keep();
    [[nodiscard]] QString keptName() const;
    [[nodiscard]] QVariantMap typed() const; ///< All that stands on the card now.
    void judge();
    void showRows();
    void showMeetings();
    void write();
    [[nodiscard]] RowKnows knows() const;
    [[nodiscard]] Kind kind() const;
    [[nodiscard]] RowCells row() const;
    /// Figures that can be read in two ways, by heading.
    [[nodiscard]] std::map<std::string, QString> unclear() const;

    Pen &m_pen;
    std::function<Result<TextFiles>()> m_documents;
    std::shared_ptr<const CardBook> m_book;
    bool m_isOpen = false;
    bool m_isNew = true;
    QVariantMap m_asBegun; ///< typed() before anybody has typed.
    bool m_isOfBefore = false;
    bool m_isTried = false; ///< It was to be written: all that is wrong is said.
    RowCells m_begun;       ///< As it stood in the shop.
    RowCells m_cells;       ///< As they stand in the fields; without the ports.
    PortFields m_ports;
    std::set<std::string> m_touched;
    std::map<std::string, QString> m_wrong;       ///< By heading.
    std::map<std::size_t, QString> m_wrongAtPort; ///< By place.
    int m_lookedAt = 0;                           ///< A port's key.
    Rows m_fieldRows;
    Rows m_portRows;
    Rows m_meetings;
    Errand m_reading; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
