// SPDX-License-Identifier: MIT

#include "model/storage/upkeep/schema.h"

#include <algorithm>
#include <array>

namespace flarestock::sql {

namespace {

constexpr std::string_view ShopOne =
    R"(CREATE TABLE shop (
  only INTEGER PRIMARY KEY CHECK (only = 1),
  title TEXT NOT NULL,
  currency TEXT NOT NULL CHECK (length(currency) = 3),
  made_at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT)";

constexpr std::string_view PlaceTable =
    R"(CREATE TABLE place (
  sequence INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE CHECK (id <> ''),
  title TEXT NOT NULL,
  kind TEXT NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT)";

constexpr std::string_view DocumentTable =
    R"(CREATE TABLE document (
  sequence INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  version INTEGER NOT NULL CHECK (version > 0),
  content TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32),
  UNIQUE (name, version)
) STRICT)";

constexpr std::string_view ReplicaOne =
    R"(CREATE TABLE replica (
  number INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  movements INTEGER NOT NULL CHECK (movements >= 0),
  lamport INTEGER NOT NULL CHECK (lamport >= movements),
  head BLOB NOT NULL CHECK (length(head) = 32)
) STRICT)";

constexpr std::string_view MovementOne =
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
) STRICT, WITHOUT ROWID)";

constexpr std::string_view MovementOrder =
    "CREATE INDEX movement_order ON movement (lamport, replica, sequence)";

constexpr std::string_view MovementPart = "CREATE INDEX movement_part ON movement (part)";

constexpr std::string_view MovementReverses =
    "CREATE UNIQUE INDEX movement_reverses ON movement (reverses) WHERE reverses IS NOT NULL";

constexpr std::string_view BalanceTable =
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
) STRICT, WITHOUT ROWID)";

constexpr std::string_view BoxCheckTable =
    R"(CREATE TABLE box_check (
  sequence INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  part TEXT NOT NULL CHECK (part <> ''),
  lot TEXT NOT NULL,
  missing TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT)";

constexpr std::string_view MovementStays =
    R"(CREATE TRIGGER movement_stays BEFORE UPDATE ON movement
BEGIN SELECT RAISE(ABORT, 'a movement is never changed'); END)";

constexpr std::string_view MovementRemains =
    R"(CREATE TRIGGER movement_remains BEFORE DELETE ON movement
BEGIN SELECT RAISE(ABORT, 'a movement is never deleted'); END)";

constexpr std::string_view MovementOnce =
    R"(CREATE TRIGGER movement_once BEFORE INSERT ON movement
WHEN EXISTS (SELECT 1 FROM movement WHERE id = NEW.id OR reverses = NEW.reverses
  OR (replica = NEW.replica AND sequence = NEW.sequence))
BEGIN SELECT RAISE(ABORT, 'a movement is never replaced'); END)";

constexpr std::string_view DocumentStays =
    R"(CREATE TRIGGER document_stays BEFORE UPDATE ON document
BEGIN SELECT RAISE(ABORT, 'a document gets a new version, it is never changed'); END)";

constexpr std::string_view DocumentRemains =
    R"(CREATE TRIGGER document_remains BEFORE DELETE ON document
BEGIN SELECT RAISE(ABORT, 'a document is never deleted'); END)";

constexpr std::string_view DocumentOnce =
    R"(CREATE TRIGGER document_once BEFORE INSERT ON document
WHEN EXISTS (SELECT 1 FROM document WHERE sequence = NEW.sequence
  OR (name = NEW.name AND version = NEW.version))
BEGIN SELECT RAISE(ABORT, 'a version of a document is never replaced'); END)";

constexpr std::string_view PlaceStays =
    R"(CREATE TRIGGER place_stays BEFORE UPDATE ON place
BEGIN SELECT RAISE(ABORT, 'a place is never changed'); END)";

constexpr std::string_view PlaceRemains =
    R"(CREATE TRIGGER place_remains BEFORE DELETE ON place
BEGIN SELECT RAISE(ABORT, 'a place is never deleted'); END)";

constexpr std::string_view PlaceOnce =
    R"(CREATE TRIGGER place_once BEFORE INSERT ON place
WHEN EXISTS (SELECT 1 FROM place WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'a place is never replaced'); END)";

