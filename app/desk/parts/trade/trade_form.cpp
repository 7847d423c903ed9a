// SPDX-License-Identifier: MIT

#include "app/desk/parts/trade/trade_form.h"

#include "app/desk/language/sentences.h"
#include "app/desk/parts/trade/trade_words.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

Result<std::optional<RowCells>> rowOf(const Result<TextFiles> &documents, SheetKind kind,
                                      const RowCells &key)
{
    if (!documents)
        return tl::unexpected(documents.error());
    const auto rows = CatalogueRows::read(*documents, kind);
    if (!rows)
        return tl::unexpected(rows.error());
    return rows->find(keyOf(kind, key));
}

/// In which currency each supplier asks: the one on its record, else that of most of its offers,
/// else the shop's.
std::map<std::string, std::string> currenciesIn(const Workshop &workshop)
{
    const Catalogue &catalogue = workshop.catalogue;
    std::map<std::string, std::map<std::string, int>> offers;
    for (const Part &part : catalogue.parts())
        for (const Offer &offer : catalogue.offers(part))
            ++offers[offer.supplier][std::string(offer.currency.code())];
    std::map<std::string, std::string> asks;
    for (const Supplier &supplier : catalogue.suppliers()) {
        const auto &counts = offers[supplier.id];
        const auto most =
            std::max_element(counts.begin(), counts.end(),
                             [](const auto &a, const auto &b) { return a.second < b.second; });
        const Currency own = supplier.currency.value_or(workshop.settings.currency);
        const bool isSaid = supplier.currency || most == counts.end();
        asks[supplier.id] = isSaid ? std::string(own.code()) : most->first;
    }
    return asks;
}

} // namespace

TradeForm::TradeForm(Pen &pen, QObject *parent)
    : Form(pen, parent), m_suppliers({QStringLiteral("label"), QStringLiteral("detail")})
{
}

QString offerKey(const Offer &offer)
{
    return said(offer.supplier) + u'\n' + said(offer.supplierNumber);
}

void TradeForm::setShop(const ShopOnDesk &shop)
{
    m_workshop = shop.workshop;
    m_documents = shop.documents;
    std::vector<Row> rows;
    if (m_workshop) {
        for (const Supplier &supplier : m_workshop->catalogue.suppliers())
            rows.push_back({said(supplier.id),
                            {said(supplier.name),
                             tr("%1, here in %2 days")
                                 .arg(said(supplier.id), QString::number(supplier.leadDays))}});
    }
    m_suppliers.become(std::move(rows));
}

void TradeForm::beginSupplier(const QString &id)
{
    begin(SheetKind::Suppliers, {{"supplier", id.toStdString()}});
}

void TradeForm::beginOffer(const QString &part, const QString &key)
{
    RowCells known{{"part", part.toStdString()},
                   {"supplier", key.section(u'\n', 0, 0).toStdString()},
                   {"supplier part", key.section(u'\n', 1).toStdString()}};
    std::erase_if(known, [](const auto &cell) { return cell.second.empty(); });
    begin(SheetKind::Offers, known);
}

void TradeForm::begin(SheetKind kind, const RowCells &key)
{
    if (!m_documents || !m_workshop || m_reading.isUnderWay())
        return;
    const bool isNew = cellOf(key, "supplier").empty();
    m_reading.run([this, kind, key, isNew, documents = m_documents,
                   workshop = m_workshop]() -> Errand::Back {
        const auto row = std::make_shared<Result<std::optional<RowCells>>>(
            isNew ? Result<std::optional<RowCells>>(std::nullopt) : rowOf(documents(), kind, key));
        const bool asks = isNew && kind == SheetKind::Offers;
        return [this, kind, key, isNew, row,
                currencies = asks ? currenciesIn(*workshop) : decltype(m_currencies)()] {
            if (!*row)
                return pen().refuse(saidProblem(row->error()));
            if (!isNew && !row->value())
                return pen().refuse(tr("That is no longer in the shop."));
            m_kind = kind;
            m_isNew = isNew;
            m_begun = row->value().value_or(key);
            m_currencies = currencies;
            if (!currencies.empty()) // The first is the one that is chosen at first.
                m_begun["currency"] = currencies.begin()->second;
            pen().hear();
            showFields();
            Q_EMIT changed();
            Q_EMIT opened();
        };
    });
}

