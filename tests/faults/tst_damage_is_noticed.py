# SPDX-License-Identifier: MIT
"""R10: damage is noticed. Bits flip, the file is cut short, pages change places, a log of another file or
of another day lies beside it.

Measured: `verify` calls a file whole only where another program still reads every row as it was; it names
the last good movement, which the other program finds for itself; and neither `verify` nor a refused `move`
changes a byte. A `move` into damage that only the chain of hashes shows does not hide it from `verify`."""

import os
import re
import signal
import sqlite3
import subprocess

import bench as b
from shop_reader import Shop, Wrong

FLIPS, CUTS, SWAPS = (1000, 100, 100) if b.LONG else (200, 30, 40)
LOGS = 40 if b.LONG else 8


class Damaged:
    """One damaged copy of a good shop."""

    def __init__(self, bench, good, verify):
        self.bench, self.good, self.verify = bench, good, verify
        self.original = Shop(str(good))
        self.shop = bench.folder / "damaged"

    def hashes(self):
        return {tail: b.sha256(f"{self.shop}{tail}") for tail in ("", "-wal", "-journal")
                if os.path.exists(f"{self.shop}{tail}") and os.path.getsize(f"{self.shop}{tail}")}

    def seen(self):
        try:
            return Shop(str(self.shop))
        except Wrong:
            return None

    def noticed(self, when, alike=()):
        """Whether `verify` notices it; `alike`: other shops whose state would be right too."""
        before, seen = self.hashes(), self.seen()
        ran = b.run(*self.verify, self.shop)
        self.bench.expect(self.hashes() == before, f"{when}: verify wrote to the file")
        if ran.done:
            states = [shop.rows for shop in (self.original, *alike)]
            self.bench.expect(seen is not None and seen.rows in states,
                              f"{when}: harmful and not noticed")
            self.bench.count("harmless, called whole")
            return False
        self.bench.expect(ran.refused or self.verify[0] == self.bench.programs.writer,
                          f"{when}: {ran}")
        self.bench.count("noticed")
        self.last_good(ran, seen, when, alike)
        return True

    def last_good(self, ran, seen, when, alike):
        named = re.search(r"last good movement is (\S+)", ran.err.replace(". ", " "))
        if not named:
            self.bench.count("of them refused before a row was read")
            return
        ids = [entry for shop in (self.original, *alike) for entry in shop.ids]
        name = named.group(1).replace("-", "")
        if seen is not None:
            good = [row["id"].hex() for row in seen.good if "kind" not in row]
            self.bench.expect(name == (good[-1] if good else "none"),
                              f"{when}: names {name}, the last good one is {good[-1:]}")
            self.bench.count("last good movement named, and found by another program")
        else:
            self.bench.expect(name == "none" or name in ids, f"{when}: names {name}, which never was")

    def structure(self):
        """Whether SQLite, asked by another program, finds the file in order."""
        copy = self.bench.folder / "asked"
        b.copy_shop(self.shop, copy)
        connection = sqlite3.connect(copy)
        try:
            return connection.execute("PRAGMA quick_check").fetchall() == [("ok",)]
        except (sqlite3.Error, UnicodeError):  # A message may have a damaged name in it.
            return False
        finally:
            connection.close()

    def move_into(self, when, was_noticed):
        before, self.structure_is_good = self.hashes(), self.structure()
        words = b.move_words(self.bench.programs, self.shop, b.fresh_id(self.bench.dice))
        ran = b.run(*(words if self.verify[0] == self.bench.programs.command else
                      [self.bench.programs.writer, "moves", self.shop, 900, 2]))
        if not ran.done:
            self.bench.expect(ran.refused, f"{when}: move into it: {ran}")
            self.bench.expect(self.hashes() == before, f"{when}: a refused move wrote to the file")
            self.bench.count("moves refused")
            return
        self.bench.count("moves taken, though noticed" if was_noticed else "moves taken")
        self.bench.expect(self.structure_is_good, f"{when}: a move was taken into a damaged file")
        if was_noticed:
            again = b.run(*self.verify, self.shop)
            self.bench.expect(not again.done, f"{when}: a move hid the damage")


