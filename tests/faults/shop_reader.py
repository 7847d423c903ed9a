# SPDX-License-Identifier: MIT
"""Shop reader: another program that reads a shop file, with nothing of Flarestock in it.

    shop_reader.py FILE     says what it holds, or what is wrong with it; exit status 1 then

Python's own sqlite3, hashlib and whole numbers. It adds up the journal anew, follows the chain of
sha256, and compares both with what the file says of itself. What the bytes under a hash are is said in
model/journal/canonical_bytes.h, what a movement is worth in model/journal/ledger.h.

It works on a copy, because opening a file may change it (SQLite's log is brought in).
"""

import hashlib
import json
import os
import shutil
import sqlite3
import struct
import sys
import tempfile
from fractions import Fraction

STOCK = ("shelf", "bin", "drawer")
BRINGS_VALUE = ("supplier", "opening", "bench", "difference")
CONDITIONS = ("new", "used and good", "to be checked", "not to be used")
FIELDS = ("replica", "sequence", "lamport", "hash", "id", "part", "quantity", "value", "from_place",
          "to_place", "lot", "condition", "who", "why", "document", "reverses", "at", "deed",
          "new_lot", "new_condition", "action", "until")
RECORD_FIELDS = ("replica", "sequence", "lamport", "hash", "id", "kind", "subject", "fields", "who",
                 "at")
TABLES = ("shop", "place", "document", "replica", "movement", "balance", "box_check", "record",
          "claim", "layer")


class Wrong(Exception):
    """The file is not a shop file, or cannot be read as one."""


def number(whole):
    return struct.pack(">q", whole)


def text(words):
    raw = words.encode("utf-8")
    return number(len(raw)) + raw


def texts(*words):
    return b"\x04" + number(len(words)) + b"".join(text(each) for each in words)


def maybe(raw):
    return b"\x00" if raw is None else b"\x01" + raw


def movement_bytes(row):
    """The first form where it says enough, else the second, which says more at its end."""
    first = row["deed"] == "move" and row["until"] == "" and \
        row["new_lot"] is None and row["new_condition"] is None and row["action"] is None
    more = b"" if first else b"".join([
        text(row["deed"]), maybe(None if row["new_lot"] is None else text(row["new_lot"])),
        maybe(None if row["new_condition"] is None
              else bytes([CONDITIONS.index(row["new_condition"])])),
        maybe(row["action"]), text(row["until"])])
    return b"".join([
        b"\x01" if first else b"\x05", row["id"], text(row["part"]), number(row["quantity"]), number(row["value"]),
        text(row["from_place"]), text(row["to_place"]), text(row["lot"]),
        bytes([CONDITIONS.index(row["condition"])]), text(row["who"]), text(row["why"]),
        text(row["document"]), maybe(row["reverses"]), number(row["at"]), more])


def record_bytes(row):
    fields = sorted((name.encode(), value) for name, value in json.loads(row["fields"]).items())
    return b"".join([
        b"\x06", row["id"], text(row["kind"]), text(row["subject"]), number(len(fields)),
        *(text(name.decode()) + text(value) for name, value in fields),
        text(row["who"]), number(row["at"])])


def taken_in(row):
    """Written elsewhere, and brought by a copy: its value is what was right there."""
    return row["replica"] < 1


def bytes_of(row):
    """Of an entry that is only kept with its words: its own bytes."""
    if "kind" in row and row["kind"] == "decision" and taken_in(row):
        kept = json.loads(row["fields"]).get("entry")
        if kept:
            return bytes.fromhex(kept)
    return record_bytes(row) if "kind" in row else movement_bytes(row)


def sha256(*parts):
    return hashlib.sha256(b"".join(parts)).digest()


def share(held, quantity):
    """In proportion, a tie to the even one; all of it with the last."""
    if held[0] <= 0 or held[1] <= 0 or quantity <= 0:
        return 0
    if quantity >= held[0]:
        return held[1]
    return round(Fraction(held[1] * quantity, held[0]))


def source_of(row):
    return row["part"], row["from_place"], row["lot"], row["condition"]


def target_of(row):
    lot = row["lot"] if row["new_lot"] is None else row["new_lot"]
    return row["part"], row["to_place"], lot, row["new_condition"] or row["condition"]


