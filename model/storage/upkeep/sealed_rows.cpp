// SPDX-License-Identifier: MIT

#include "model/storage/upkeep/sealed_rows.h"

#include "model/storage/new_shop.h"
#include "model/storage/shop_rows.h"
#include "model/storage/shop_sql.h"

namespace flarestock {

namespace {

class SealedRows {
public:
    SealedRows(const ShopConnection &connection,
               const std::function<void(const std::string &)> &wrong)
        : m_connection(connection), m_wrong(wrong)
    {
    }

    void checkShop()
    {
        auto shop = m_connection.run(sql::SelectShop);
        if (!m_connection.next(shop))
            m_wrong("the shop's name and currency are missing");
        else
            checkSeal(
                shop, 4,
                shopSeal({shop.value(0).toString().toStdString(),
                          shop.value(1).toString().toStdString(),
                          shop.value(2).toString().toStdString(), shop.value(3).toLongLong()}),
                "the shop's name, currency or costing");
    }

    void checkPlaces()
    {
        std::int64_t places = 0;
        for (auto place = m_connection.run(sql::SelectPlaces); m_connection.next(place);) {
            const auto id = place.value(1).toString().toStdString();
            checkSequence(place, ++places, "place " + id);
            const auto kind = parsePlaceKind(place.value(3).toString().toStdString());
            const Place read{id, place.value(2).toString().toStdString(),
                             kind.value_or(PlaceKind::Shelf)};
            checkSeal(place, 4,
                      kind && text(*kind) == place.value(3).toString().toStdString()
                          ? sealOf(canonicalBytes(read))
                          : QByteArray(),
                      "place " + id);
        }
    }

    void checkDocuments()
    {
        QByteArray previous;
        std::int64_t versions = 0;
        for (auto document = m_connection.run(sql::SelectEveryDocument);
             m_connection.next(document);) {
            const auto name = document.value(1).toString().toStdString();
            checkSequence(document, ++versions, "document " + name);
            previous = sealOf(canonicalBytes(std::vector<std::string>{
                                  name, document.value(2).toString().toStdString(),
                                  document.value(3).toString().toStdString(),
                                  document.value(4).toString().toStdString(),
                                  document.value(5).toString().toStdString()}),
                              previous);
            checkSeal(document, 6, previous, "document " + name);
        }
    }

    void checkBoxes()
    {
        std::int64_t looks = 0;
        for (auto box = m_connection.run(sql::SelectBoxChecks); m_connection.next(box);) {
            const BoxCheck check = boxCheckRow(box);
            checkSequence(box, ++looks, "what was seen in a box of " + check.part);
            checkSeal(box, 7, sealOf(canonicalBytes(check)),
                      "what was seen in a box of " + check.part);
        }
    }

private:
    void checkSeal(const QSqlQuery &query, int sealColumn, const QByteArray &seal,
                   const std::string &what)
    {
        if (query.value(sealColumn).toByteArray() != seal)
            m_wrong(what + " was changed after it was written");
    }

    void checkSequence(const QSqlQuery &query, std::int64_t expected, const std::string &what)
    {
        if (query.value(0).toLongLong() != expected)
            m_wrong(what + " does not follow the one before it");
    }

    const ShopConnection &m_connection;
    const std::function<void(const std::string &)> &m_wrong;
};

} // namespace

void checkSealed(const ShopConnection &connection,
                 const std::function<void(const std::string &)> &wrong)
{
    SealedRows rows(connection, wrong);
    rows.checkShop();
    rows.checkPlaces();
    rows.checkDocuments();
    rows.checkBoxes();
}

} // namespace flarestock
