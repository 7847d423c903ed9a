# SPDX-License-Identifier: MIT
"""Shop reader: another program that reads a shop file, with nothing of Flarestock in it.

    shop_reader.py FILE     says what it holds, or what is wrong with it; exit status 1 then

Python's own sqlite3, hashlib and whole numbers. It adds up the journal anew, follows the chain of
sha256, and compares both with what the file says of itself. What the bytes under a hash are is said in
model/journal/canonical_bytes.h, what a movement is worth in model/journal/ledger.h.

It works on a copy, because opening a file may change it (SQLite's log is brought in).
"""

import hashlib
import os
import shutil
import sqlite3
import struct
import sys
import tempfile
from fractions import Fraction

STOCK = ("shelf", "bin", "drawer")
BRINGS_VALUE = ("supplier", "opening")
CONDITIONS = ("new", "used and good", "to be checked", "not to be used")
FIELDS = ("replica", "sequence", "lamport", "hash", "id", "part", "quantity", "value", "from_place",
          "to_place", "lot", "condition", "who", "why", "document", "reverses", "at")
TABLES = ("shop", "place", "document", "replica", "movement", "balance", "box_check")


class Wrong(Exception):
    """The file is not a shop file, or cannot be read as one."""


def number(whole):
    return struct.pack(">q", whole)


def text(words):
    raw = words.encode("utf-8")
    return number(len(raw)) + raw


def texts(*words):
    return b"\x04" + number(len(words)) + b"".join(text(each) for each in words)


def movement_bytes(row):
    reverses = b"\x01" + row["reverses"] if row["reverses"] is not None else b"\x00"
    return b"".join([
        b"\x01", row["id"], text(row["part"]), number(row["quantity"]), number(row["value"]),
        text(row["from_place"]), text(row["to_place"]), text(row["lot"]),
        bytes([CONDITIONS.index(row["condition"])]), text(row["who"]), text(row["why"]),
        text(row["document"]), reverses, number(row["at"])])


def sha256(*parts):
    return hashlib.sha256(b"".join(parts)).digest()


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
        except (sqlite3.Error, UnicodeError, OverflowError) as error:
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
        if connection.execute("PRAGMA user_version").fetchone()[0] != 1:
            raise Wrong("is unfinished, or of another schema")
        #: every row of every table, to compare two files with each other
        self.rows = {table: sorted(connection.execute(f"SELECT * FROM {table}").fetchall(), key=repr)
                     for table in TABLES}
        order = "SELECT " + ", ".join(FIELDS) + " FROM movement ORDER BY lamport, replica, sequence"
        self.movements = [dict(zip(FIELDS, row)) for row in connection.execute(order)]
        self.places = dict(connection.execute("SELECT id, kind FROM place"))
        self.replicas = {row[0]: row[1:] for row in connection.execute(
            "SELECT number, id, movements, lamport, head FROM replica")}
        self.documents = connection.execute(
            "SELECT sequence, name, version, content, who, at, seal FROM document ORDER BY sequence"
        ).fetchall()
        self.boxes = connection.execute(
            "SELECT sequence, id, part, lot, missing, who, at, seal FROM box_check ORDER BY sequence"
        ).fetchall()
        self.balances = {row[:4]: row[4:] for row in connection.execute(
            "SELECT part, place, lot, condition, quantity, value FROM balance")}

    @property
    def ids(self):
        return [row["id"].hex() for row in self.movements]

    def _follow_chains(self):
        reached = {replica: (0, bytes(32)) for replica in self.replicas}
        for row in self.movements:
            if row["replica"] not in reached:
                self.wrong.append(f"movement {row['id'].hex()} is of no replica")
                continue
            count, head = reached[row["replica"]]
            # The replica's id goes in as bytes, not as text.
            place = b"\x04" + number(3) + number(16) + self.replicas[row["replica"]][0] + \
                text(str(row["sequence"])) + text(str(row["lamport"]))
            if row["sequence"] != count + 1 or \
                    sha256(head, place, movement_bytes(row)) != row["hash"]:
                self.wrong.append(f"the chain breaks at movement {row['id'].hex()}")
            reached[row["replica"]] = (row["sequence"], row["hash"])
        for replica, (count, head) in reached.items():
            _, movements, lamport, said = self.replicas[replica]
            if (movements, said) != (count, head):
                self.wrong.append(f"replica {replica} ends at {movements}, its journal at {count}")
            if lamport < max([row["lamport"] for row in self.movements
                              if row["replica"] == replica], default=0):
                self.wrong.append(f"the count of replica {replica} is behind its movements")

    def _worth(self, row, held, past):
        """What a movement takes along, in millionths."""
        if row["reverses"] is not None and row["reverses"] in past:
            before = past[row["reverses"]]
            gives_back = self.places[row["from_place"]] not in STOCK or held == before or \
                (held[0] > before[0] and held[1] >= before[1])
            if gives_back:
                return before[1]
        if self.places[row["from_place"]] in BRINGS_VALUE:
            return row["value"]
        if held[0] <= 0 or held[1] <= 0:
            return 0
        if row["quantity"] >= held[0]:
            return held[1]
        return round(Fraction(held[1] * row["quantity"], held[0]))  # a tie goes to the even one

    def _fold(self):
        sums, past = {}, {}
        for row in self.movements:
            key = (row["part"], row["from_place"], row["lot"], row["condition"])
            target = (row["part"], row["to_place"], row["lot"], row["condition"])
            if row["from_place"] not in self.places or row["to_place"] not in self.places:
                self.wrong.append(f"movement {row['id'].hex()} is of no place")
                continue
            held, there = sums.get(key, (0, 0)), sums.get(target, (0, 0))
            if row["quantity"] <= 0 or row["value"] != self._worth(row, held, past):
                self.wrong.append(f"movement {row['id'].hex()} has a wrong quantity or value")
            if self.places[row["from_place"]] in STOCK and held[0] < row["quantity"]:
                self.wrong.append(f"movement {row['id'].hex()} takes more than there is")
            sums[key] = (held[0] - row["quantity"], held[1] - row["value"])
            sums[target] = (there[0] + row["quantity"], there[1] + row["value"])
            past[row["id"]] = (row["quantity"], row["value"])
        sums = {key: held for key, held in sums.items() if held != (0, 0)}
        if sums != self.balances:
            self.wrong.append("the balances are not what the movements add up to")
        if any(sum(held[i] for held in sums.values()) for i in (0, 1)):
            self.wrong.append("over all places the sums are not zero")
        if len(set(self.ids)) != len(self.ids):
            self.wrong.append("an id stands there twice")

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
