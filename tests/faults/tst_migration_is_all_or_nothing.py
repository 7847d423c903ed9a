# SPDX-License-Identifier: MIT
"""R12: a file of an older version becomes one of this version wholly or not at all. Its migration is
recorded, the power goes at each call, what was not synced meets five fates (crash_images.py), and another
program reads each image: the old shop to the last byte of every row, or the new one, whole, with the same
journal. Where the program had said that it was done, the new one, and the copy of the old one beside it.

Measured: 0 in-between states in every call and fate."""

import os
import sqlite3
import sys

import bench as b
from crash_images import FATES, Recording, read_trace
from shop_reader import Shop, Wrong

OLD = {version: b.HERE.parent / "storage" / f"shop_of_schema_{version}.sql" for version in (1, 2)}
OPENED = 60 if b.LONG else 12  # Images that the program itself is given.


def old_shop(path, version):
    connection = sqlite3.connect(path, isolation_level=None)
    connection.executescript(OLD[version].read_text(encoding="utf-8"))
    connection.execute("PRAGMA journal_mode = WAL")
    connection.close()


def rows_of(path):
    """The version, and every row of every table but SQLite's own."""
    connection = sqlite3.connect(path, isolation_level=None)
    try:
        if connection.execute("PRAGMA integrity_check").fetchall() != [("ok",)]:
            return 0, {}
        version = connection.execute("PRAGMA user_version").fetchone()[0]
        tables = [row[0] for row in connection.execute(
            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")]
        return version, {table: sorted(connection.execute(f"SELECT * FROM {table}").fetchall(),
                                       key=repr) for table in tables}
    finally:
        connection.close()


class Image:
    """A folder with the disk as it may look; judged by another program than ours."""

    def __init__(self, bench, old):
        self.old, self.folder = old, bench.folder / "image"
        self.folder.mkdir(exist_ok=True)

    def write(self, files):
        for name in os.listdir(self.folder):
            os.unlink(self.folder / name)
        for path, raw in files.items():
            (self.folder / os.path.basename(path)).write_bytes(raw)

    def wrong(self, done):
        shop, copy = self.folder / "shop", self.folder / f"shop.schema-{self.old[0]}"
        if copy.exists() and rows_of(copy) != self.old:
            return "the copy of the old shop is not the old shop"
        try:
            version, rows = rows_of(shop)
        except sqlite3.Error as error:
            return f"the file cannot be read: {error}"
        if version == self.old[0] and not done:
            return "" if (version, rows) == self.old else "the old shop has changed"
        if version != 3:
            return f"the file says version {version}" + (", done was said" if done else "")
        if not copy.exists():
            return "it is of the new version, and there is no copy of the old one"
        try:
            seen = Shop.of_image(str(shop))
        except Wrong as wrong:
            return f"the file {wrong}"
        ids = {row[0] for row in self.old[1]["movement"]}
        if {row["id"] for row in seen.movements} != ids:
            return "the journal is not the old one"
        return seen.wrong[0] if seen.wrong else ""


def recorded(bench, version):
    folder = bench.folder / f"recorded-{version}"
    folder.mkdir()
    shop, trace = folder / "shop", bench.folder / f"trace-{version}"
    old_shop(shop, version)
    old = rows_of(shop)
    start = {str(folder / name): (folder / name).read_bytes()
             for name in os.listdir(folder) if not name.endswith("-shm")}
    # Opening it for writing migrates it.
    ran = b.run(bench.programs.writer, "moves", shop, 2, 0, LD_PRELOAD=bench.programs.failing_disk,
                DISK_FOLDER=folder, DISK_TRACE=trace)
    if not ran.done:
        sys.exit(f"the migration cannot be recorded: {ran}")
    return read_trace(str(trace)) + [("A", "said", 0, b"done\n")], start, old


def test(bench):
    for version, movements in ((1, 5), (2, 14)):
        migrate(bench, version, movements)


def migrate(bench, version, movements):
    calls, start, old = recorded(bench, version)
    bench.expect(old[0] == version and len(old[1]["movement"]) == movements,
                 "the old shop is not what it was")
    image, recording = Image(bench, old), Recording(calls, start)
    opened = set(bench.dice.sample(range(len(calls)), min(OPENED, len(calls))))
    for number in recording.walk():
        for fate in FATES:
            image.write(recording.image(fate, f"{b.SEED} {number} {fate}"))
            bench.count("images")
            wrong = image.wrong(bool(recording.said))
            bench.expect(not wrong, f"call {number} of {len(calls)}, {fate}: {wrong}")
        if number in opened and not bench.wrong:
            image.write(recording.image(FATES[number % len(FATES)], f"{b.SEED} {number}"))
            ran = b.run(bench.programs.writer, "moves", image.folder / "shop", 2, 0)
            bench.expect(ran.done, f"call {number}: does not open again: {ran}")
            wrong = image.wrong(True)
            bench.expect(not wrong, f"call {number}, opened again: {wrong}")
            bench.count("images opened by the program")
    bench.expect(bench.counts["images"] >= 100 * version, "too few images")


if __name__ == "__main__":
    b.main("a migration is all or nothing", test, [
        ("the version is said in a transaction of its own", test, "version_said_later"),
        ("nothing is copied before", test, "no_copy_before"),
    ])
