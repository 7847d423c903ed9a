// SPDX-License-Identifier: MIT

#include "model/storage/server/server_schema.h"

namespace flarestock::sql {

namespace {

constexpr std::string_view LayerTable =
    R"(CREATE TABLE layer (
  part text COLLATE "C" NOT NULL CHECK (part <> ''),
  place text COLLATE "C" NOT NULL REFERENCES place (id),
  lot text COLLATE "C" NOT NULL,
  condition text COLLATE "C" NOT NULL,
  rank bigint NOT NULL CHECK (rank > 0),
  quantity bigint NOT NULL CHECK (quantity > 0),
  value bigint NOT NULL CHECK (value >= 0),
  PRIMARY KEY (part, place, lot, condition, rank)) WITH (fillfactor = 50))";

constexpr std::string_view MovementNewLot =
    "CREATE INDEX movement_new_lot ON movement (new_lot) WHERE new_lot IS NOT NULL";

constexpr std::string_view RecordSubject = "CREATE INDEX record_subject ON record (subject, kind)";

// "C": ids are ordered by their bytes, as SQLite does. fillfactor: a row that changes often finds
// room on its own page, so that no index is touched, and nobody who reads another row is disturbed.
constexpr std::string_view Schema[] = {
    R"(CREATE TABLE schema_version (
  "only" bigint PRIMARY KEY CHECK ("only" = 1),
  version bigint NOT NULL))",
    "INSERT INTO schema_version VALUES (1, 2)",
    R"(CREATE TABLE shop (
  "only" bigint PRIMARY KEY CHECK ("only" = 1),
  title text COLLATE "C" NOT NULL,
  currency text COLLATE "C" NOT NULL CHECK (length(currency) = 3),
  costing text COLLATE "C" NOT NULL,
  made_at bigint NOT NULL,
  seal bytea NOT NULL CHECK (length(seal) = 32)))",
    R"(CREATE TABLE place (
  sequence bigint PRIMARY KEY,
  id text COLLATE "C" NOT NULL UNIQUE CHECK (id <> ''),
  title text COLLATE "C" NOT NULL,
  kind text COLLATE "C" NOT NULL,
  seal bytea NOT NULL CHECK (length(seal) = 32)))",
    R"(CREATE TABLE document (
  sequence bigint PRIMARY KEY,
  name text COLLATE "C" NOT NULL,
  version bigint NOT NULL CHECK (version > 0),
  content text COLLATE "C" NOT NULL,
  who text COLLATE "C" NOT NULL,
  at bigint NOT NULL,
  seal bytea NOT NULL CHECK (length(seal) = 32),
  UNIQUE (name, version)))",
    R"(CREATE TABLE replica (
  number bigint PRIMARY KEY,
  id bytea NOT NULL UNIQUE CHECK (length(id) = 16),
  entries bigint NOT NULL CHECK (entries >= 0),
  lamport bigint NOT NULL CHECK (lamport >= entries),
  head bytea NOT NULL CHECK (length(head) = 32)) WITH (fillfactor = 20))",
    R"(CREATE TABLE movement (
  id bytea PRIMARY KEY CHECK (length(id) = 16),
  replica bigint NOT NULL REFERENCES replica (number),
  sequence bigint NOT NULL CHECK (sequence > 0),
  lamport bigint NOT NULL CHECK (lamport > 0),
  part text COLLATE "C" NOT NULL CHECK (part <> ''),
  quantity bigint NOT NULL CHECK (quantity >= 0),
  value bigint NOT NULL CHECK (value >= 0),
  from_place text COLLATE "C" NOT NULL REFERENCES place (id),
  to_place text COLLATE "C" NOT NULL REFERENCES place (id),
  lot text COLLATE "C" NOT NULL,
  condition text COLLATE "C" NOT NULL,
  who text COLLATE "C" NOT NULL,
  why text COLLATE "C" NOT NULL,
  document text COLLATE "C" NOT NULL,
  reverses bytea UNIQUE REFERENCES movement (id),
  at bigint NOT NULL,
  deed text COLLATE "C" NOT NULL,
  new_lot text COLLATE "C",
  new_condition text COLLATE "C",
  action bytea REFERENCES movement (id) CHECK (action <> id),
  until text COLLATE "C" NOT NULL,
  hash bytea NOT NULL CHECK (length(hash) = 32),
  UNIQUE (replica, sequence),
  CHECK (quantity > 0 OR value > 0),
  CHECK (to_place <> from_place OR new_lot IS NOT NULL OR new_condition IS NOT NULL)))",
    "CREATE INDEX movement_order ON movement (lamport, replica, sequence)",
    "CREATE INDEX movement_part ON movement (part)",
    "CREATE INDEX movement_action ON movement (action) WHERE action IS NOT NULL",
    "CREATE INDEX movement_lot ON movement (lot) WHERE lot <> ''",
    MovementNewLot,
    R"(CREATE TABLE record (
  id bytea PRIMARY KEY CHECK (length(id) = 16),
  replica bigint NOT NULL REFERENCES replica (number),
  sequence bigint NOT NULL CHECK (sequence > 0),
  lamport bigint NOT NULL CHECK (lamport > 0),
  kind text COLLATE "C" NOT NULL,
  subject text COLLATE "C" NOT NULL CHECK (subject <> ''),
  fields text COLLATE "C" NOT NULL,
  who text COLLATE "C" NOT NULL,
  at bigint NOT NULL,
  hash bytea NOT NULL CHECK (length(hash) = 32),
  UNIQUE (replica, sequence)))",
    "CREATE INDEX record_order ON record (lamport, replica, sequence)",
    RecordSubject,
    R"(CREATE TABLE balance (
  part text COLLATE "C" NOT NULL,
  place text COLLATE "C" NOT NULL REFERENCES place (id),
  lot text COLLATE "C" NOT NULL,
  condition text COLLATE "C" NOT NULL,
  in_stock bigint NOT NULL CHECK (in_stock IN (0, 1)),
  quantity bigint NOT NULL,
  value bigint NOT NULL,
  PRIMARY KEY (part, place, lot, condition),
  CHECK (in_stock = 0 OR (quantity > 0 AND value >= 0))) WITH (fillfactor = 50))",
    LayerTable,
    R"(CREATE TABLE claim (
  part text COLLATE "C" NOT NULL CHECK (part <> ''),
  build text COLLATE "C" NOT NULL CHECK (build <> ''),
  promised bigint NOT NULL CHECK (promised >= 0),
  issued bigint NOT NULL,
  PRIMARY KEY (part, build)) WITH (fillfactor = 50))",
    R"(CREATE TABLE box_check (
  sequence bigint PRIMARY KEY,
  id bytea NOT NULL UNIQUE CHECK (length(id) = 16),
  part text COLLATE "C" NOT NULL CHECK (part <> ''),
  lot text COLLATE "C" NOT NULL,
  missing text COLLATE "C" NOT NULL,
  who text COLLATE "C" NOT NULL,
  at bigint NOT NULL,
  seal bytea NOT NULL CHECK (length(seal) = 32)))",
    "CREATE SEQUENCE lamport INCREMENT BY 1000",
    R"(CREATE FUNCTION refuse() RETURNS trigger LANGUAGE plpgsql AS
