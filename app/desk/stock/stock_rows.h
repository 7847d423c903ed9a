// SPDX-License-Identifier: MIT
//
// Stock rows: the lines of a stock book that were let through, as a list for QML. Of a hundred
// thousand lines only those are put into words that a view asks for. A new choice of lines changes
// the rows between what stays at both ends where they are, and removes or adds what is too many or
// too few, so that a view makes few of them anew.

#pragma once

#include "app/desk/stock/stock_book.h"
#include "app/desk/words/units.h"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class StockRows : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    /// part what where here promised free trailer keep due isBelow below says
    enum Role {
        Number = Qt::UserRole,
        What,
        Where,
        Here,
        Promised,
        Free,
        Trailer,
        Keep,
        Due,
        IsBelow,
        Below, ///< "below what we keep", "low", "out"; empty where it is not.
        Says,
    };

    explicit StockRows(QObject *parent = nullptr) : QAbstractListModel(parent) {}

    [[nodiscard]] int count() const { return static_cast<int>(m_lines.size()); }
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// The lines of a book, by their places in it.
    void become(const std::shared_ptr<const StockBook> &book, std::vector<std::uint32_t> lines);
    void setUnits(Units units);

    /// The row of a part number; -1 where it is not shown.
    Q_INVOKABLE int rowOf(const QString &number) const;
    /// The number of a row; empty where there is none.
    Q_INVOKABLE QString numberAt(int row) const;

Q_SIGNALS:
    void countChanged();

private:
    void change(const std::vector<std::uint32_t> &lines);
    [[nodiscard]] const StockEntry &entry(int row) const;
    [[nodiscard]] QString amount(const StockEntry &entry, std::int64_t smallest) const;
    [[nodiscard]] QString here(const StockEntry &entry) const;
    [[nodiscard]] QString where(const StockEntry &entry) const;
    [[nodiscard]] QString due(const StockEntry &entry) const;
    [[nodiscard]] QString says(const StockEntry &entry) const;

    std::shared_ptr<const StockBook> m_book;
    std::vector<std::uint32_t> m_lines;
    Units m_units = Units::Metric;
};

/// "12 ft 6 in", "1,234", "≈ 25.4 mm": so much of a part as a person reads it.
[[nodiscard]] QString saidStock(std::int64_t smallest, const Part &part, Units units);
/// "plenty", "low", "out" in the person's language.
[[nodiscard]] QString saidLevel(StockLevel level);

} // namespace flarestock
