# SPDX-License-Identifier: MIT
"""A shop that moves from its file to a server, and from there to a new file, is the same: every row of
every table as Python reads it, ids and hashes included; both costings. What a command answers, it
answers on both; what a hand does on the server holds in the file. Nothing moves to where a shop is,
and nothing that is not whole."""

import sqlite3

from seats import COMMAND, HERE, SHOP_WRITER, Server, ServerShop, main, run, shop_reader

DEEDS = (
    ("receive", "AD-8-8", "5", "--from", "supplier-TCF", "--to", "A3", "--cost", "30.00"),
    ("count", "AD-8-8", "9", "--place", "A3"),
    ("cut", "GR-8", "2 ft 4 in", "--to", "car-1"),
    ("reserve", "coupe-fuel"),
    ("issue", "coupe-fuel"),
    ("place", "Z9", "--kind", "bin"),
)
QUESTIONS = (
    ("bill", "--build", "coupe-fuel", "--json"),
    ("stock", "--json"),
    ("history", "--place", "car-2", "--json"),
    ("place", "--json"),
)


class Demo(ServerShop):
    """The demo shop in a file, and an empty database."""

    def __init__(self, server, folder):
        ServerShop.count += 1
        self.server, self.folder = server, folder
        self.database = f"moving_{ServerShop.count}"
        server.psql("postgres", f"DROP DATABASE IF EXISTS {self.database}")
        server.psql("postgres", f"CREATE DATABASE {self.database}")
        self.owner = server.address("postgres", self.database)
        self.hand = server.address("hand", self.database)
        self.file = folder / f"{self.database}.flarestock"


def rowsOf(shop, but=()):
    return {table: rows for table, rows in shop.rows.items() if table not in but}


def move(shop, source, to):
    return run(COMMAND, "server", "move", "--from", source, "--to", to, home=shop.folder)


def there(bench, shop):
    for words in (["demo", "--to", shop.file], *[[*deed, "--shop", shop.file] for deed in DEEDS[:4]]):
        said = run(COMMAND, *words, home=shop.folder)
        bench.expect(said.returncode == 0, f"{words}: {said.stderr}")
    said = move(shop, shop.file, shop.owner)
    bench.expect(said.returncode == 0 and "proved whole" in said.stdout, f"there: {said.stdout}{said.stderr}")
    bench.count("moved")
    said = run(COMMAND, "server", "setup", shop.owner, "--hand", "hand", home=shop.folder)
    bench.expect(said.returncode == 0, f"setup: {said.stderr}")
    before, seen = shop_reader.Shop(str(shop.file)), shop.read()
    for table, rows in before.rows.items():
        bench.count("rows compared", len(rows))
        bench.expect(rows == seen.rows[table], f"{table} is not the same on the server")
    bench.expect(not seen.wrong, f"on the server: {seen.wrong[:1]}")


def answers(bench, shop):
    for question in QUESTIONS:
        one, other = (run(COMMAND, *question, "--shop", where, home=shop.folder)
                      for where in (shop.file, shop.hand))
        bench.expect(one.returncode == other.returncode == 0, f"{question}: {one.stderr}{other.stderr}")
        bench.expect(one.stdout == other.stdout.replace(shop.hand, str(shop.file)),
                     f"{question} is answered otherwise on the server")
        bench.count("answers compared")


def deedsOnTheServer(bench, shop):
    for deed in (DEEDS[0], *DEEDS[4:]):
        said = run(COMMAND, *deed, "--shop", shop.hand, home=shop.folder)
        bench.expect(said.returncode == 0, f"{deed} on the server: {said.stderr}")
        bench.count("deeds on the server")
    bench.expect(shop.verified().returncode == 0, f"not whole: {shop.verified().stdout}")


def filesOnTheServer(bench, shop):
    """They come out of it, and go back in all or none."""
    files = shop.folder / f"{shop.database}-files"
    taken = lambda: run(COMMAND, "import", "--from", files, "--shop", shop.hand, home=shop.folder)
    versions = lambda: int(shop.server.psql(shop.database, "SELECT count(*) AS n FROM flarestock.document")[0]["n"])
    said = run(COMMAND, "export", "--to", files, "--shop", shop.hand, home=shop.folder)
    bench.expect(said.returncode == 0, f"export: {said.stderr}")
    before = versions()
    with open(files / "builds.toml", "a", encoding="utf-8") as builds:
        builds.write("\n# edited\n")
    unread = files / "old" / "stock.csv"  # Nobody reads a file of this name again.
    unread.parent.mkdir()
    unread.write_bytes(b"\xff\xfe is no UTF-8")
    said = taken()
    bench.expect(said.returncode == 2, f"import of what cannot be kept: {said.stdout}")
    bench.expect(versions() == before, f"{versions() - before} of two files were taken in")
    unread.write_text("is UTF-8\n", encoding="utf-8")
    said = taken()
    bench.expect(said.returncode == 0 and versions() == before + 2, f"import: {said.stdout}{said.stderr}")
    bench.count("imports on the server", 2)


