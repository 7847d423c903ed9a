// SPDX-License-Identifier: MIT

#include "model/storage/file/examination.h"

#include "model/storage/shop_sql.h"
#include "model/storage/upkeep/schema.h"

#include <algorithm>
#include <set>

namespace flarestock {

void examinePages(const FileConnection &connection,
                  const std::function<void(const std::string &)> &wrong)
{
    for (auto query = connection.run("PRAGMA integrity_check(20)"); query.next();) {
        const auto lines = query.value(0).toString().toStdString();
        const bool headed = lines.starts_with("***"); // Its first line only names the database.
        const auto found = headed ? lines.substr(lines.find('\n') + 1) : lines;
        if (found != "ok")
            wrong("SQLite finds: " + found);
    }
}

void examineSchema(const FileConnection &connection, std::int64_t version,
                   const std::function<void(const std::string &)> &wrong)
{
    const auto ours = sql::schema(version);
    std::set<std::string> there;
    for (auto query = connection.run(sql::SelectSchema); query.next();) {
        const auto statement = query.value(3).toString().toStdString();
        there.insert(statement);
        // What SQLite makes by itself for a UNIQUE has no text.
        if (!statement.empty() && std::ranges::find(ours, statement) == ours.end())
            wrong("the schema has something that is not ours: " +
                  query.value(1).toString().toStdString());
    }
    for (const auto statement : ours) {
        if (!there.contains(std::string(statement)))
            wrong("the schema lacks or has changed: " +
                  std::string(statement.substr(0, statement.find('\n'))));
    }
}

} // namespace flarestock
