// SPDX-License-Identifier: MIT
//
// Server SQL: the statements that only a shop on a server needs; every other is in shop_sql.h.

#pragma once

#include "model/storage/shop_sql.h"

namespace flarestock::sql {

inline constexpr std::string_view SelectIsEncrypted =
    "SELECT ssl FROM pg_stat_ssl WHERE pid = pg_backend_pid()";
/// Whether this role could change what is only added to: the owner, and who is above all rights.
inline constexpr std::string_view SelectMayChange =
    "SELECT coalesce(bool_or(has_table_privilege(c.oid, 'UPDATE')"
    " OR has_table_privilege(c.oid, 'DELETE') OR has_table_privilege(c.oid, 'TRUNCATE')"
    " OR pg_has_role(c.relowner, 'USAGE')), false)"
    " FROM pg_class AS c JOIN pg_namespace AS n ON n.oid = c.relnamespace"
    " WHERE n.nspname = 'flarestock' AND c.relname = 'movement'";
/// Whether the tables are there.
inline constexpr std::string_view SelectHasTables =
    "SELECT to_regclass('flarestock.schema_version') IS NOT NULL";
inline constexpr std::string_view SelectServerVersion = "SELECT version FROM schema_version";

// Number of the lock: "Flst", as a shop file is marked.
inline constexpr const char *LockShared = "SELECT pg_advisory_lock_shared(1181512564)";
inline constexpr const char *LockAlone = "SELECT pg_advisory_lock(1181512564)";
inline constexpr const char *UnlockShared = "SELECT pg_advisory_unlock_shared(1181512564)";
inline constexpr const char *UnlockAlone = "SELECT pg_advisory_unlock(1181512564)";

inline constexpr std::string_view SelectReplicaOf =
    "SELECT number, entries, lamport, head FROM replica WHERE id = ?";

/// Of every table whose rows are only added to: who besides its owner may change it.
inline constexpr std::string_view SelectWhoMayChange =
    "SELECT c.relname, coalesce(r.rolname, 'everybody'), a.privilege_type"
    " FROM pg_class AS c JOIN pg_namespace AS n ON n.oid = c.relnamespace,"
    " LATERAL aclexplode(c.relacl) AS a LEFT JOIN pg_roles AS r ON r.oid = a.grantee"
    " WHERE n.nspname = 'flarestock' AND a.grantee <> c.relowner"
    " AND c.relname IN ('shop', 'place', 'document', 'movement', 'record', 'box_check', 'replica',"
    " 'schema_version')"
    " AND a.privilege_type NOT IN ('SELECT', 'INSERT')";
/// Every trigger of ours: table, name, whether it always fires, the name and text of its function.
inline constexpr std::string_view SelectTriggers =
    "SELECT c.relname, t.tgname, t.tgenabled::text, p.proname, pg_get_triggerdef(t.oid)"
    " FROM pg_trigger AS t JOIN pg_class AS c ON c.oid = t.tgrelid"
    " JOIN pg_namespace AS n ON n.oid = c.relnamespace JOIN pg_proc AS p ON p.oid = t.tgfoid"
    " WHERE n.nspname = 'flarestock' AND NOT t.tgisinternal";
inline constexpr std::string_view SelectFunctions =
    "SELECT p.proname, p.prosrc FROM pg_proc AS p JOIN pg_namespace AS n ON n.oid = p.pronamespace"
    " WHERE n.nspname = 'flarestock'";

} // namespace flarestock::sql