def add_layers(layers, some, sign):
    for rank, (quantity, value) in some.items():
        held = layers.get(rank, (0, 0))
        layers[rank] = (held[0] + sign * quantity, held[1] + sign * value)
        if layers[rank] == (0, 0):
            del layers[rank]


class Shop:
    """All that a shop file holds, and `wrong`: what contradicts itself in it."""

    def __init__(self, path):
        self.wrong = []
        with tempfile.TemporaryDirectory(dir=os.path.dirname(os.path.abspath(path))) as folder:
            copy = os.path.join(folder, "copy")
            shutil.copyfile(path, copy)
            if os.path.exists(path + "-wal"):
                shutil.copyfile(path + "-wal", copy + "-wal")
            self._open(copy)

    @classmethod
    def of_image(cls, copy):
        """Of a file that may be changed by reading it."""
        shop = cls.__new__(cls)
        shop.wrong = []
        shop._open(copy)
        return shop

    def _open(self, copy):
        connection = sqlite3.connect(copy, isolation_level=None)
        try:
            self._read(connection)
        except (sqlite3.Error, UnicodeError, OverflowError, TypeError) as error:
            raise Wrong(f"cannot be read: {error}") from None
        finally:
            connection.close()
        try:
            self._follow_chains()
            self._fold()
            self._check_seals()
        except (ArithmeticError, AttributeError, LookupError, TypeError, ValueError,
                struct.error) as error:
            raise Wrong(f"holds what no shop file holds: {error}") from None

    def _read(self, connection):
        found = connection.execute("PRAGMA integrity_check").fetchall()
        if found != [("ok",)]:
            self.wrong.append(f"SQLite: {found[0][0]}")
        if connection.execute("PRAGMA application_id").fetchone()[0] != 0x466C7374:
            raise Wrong("is no shop file")
        if connection.execute("PRAGMA user_version").fetchone()[0] != 3:
            raise Wrong("is unfinished, or of another schema")
        #: every row of every table, to compare two files with each other
        self.rows = {table: sorted(connection.execute(f"SELECT * FROM {table}").fetchall(), key=repr)
                     for table in TABLES}
        order = "SELECT " + ", ".join(FIELDS) + " FROM movement " \
            "ORDER BY +lamport, +replica, +sequence"  # Not by an index, which may be damaged.
        self.movements = [dict(zip(FIELDS, row)) for row in connection.execute(order)]
        order = "SELECT " + ", ".join(RECORD_FIELDS) + " FROM record"
        self.records = [dict(zip(RECORD_FIELDS, row)) for row in connection.execute(order)]
        self.entries = sorted(
            self.movements + self.records,
            key=lambda row: (row["lamport"], row["replica"], row["sequence"]))
        self.claims = {row[:2]: row[2:] for row in connection.execute(
            "SELECT part, build, promised, issued FROM claim")}
        self.costing = connection.execute("SELECT costing FROM shop").fetchone()[0]
        self.places = dict(connection.execute("SELECT id, kind FROM place"))
        self.replicas = {row[0]: row[1:] for row in connection.execute(
            "SELECT number, id, entries, lamport, head FROM replica")}
        self.documents = connection.execute(
            "SELECT sequence, name, version, content, who, at, seal FROM document ORDER BY sequence"
        ).fetchall()
        self.boxes = connection.execute(
            "SELECT sequence, id, part, lot, missing, who, at, seal FROM box_check ORDER BY sequence"
        ).fetchall()
        self.balances = {row[:4]: row[4:] for row in connection.execute(
            "SELECT part, place, lot, condition, quantity, value FROM balance")}
        self.layers = {}
        for *key, rank, quantity, value in connection.execute(
                "SELECT part, place, lot, condition, rank, quantity, value FROM layer"):
            self.layers.setdefault(tuple(key), {})[rank] = (quantity, value)

    @property
    def ids(self):
        return [row["id"].hex() for row in self.movements]

    @property
    def good(self):
        """The entries before the first that breaks a chain."""
        return self.entries[:self._good]

    def _follow_chains(self):
        self._good = len(self.entries)
        counts = self._counts_elsewhere()
        reached = {replica: (0, bytes(32)) for replica in self.replicas}
        for nth, row in enumerate(self.entries):
            if row["replica"] not in reached:
                self.wrong.append(f"entry {row['id'].hex()} is of no replica")
                self._good = min(self._good, nth)
                continue
            count, head = reached[row["replica"]]
            # The replica's id goes in as bytes, not as text.
            place = b"\x04" + number(3) + number(16) + self.replicas[row["replica"]][0] + \
                text(str(row["sequence"])) + \
                text(str(counts.get((row["replica"], row["sequence"]), row["lamport"])))
            if row["sequence"] != count + 1 or \
                    sha256(head, place, bytes_of(row)) != row["hash"]:
                self.wrong.append(f"the chain breaks at entry {row['id'].hex()}")
                self._good = min(self._good, nth)
            reached[row["replica"]] = (row["sequence"], row["hash"])
        for replica, (count, head) in reached.items():
            _, entries, lamport, said = self.replicas[replica]
            if (entries, said) != (count, head):
                self.wrong.append(f"replica {replica} ends at {entries}, its journal at {count}")
            if lamport < max([row["lamport"] for row in self.entries
                              if row["replica"] == replica], default=0):
                self.wrong.append(f"the count of replica {replica} is behind its movements")

    def _counts_elsewhere(self):
        """Of entries that copies have brought: the counts that they bear in their own chains, which
        their hashes are over. Here they stand where they were taken in."""
        numbers = {said[0].hex(): number for number, said in self.replicas.items()}
        counts = {}
        for row in self.records:
            if row["kind"] != "trip" or taken_in(row):
                continue
            for line in json.loads(row["fields"]).get("chains", "").split("\n"):
                chain, *ranges = line.split(" ")
                if chain not in numbers:
                    continue
                (first, last), *spans = [tuple(map(int, each.split("-"))) for each in ranges]
                bears = [count for a, b in spans for count in range(a, b + 1)]
                if len(bears) != last - first + 1:
                    self.wrong.append(f"trip {row['id'].hex()} does not say all counts")
                for sequence, count in zip(range(first, last + 1), bears):
                    counts[numbers[chain], sequence] = count
        return counts

    def _oldest(self, layers, quantity):
        """First in, first out: what of which layer goes, by rank."""
        gone = {}
        for rank in sorted(layers):
            held = layers[rank]
            if quantity <= 0:
                break
            some = min(quantity, held[0])
            if some > 0:
                gone[rank] = (some, share(held, some))
                quantity -= some
        return gone

    def _layers(self, row, layers, past):
        """What a movement takes along where the shop costs first in, first out."""
        if row["deed"] == "settle":
            return {}
        here = layers.get(source_of(row), {})
        from_stock = self.places[row["from_place"]] in STOCK
        before = past.get(row["reverses"])
        if before and before[2]:
            held = [(rank, some, here.get(rank, (0, 0))) for rank, some in before[2].items()]
            if not from_stock or all(there == some or (there[0] > some[0] and there[1] >= some[1])
                                     for _, some, there in held):
                return before[2]
        if from_stock:
            return self._oldest(here, row["quantity"])
        there = layers.get(target_of(row))
        if row["quantity"] == 0 and there:  # Value alone goes to the newest.
            return {max(there): (0, row["value"])}
        if row["quantity"] == 0 and taken_in(row):
            return {}
        return {1 + self.moved.get(row["part"], 0): (row["quantity"], row["value"])}

    def _worth(self, row, held, past):
        """What a movement takes along, in millionths."""
        if row["reverses"] is not None and row["reverses"] in past:
            before = past[row["reverses"]]
            gives_back = self.places[row["from_place"]] not in STOCK or held == before[:2] or \
                (held[0] > before[0] and held[1] >= before[1])
            if gives_back:
                return before[1]
        if self.places[row["from_place"]] in BRINGS_VALUE:
            return row["value"]
        return share(held, row["quantity"])

    def _post_layers(self, row, layers, past):
        gone = self._layers(row, layers, past)
        if self.places[row["from_place"]] in STOCK:
            if sum(some[1] for some in gone.values()) != row["value"] and \
                    not taken_in(row) and row["deed"] != "settle":
                self.wrong.append(f"movement {row['id'].hex()} has a wrong value")
            add_layers(layers.setdefault(source_of(row), {}), gone, -1)
        if self.places[row["to_place"]] in STOCK:
            add_layers(layers.setdefault(target_of(row), {}), gone, 1)
        self.moved[row["part"]] = 1 + self.moved.get(row["part"], 0)
        return gone

    def _fold(self):
        sums, past, layers = {}, {}, {}
        self.moved = {}  # How many movements of a part there were: the rank of the last one.
        for row in self.movements:
            key, target = source_of(row), target_of(row)
            if row["from_place"] not in self.places or row["to_place"] not in self.places:
                self.wrong.append(f"movement {row['id'].hex()} is of no place")
                continue
            held, there = sums.get(key, (0, 0)), sums.get(target, (0, 0))
            gone = {}
            if self.costing == "first in, first out":
                gone = self._post_layers(row, layers, past)
            elif not taken_in(row) and row["deed"] != "settle" and \
                    row["value"] != self._worth(row, held, past):
                self.wrong.append(f"movement {row['id'].hex()} has a wrong value")
            if self.places[row["from_place"]] in STOCK and held[0] < row["quantity"]:
                self.wrong.append(f"movement {row['id'].hex()} takes more than there is")
            sums[key] = (held[0] - row["quantity"], held[1] - row["value"])
            there = sums.get(target, (0, 0))
            sums[target] = (there[0] + row["quantity"], there[1] + row["value"])
            past[row["id"]] = (row["quantity"], row["value"], gone)
        for key, held in sums.items():
            if self.places[key[1]] in STOCK and min(held) < 0:
                self.wrong.append(f"{key} is below zero")
        sums = {key: held for key, held in sums.items() if held != (0, 0)}
        if sums != self.balances:
            self.wrong.append("the balances are not what the movements add up to")
        for key, held in layers.items():
            if sums.get(key, (0, 0)) != tuple(sum(each[i] for each in held.values()) for i in (0, 1)):
                self.wrong.append(f"the layers of {key} are not worth what lies there")
        if {key: held for key, held in layers.items() if held} != self.layers:
            self.wrong.append("the layers are not what the movements say")
        if any(sum(held[i] for held in sums.values()) for i in (0, 1)):
            self.wrong.append("over all places the sums are not zero")
        if sum(held[1] for key, held in sums.items() if self.places[key[1]] == "bench"):
            self.wrong.append("value was left at the bench")
        if len(set(self.ids)) != len(self.ids):
            self.wrong.append("an id stands there twice")
        self._fold_claims()

    def _fold_claims(self):
        claims = {}
        for row in self.records:
            if row["kind"] == "promise":
                fields = json.loads(row["fields"])
                claim = claims.setdefault((fields["part"], row["subject"]), [0, 0])
                claim[0] += int(fields["quantity"])
        for row in self.movements:
            sign = {"issue": 1, "return": -1}.get(row["deed"], 0)
            if sign:
                claim = claims.setdefault((row["part"], row["document"]), [0, 0])
                claim[1] += sign * row["quantity"]
        claims = {key: tuple(claim) for key, claim in claims.items() if any(claim)}
        if claims != self.claims:
            self.wrong.append("what builds have is not what the journal adds up to")

    def _check_seals(self):
        previous = b""
        for count, (sequence, name, version, content, who, at, seal) in enumerate(self.documents, 1):
            previous = sha256(previous, texts(name, str(version), content, who, str(at)))
            if sequence != count or seal != previous:
                self.wrong.append(f"version {version} of {name} was changed")
        for count, (sequence, box, part, lot, missing, who, at, seal) in enumerate(self.boxes, 1):
            parts = missing.split("\n") if missing else []
            raw = b"\x02" + box + text(part) + text(lot) + number(len(parts)) + \
                b"".join(text(each) for each in parts) + text(who) + number(at)
            if sequence != count or seal != sha256(raw):
                self.wrong.append(f"look {sequence} into a box was changed")


def main(path):
    try:
        shop = Shop(path)
    except Wrong as wrong:
        print(f"{path} {wrong}")
        return 1
    for wrong in shop.wrong:
        print(wrong)
    print(f"{len(shop.movements)} movements, {len(shop.balances)} balances, "
          f"{len(shop.documents)} versions of documents, {len(shop.boxes)} looks into boxes")
    return 1 if shop.wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
