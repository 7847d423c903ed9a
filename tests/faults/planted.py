# SPDX-License-Identifier: MIT
"""planted.py ROOT NAME OUT: writes the source file of model/storage in which the fault NAME is planted.
A fault whose place is no longer found exactly once is an error: plant it anew.

CMake compiles each into a shop_writer of its own, shop_writer_<name>; the product never sees them."""

import sys
from pathlib import Path

FAULTS = {
    "journal_in_memory": (
        "file/settings_of_file.cpp",
        '"PRAGMA journal_mode = WAL", "wal"',
        '"PRAGMA journal_mode = MEMORY", "memory"'),
    "two_transactions": (
        "shop_file.cpp",
        """            m_connection->wholly([&] {
                done.clear();
                JournalWriter writer(*m_connection, action.promised);
                for (const auto &record : action.records)
                    done.push_back(writer.append(record));
                for (const auto &movement : action.movements)
                    done.push_back(writer.append(movement));
                for (const auto &record : action.afterwards)
                    done.push_back(writer.append(record));
                writer.finish();
            });""",
        """            for (const auto &movement : action.movements)
                m_connection->wholly([&] {
                    JournalWriter writer(*m_connection, action.promised);
                    done.push_back(writer.append(movement));
                    writer.finish();
                });"""),
    "errors_swallowed": (
        "shop_connection.cpp",
        "    if (!query.exec())\n        fail(query.lastError());\n    return query;",
        "    query.exec();\n    return query;"),
    "id_counts_anew": (
        "journal_writer.cpp",
        "    if (const auto before = standing(movement.id)) {",
        """    auto other = movement.id.bytes();
    while (standing(MovementId::ofBytes(other)))
        ++other[8];
    movement.id = MovementId::ofBytes(other);
    if (const auto before = standing(movement.id)) {"""),
    "order_by_clock": (
        "journal_writer.cpp",
        "    chain(row, canonicalBytes(movement));",
        "    m_end.lamport = movement.at - 1;\n    chain(row, canonicalBytes(movement));"),
    "left_begun": (
        "file/file_connection.cpp",
        '    endWhatIsLeft(handle());\n    run("BEGIN");\n',
        '    run("BEGIN");\n'),
    "rows_cut_short": (
        "shop_connection.cpp",
        """        row(query);
    if (query.lastError().isValid())""",
        """        row(query);
    if (sql.empty())"""),
    "left_to_closing": (
        "file/new_file.cpp",
        "            bringIn(connection);\n",
        "            if (path.empty())\n                bringIn(connection);\n"),
    "folder_not_synced": (
        "upkeep/backup.cpp",
        "    if (!synced(path.has_parent_path()",
        "    if (path.empty() && !synced(path.has_parent_path()"),
    "file_copied": (
        "upkeep/backup.cpp",
        "        copyPages(connection.handle(), unnamed);\n",
        """        if (unnamed.empty())
            copyPages(connection.handle(), unnamed);
        std::filesystem::copy_file(connection.path(), unnamed);
"""),
    "replica_shared": (
        "upkeep/backup.cpp",
        "    makeWhole(connection, to, beginReplica);\n",
        """    makeWhole(connection, to,
              to.empty() ? beginReplica : +[](const std::filesystem::path &) {});
"""),
    "version_said_later": (
        "upkeep/migration.cpp",
        '        connection.run("PRAGMA user_version = 3");\n',
        """        connection.run("COMMIT");
        connection.run("BEGIN");
        connection.run("PRAGMA user_version = 3");
"""),
    "no_copy_before": (
        "upkeep/migration.cpp",
        "    makeCopy(connection, copyName(connection));\n",
        "    static_cast<void>(copyName(connection));\n"),
    "chain_not_followed": (
        "upkeep/verification.cpp",
        "chainHash(there, bytes, replica.reached, replica.id) != row.hash)",
        "chainHash(there, bytes, replica.reached, replica.id).isEmpty())"),
    "brought_anew": (
        "trailer/bringing.cpp",
        "                m_news.push_back(entry);\n",
        "                m_news.insert(m_news.end(), 2, entry);\n"),
    "one_dropped": (
        "trailer/bringing.cpp",
        "            const auto number = chainOf(entry).number;\n",
        "            if (taken == 4 && entry.movement)\n                continue;\n"
        "            const auto number = chainOf(entry).number;\n"),
    "brought_by_clock": (
        "trailer/news.cpp",
        "return isBefore(a.place, b.place);",
        "const auto at = [](const NewsEntry &one) {\n"
        "            return one.movement ? one.movement->at : one.record->at;\n"
        "        };\n"
        "        return at(a) < at(b) || (at(a) == at(b) && isBefore(a.place, b.place));"),
    "not_settled": (
        "trailer/entries_brought.cpp",
        "        if (should == is)\n",
        "        if (should == is || !ledger.places().empty())\n"),
    "decided_silently": (
        "trailer/disagreement.cpp",
        "return one.decided.empty();",
        "return one.name.empty();"),
    "counts_summed": (
        "trailer/doubts/counts.cpp",
        "    entries.bringTo(key, std::max",
        "    if (lent == 0)\n        entries.bringTo(key, std::max"),
    "half_brought": (
        "trailer/travelling.cpp",
        "                    throw onlyLooked; // Nothing of it stays.\n",
        "                    return; // Nothing of it stays.\n"),
    "damage_not_looked_for": (
        "file/opened_file.cpp",
        "        connection->writeOnlyAfter(checkQuickly);\n",
        "        if (mode == OpenMode::ReadOnly)\n"
        "            connection->writeOnlyAfter(checkQuickly);\n"),
    "logs_not_held_back": (
        "file/opened_file.cpp",
        "        connection->writeOnlyAfter(checkQuickly);\n",
        "        looking.reset();\n        connection->writeOnlyAfter(checkQuickly);\n"),
    "read_committed": (
        "server/server_connection.cpp",
        "BEGIN ISOLATION LEVEL SERIALIZABLE",
        "BEGIN ISOLATION LEVEL READ COMMITTED"),
    "forgets": (
        "server/server_connection.cpp",
        '{"SET synchronous_commit = on", "SHOW synchronous_commit", "on"}',
        '{"SET synchronous_commit = off", "SHOW synchronous_commit", "off"}'),
    "newer_schema_taken": (
        "file/file_header.cpp",
        "if (schemaVersion > SchemaVersion)",
        "if (schemaVersion > SchemaVersion + 1000)"),
}


def main(root, name, out):
    file, old, new = FAULTS[name]
    text = (Path(root) / "model" / "storage" / file).read_text(encoding="utf-8")
    if text.count(old) != 1:
        sys.exit(f"the fault {name} cannot be planted: its place in {file} is there "
                 f"{text.count(old)} times")
    Path(out).write_text(text.replace(old, new), encoding="utf-8")


if __name__ == "__main__":
    main(*sys.argv[1:])
