# SPDX-License-Identifier: MIT
"""Copies used: two copies of a shop taken along, used by commands alone, brought in odd orders, twice,
and by programs that are killed in the middle of it. What is asked in the end is asked by another
program (shop_reader). The same for a shop in a file and for one on a server.

A shop that is used has: `address`, for --shop; `folder`, where its copies lie; `run(*words)`, which runs
flarestock; `start(*words)`, which starts it; `read()`, what shop_reader sees in it.
"""

import json
import sqlite3
import time

from shop_reader import Shop

PART = "BK-A"


class Used:
    """The shop, its copies, and what was acknowledged anywhere."""

    def __init__(self, bench, shop):
        self.bench, self.shop, self.ids = bench, shop, set()
        self.copies = {}

    def run(self, *words, good=True, where=None):
        ran = self.shop.run(*words, "--shop", where or self.shop.address)
        self.bench.count("commands")
        if good:
            self.bench.expect(ran.done, f"{' '.join(map(str, words))}: {ran}")
        return ran

    def json(self, *words, where=None, good=True):
        ran = self.run(*words, "--json", where=where, good=good)
        try:
            return json.loads(ran.out)
        except ValueError:
            self.bench.fail(f"{' '.join(map(str, words))}: no document: {ran}")
            return {}

    def move(self, quantity, source, to, part=PART, where=None):
        """A movement that was acknowledged has to be there in the end."""
        said = self.json("move", part, quantity, "--from", source, "--to", to, where=where)
        self.ids.add(said.get("movement", "").replace("-", ""))
        return said.get("movement")

    def take(self, name, *places):
        path = self.shop.folder / f"{name}.flarestock"
        words = [word for place in places for word in ("--places", place)]
        self.json("trailer", "take", "--to", path, "--with", "Ada Berg", *words)
        self.copies[name] = path
        return path

    def bring(self, name, *decisions, good=True):
        words = [word for one in decisions for word in ("--decide", one)]
        return self.json("trailer", "bring", self.copies[name], *words, good=good)

    def open_names(self, said):
        return sorted(one["name"] for one in said["disagreements"] if one["decided"] is None)

    def whole(self, when):
        seen = self.shop.read()
        self.bench.expect(not seen.wrong, f"{when}: {seen.wrong[:1]}")
        self.bench.count("read by another program")
        return seen

    def stock(self, place, part=PART):
        seen = self.shop.read()
        return sum(held[0] for key, held in seen.balances.items() if key[:2] == (part, place))


def places(used):
    for place, kind in (("T2", "drawer"), ("B9", "bin"), ("difference", "difference"),
                        ("bench", "bench")):
        used.run("place", place, "--kind", kind)
    used.move(5, "A1", "trailer-1")
    used.move(5, "A1", "T2")
    used.move(1, "A1", "B9")


def is_kept_away(used):
    """What is with a copy cannot be touched here, and who has it is said; in the copy it can."""
    for words in (("move", PART, 1, "--from", "trailer-1", "--to", "car-1"),
                  ("move", PART, 1, "--from", "A1", "--to", "trailer-1"),
                  ("count", PART, 3, "--place", "trailer-1")):
        ran = used.run(*words, good=False)
        used.bench.expect(ran.status == 2 and "Ada Berg" in ran.err and "one" in ran.err,
                          f"{words} of what is away: {ran}")
    said = used.json("trailer", "list")
    out = {copy["copy"]: copy["places"] for copy in said["copies"] if copy["out"]}
    used.bench.expect(out == {"one": ["trailer-1"], "two": ["T2"]}, f"listed: {out}")
    mine = used.json("trailer", "list", where=used.copies["one"])
    used.bench.expect(mine["thisIsTrip"] == said["copies"][0]["trip"], f"in the copy: {mine}")
    ran = used.run("trailer", "take", "--to", used.shop.folder / "more.flarestock", "--places", "T2",
                   good=False)
    used.bench.expect(ran.status == 2 and '"two"' in ran.err, f"taken twice: {ran}")


