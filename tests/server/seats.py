# SPDX-License-Identifier: MIT
"""What the tests with a server share: a server, a shop on it, seats, and a reader of the server in
Python that shares no code with the product: rows come by psql, and shop_reader follows them."""

import csv
import hashlib
import hmac
import io
import os
import random
import re
import sqlite3
import subprocess
import sys
import tempfile
import time
from base64 import b64encode
from pathlib import Path
from urllib.parse import quote

import cluster

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "faults"))
import shop_reader

LONG = bool(os.environ.get("FLARESTOCK_LONG"))
SEED = int(os.environ.get("FLARESTOCK_SEED") or 2026)
FOLDER = Path(sys.argv[1])  # Of the build.
COMMAND = FOLDER / "bin" / "flarestock"
SHOP_WRITER = FOLDER / "tests" / "faults" / "shop_writer"
BLOBS = ("id", "hash", "head", "seal", "reverses", "action")


def seatWriter(planted=None):
    return FOLDER / "tests" / "server" / ("seat_writer" + (f"_{planted}" if planted else ""))


class Server:
    """A server: that of the other tests, or one of this test's own, which is gone with it."""

    def __init__(self, own=False):
        self.own = own
        self.where = FOLDER / "tests" / "server" / (f"where-{os.getpid()}" if own else "where")
        if own:
            cluster.start(self.where)
        folder, port, *_ = self.where.read_text().split("\n")
        self.folder, self.port = Path(folder), int(port)
        self.conflictsBefore = 0

    def __enter__(self):
        return self

    def __exit__(self, *_):
        if self.own:
            cluster.stop(self.where)

    def psqlWords(self, database, role="postgres"):
        return [cluster.binary("psql"), "-X", "-v", "ON_ERROR_STOP=1", "-h", str(self.folder),
                "-p", str(self.port), "-U", role, "-d", database]

    def psql(self, database, statement, role="postgres", good=True):
        """Rows as texts by column; where it is not to be `good` the error is told."""
        done = subprocess.run(
            [*self.psqlWords(database, role), "-q", "--csv", "-P", "null=\x01", "-c", statement],
            capture_output=True, text=True, check=False)
        if not good:
            return done.stderr.strip() if done.returncode else ""
        if done.returncode:
            sys.exit(f"{statement}: {done.stderr}")
        return list(csv.DictReader(io.StringIO(done.stdout)))

    def log(self):
        return (self.folder / "log").read_text(errors="replace")

    def markConflicts(self):
        self.conflictsBefore = self.log().count("could not serialize access")

    def address(self, role, database):
        return f"postgresql://{role}@{quote(str(self.folder), safe='')}:{self.port}/{database}"


def environment(folder):
    """A seat's own: what it keeps goes into this folder."""
    return {**os.environ, "LC_ALL": "C.UTF-8", "HOME": str(folder),
            "XDG_DATA_HOME": str(Path(folder) / "data"), "XDG_CONFIG_HOME": str(Path(folder) / "config")}


def run(*words, home, **more):
    return subprocess.run([str(word) for word in words], capture_output=True, text=True, check=False,
                          env=environment(home), timeout=300, **more)


