// SPDX-License-Identifier: MIT

#include "app/desk/stock/stock_rows.h"

#include "app/desk/words/spoken.h"

#include <QDate>

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::size_t PlacesSaid = 3;

} // namespace

QString saidStock(std::int64_t smallest, const Part &part, Units units)
{
    return saidAmount(Quantity::ofSmallest(smallest, part.unit), units);
}

QString saidLevel(StockLevel level)
{
    switch (level) {
    case StockLevel::Out:
        return StockRows::tr("out");
    case StockLevel::Low:
        return StockRows::tr("low");
    case StockLevel::Plenty:
        break;
    }
    return StockRows::tr("plenty");
}

int StockRows::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : count();
}

QHash<int, QByteArray> StockRows::roleNames() const
{
    return {{Number, "part"}, {What, "what"},       {Where, "where"},       {Here, "here"},
            {Free, "free"},   {Trailer, "trailer"}, {Promised, "promised"}, {Keep, "keep"},
            {Due, "due"},     {IsBelow, "isBelow"}, {Below, "below"},       {Says, "says"}};
}

const StockEntry &StockRows::entry(int row) const
{
    return m_book->entries.at(m_lines.at(static_cast<std::size_t>(row)));
}

QString StockRows::amount(const StockEntry &entry, std::int64_t smallest) const
{
    return entry.part == nullptr || entry.level || smallest == 0
               ? QString()
               : saidStock(smallest, *entry.part, m_units);
}

QString StockRows::here(const StockEntry &entry) const
{
    if (entry.level)
        return saidLevel(*entry.level);
    return entry.here == 0 ? QStringLiteral("0") : amount(entry, entry.here);
}

QString StockRows::where(const StockEntry &entry) const
{
    QStringList places;
    for (std::size_t at = 0; at < std::min(entry.places.size(), PlacesSaid); ++at)
        places.append(said(m_book->places.at(entry.places[at])));
    if (entry.places.size() > PlacesSaid)
        places.append(tr("and %1 more").arg(entry.places.size() - PlacesSaid));
    if (places.isEmpty() && entry.isAway)
        return tr("away");
    return places.isEmpty() && entry.inCar ? tr("in a car") : places.join(QStringLiteral(", "));
}

QString StockRows::due(const StockEntry &entry) const
{
    QString some = amount(entry, entry.onOrder);
    if (some.isEmpty() || entry.due.empty())
        return some;
    const QDate day = QDate::fromString(said(entry.due), Qt::ISODate);
    return tr("%1, %2").arg(some, saidDate(day, WithYear::No));
}

QString StockRows::says(const StockEntry &entry) const
{
    QStringList all{said(entry.number)};
    if (entry.part != nullptr)
        all.append(said(entry.part->description));
    all.append(tr("here %1").arg(here(entry)));
    const QString free =
        entry.free == 0 && !entry.level ? QStringLiteral("0") : amount(entry, entry.free);
    for (const auto &[words, figure] :
         {std::pair(tr("in the trailer %1"), amount(entry, entry.trailer)),
          std::pair(tr("promised %1"), amount(entry, entry.promised)),
          std::pair(tr("free in all %1"), free),
          std::pair(tr("kept %1"), amount(entry, entry.kept)),
          std::pair(tr("on order %1"), due(entry)), std::pair(tr("at %1"), where(entry))}) {
        if (!figure.isEmpty())
            all.append(words.arg(figure));
    }
    if (entry.isBelow)
        all.append(entry.level ? saidLevel(*entry.level) : tr("below what we keep"));
    return all.join(QStringLiteral(", "));
}

QVariant StockRows::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const StockEntry &line = entry(index.row());
    switch (role) {
    case Number:
        return said(line.number);
    case What:
        return line.part == nullptr ? tr("a tin of odds") : said(line.part->description);
    case Where:
        return where(line);
    case Here:
        return here(line);
    case Promised:
        return amount(line, line.promised);
    case Free:
        return line.level ? QString()
                          : (line.free == 0 ? QStringLiteral("0") : amount(line, line.free));
    case Trailer:
        return amount(line, line.trailer);
    case Keep:
        return amount(line, line.kept);
    case Due:
        return due(line);
    case IsBelow:
        return line.isBelow;
    case Below:
        return !line.isBelow ? QString() : line.level ? saidLevel(*line.level) : tr("below");
    case Says:
        return says(line);
    default:
        return {};
    }
}

void StockRows::become(const std::shared_ptr<const StockBook> &book,
                       std::vector<std::uint32_t> lines)
{
    const int before = count();
    if (book == m_book && lines == m_lines)
        return;
    // Lines of one book are compared by place; two books of one shop mostly have the same.
    const bool sameLines =
        lines == m_lines && m_book && book && book->entries.size() == m_book->entries.size();
    if (sameLines) {
        m_book = book;
        if (before > 0)
            Q_EMIT dataChanged(index(0), index(before - 1));
        return;
    }
    if (book != m_book) {
        beginResetModel();
        m_book = book;
        m_lines = std::move(lines);
        endResetModel();
    } else {
        change(lines);
    }
    if (count() != before)
        Q_EMIT countChanged();
}

void StockRows::change(const std::vector<std::uint32_t> &lines)
{
    const auto front = std::mismatch(m_lines.begin(), m_lines.end(), lines.begin(), lines.end());
    const auto back = std::mismatch(m_lines.rbegin(), std::make_reverse_iterator(front.first),
                                    lines.rbegin(), std::make_reverse_iterator(front.second));
    const auto first = front.first - m_lines.begin();
    const auto was = back.first.base() - front.first;
    const auto is = back.second.base() - front.second;
    const auto same = std::min(was, is);
    const auto row = [](std::ptrdiff_t at) { return static_cast<int>(at); };
    if (was > same) {
        beginRemoveRows({}, row(first + same), row(first + was - 1));
        m_lines.erase(front.first + same, back.first.base());
        endRemoveRows();
    }
    std::copy_n(front.second, same, m_lines.begin() + first);
    if (same > 0)
        Q_EMIT dataChanged(index(row(first)), index(row(first + same - 1)));
    if (is > same) {
        beginInsertRows({}, row(first + same), row(first + is - 1));
        m_lines = lines;
        endInsertRows();
    }
}

void StockRows::setUnits(Units units)
{
    if (units == m_units)
        return;
    m_units = units;
    if (count() > 0)
        Q_EMIT dataChanged(index(0), index(count() - 1));
}

int StockRows::rowOf(const QString &number) const
{
    const StockEntry *found = m_book ? m_book->find(number.toStdString()) : nullptr;
    if (found == nullptr)
        return -1;
    const auto line = static_cast<std::uint32_t>(found - m_book->entries.data());
    if (line < m_lines.size() && m_lines.at(line) == line)
        return static_cast<int>(line); // All of them are shown.
    const auto at = std::find(m_lines.begin(), m_lines.end(), line);
    return at == m_lines.end() ? -1 : static_cast<int>(at - m_lines.begin());
}

QString StockRows::numberAt(int row) const
{
    return row < 0 || row >= count() ? QString() : said(entry(row).number);
}

} // namespace flarestock
