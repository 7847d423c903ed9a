// SPDX-License-Identifier: MIT
//
// Every SQL text of the shop file, and nothing else: constant, with values bound by position.
//
// The journal, the documents, the places and the box checks are only added to: the database itself
// refuses UPDATE and DELETE on them, and an INSERT that would take the place of a row (REPLACE
// deletes without asking the delete trigger, so the insert trigger asks). `balance`, `layer`
// and `claim` are caches of the fold, and `replica` holds the head of each chain, so that a lost
// last movement is noticed.

#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace flarestock::sql {

/// "Flst": marks the file as ours (application_id).
inline constexpr std::int64_t ApplicationId = 0x466C'7374;

inline constexpr std::string_view InsertShop = "INSERT INTO shop (\"only\", title, currency, "
                                               "costing, made_at, seal) VALUES (1, ?, ?, ?, ?, ?)";
inline constexpr std::string_view SelectShop =
    "SELECT title, currency, costing, made_at, seal FROM shop WHERE \"only\" = 1";

inline constexpr std::string_view InsertPlace =
    "INSERT INTO place (sequence, id, title, kind, seal) VALUES (?, ?, ?, ?, ?)";
inline constexpr std::string_view SelectPlaces =
    "SELECT sequence, id, title, kind, seal FROM place ORDER BY sequence";

inline constexpr std::string_view InsertDocument =
    "INSERT INTO document (sequence, name, version, content, who, at, seal)"
    " VALUES (?, ?, ?, ?, ?, ?, ?)";
inline constexpr std::string_view SelectEveryDocument =
    "SELECT sequence, name, version, content, who, at, seal FROM document ORDER BY sequence";
inline constexpr std::string_view SelectNewestDocuments =
    "SELECT name, content FROM document AS d WHERE version ="
    " (SELECT max(version) FROM document WHERE name = d.name)";
inline constexpr std::string_view SelectNewestDocument =
    "SELECT version, content FROM document WHERE name = ? ORDER BY version DESC LIMIT 1";
inline constexpr std::string_view SelectLastDocument =
    "SELECT sequence, seal FROM document ORDER BY sequence DESC LIMIT 1";

inline constexpr std::string_view InsertReplica =
    "INSERT INTO replica (number, id, entries, lamport, head) VALUES ("
    "(SELECT coalesce(max(number), 0) + 1 FROM replica), ?, 0, 0, ?)";
inline constexpr std::string_view SelectReplicas =
    "SELECT number, id, entries, lamport, head FROM replica ORDER BY number";
/// A file writes as the replica that was made last: a copy begins with one of its own. What is
/// written next stands behind whatever stands already.
inline constexpr std::string_view SelectNewestReplica =
    "SELECT number, id, entries, (SELECT max(lamport) FROM replica), head FROM replica"
    " ORDER BY number DESC LIMIT 1";
inline constexpr std::string_view InsertReplicaOfCopy =
    "INSERT INTO replica (number, id, entries, lamport, head)"
    " SELECT max(number) + 1, ?, 0, max(lamport), ? FROM replica";
/// What was written elsewhere has a number below one, so that nobody here writes on with it.
inline constexpr std::string_view InsertReplicaElsewhere =
    "INSERT INTO replica (number, id, entries, lamport, head)"
    " SELECT CASE WHEN min(number) > 0 THEN 0 ELSE min(number) - 1 END, ?, 0, 0, ? FROM replica";
inline constexpr std::string_view UpdateReplica =
    "UPDATE replica SET entries = ?, lamport = ?, head = ? WHERE number = ?";

/// Of each replica: how many entries it says and how many are there, its head, and the hash of the
/// last of them.
inline constexpr std::string_view SelectJournalEnds =
    "SELECT entries, (SELECT count(*) FROM movement WHERE replica = r.number) +"
    " (SELECT count(*) FROM record WHERE replica = r.number), head, coalesce("
    " (SELECT hash FROM movement WHERE replica = r.number AND sequence = r.entries),"
    " (SELECT hash FROM record WHERE replica = r.number AND sequence = r.entries))"
    " FROM replica AS r";