def good_shop(bench):
    shop = bench.small_shop("good")
    for words in (["moves", shop, 2, 60], ["document", shop, 1, 4], ["box", shop, 1, 6]):
        b.run(bench.programs.writer, *words)
    return shop


def damaged_bytes(bench, damaged):
    """(what was done, the bytes)"""
    raw, dice = damaged.good.read_bytes(), bench.dice
    page = 4096
    for _ in range(FLIPS):
        bad, at = bytearray(raw), dice.randrange(len(raw))
        bad[at] ^= 1 << dice.randrange(8)
        yield f"bit flipped in byte {at}", bad
    for _ in range(CUTS):
        size = dice.randrange(len(raw))
        yield f"cut to {size} bytes", raw[:size // page * page if dice.random() < 0.5 else size]
    for _ in range(SWAPS):
        one, two = dice.sample(range(len(raw) // page), 2)
        bad = bytearray(raw)
        bad[one * page:(one + 1) * page] = raw[two * page:(two + 1) * page]
        bad[two * page:(two + 1) * page] = raw[one * page:(one + 1) * page]
        yield f"pages {one} and {two} swapped", bad


def write(shop, raw):
    for tail in ("-wal", "-shm", "-journal"):
        if os.path.exists(f"{shop}{tail}"):
            os.unlink(f"{shop}{tail}")
    shop.write_bytes(raw)


def damage(bench, verify, every=1):
    damaged = Damaged(bench, good_shop(bench), verify)
    for number, (when, raw) in enumerate(damaged_bytes(bench, damaged)):
        if number % every:
            continue
        write(damaged.shop, raw)
        bench.count(re.sub(r"s? ?\d.*| in.*", "", when).replace("page", "pages swapped"))
        noticed = damaged.noticed(when)
        if every > 1 or number % (1 if b.LONG else 3) == 0:
            damaged.move_into(when, noticed)


def killed_at_work(bench, shop, first):
    """A shop file with the log of a writer that was killed."""
    writer = subprocess.Popen([bench.programs.writer, "moves", str(shop), str(first), "100000"],
                              stdout=subprocess.PIPE)
    for _ in range(bench.dice.randrange(1, 40)):
        writer.stdout.readline()
    writer.send_signal(signal.SIGKILL)
    writer.communicate()


def foreign_logs(bench, verify):
    """Beside the good shop lies the log of another shop, or of itself on another day."""
    damaged = Damaged(bench, good_shop(bench), verify)
    other, later = bench.small_shop("other"), bench.folder / "later"
    for turn in range(LOGS):
        if turn % 2 == 0:
            source = other
            killed_at_work(bench, other, 2 + 2000 * turn)
        else:
            source = later
            b.copy_shop(damaged.good, later)
            b.run(bench.programs.writer, "moves", later, 1000, 2 * bench.dice.randrange(20))
            killed_at_work(bench, later, 2000)
        alike = [Shop(str(source))]
        write(damaged.shop, damaged.good.read_bytes())
        (bench.folder / "damaged-wal").write_bytes((bench.folder / f"{source.name}-wal").read_bytes())
        bench.count("foreign logs")
        when = f"log of {'another shop' if source is other else 'another day'}, {turn}"
        damaged.move_into(when, damaged.noticed(when, alike))


def test(bench):
    verify = [bench.programs.command, "verify"]
    damage(bench, verify)
    for name in os.listdir(bench.folder):
        os.unlink(bench.folder / name)
    foreign_logs(bench, verify)


def planted(bench):
    damage(bench, [bench.programs.writer, "verify"], 3)


def planted_log(bench):
    foreign_logs(bench, [bench.programs.writer, "verify"])


if __name__ == "__main__":
    b.main("damage is noticed", test, [
        ("the chain of hashes is not followed", planted, "chain_not_followed"),
        ("damage is not looked for before writing", planted, "damage_not_looked_for"),
        ("a foreign log is brought in by closing", planted_log, "logs_not_held_back"),
    ])