def travels_alone(used):
    """One file, in journal mode DELETE, with nothing beside it after it was used."""
    for path in used.copies.values():
        header = path.read_bytes()[18:20]
        used.bench.expect(header == b"\x01\x01", f"{path.name} keeps a log: {header}")
        for tail in ("-wal", "-shm", "-journal"):
            used.bench.expect(not path.with_name(path.name + tail).exists(),
                              f"{path.name}{tail} lies beside it")
        seen = Shop(str(path))
        used.bench.expect(not seen.wrong, f"the copy {path.name}: {seen.wrong[:1]}")


def used_on_all_sides(used):
    """The shop and both copies go on; what they do does not disagree."""
    used.move(3, "A1", "car-1")
    for name, place in (("one", "trailer-1"), ("two", "T2")):
        where = used.copies[name]
        used.move(2, place, "car-1", where=where)
        used.move(1, place, "used-up", where=where)
        used.move(4, "A1", place, where=where)
        used.move(1, "A1", "car-1", part="BK-B", where=where)
    used.run("place", "Z1", "--kind", "bin", where=used.copies["two"])
    used.move(1, "A1", "Z1", where=used.copies["two"])


def brought_in_odd_orders(used):
    look = used.json("trailer", "look", used.copies["two"])
    used.bench.expect(not look["brought"] and len(look["movements"]) == 5, f"looked: {look}")
    before = len(used.shop.read().entries)
    first = used.bring("two")
    used.bench.expect(first["brought"] and len(used.shop.read().entries) > before, f"two: {first}")
    used.whole("two is brought")
    again = used.bring("two")
    used.bench.expect(again["already"] and not again["brought"], f"two again: {again}")
    used.bring("one")
    used.bring("two")
    used.bench.expect(used.bring("one")["already"], "one again brings something")
    used.whole("both are brought")
    used.bench.expect(used.stock("trailer-1") == 6 and used.stock("T2") == 6, "the drawers are wrong")
    used.bench.expect(used.stock("Z1") == 1, "the place of the copy is not here")
    used.bench.expect(used.json("trailer", "list")["copies"][0]["out"] is False, "one is still away")
    used.move(1, "trailer-1", "car-1")  # It is the shop's again.


def goes_on_and_is_brought_again(used):
    used.move(1, "trailer-1", "car-1", where=used.copies["one"])
    said = used.bring("one")
    used.bench.expect(said["brought"] and len(said["movements"]) == 1, f"only the new one: {said}")
    used.whole("one has gone on")


def both_used_the_last(used):
    """The last piece of a bin, taken on both sides; and the same place counted on both sides."""
    used.take("three", "trailer-1")
    used.move(1, "B9", "car-1")
    used.move(1, "B9", "used-up", where=used.copies["three"])
    held = used.stock("A1", "BK-C")
    for where, found in ((None, held - 2), (used.copies["three"], held - 3)):
        used.json("count", "BK-C", found, "--place", "A1", where=where)
    said = used.bring("three", good=False)
    used.bench.expect(not said["brought"], "it was brought with two things open")
    names = used.open_names(said)
    used.bench.expect(names == [f"below-zero:{PART}@B9", "count:BK-C@A1"], f"open: {names}")
    ran = used.run("trailer", "bring", used.copies["three"], "--decide", f"{names[0]}=difference",
                   good=False)
    used.bench.expect(ran.status == 1 and "--decide" in ran.out, f"one is still open: {ran}")
    ran = used.run("trailer", "bring", used.copies["three"], "--decide", f"{names[0]}=perhaps",
                   good=False)
    used.bench.expect(ran.refused and "difference" in ran.err, f"no such word: {ran}")
    before = len(used.shop.read().entries)
    used.bench.expect(before == len(used.shop.read().entries), "something was written")
    said = used.bring("three", f"{names[0]}=difference", f"{names[1]}=shop")
    used.bench.expect(said["brought"] and len(said["settled"]) == 1, f"decided: {said}")
    seen = used.whole("what disagreed is decided")
    used.bench.expect(used.stock("B9") == 0, "the last piece is still there")
    used.bench.expect(used.stock("A1", "BK-C") == held - 2, "the shop's count does not count")
    words = [json.loads(row["fields"]).get("decided") for row in seen.records
             if row["kind"] == "decision"]
    used.bench.expect(words == ["difference", "shop"], f"written down: {words}")