def back(bench, shop):
    seen = shop.read()
    for words in (["server", "move", "--from", shop.hand, "--to"], ["backup", "--shop", shop.hand, "--to"]):
        new = shop.folder / f"{shop.database}-{words[0]}"
        said = run(COMMAND, *words, new, home=shop.folder)
        bench.expect(said.returncode == 0, f"back: {said.stderr}")
        there = shop_reader.Shop(str(new))
        bench.expect(not there.wrong, f"back: {there.wrong[:1]}")
        for table, rows in rowsOf(there, but=("replica",)).items():
            bench.expect(rows == seen.rows[table], f"{table} is not the same in the file")
        bench.expect(len(there.replicas) == len(seen.replicas) + 1, "the file has no chain of its own")
        said = run(COMMAND, *DEEDS[0], "--shop", new, home=shop.folder)
        bench.expect(said.returncode == 0, f"in the file: {said.stderr}")
        bench.expect(not shop_reader.Shop(str(new)).wrong, "the file is not whole afterwards")
        bench.count("moved back")
    return new


def refusals(bench, shop, new):
    for source, to, words in ((shop.file, shop.owner, "holds a shop already"),
                              (shop.hand, new, "exists already"),
                              (shop.hand, shop.folder / "no" / "x", "is no folder"),
                              (shop.folder / "none", shop.owner, "is not there")):
        said = move(shop, source, to)
        bench.count("refused")
        bench.expect(said.returncode == 2 and words in said.stderr, f"{words}: {said.stdout}{said.stderr}")


#: What takes the tables back to what they were in version 1.
AS_BEFORE = ("DROP TABLE flarestock.layer", "DROP INDEX flarestock.movement_new_lot",
             "DROP INDEX flarestock.record_subject",
             "ALTER TABLE flarestock.balance RENAME COLUMN in_stock TO is_stock",
             "UPDATE flarestock.schema_version SET version = 1")


def older(bench, server):
    """A server of the version before: opened by nobody, brought up by its owner, layer by layer."""
    shop = Demo(server, bench.folder)
    file = sqlite3.connect(shop.file)
    file.executescript((HERE.parent / "storage" / "shop_of_schema_2.sql").read_text(encoding="utf-8"))
    file.close()
    run(COMMAND, "place", "Z9", "--kind", "bin", "--shop", shop.file, home=shop.folder)  # Brings it up.
    said = move(shop, shop.file, shop.owner)
    bench.expect(said.returncode == 0, f"first in, first out: {said.stderr}")
    setup = ("server", "setup", shop.owner, "--hand", "hand")
    run(COMMAND, *setup, home=shop.folder)
    for statement in AS_BEFORE:
        server.psql(shop.database, statement)
    said = run(COMMAND, "stock", "--shop", shop.hand, home=shop.folder)
    bench.expect(said.returncode == 2 and "server setup" in said.stderr, f"older: {said.stdout}{said.stderr}")
    said = run(COMMAND, *setup, home=shop.folder)
    bench.expect(said.returncode == 0 and "brought up" in said.stdout, f"setup: {said.stdout}{said.stderr}")
    before, seen = shop_reader.Shop(str(shop.file)), shop.read()
    bench.expect(len(before.rows["layer"]) == 7, "the shop has other layers than it should")
    for table, rows in before.rows.items():
        bench.expect(rows == seen.rows[table], f"{table} is not the same on the server brought up")
    bench.expect(not seen.wrong and shop.verified().returncode == 0, f"brought up: {seen.wrong[:1]}")
    said = run(COMMAND, "move", "AD-3-3", "8", "--from", "trailer-1", "--to", "A1", "--shop", shop.hand,
               home=shop.folder)
    bench.expect(said.returncode == 0, f"goes on: {said.stderr}")
    bench.expect(not shop.read().wrong, f"goes on: {shop.read().wrong[:1]}")
    bench.count("brought up")


def damaged(bench, server):
    """A movement changed from outside: nothing of it reaches the server."""
    shop = Demo(server, bench.folder)
    run(SHOP_WRITER, "make", shop.file, home=shop.folder)
    file = sqlite3.connect(shop.file)
    file.execute("DROP TRIGGER movement_stays")
    file.execute("UPDATE movement SET quantity = quantity + 1")
    file.commit()
    file.close()
    said = move(shop, shop.file, shop.owner)
    bench.count("refused")
    bench.expect(said.returncode == 2 and "is not whole" in said.stderr, f"damaged: {said.stdout}{said.stderr}")
    left = server.psql(shop.database, "SELECT count(*) AS n FROM pg_namespace WHERE nspname = 'flarestock'")
    bench.expect(left[0]["n"] == "0", "something of the damaged one is left on the server")


def test(bench):
    with Server() as server:
        shop = Demo(server, bench.folder)
        there(bench, shop)
        answers(bench, shop)
        deedsOnTheServer(bench, shop)
        filesOnTheServer(bench, shop)
        refusals(bench, shop, back(bench, shop))
        damaged(bench, server)
        older(bench, server)


if __name__ == "__main__":
    main("A shop moves to a server and back", test)