constexpr std::string_view BoxCheckStays =
    R"(CREATE TRIGGER box_check_stays BEFORE UPDATE ON box_check
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never changed'); END)";

constexpr std::string_view BoxCheckRemains =
    R"(CREATE TRIGGER box_check_remains BEFORE DELETE ON box_check
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never deleted'); END)";

constexpr std::string_view BoxCheckOnce =
    R"(CREATE TRIGGER box_check_once BEFORE INSERT ON box_check
WHEN EXISTS (SELECT 1 FROM box_check WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never replaced'); END)";

constexpr std::string_view ShopStays =
    R"(CREATE TRIGGER shop_stays BEFORE UPDATE ON shop
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never changed'); END)";

constexpr std::string_view ShopRemains =
    R"(CREATE TRIGGER shop_remains BEFORE DELETE ON shop
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never deleted'); END)";

constexpr std::string_view ShopOnce =
    R"(CREATE TRIGGER shop_once BEFORE INSERT ON shop
WHEN EXISTS (SELECT 1 FROM shop)
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never replaced'); END)";

constexpr std::string_view ReplicaRemains =
    R"(CREATE TRIGGER replica_remains BEFORE DELETE ON replica
BEGIN SELECT RAISE(ABORT, 'a replica is never deleted'); END)";

// What version 2 has anew or otherwise.

constexpr std::string_view ShopTwo =
    R"(CREATE TABLE shop (
  only INTEGER PRIMARY KEY CHECK (only = 1),
  title TEXT NOT NULL,
  currency TEXT NOT NULL CHECK (length(currency) = 3),
  costing TEXT NOT NULL,
  made_at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT)";

constexpr std::string_view ReplicaTwo =
    R"(CREATE TABLE replica (
  number INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  entries INTEGER NOT NULL CHECK (entries >= 0),
  lamport INTEGER NOT NULL CHECK (lamport >= entries),
  head BLOB NOT NULL CHECK (length(head) = 32)
) STRICT)";

constexpr std::string_view MovementTwo =
    R"(CREATE TABLE movement (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  replica INTEGER NOT NULL REFERENCES replica (number),
  sequence INTEGER NOT NULL CHECK (sequence > 0),
  lamport INTEGER NOT NULL CHECK (lamport > 0),
  part TEXT NOT NULL CHECK (part <> ''),
  quantity INTEGER NOT NULL CHECK (quantity >= 0),
  value INTEGER NOT NULL CHECK (value >= 0),
  from_place TEXT NOT NULL REFERENCES place (id),
  to_place TEXT NOT NULL REFERENCES place (id),
  lot TEXT NOT NULL,
  condition TEXT NOT NULL,
  who TEXT NOT NULL,
  why TEXT NOT NULL,
  document TEXT NOT NULL,
  reverses BLOB REFERENCES movement (id),
  at INTEGER NOT NULL,
  deed TEXT NOT NULL,
  new_lot TEXT,
  new_condition TEXT,
  action BLOB REFERENCES movement (id) CHECK (action <> id),
  until TEXT NOT NULL,
  hash BLOB NOT NULL CHECK (length(hash) = 32),
  UNIQUE (replica, sequence),
  CHECK (quantity > 0 OR value > 0),
  CHECK (to_place <> from_place OR new_lot IS NOT NULL OR new_condition IS NOT NULL)
) STRICT, WITHOUT ROWID)";

constexpr std::string_view ClaimTable =
    R"(CREATE TABLE claim (
  part TEXT NOT NULL CHECK (part <> ''),
  build TEXT NOT NULL CHECK (build <> ''),
  promised INTEGER NOT NULL CHECK (promised >= 0),
  issued INTEGER NOT NULL,
  PRIMARY KEY (part, build)
) STRICT, WITHOUT ROWID)";

constexpr std::string_view RecordTable =
    R"(CREATE TABLE record (
  id BLOB NOT NULL PRIMARY KEY CHECK (length(id) = 16),
  replica INTEGER NOT NULL REFERENCES replica (number),
  sequence INTEGER NOT NULL CHECK (sequence > 0),
  lamport INTEGER NOT NULL CHECK (lamport > 0),
  kind TEXT NOT NULL,
  subject TEXT NOT NULL CHECK (subject <> ''),
  fields TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  hash BLOB NOT NULL CHECK (length(hash) = 32),
  UNIQUE (replica, sequence)
) STRICT, WITHOUT ROWID)";

