-- SPDX-License-Identifier: MIT
-- A shop of schema 1 as the first version of Flarestock wrote it: five movements, one of them taken back.
PRAGMA application_id = 1181512564;
PRAGMA user_version = 1;
PRAGMA foreign_keys=OFF;
BEGIN TRANSACTION;
CREATE TABLE shop (
  only INTEGER PRIMARY KEY CHECK (only = 1),
  title TEXT NOT NULL,
  currency TEXT NOT NULL CHECK (length(currency) = 3),
  made_at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT;
INSERT INTO shop VALUES(1,'Test shop','USD',1780000000000,X'6b94bcfa3bafa41565d843c70960f40f4e3a40ba70a8b821a4e45a6286608844');
CREATE TABLE place (
  sequence INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE CHECK (id <> ''),
  title TEXT NOT NULL,
  kind TEXT NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT;
INSERT INTO place VALUES(1,'A1','bin A1','bin',X'9e45cfaf06fba140fbcb479f013283ead4765050bf1838b974752298365f1525');
INSERT INTO place VALUES(2,'trailer-1','drawer','drawer',X'a1ea583ef61e7ce53d1fb5a98b58e48099a75d6113e2cbc5f6967bb189abf58c');
INSERT INTO place VALUES(3,'car-1','car','car',X'e24f282b4d078985aa32186370a3f2dcf3855f3fade8ed5a0817619bde3dbe38');
INSERT INTO place VALUES(4,'used-up','used up','used up',X'197ea29e60a050296b0200d1b0ccd43ed965f1c92996d1bda0608f85fc59ee65');
INSERT INTO place VALUES(5,'opening','opening','opening',X'a3ae14b8c55c3431261dcac378d08e4f613e7661baffa29c342eb22dc60aa785');
CREATE TABLE document (
  sequence INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  version INTEGER NOT NULL CHECK (version > 0),
  content TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32),
  UNIQUE (name, version)
) STRICT;
INSERT INTO document VALUES(1,'shop.toml',1,replace('title = "Test shop"\n','\n',char(10)),'test',1780000000000,X'b8110f34513de5a497de8d51401b8394e10e991acd0769227291434a4423e498');
INSERT INTO document VALUES(2,'shop.toml',2,replace('title = "Test shop"\n# second\n','\n',char(10)),'test',1780000000200,X'3b49183371863b1242f2f60690d199de979dae24caee46e452175f1a2f0606d6');
CREATE TABLE replica (
  number INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  movements INTEGER NOT NULL CHECK (movements >= 0),
  lamport INTEGER NOT NULL CHECK (lamport >= movements),
  head BLOB NOT NULL CHECK (length(head) = 32)
) STRICT;
INSERT INTO replica VALUES(1,X'59fb8bbdbfce205b775b3650301fcd6c',5,5,X'b2a46de6c3435b7c590ff5495f5575fa1f5f645227a7863df067ef518c45315a');
CREATE TABLE movement (
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
) STRICT, WITHOUT ROWID;
INSERT INTO movement VALUES(X'019e7044880070008000000001000000',1,1,1,'AD-8-10',10,74500000,'opening','A1','','new','test','','',NULL,0,X'67f4f5ba2a63ffb306ca18cd4f74642b3454d0d2ca5f8c7563d5c92c7e1ae32b');
INSERT INTO movement VALUES(X'019e7044880070008000000002000000',1,2,2,'AD-8-10',4,29800000,'A1','car-1','','new','test','','',NULL,0,X'4fd57b5b6775dc85441d3e0acf38766bed52956bba56602a2fbb002f4b80a63c');
INSERT INTO movement VALUES(X'019e7044880070008000000003000000',1,3,3,'AD-8-10',2,14900000,'A1','trailer-1','','new','test','','',NULL,0,X'2f7b863962de7e4bf4eb77b28f6ff6eeac5b7743df8e184ee487c02afe61d4b6');
INSERT INTO movement VALUES(X'019e7044880070008000000004000000',1,4,4,'AD-8-10',4,29800000,'car-1','A1','','new','test','','',X'019e7044880070008000000002000000',0,X'8278126446b9b7a07382291a73f9cb8fc550eeb117684373910dac2bbf7b519a');
INSERT INTO movement VALUES(X'019e7044880070008000000005000000',1,5,5,'AD-8-10',1,7450000,'A1','used-up','','new','test','fitted','build-7',NULL,0,X'b2a46de6c3435b7c590ff5495f5575fa1f5f645227a7863df067ef518c45315a');
CREATE TABLE balance (
  part TEXT NOT NULL,
  place TEXT NOT NULL REFERENCES place (id),
  lot TEXT NOT NULL,
  condition TEXT NOT NULL,
  is_stock INTEGER NOT NULL CHECK (is_stock IN (0, 1)),
  quantity INTEGER NOT NULL,
  value INTEGER NOT NULL,
  PRIMARY KEY (part, place, lot, condition),
  CHECK (is_stock = 0 OR (quantity > 0 AND value >= 0))
) STRICT, WITHOUT ROWID;
INSERT INTO balance VALUES('AD-8-10','A1','','new',1,7,52150000);
INSERT INTO balance VALUES('AD-8-10','opening','','new',0,-10,-74500000);
INSERT INTO balance VALUES('AD-8-10','trailer-1','','new',1,2,14900000);
INSERT INTO balance VALUES('AD-8-10','used-up','','new',0,1,7450000);
CREATE TABLE box_check (
  sequence INTEGER PRIMARY KEY,
  id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
  part TEXT NOT NULL CHECK (part <> ''),
  lot TEXT NOT NULL,
  missing TEXT NOT NULL,
  who TEXT NOT NULL,
  at INTEGER NOT NULL,
  seal BLOB NOT NULL CHECK (length(seal) = 32)
) STRICT;
INSERT INTO box_check VALUES(1,X'019e704488007000800000005a000000','AD-8-10','','RING','test',1780000000100,X'c28bc8b478d0a09026b0b04ca27b671dc4b07e68e71dfd6ae102cf6c292e66bb');
CREATE INDEX movement_order ON movement (lamport, replica, sequence);
CREATE INDEX movement_part ON movement (part);
CREATE UNIQUE INDEX movement_reverses ON movement (reverses) WHERE reverses IS NOT NULL;
CREATE TRIGGER movement_stays BEFORE UPDATE ON movement
BEGIN SELECT RAISE(ABORT, 'a movement is never changed'); END;
CREATE TRIGGER movement_remains BEFORE DELETE ON movement
BEGIN SELECT RAISE(ABORT, 'a movement is never deleted'); END;
CREATE TRIGGER movement_once BEFORE INSERT ON movement
WHEN EXISTS (SELECT 1 FROM movement WHERE id = NEW.id OR reverses = NEW.reverses
  OR (replica = NEW.replica AND sequence = NEW.sequence))
BEGIN SELECT RAISE(ABORT, 'a movement is never replaced'); END;
CREATE TRIGGER document_stays BEFORE UPDATE ON document
BEGIN SELECT RAISE(ABORT, 'a document gets a new version, it is never changed'); END;
CREATE TRIGGER document_remains BEFORE DELETE ON document
BEGIN SELECT RAISE(ABORT, 'a document is never deleted'); END;
CREATE TRIGGER document_once BEFORE INSERT ON document
WHEN EXISTS (SELECT 1 FROM document WHERE sequence = NEW.sequence
  OR (name = NEW.name AND version = NEW.version))
BEGIN SELECT RAISE(ABORT, 'a version of a document is never replaced'); END;
CREATE TRIGGER place_stays BEFORE UPDATE ON place
BEGIN SELECT RAISE(ABORT, 'a place is never changed'); END;
CREATE TRIGGER place_remains BEFORE DELETE ON place
BEGIN SELECT RAISE(ABORT, 'a place is never deleted'); END;
CREATE TRIGGER place_once BEFORE INSERT ON place
WHEN EXISTS (SELECT 1 FROM place WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'a place is never replaced'); END;
CREATE TRIGGER box_check_stays BEFORE UPDATE ON box_check
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never changed'); END;
CREATE TRIGGER box_check_remains BEFORE DELETE ON box_check
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never deleted'); END;
CREATE TRIGGER box_check_once BEFORE INSERT ON box_check
WHEN EXISTS (SELECT 1 FROM box_check WHERE sequence = NEW.sequence OR id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'what was seen in a box is never replaced'); END;
CREATE TRIGGER shop_stays BEFORE UPDATE ON shop
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never changed'); END;
CREATE TRIGGER shop_remains BEFORE DELETE ON shop
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never deleted'); END;
CREATE TRIGGER shop_once BEFORE INSERT ON shop
WHEN EXISTS (SELECT 1 FROM shop)
BEGIN SELECT RAISE(ABORT, 'name and currency of a shop are never replaced'); END;
CREATE TRIGGER replica_remains BEFORE DELETE ON replica
BEGIN SELECT RAISE(ABORT, 'a replica is never deleted'); END;
COMMIT;
