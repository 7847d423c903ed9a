// SPDX-License-Identifier: MIT

#include "model/storage/shop_sql.h"

#include <array>

namespace flarestock::sql {

namespace {

constexpr std::array<std::string_view, 26> SchemaOne = {
    R"(CREATE TABLE shop (
  only INTEGER PRIMARY KEY CHECK (only = 1),
  title TEXT NOT NULL,
  currency TEXT NOT NULL CHECK (length(currency) = 3),
  made_at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT)",

    R"(CREATE TABLE place (
  sequence INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE CHECK (id <> ''),
  title TEXT NOT NULL,
  kind TEXT NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT)",

    R"(CREATE TABLE document (
  sequence INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  version INTEGER NOT NULL CHECK (version > 0),
  content TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32),
  UNIQUE (name, version)
) STRICT)",

    R"(CREATE TABLE replica (
  number INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  movements INTEGER NOT NULL CHECK (movements >= 0),
  lamport INTEGER NOT NULL CHECK (lamport >= movements),
  head BLOB NOT NULL CHECK (length(head) = 32)
) STRICT)",

    R"(CREATE TABLE movement (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  replica INTEGER NOT NULL REFERENCES replica (number),
  sequence INTEGER NOT NULL CHECK (sequence > 0),
  lamport INTEGER NOT NULL CHECK (lamport > 0),
  part TEXT NOT NULL CHECK (part <> ''),
  quantity INTEGER NOT NULL CHECK (quantity > 0),
  value INTEGER NOT NULL CHECK (value >= 0),
  from_place TEXT NOT NULL REFERENCES place (id),
  to_place TEXT NOT NULL REFERENCES place (id) CHECK (to_place <> from_place),
  lot TEXT NOT NULL,
  condition TEXT NOT NULL,
  who TEXT NOT NULL,
  why TEXT NOT NULL,
  document TEXT NOT NULL,
  reverses BLOB REFERENCES movement (id),
  at INTEGER NOT NULL,
  hash BLOB NOT NULL CHECK (length(hash) = 32),
  UNIQUE (replica, sequence)
) STRICT, WITHOUT ROWID)",
    "CREATE INDEX movement_order ON movement (lamport, replica, sequence)",
    "CREATE INDEX movement_part ON movement (part)",
    "CREATE UNIQUE INDEX movement_reverses ON movement (reverses) WHERE reverses IS NOT NULL",

    R"(CREATE TABLE balance (
  part TEXT NOT NULL,
  place TEXT NOT NULL REFERENCES place (id),
  lot TEXT NOT NULL,
  condition TEXT NOT NULL,
  is_stock INTEGER NOT NULL CHECK (is_stock IN (0, 1)),
  quantity INTEGER NOT NULL,
  value INTEGER NOT NULL,
  PRIMARY KEY (part, place, lot, condition),
  CHECK (is_stock = 0 OR (quantity > 0 AND value >= 0))
) STRICT, WITHOUT ROWID)",

    R"(CREATE TABLE box_check (
  sequence INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  part TEXT NOT NULL CHECK (part <> ''),
  lot TEXT NOT NULL,
  missing TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT)",

    R"(CREATE TRIGGER movement_stays BEFORE UPDATE ON movement
BEGIN SELECT RAISE(ABORT, 'a movement is never changed'); END)",
    R"(CREATE TRIGGER movement_remains BEFORE DELETE ON movement
BEGIN SELECT RAISE(ABORT, 'a movement is never deleted'); END)",
    R"(CREATE TRIGGER movement_once BEFORE INSERT ON movement
WHEN EXISTS (SELECT 1 FROM movement WHERE id = NEW.id OR reverses = NEW.reverses
  OR (replica = NEW.replica AND sequence = NEW.sequence))
BEGIN SELECT RAISE(ABORT, 'a movement is never replaced'); END)",

    R"(CREATE TRIGGER document_stays BEFORE UPDATE ON document
BEGIN SELECT RAISE(ABORT, 'a document gets a new version, it is never changed'); END)",
    R"(CREATE TRIGGER document_remains BEFORE DELETE ON document
BEGIN SELECT RAISE(ABORT, 'a document is never deleted'); END)",
    R"(CREATE TRIGGER document_once BEFORE INSERT ON document
WHEN EXISTS (SELECT 1 FROM document WHERE sequence = NEW.sequence
  OR (name = NEW.name AND version = NEW.version))
BEGIN SELECT RAISE(ABORT, 'a version of a document is never replaced'); END)",

    R"(CREATE TRIGGER place_stays BEFORE UPDATE ON place
BEGIN SELECT RAISE(ABORT, 'a place is never changed'); END)",
    R"(CREATE TRIGGER place_remains BEFORE DELETE ON place
BEGIN SELECT RAISE(ABORT, 'a place is never deleted'); END)",
    R"(CREATE TRIGGER place_once BEFORE INSERT ON place
WHEN EXISTS (SELECT 1 FROM place WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'a place is never replaced'); END)",

    R"(CREATE TRIGGER box_check_stays BEFORE UPDATE ON box_check
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never changed'); END)",
    R"(CREATE TRIGGER box_check_remains BEFORE DELETE ON box_check
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never deleted'); END)",
    R"(CREATE TRIGGER box_check_once BEFORE INSERT ON box_check
WHEN EXISTS (SELECT 1 FROM box_check WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never replaced'); END)",

    R"(CREATE TRIGGER shop_stays BEFORE UPDATE ON shop
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never changed'); END)",
    R"(CREATE TRIGGER shop_remains BEFORE DELETE ON shop
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never deleted'); END)",
    R"(CREATE TRIGGER shop_once BEFORE INSERT ON shop
WHEN EXISTS (SELECT 1 FROM shop)
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never replaced'); END)",

    R"(CREATE TRIGGER replica_remains BEFORE DELETE ON replica
BEGIN SELECT RAISE(ABORT, 'a replica is never deleted'); END)",
};

} // namespace

std::span<const std::string_view> schemaOne() noexcept
{
    return SchemaOne;
}

} // namespace flarestock::sql