constexpr std::string_view MovementDocument =
    "CREATE INDEX movement_document ON movement (document) WHERE document <> ''";

constexpr std::string_view MovementLot =
    "CREATE INDEX movement_lot ON movement (lot) WHERE lot <> ''";

constexpr std::string_view RecordSubject = "CREATE INDEX record_subject ON record (subject, kind)";

constexpr std::string_view RecordOrder =
    "CREATE INDEX record_order ON record (lamport, replica, sequence)";

constexpr std::string_view MovementOnceTwo =
    R"(CREATE TRIGGER movement_once BEFORE INSERT ON movement
WHEN EXISTS (SELECT 1 FROM movement WHERE id = NEW.id OR reverses = NEW.reverses
  OR (replica = NEW.replica AND sequence = NEW.sequence))
  OR EXISTS (SELECT 1 FROM record WHERE id = NEW.id
  OR (replica = NEW.replica AND sequence = NEW.sequence))
BEGIN SELECT RAISE(ABORT, 'a movement is never replaced'); END)";

constexpr std::string_view RecordStays =
    R"(CREATE TRIGGER record_stays BEFORE UPDATE ON record
BEGIN SELECT RAISE(ABORT, 'a record is never changed'); END)";

constexpr std::string_view RecordRemains =
    R"(CREATE TRIGGER record_remains BEFORE DELETE ON record
BEGIN SELECT RAISE(ABORT, 'a record is never deleted'); END)";

constexpr std::string_view RecordOnce =
    R"(CREATE TRIGGER record_once BEFORE INSERT ON record
WHEN EXISTS (SELECT 1 FROM record WHERE id = NEW.id
  OR (replica = NEW.replica AND sequence = NEW.sequence))
  OR EXISTS (SELECT 1 FROM movement WHERE id = NEW.id
  OR (replica = NEW.replica AND sequence = NEW.sequence))
BEGIN SELECT RAISE(ABORT, 'a record is never replaced'); END)";

constexpr std::array<std::string_view, 26> SchemaOne = {
    ShopOne,      PlaceTable,       DocumentTable,   ReplicaOne,    MovementOne,   MovementOrder,
    MovementPart, MovementReverses, BalanceTable,    BoxCheckTable, MovementStays, MovementRemains,
    MovementOnce, DocumentStays,    DocumentRemains, DocumentOnce,  PlaceStays,    PlaceRemains,
    PlaceOnce,    BoxCheckStays,    BoxCheckRemains, BoxCheckOnce,  ShopStays,     ShopRemains,
    ShopOnce,     ReplicaRemains};

constexpr std::array<std::string_view, 35> SchemaTwo = {
    ShopTwo,       PlaceTable,    DocumentTable,    ReplicaTwo,       MovementTwo,
    MovementOrder, MovementPart,  MovementReverses, MovementDocument, MovementLot,
    RecordTable,   RecordSubject, RecordOrder,      BalanceTable,     ClaimTable,
    BoxCheckTable, MovementStays, MovementRemains,  MovementOnceTwo,  RecordStays,
    RecordRemains, RecordOnce,    DocumentStays,    DocumentRemains,  DocumentOnce,
    PlaceStays,    PlaceRemains,  PlaceOnce,        BoxCheckStays,    BoxCheckRemains,
    BoxCheckOnce,  ShopStays,     ShopRemains,      ShopOnce,         ReplicaRemains};

// What version 3 has anew.

constexpr std::string_view MovementAction =
    "CREATE INDEX movement_action ON movement (action) WHERE action IS NOT NULL";

constexpr std::string_view MovementNewLot =
    "CREATE INDEX movement_new_lot ON movement (new_lot) WHERE new_lot IS NOT NULL";

constexpr std::string_view LayerTable =
    R"(CREATE TABLE layer (
  part TEXT NOT NULL CHECK (part <> ''),
  place TEXT NOT NULL REFERENCES place (id),
  lot TEXT NOT NULL,
  condition TEXT NOT NULL,
  rank INTEGER NOT NULL CHECK (rank > 0),
  quantity INTEGER NOT NULL CHECK (quantity > 0),
  value INTEGER NOT NULL CHECK (value >= 0),
  PRIMARY KEY (part, place, lot, condition, rank)
) STRICT, WITHOUT ROWID)";