def released_and_ended(used):
    used.take("four", "T2")
    used.run("trailer", "release", "four", "--places", "T2", "--why", "the car cannot wait")
    used.move(1, "T2", "car-1")
    used.run("trailer", "end", "four", "--why", "the computer was stolen")
    used.bench.expect(used.json("trailer", "list")["copies"][-1]["out"] is False, "four is away")
    used.move(1, "T2", "car-1", where=used.copies["four"])
    used.bench.expect(used.bring("four")["brought"], "it came back all the same")
    used.whole("four is brought")


def killed_in_the_middle(used, times):
    """Killed at any moment of it: all of it is there, or nothing; then it is brought."""
    path = used.take("five", "trailer-1")
    for _ in range(12):
        used.move(1, "A1", "car-1", part="BK-B", where=path)
    halves = 0
    for _ in range(times):
        before = len(used.shop.read().entries)
        began = time.monotonic()
        program = used.shop.start("trailer", "bring", path, "--goes-on", "--shop", used.shop.address)
        time.sleep(used.bench.dice.uniform(0, 0.12))
        program.kill()
        program.wait()
        used.bench.count("killed")
        after = len(used.whole("killed in the middle").entries)
        if after not in (before, before + 14):  # Twelve, how its chain begins, and the trip.
            halves += 1
        if after > before:
            used.move(1, "A1", "car-1", part="BK-B", where=path)
            used.bring("five")
            used.bench.count("was brought all the same")
            path = used.take(f"five-{used.bench.dice.random()}", "T2")
            used.copies["five"] = path
            for _ in range(12):
                used.move(1, "A1", "car-1", part="BK-B", where=path)
    used.bench.expect(halves == 0, f"{halves} were brought half")
    used.bring("five")
    used.whole("brought after all")


def nothing_lost(used):
    seen = used.shop.read()
    there = {row["id"].hex() for row in seen.movements}
    used.bench.expect(used.ids <= there, f"{len(used.ids - there)} acknowledged are not there")
    used.bench.count("acknowledged", len(used.ids))


def changed_outside(used):
    """A copy that was changed by other means is not taken, and nothing of it stays."""
    path = used.take("six", "trailer-1")
    used.move(1, "A1", "car-1", where=path)
    file = sqlite3.connect(path)
    file.execute("DROP TRIGGER movement_stays")
    file.execute("UPDATE movement SET quantity = 2 WHERE replica = (SELECT max(number) FROM replica)")
    file.commit()
    file.close()
    before = len(used.shop.read().entries)
    ran = used.run("trailer", "bring", path, good=False)
    used.bench.expect(ran.status == 2 and "not whole" in ran.err, f"changed: {ran}")
    used.bench.expect(len(used.shop.read().entries) == before, "something of it stays")
    used.ids = {one for one in used.ids if one in {row["id"].hex() for row in used.shop.read().movements}}
    used.run("trailer", "end", "six", "--why", "it was changed by other means")


def all_of_it(bench, shop, kills):
    used = Used(bench, shop)
    places(used)
    used.take("one", "trailer-1")
    used.take("two", "T2")
    is_kept_away(used)
    used_on_all_sides(used)
    travels_alone(used)
    brought_in_odd_orders(used)
    goes_on_and_is_brought_again(used)
    both_used_the_last(used)
    released_and_ended(used)
    killed_in_the_middle(used, kills)
    nothing_lost(used)
    changed_outside(used)
