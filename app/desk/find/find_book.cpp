// SPDX-License-Identifier: MIT

#include "app/desk/find/find_book.h"

#include "app/desk/shop/aside.h"
#include "app/desk/stock/found_by.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/suppliers.h"
#include "model/exact/case_fold.h"

#include <QCoreApplication>

#include <set>

namespace flarestock {

namespace {

struct FindAnywhereWords {
    Q_DECLARE_TR_FUNCTIONS(Find)
};

class FindBookMaking {
public:
    explicit FindBookMaking(FindBook &book) : m_book(book), m_workshop(*book.workshop) {}

    void addBuying()
    {
        for (const auto &[number, order] : m_workshop.bought.orders.orders) {
            std::string parts;
            for (const OrderLine &line : order.now().lines)
                parts += foldedWords(line.part);
            add({FoundKind::Order, number, supplierName(order.now().supplier, m_workshop.catalogue),
                 number, parts});
        }
        for (const ClaimStanding &claim : m_workshop.bought.claims.claims)
            add({FoundKind::Claim,
                 claim.now.number,
                 claim.now.part + ", " + supplierName(claim.now.supplier, m_workshop.catalogue),
                 claim.now.number,
                 {}});
    }
    void addSuppliers()
    {
        for (const Supplier &supplier : m_workshop.catalogue.suppliers())
            add({FoundKind::Supplier,
                 supplier.name.empty() ? supplier.id : supplier.name,
                 supplier.name.empty() ? std::string() : supplier.id,
                 supplier.id,
                 {}});
    }
    void addBuilds()
    {
        for (const BuildPlan &plan : m_workshop.builds)
            add({FoundKind::Build, plan.title.empty() ? plan.id : plan.title,
                 plan.by.empty() ? plan.car : plan.car + ", " + plan.by, plan.id,
                 foldedWords(plan.id)});
    }
    void addPlaces()
    {
        for (const Place &place : m_workshop.ledger.places()) {
            if (place.kind == PlaceKind::Car || isStock(place.kind))
                add({place.kind == PlaceKind::Car ? FoundKind::Car : FoundKind::Place,
                     place.id,
                     place.title,
                     place.id,
                     {}});
        }
    }
    void addLots()
    {
        std::set<LotKey> seen;
        for (const auto &[key, held] : m_workshop.ledger.balances()) {
            const Place *place = m_workshop.ledger.place(key.place);
            const bool isHere = place && (isStock(place->kind) || place->kind == PlaceKind::Car) &&
                                held.quantity > 0;
            if (!key.lot.empty() && isHere && seen.insert({key.part, key.lot}).second)
                add({FoundKind::Lot,
                     key.lot,
                     key.part + ", " + key.place,
                     key.part + "=" + key.lot,
                     {}});
        }
    }
    void addParts()
    {
        for (const Part &part : m_workshop.catalogue.parts())
            add({FoundKind::Part, part.number, part.description, part.number, soughtOf(part)});
        for (const auto &[tag, part] : m_workshop.madeUp)
            add({FoundKind::Part, part.number, part.description, part.number, {}});
    }

private:
    void add(FindEntry entry)
    {
        entry.sought = foldedWords(entry.title) + foldedWords(entry.detail) + entry.sought;
        m_book.entries.push_back(std::move(entry));
    }

    FindBook &m_book;
    const Workshop &m_workshop;
};

/// How near the front of it the first word stands: 0 at its beginning, 1 at a word's, 2 within.
int nearness(const FindEntry &entry, const std::string &first)
{
    const std::string title = folded(entry.title);
    if (title.starts_with(first))
        return 0;
    return entry.sought.find(" " + first) != std::string::npos ? 1 : 2;
}

constexpr int DetailCell = 2; ///< Of foundAnywhereCells().

Row rowOf(const FindEntry &entry)
{
    return {QString(keyOf(entry.kind) + u'|' + said(entry.target)),
            {wordOf(entry.kind), said(entry.title), said(entry.detail), said(entry.target),
             areaOf(entry.kind)}};
}

} // namespace

QString wordOf(FoundKind kind)
{
    switch (kind) {
    case FoundKind::Order:
        return FindAnywhereWords::tr("order");
    case FoundKind::Claim:
        return FindAnywhereWords::tr("claim");
    case FoundKind::Supplier:
        return FindAnywhereWords::tr("supplier");
    case FoundKind::Build:
        return FindAnywhereWords::tr("build");
    case FoundKind::Car:
        return FindAnywhereWords::tr("car");
    case FoundKind::Place:
        return FindAnywhereWords::tr("place");
    case FoundKind::Lot:
        return FindAnywhereWords::tr("lot");
    case FoundKind::Part:
        break;
    }
    return FindAnywhereWords::tr("part");
}

QString keyOf(FoundKind kind)
{
    constexpr std::array<const char *, 8> Keys = {"order", "claim", "supplier", "build",
                                                  "car",   "place", "lot",      "part"};
    return QString::fromLatin1(Keys[static_cast<std::size_t>(kind)]);
}

QString areaOf(FoundKind kind)
{
    return keyOf(kind == FoundKind::Supplier ? FoundKind::Order : kind);
}

std::shared_ptr<const FindBook> FindBook::of(const std::shared_ptr<const Workshop> &workshop)
{
    auto book = std::make_shared<FindBook>();
    book->workshop = workshop;
    FindBookMaking making(*book);
    making.addBuying();
    making.addSuppliers();
    making.addBuilds();
    making.addPlaces();
    making.addLots();
    making.addParts();
    std::stable_sort(
        book->entries.begin(), book->entries.end(),
        [](const FindEntry &one, const FindEntry &other) { return one.kind < other.kind; });
    return goesAside<FindBook>(std::move(book));
}

QStringList foundAnywhereCells()
{
    return {QStringLiteral("kind"), QStringLiteral("title"), QStringLiteral("detail"),
            QStringLiteral("target"), QStringLiteral("area")};
}

std::vector<Row> foundAnywhere(const FindBook &book, const QString &typed, std::size_t mostEach)
{
    const std::vector<std::string> words = wordsTyped(typed.toStdString());
    if (words.empty())
        return {};
    // Of each kind and nearness the first few: a hundred thousand parts need no sorting.
    std::map<std::pair<FoundKind, int>, std::vector<const FindEntry *>> nearest;
    std::map<FoundKind, std::size_t> all;
    for (const FindEntry &entry : book.entries) {
        if (!holdsAll(entry.sought, words))
            continue;
        ++all[entry.kind];
        auto &alike = nearest[{entry.kind, nearness(entry, words.front())}];
        if (alike.size() < mostEach)
            alike.push_back(&entry);
    }
    std::vector<Row> rows;
    std::map<FoundKind, std::size_t> shown;
    for (const auto &[key, entries] : nearest) {
        for (const FindEntry *entry : entries) {
            const std::size_t at = ++shown[key.first];
            if (at > mostEach)
                continue;
            rows.push_back(rowOf(*entry));
            if (at == mostEach && all[key.first] > mostEach) {
                QVariant &detail = rows.back().cells[DetailCell];
                detail = FindAnywhereWords::tr("%1  ·  and %2 more")
                             .arg(detail.toString(), QString::number(all[key.first] - mostEach));
            }
        }
    }
    return rows;
}

} // namespace flarestock
