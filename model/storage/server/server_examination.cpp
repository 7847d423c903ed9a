// SPDX-License-Identifier: MIT
//
// What ServerConnection says about the database itself: its guards and who has which rights.

#include "model/storage/server/server_connection.h"
#include "model/storage/server/server_schema.h"
#include "model/storage/server/server_sql.h"

#include <set>

namespace flarestock {

namespace {

using Say = std::function<void(const std::string &)>;

/// The text of a function stands in its CREATE statement, with its quotes doubled.
bool isOurs(const std::string &function, std::string text)
{
    for (std::size_t at = text.find('\''); at != std::string::npos; at = text.find('\'', at + 2))
        text.insert(at, "'");
    const std::string head = "CREATE FUNCTION " + function + "()";
    for (const auto statement : sql::serverSchema()) {
        if (statement.starts_with(head) && statement.find(text) != std::string_view::npos)
            return true;
    }
    return false;
}

/// What a trigger does, as its CREATE statement says it: "movement.movement_stays" and its function
/// with what it is told.
void examineTriggers(const ShopConnection &connection, const Say &wrong)
{
    std::set<std::string> fires;
    for (auto query = connection.run(sql::SelectTriggers); query.next();) {
        const auto name =
            query.value(0).toString().toStdString() + "." + query.value(1).toString().toStdString();
        const auto made = query.value(4).toString();
        const auto from = made.indexOf(QStringLiteral("EXECUTE FUNCTION "));
        const auto said = made.mid(from + 17).remove(QStringLiteral("flarestock.")).toStdString();
        bool ours = false;
        for (const auto statement : sql::serverSchema())
            ours = ours || (statement.find(" " + query.value(1).toString().toStdString() + " ") !=
                                std::string_view::npos &&
                            statement.find("EXECUTE FUNCTION " + said) != std::string_view::npos);
        if (!ours)
            wrong("a trigger does something that is not ours: " + name);
        else if (query.value(2).toString() == QStringLiteral("A"))
            fires.insert(name);
    }
    for (const auto guard : sql::serverGuards()) {
        if (!fires.contains(std::string(guard)))
            wrong("a guard is missing or put out of action: " + std::string(guard));
    }
}

} // namespace

void ServerConnection::examine(const Say &wrong) const
{
    examineTriggers(*this, wrong);
    for (auto query = run(sql::SelectFunctions); query.next();) {
        const auto function = query.value(0).toString().toStdString();
        if (!isOurs(function, query.value(1).toString().toStdString()))
            wrong("a function was changed: " + function);
    }
    for (auto query = run(sql::SelectWhoMayChange); query.next();) {
        const auto may = query.value(2).toString().toStdString();
        wrong(query.value(1).toString().toStdString() + " has a right that nobody should have: " +
              may + " on " + query.value(0).toString().toStdString());
    }
}

} // namespace flarestock
