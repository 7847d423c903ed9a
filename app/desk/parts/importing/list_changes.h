// SPDX-License-Identifier: MIT
//
// List changes: the rows of a list that change what the shop has, each with what it was and what it
// becomes, to be kept or left out one by one. A row is put into words when it is looked at: a price
// list changes thousands.

#pragma once

#include "model/exchange/typed/list_reading.h"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <set>

namespace flarestock {

class ListChanges : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    explicit ListChanges(QObject *parent = nullptr) : QAbstractListModel(parent) {}

    /// Of all rows that are taken in, those that change something. What was left out stays so.
    void show(SheetKind kind, const std::vector<ListRow> &taken);
    /// The lines that are left out, as they were kept.
    [[nodiscard]] const std::set<std::size_t> &leftOut() const { return m_leftOut; }
    void leaveOut(std::set<std::size_t> lines) { m_leftOut = std::move(lines); }
    /// No list any more: nothing is left out of the next.
    void forget();

    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    [[nodiscard]] bool isLeftOut(const ListRow &row) const { return m_leftOut.contains(row.line); }
    [[nodiscard]] bool leavesSomeOut() const { return !m_leftOut.empty(); }
    /// The row is left out, or taken in again.
    Q_INVOKABLE void toggle(int row);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    /// title says ticked
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

Q_SIGNALS:
    void countChanged();
    void toggled();

private:
    SheetKind m_kind = SheetKind::Parts;
    std::vector<ListRow> m_rows;
    std::set<std::size_t> m_leftOut; ///< By line.
};

} // namespace flarestock