class ServerShop:
    """The small shop of the fault tests, moved to a database of its own."""

    count = 0

    def __init__(self, server, folder, name="shop"):
        ServerShop.count += 1
        self.server, self.folder = server, Path(folder)
        self.database = f"{name}_{os.getpid()}_{ServerShop.count}"
        server.psql("postgres", f"CREATE DATABASE {self.database}")
        self.owner = server.address("postgres", self.database)
        self.hand = server.address("hand", self.database)
        self.file = self.folder / f"{self.database}.flarestock"
        for words in ([SHOP_WRITER, "make", self.file],
                      [COMMAND, "server", "move", "--from", self.file, "--to", self.owner],
                      [COMMAND, "server", "setup", self.owner, "--hand", "hand"]):
            done = run(*words, home=self.folder)
            if done.returncode:
                sys.exit(f"{words}: {done.stderr}")

    def read(self):
        """What Python sees in it: the rows, put into tables without a type."""
        path = self.folder / f"{self.database}.read"
        path.unlink(missing_ok=True)
        file = sqlite3.connect(path, isolation_level=None)
        file.execute("PRAGMA application_id = %d" % 0x466C7374)
        file.execute("PRAGMA user_version = 3")
        for table in shop_reader.TABLES:
            columns = [row["column_name"] for row in self.server.psql(
                self.database, "SELECT column_name FROM information_schema.columns WHERE table_schema = "
                f"'flarestock' AND table_name = '{table}' ORDER BY ordinal_position")]
            file.execute(f"CREATE TABLE {table} ({', '.join(map(quoted, columns))})")
            for row in self.server.psql(self.database, f"SELECT * FROM flarestock.{table}"):
                file.execute(f"INSERT INTO {table} VALUES ({', '.join('?' * len(columns))})",
                             [valueOf(table, column, row[column]) for column in columns])
        file.close()
        return shop_reader.Shop(str(path))

    def verified(self):
        return run(COMMAND, "verify", self.hand, home=self.folder)


def address(shop, host="localhost", authority="authority", port=None, more=""):
    """Over the network, as a hand."""
    file = quote(str(shop.server.folder / f"{authority}.pem"), safe="")
    return (f"postgresql://hand@{host}:{port or shop.server.port}/{shop.database}"
            f"?sslrootcert={file}{more}")


def quoted(name):
    return '"' + name + '"'


def valueOf(table, column, text):
    if text == "\x01":
        return None
    if text.startswith("\\x") and (column in BLOBS and table != "place" or column == "seal"):
        return bytes.fromhex(text[2:])
    return int(text) if re.fullmatch(r"-?\d+", text) and column in WHOLE else text


WHOLE = ("only", "made_at", "sequence", "version", "at", "number", "entries", "lamport", "replica",
         "quantity", "value", "in_stock", "promised", "issued", "rank")


def scramVerifier(password):
    """As RFC 5803 writes it and PostgreSQL keeps it, so that the password itself never goes there."""
    salt = os.urandom(16)
    salted = hashlib.pbkdf2_hmac("sha256", password.encode(), salt, 4096)
    client = hmac.digest(salted, b"Client Key", "sha256")
    server = hmac.digest(salted, b"Server Key", "sha256")
    stored = hashlib.sha256(client).digest()
    texts = [b64encode(raw).decode() for raw in (salt, stored, server)]
    return f"SCRAM-SHA-256$4096:{texts[0]}${texts[1]}:{texts[2]}"


def filesWith(secret, folders):
    found = []
    for folder in folders:
        for path in Path(folder).rglob("*"):
            if path.is_file() and not path.is_symlink() and secret.encode() in path.read_bytes():
                found.append(str(path))
    return found


class Bench:
    """What a test counts, and what went wrong."""

    def __init__(self):
        self.counts, self.wrong = {}, []
        self._folder = tempfile.TemporaryDirectory(prefix="flarestock-seats-")
        self.folder = Path(self._folder.name)
        self.dice = random.Random(SEED)

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self._folder.cleanup()

    def count(self, what, more=1):
        self.counts[what] = self.counts.get(what, 0) + more

    def expect(self, good, what):
        if not good and len(self.wrong) < 20:
            self.wrong.append(what)
        return good


def main(promise, test, plants=()):
    """Runs the promise, then each planted fault, which has to fail: rows of (what, test)."""
    print(f"{promise}; {'long' if LONG else 'short'} tier, seed {SEED}", flush=True)
    began = time.monotonic()
    failed = False
    for what, each in (("", test), *plants):
        with Bench() as bench:
            each(bench)
            if not what:
                failed = bool(bench.wrong)
                print(", ".join(f"{count:,} {name}" for name, count in bench.counts.items()))
                for wrong in bench.wrong:
                    print("  WRONG:", wrong)
            elif bench.wrong:
                print(f"planted: {what}: noticed, as \"{bench.wrong[0][:160]}\"")
            else:
                print(f"planted: {what}: NOT NOTICED")
                failed = True
    print(f"{time.monotonic() - began:.1f} s")
    sys.exit(1 if failed else 0)