'BEGIN RAISE EXCEPTION ''%'', TG_ARGV[0] USING ERRCODE = ''23000''; END')",
    R"(CREATE FUNCTION refuse_shorter() RETURNS trigger LANGUAGE plpgsql AS
'BEGIN IF NEW.number <> OLD.number OR NEW.id <> OLD.id OR NEW.entries < OLD.entries
    OR NEW.lamport < OLD.lamport THEN
  RAISE EXCEPTION ''a chain never becomes another or shorter'' USING ERRCODE = ''23000'';
END IF; RETURN NEW; END')",
    R"(CREATE FUNCTION refuse_known() RETURNS trigger LANGUAGE plpgsql
SET search_path = flarestock, pg_temp AS
'DECLARE other boolean;
BEGIN IF TG_ARGV[0] = ''record'' THEN
  SELECT EXISTS (SELECT 1 FROM record WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM record
    WHERE replica = NEW.replica AND sequence = NEW.sequence) INTO other;
ELSE
  SELECT EXISTS (SELECT 1 FROM movement WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM movement
    WHERE replica = NEW.replica AND sequence = NEW.sequence) INTO other;
END IF;
IF other THEN RAISE EXCEPTION ''an entry is never replaced'' USING ERRCODE = ''23000''; END IF;
RETURN NEW; END')",
    R"(CREATE FUNCTION tell_others() RETURNS trigger LANGUAGE plpgsql AS