// A program of version 2 that has the file open names the column by its old name, and so writes
// no more without layers.
constexpr std::string_view BalanceThree =
    R"(CREATE TABLE balance (
  part TEXT NOT NULL,
  place TEXT NOT NULL REFERENCES place (id),
  lot TEXT NOT NULL,
  condition TEXT NOT NULL,
  in_stock INTEGER NOT NULL CHECK (in_stock IN (0, 1)),
  quantity INTEGER NOT NULL,
  value INTEGER NOT NULL,
  PRIMARY KEY (part, place, lot, condition),
  CHECK (in_stock = 0 OR (quantity > 0 AND value >= 0))
) STRICT, WITHOUT ROWID)";

/// From 2 to 3.
constexpr std::array Extended = {
    std::string_view("ALTER TABLE balance RENAME COLUMN is_stock TO in_stock"), MovementAction,
    MovementNewLot, LayerTable};

constexpr std::array AddedByThree = {MovementAction, MovementNewLot, LayerTable};

constexpr auto SchemaThree = [] {
    std::array<std::string_view, SchemaTwo.size() + AddedByThree.size()> all;
    const auto end = std::copy(SchemaTwo.begin(), SchemaTwo.end(), all.begin());
    std::replace(all.begin(), end, BalanceTable, BalanceThree);
    std::copy(AddedByThree.begin(), AddedByThree.end(), end);
    return all;
}();

/// From 1 to 2. The chains, places, documents and looks into boxes stay as they are.
constexpr std::array SetAside = {
    std::string_view("DROP TRIGGER movement_stays"),
    std::string_view("DROP TRIGGER movement_remains"),
    std::string_view("DROP TRIGGER movement_once"),
    std::string_view("DROP TRIGGER shop_stays"),
    std::string_view("DROP TRIGGER shop_remains"),
    std::string_view("DROP TRIGGER shop_once"),
    std::string_view("DROP TRIGGER replica_remains"),
    std::string_view("DROP INDEX movement_order"),
    std::string_view("DROP INDEX movement_part"),
    std::string_view("DROP INDEX movement_reverses"),
    std::string_view("ALTER TABLE movement RENAME TO movement_1"),
    std::string_view("ALTER TABLE replica RENAME TO replica_1"),
    std::string_view("ALTER TABLE shop RENAME TO shop_1"),
};
constexpr std::array MadeAnew = {ShopTwo,       ReplicaTwo,       MovementTwo,      MovementOrder,
                                 MovementPart,  MovementReverses, MovementDocument, MovementLot,
                                 RecordTable,   RecordSubject,    RecordOrder,      ClaimTable,
                                 MovementStays, MovementRemains,  MovementOnceTwo,  RecordStays,
                                 RecordRemains, RecordOnce,       ShopStays,        ShopRemains,
                                 ShopOnce,      ReplicaRemains};
constexpr std::array TakenOver = {
    std::string_view("INSERT INTO replica (number, id, entries, lamport, head)"
                     " SELECT number, id, movements, lamport, head FROM replica_1"),
    std::string_view(
        "INSERT INTO movement (replica, sequence, lamport, hash, id, part, quantity, value,"
        " from_place, to_place, lot, condition, who, why, document, reverses, at, deed, until)"
        " SELECT replica, sequence, lamport, hash, id, part, quantity, value, from_place, to_place,"
        " lot, condition, who, why, document, reverses, at, 'move', '' FROM movement_1"
        " ORDER BY lamport, replica, sequence"),
    std::string_view("DROP TABLE movement_1"),
    std::string_view("DROP TABLE replica_1"),
};

} // namespace

std::span<const std::string_view> schema(std::int64_t version) noexcept
{
    if (version == 1)
        return SchemaOne;
    if (version == 2)
        return SchemaTwo;
    return SchemaThree;
}

std::span<const std::string_view> extended() noexcept
{
    return Extended;
}

std::span<const std::string_view> setAside() noexcept
{
    return SetAside;
}

std::span<const std::string_view> madeAnew() noexcept
{
    return MadeAnew;
}

std::span<const std::string_view> takenOver() noexcept
{
    return TakenOver;
}

} // namespace flarestock::sql