/// Those that are filled in: what tells a row from another stays as it is once it is there.
std::vector<std::string> TradeForm::headings() const
{
    std::vector<std::string> all = tradeHeadings(m_kind);
    if (!m_isNew) {
        const auto keys = keyHeadings(m_kind);
        std::erase_if(all, [&keys](const std::string &heading) {
            return std::find(keys.begin(), keys.end(), heading) != keys.end();
        });
    }
    return all;
}

void TradeForm::showFields()
{
    std::vector<Row> rows;
    for (const std::string &heading : headings())
        rows.push_back(tradeField(heading, cellOf(m_begun, heading),
                                  {m_kind, m_workshop->catalogue.suppliers()}));
    ask(std::move(rows));
}

RowCells TradeForm::filled(const QVariantMap &values) const
{
    RowCells cells = m_begun;
    for (const std::string &heading : headings()) {
        const QVariant value = values.value(said(heading));
        const std::string text =
            tradeText(heading, value, {m_kind, m_workshop->catalogue.suppliers()});
        if (text.empty())
            cells.erase(heading);
        else
            cells[heading] = text;
    }
    return cells;
}

void TradeForm::lookAhead(const QVariantMap &values)
{
    if (!m_workshop || !m_isNew || m_kind != SheetKind::Offers)
        return;
    const QString heading = QStringLiteral("currency");
    const std::string supplier = tradeText("supplier", values.value(QStringLiteral("supplier")),
                                           {m_kind, m_workshop->catalogue.suppliers()});
    const auto asks = m_currencies.find(supplier);
    const std::string proposed = cellOf(m_begun, "currency");
    if (asks == m_currencies.end() || asks->second == proposed ||
        values.value(heading).toString().toStdString() != proposed)
        return;
    m_begun["currency"] = asks->second;
    put(heading, said(asks->second));
}

void TradeForm::carryOut(const QVariantMap &values)
{
    const RowCells cells = filled(values);
    const Catalogue &catalogue = m_workshop->catalogue;
    const RowKnows knows{[&catalogue](std::string_view number) -> std::optional<Kind> {
                             const Part *part = catalogue.find(number);
                             return part ? std::optional(part->kind) : std::nullopt;
                         },
                         {catalogue.suppliers().begin(), catalogue.suppliers().end()}};
    const auto faults = faultsOf(m_kind, cells, knows);
    if (!faults.empty())
        return pen().refuse(tr("%1: %2. %3")
                                .arg(tradeTitle(m_kind, faults.front().heading),
                                     localised(inWords(faults.front().wrong)),
                                     localised(inWords(faults.front().remedy))));
    const QString what =
        m_kind == SheetKind::Suppliers
            ? tr("Supplier %1 written down.").arg(said(cellOf(cells, "name")))
            : tr("Offer of %1 for %2 written down.")
                  .arg(said(cellOf(cells, "supplier")), said(cellOf(cells, "part")));
    pen().rewrite(what,
                  [cells, kind = m_kind, isNew = m_isNew,
                   begun = m_begun](const TextFiles &newest) -> Result<TextFiles> {
                      auto rows = CatalogueRows::read(newest, kind);
                      if (!rows)
                          return tl::unexpected(rows.error());
                      const auto row = rows->find(keyOf(kind, cells));
                      if (isNew && row)
                          return problem(cellOf(cells, "supplier"), "is there already",
                                         "Close this, and change the one that is there.");
                      if (!isNew && row != begun)
                          return problem(
                              cellOf(cells, "supplier"), "was changed at another seat meanwhile",
                              "Close this, look at it as it is now, and change it again.");
                      return rows->with({cells});
                  });
}

QString TradeForm::title() const
{
    if (m_kind == SheetKind::Suppliers)
        return m_isNew ? tr("A new supplier") : said(cellOf(m_begun, "name"));
    return m_isNew ? tr("A new offer for %1").arg(said(cellOf(m_begun, "part")))
                   : tr("Offer of %1 for %2")
                         .arg(said(cellOf(m_begun, "supplier")), said(cellOf(m_begun, "part")));
}

QString TradeForm::about() const
{
    return m_kind == SheetKind::Suppliers
               ? tr("What the order costs besides the goods, and how long it takes.")
               : tr("Prices are for one unit of the part, from a quantity on.");
}

QString TradeForm::button() const
{
    return tr("Write it down");
}

} // namespace flarestock