'BEGIN PERFORM pg_notify(''flarestock'', ''''); RETURN NULL; END')",
    R"(CREATE TRIGGER shop_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON shop
EXECUTE FUNCTION refuse('name and currency of a shop are never changed'))",
    R"(CREATE TRIGGER place_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON place
EXECUTE FUNCTION refuse('a place is never changed or deleted'))",
    R"(CREATE TRIGGER document_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON document
EXECUTE FUNCTION refuse('a document gets a new version, it is never changed or deleted'))",
    R"(CREATE TRIGGER movement_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON movement
EXECUTE FUNCTION refuse('a movement is never changed or deleted'))",
    R"(CREATE TRIGGER record_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON record
EXECUTE FUNCTION refuse('a record is never changed or deleted'))",
    R"(CREATE TRIGGER box_check_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON box_check
EXECUTE FUNCTION refuse('what was seen in a box is never changed or deleted'))",
    R"(CREATE TRIGGER replica_remains BEFORE DELETE OR TRUNCATE ON replica
EXECUTE FUNCTION refuse('a replica is never deleted'))",
    R"(CREATE TRIGGER replica_grows BEFORE UPDATE ON replica
FOR EACH ROW EXECUTE FUNCTION refuse_shorter())",
    R"(CREATE TRIGGER movement_once BEFORE INSERT ON movement
FOR EACH ROW EXECUTE FUNCTION refuse_known('record'))",
    R"(CREATE TRIGGER record_once BEFORE INSERT ON record
FOR EACH ROW EXECUTE FUNCTION refuse_known('movement'))",
    "CREATE TRIGGER movement_told AFTER INSERT ON movement EXECUTE FUNCTION tell_others()",
    "CREATE TRIGGER record_told AFTER INSERT ON record EXECUTE FUNCTION tell_others()",
    "CREATE TRIGGER document_told AFTER INSERT ON document EXECUTE FUNCTION tell_others()",
    "CREATE TRIGGER place_told AFTER INSERT ON place EXECUTE FUNCTION tell_others()",
    "CREATE TRIGGER box_check_told AFTER INSERT ON box_check EXECUTE FUNCTION tell_others()",
};

/// From 1 to 2. The layers are then written by writeLayersOfBefore().
constexpr std::string_view Extended[] = {
    // A seat of version 1 that is at work names it as before, and so writes no more.
    "ALTER TABLE balance RENAME COLUMN is_stock TO in_stock",
    LayerTable,
    MovementNewLot,
    RecordSubject,
    "UPDATE schema_version SET version = 2",
};

constexpr std::string_view Rights[] = {
    "REVOKE ALL ON ALL TABLES IN SCHEMA flarestock FROM PUBLIC",
    "REVOKE ALL ON ALL FUNCTIONS IN SCHEMA flarestock FROM PUBLIC",
    "GRANT USAGE ON SCHEMA flarestock TO %1",
    "GRANT SELECT ON ALL TABLES IN SCHEMA flarestock TO %1",
    "GRANT INSERT ON place, document, movement, record, box_check, replica TO %1",
    "GRANT INSERT, UPDATE, DELETE ON balance, layer, claim TO %1",
    "GRANT UPDATE (entries, lamport, head) ON replica TO %1",
    "GRANT USAGE ON SEQUENCE lamport TO %1",
};

constexpr std::string_view Guards[] = {
    "shop.shop_stays",         "place.place_stays",      "document.document_stays",
    "movement.movement_stays", "record.record_stays",    "box_check.box_check_stays",
    "replica.replica_remains", "replica.replica_grows",  "movement.movement_once",
    "record.record_once",      "movement.movement_told", "record.record_told",
    "document.document_told",  "place.place_told",       "box_check.box_check_told"};

} // namespace

std::span<const std::string_view> serverSchema() noexcept
{
    return Schema;
}

std::span<const std::string_view> serverExtended() noexcept
{
    return Extended;
}

std::span<const std::string_view> serverRights() noexcept
{
    return Rights;
}

std::span<const std::string_view> serverGuards() noexcept
{
    return Guards;
}

} // namespace flarestock::sql