/// The same of schema 1, which had movements only.
inline constexpr std::string_view SelectJournalEndsOne =
    "SELECT movements, (SELECT count(*) FROM movement WHERE replica = r.number), head,"
    " (SELECT hash FROM movement WHERE replica = r.number AND sequence = r.movements)"
    " FROM replica AS r";

inline constexpr std::string_view InsertMovement =
    "INSERT INTO movement (replica, sequence, lamport, hash, id, part, quantity, value,"
    " from_place, to_place, lot, condition, who, why, document, reverses, at, deed, new_lot,"
    " new_condition, action, until)"
    " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
inline constexpr std::string_view SelectMovements =
    "SELECT replica, sequence, lamport, hash, id, part, quantity, value, from_place, to_place,"
    " lot, condition, who, why, document, reverses, at, deed, new_lot, new_condition, action,"
    " until FROM movement"
    " ORDER BY lamport, replica, sequence";
/// No index orders what a sign stands before.
inline constexpr std::string_view SelectMovementsAsTheyLie =
    "SELECT replica, sequence, lamport, hash, id, part, quantity, value, from_place, to_place,"
    " lot, condition, who, why, document, reverses, at, deed, new_lot, new_condition, action,"
    " until FROM movement"
    " ORDER BY +lamport, +replica, +sequence";
inline constexpr std::string_view SelectMovementsOfPart =
    "SELECT replica, sequence, lamport, hash, id, part, quantity, value, from_place, to_place,"
    " lot, condition, who, why, document, reverses, at, deed, new_lot, new_condition, action,"
    " until FROM movement WHERE part = ?"
    " ORDER BY lamport, replica, sequence";
inline constexpr std::string_view SelectMovement =
    "SELECT replica, sequence, lamport, hash, id, part, quantity, value, from_place, to_place,"
    " lot, condition, who, why, document, reverses, at, deed, new_lot, new_condition, action,"
    " until FROM movement WHERE id = ?";
inline constexpr std::string_view SelectTakenBack =
    "SELECT reverses FROM movement WHERE reverses IS NOT NULL";
inline constexpr std::string_view SelectReversal = "SELECT 1 FROM movement WHERE reverses = ?";

inline constexpr std::string_view SelectMovementsOfLot =
    "SELECT replica, sequence, lamport, hash, id, part, quantity, value, from_place, to_place,"
    " lot, condition, who, why, document, reverses, at, deed, new_lot, new_condition, action,"
    " until FROM movement WHERE lot = ? OR new_lot = ?"
    " ORDER BY lamport, replica, sequence";
inline constexpr std::string_view SelectMovementsOfAction =
    "SELECT replica, sequence, lamport, hash, id, part, quantity, value, from_place, to_place,"
    " lot, condition, who, why, document, reverses, at, deed, new_lot, new_condition, action,"
    " until FROM movement WHERE id = ? OR action = ?"
    " ORDER BY lamport, replica, sequence";

inline constexpr std::string_view InsertRecord =
    "INSERT INTO record (replica, sequence, lamport, hash, id, kind, subject, fields, who, at)"
    " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)";
inline constexpr std::string_view SelectRecords =
    "SELECT replica, sequence, lamport, hash, id, kind, subject, fields, who, at FROM record"
    " ORDER BY lamport, replica, sequence";
inline constexpr std::string_view SelectRecordsAsTheyLie =
    "SELECT replica, sequence, lamport, hash, id, kind, subject, fields, who, at FROM record"
    " ORDER BY +lamport, +replica, +sequence";
inline constexpr std::string_view SelectRecordsAbout =
    "SELECT replica, sequence, lamport, hash, id, kind, subject, fields, who, at FROM record"
    " WHERE subject = ? AND kind = ? ORDER BY lamport, replica, sequence";
inline constexpr std::string_view SelectRecord =
    "SELECT replica, sequence, lamport, hash, id, kind, subject, fields, who, at FROM record"
    " WHERE id = ?";

