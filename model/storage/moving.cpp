// SPDX-License-Identifier: MIT

#include "model/storage/moving.h"

#include "model/storage/file/new_file.h"
#include "model/storage/file/opened_file.h"
#include "model/storage/new_shop.h"
#include "model/storage/server/opened_server.h"
#include "model/storage/server/server_schema.h"
#include "model/storage/server/server_setup.h"
#include "model/storage/upkeep/verification.h"

#include <array>

namespace flarestock {

namespace {

/// The columns of a table, and the order in which its rows may come: what others point at first.
struct Table {
    std::string_view name;
    std::string_view columns;
    std::string_view order;
};
constexpr std::array<Table, 10> Tables = {{
    {"shop", R"("only", title, currency, costing, made_at, seal)", R"("only")"},
    {"place", "sequence, id, title, kind, seal", "sequence"},
    {"document", "sequence, name, version, content, who, at, seal", "sequence"},
    {"replica", "number, id, entries, lamport, head", "number"},
    {"movement",
     "id, replica, sequence, lamport, part, quantity, value, from_place, to_place, lot, condition,"
     " who, why, document, reverses, at, deed, new_lot, new_condition, action, until, hash",
     "lamport, replica, sequence"},
    {"record", "id, replica, sequence, lamport, kind, subject, fields, who, at, hash",
     "lamport, replica, sequence"},
    {"balance", "part, place, lot, condition, in_stock, quantity, value",
     "part, place, lot, condition"},
    {"layer", "part, place, lot, condition, rank, quantity, value",
     "part, place, lot, condition, rank"},
    {"claim", "part, build, promised, issued", "part, build"},
    {"box_check", "sequence, id, part, lot, missing, who, at, seal", "sequence"},
}};

/// PostgreSQL gives what is not negative without a sign, which SQLite would take for a text.
QVariant signedNumber(const QVariant &value)
{
    return value.userType() == QMetaType::ULongLong
               ? QVariant::fromValue<qlonglong>(value.toLongLong())
               : value;
}

void copyTable(const ShopConnection &from, const ShopConnection &to, const Table &table)
{
    const auto width = 1 + std::count(table.columns.begin(), table.columns.end(), ',');
    std::string marks = "?";
    for (std::ptrdiff_t column = 1; column < width; ++column)
        marks += ", ?";
    const std::string columns(table.columns);
    const std::string name(table.name);
    auto rows =
        from.run("SELECT " + columns + " FROM " + name + " ORDER BY " + std::string(table.order));
    to.runEach("INSERT INTO " + name + " (" + columns + ") VALUES (" + marks + ")",
               [&]() -> std::optional<Values> {
                   if (!from.next(rows))
                       return std::nullopt;
                   Values values;
                   for (int column = 0; column < width; ++column)
                       values.push_back(signedNumber(rows.value(column)));
                   return values;
               });
}

Verification verifiedCopy(const ShopConnection &copy)
{
    auto said = verified(copy);
    if (!said.whole)
        throw StorageFailure{{copy.name(),
                              "was not filled, as the copy is not whole: " + said.problems.front(),
                              "Run flarestock verify on the shop that it comes from."}};
    return said;
}

/// From now on entries are counted from behind those that were copied.
void countOn(ServerConnection &server)
{
    const auto last = server.one("SELECT coalesce(max(lamport), 0) FROM replica").toLongLong();
    const auto next = (last / sql::LamportBlock + 1) * sql::LamportBlock + 1;
    server.run("ALTER SEQUENCE lamport RESTART WITH " + std::to_string(next));
}

std::unique_ptr<ShopConnection> openToRead(const std::filesystem::path &shop)
{
    if (isServer(shop))
        return openServer(shop.string(), OpenMode::ReadOnly);
    return openFile(shop, OpenMode::ReadOnly);
}

Verification toServer(const ShopConnection &from, const std::string &to)
{
    ServerConnection server(addressOf(to), ServerConnection::Use::Own);
    Verification said;
    server.wholly([&] {
        static_cast<void>(makeServerTables(server));
        if (server.one("SELECT 1 FROM shop").isValid())
            throw StorageFailure{
                {server.name(), "holds a shop already", "Name a database without one."}};
        copyRows(from, server);
        countOn(server);
        said = verifiedCopy(server);
    });
    return said;
}

} // namespace

void copyRows(const ShopConnection &from, ShopConnection &to)
{
    from.atOneMoment([&] {
        for (const Table &table : Tables)
            copyTable(from, to, table);
    });
}

void copyInto(FileConnection &file, const ShopConnection &from)
{
    copyRows(from, file);
    beginReplica(file);
    static_cast<void>(verifiedCopy(file));
}

Result<Moved> moveShop(const std::filesystem::path &from, const std::filesystem::path &to)
{
    return guarded([&] {
        const auto source = openToRead(from);
        Moved moved;
        if (isServer(to)) {
            moved.movements = toServer(*source, to.string()).movements;
        } else {
            makeFile(to, [&](FileConnection &file) {
                copyInto(file, *source);
                moved.movements = file.one("SELECT count(*) FROM movement").toLongLong();
            });
        }
        return moved;
    });
}

} // namespace flarestock
