// SPDX-License-Identifier: MIT
//
// Rows: a list for QML whose rows are keyed lists of named cells. Each list of the desk (answers,
// bill, findings, plates, marks …) is made by a pure function as a vector of rows; become() brings
// the shown list to it by single insertions, moves, removals and changes, so that a view keeps its
// place and its focus while the build is worked out anew.
//
//   Rows bill({QStringLiteral("part"), QStringLiteral("cost")});
//   bill.become({{QStringLiteral("EP-460"), {QStringLiteral("EP-460"),
//   QStringLiteral("214.50")}}});

#pragma once

#include <QAbstractListModel>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace flarestock {

struct Row {
    QString key; ///< Unique in its list; role "key".
    QVariantList cells;
    friend bool operator==(const Row &, const Row &) = default;
};

/// What of the rows is the same as in those that are shown becomes theirs, down to the cells of a
/// list in a cell: to compare it later, and to let it go, takes no time then. For a worker, which
/// has made rows anew that are mostly the old ones.
void shareWith(const std::vector<Row> &shown, std::vector<Row> &rows);

class Rows : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("lists are made by the desk")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    /// Changes beyond which the list is reset: a view lays that out faster than single steps.
    static constexpr int StepsMax = 200;

    explicit Rows(const QStringList &names, QObject *parent = nullptr);

    [[nodiscard]] const std::vector<Row> &rows() const { return m_rows; }
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.size()); }
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override { return m_names; }

    /// Each row has as many cells as there are names, and a key of its own (asserted).
    void become(std::vector<Row> rows);
    /// The rows of something else altogether: the lines of a view that are there already show
    /// them, by their order, so that few are made anew.
    void showOther(std::vector<Row> rows);

    /// The cell of that name; invalid where row or name is not there.
    Q_INVOKABLE QVariant cell(int row, const QString &name) const;
    /// The row of a key; -1 where there is none.
    Q_INVOKABLE int rowOf(const QString &key) const;

Q_SIGNALS:
    void countChanged();

protected:
    void takeNames(const Rows &of); ///< Before there are rows.
    void drop(int row);
    void place(int at, Row row); ///< Everything before `at` is in place already.

private:
    void dropMissing(const std::vector<Row> &rows);
    void tellChanged(int row, const Row &before);

    QHash<int, QByteArray> m_names;
    std::vector<Row> m_rows;
};

} // namespace flarestock