/// Of one chain, behind an entry of it.
inline constexpr std::string_view SelectMovementsBehind =
    "SELECT replica, sequence, lamport, hash, id, part, quantity, value, from_place, to_place,"
    " lot, condition, who, why, document, reverses, at, deed, new_lot, new_condition, action,"
    " until FROM movement WHERE replica = ? AND sequence > ? ORDER BY sequence";
inline constexpr std::string_view SelectRecordsBehind =
    "SELECT replica, sequence, lamport, hash, id, kind, subject, fields, who, at FROM record"
    " WHERE replica = ? AND sequence > ? ORDER BY sequence";
inline constexpr std::string_view SelectEntryHash =
    "SELECT hash FROM movement WHERE replica = ? AND sequence = ?"
    " UNION ALL SELECT hash FROM record WHERE replica = ? AND sequence = ?";
/// With what a copy that travels begins its own chain.
inline constexpr std::string_view SelectOwnTrip =
    "SELECT m.replica, m.sequence, m.lamport, m.hash, m.id, m.kind, m.subject, m.fields, m.who,"
    " m.at FROM replica AS r JOIN record AS m ON m.replica = r.number AND m.sequence = 1"
    " WHERE r.number > 0 AND m.kind = 'trip' ORDER BY r.number DESC LIMIT 1";

inline constexpr std::string_view SelectClaims = "SELECT part, build, promised, issued FROM claim";
inline constexpr std::string_view SelectClaimsOfPart =
    "SELECT part, build, promised, issued FROM claim WHERE part = ?";
inline constexpr std::string_view PutClaim =
    "INSERT INTO claim (part, build, promised, issued) VALUES (?, ?, ?, ?)"
    " ON CONFLICT (part, build) DO UPDATE SET promised = excluded.promised,"
    " issued = excluded.issued";
inline constexpr std::string_view DropClaim = "DELETE FROM claim WHERE part = ? AND build = ?";

inline constexpr std::string_view SelectBalancesOfPart =
    "SELECT part, place, lot, condition, quantity, value, in_stock FROM balance WHERE part = ?";
inline constexpr std::string_view SelectBalances =
    "SELECT part, place, lot, condition, quantity, value, in_stock FROM balance";
inline constexpr std::string_view SelectBalance =
    "SELECT quantity, value FROM balance"
    " WHERE part = ? AND place = ? AND lot = ? AND condition = ?";
inline constexpr std::string_view PutBalance =
    "INSERT INTO balance (part, place, lot, condition, in_stock, quantity, value)"
    " VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (part, place, lot, condition)"
    " DO UPDATE SET quantity = excluded.quantity, value = excluded.value";
inline constexpr std::string_view DropBalance =
    "DELETE FROM balance WHERE part = ? AND place = ? AND lot = ? AND condition = ?";

/// Of shops that cost first in, first out; the others have none.
inline constexpr std::string_view SelectLayers =
    "SELECT part, place, lot, condition, rank, quantity, value FROM layer";
inline constexpr std::string_view SelectLayersOfPart =
    "SELECT part, place, lot, condition, rank, quantity, value FROM layer WHERE part = ?";
inline constexpr std::string_view PutLayer =
    "INSERT INTO layer (part, place, lot, condition, rank, quantity, value)"
    " VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (part, place, lot, condition, rank)"
    " DO UPDATE SET quantity = excluded.quantity, value = excluded.value";
inline constexpr std::string_view DropLayer =
    "DELETE FROM layer WHERE part = ? AND place = ? AND lot = ? AND condition = ? AND rank = ?";
inline constexpr std::string_view CountMovementsOfPart =
    "SELECT count(*) FROM movement WHERE part = ?";

inline constexpr std::string_view InsertBoxCheck =
    "INSERT INTO box_check (sequence, id, part, lot, missing, who, at, seal)"
    " VALUES (?, ?, ?, ?, ?, ?, ?, ?)";
inline constexpr std::string_view SelectBoxChecks =
    "SELECT sequence, id, part, lot, missing, who, at, seal FROM box_check ORDER BY sequence";

inline constexpr std::string_view SelectSchema =
    "SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY type, name";

} // namespace flarestock::sql
