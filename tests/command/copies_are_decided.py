# SPDX-License-Identifier: MIT
"""What a copy and its shop do not agree on, brought together by each word that is offered for it.

    copies_are_decided.py FLARESTOCK

Each disagreement is made by commands on both sides; nothing is brought before a word is said, and
what stands afterwards is what the word says. Bringing once more brings nothing.
"""

import json
import sqlite3
import subprocess
import sys
import tempfile
from pathlib import Path

FLARESTOCK = sys.argv[1]


class Pair:
    """A demo shop and a copy of it that is away; the shop uses the trailer's drawers all the same."""

    made = None

    def __init__(self, folder, before=()):
        self.folder = Path(tempfile.mkdtemp(dir=folder))
        self.shop, self.copy = str(self.folder / "shop"), str(self.folder / "copy")
        self.run("demo", "--to", self.shop)
        for words in before:
            self.at_shop(*words)
        self.at_shop("trailer", "take", "--to", self.copy, "--name", "along")
        self.at_shop("trailer", "release", "along", "--places", "trailer-1", "--places", "trailer-2")

    @staticmethod
    def run(*words, status=0):
        ran = subprocess.run([FLARESTOCK, *words], capture_output=True, text=True, check=False)
        assert ran.returncode == status, (words, ran.returncode, ran.stdout, ran.stderr)
        return ran.stdout

    def at_shop(self, *words, status=0):
        return self.run(*words, "--shop", self.shop, status=status)

    def in_copy(self, *words):
        return self.run(*words, "--shop", self.copy)

    def edit(self, name, change):
        """A document of the shop, exported, changed and taken in again."""
        files = Path(tempfile.mkdtemp(dir=self.folder)) / "files"
        self.at_shop("export", "--to", str(files))
        text = (files / name).read_text(encoding="utf-8")
        changed = change(text)
        assert changed != text, name
        (files / name).write_text(changed, encoding="utf-8")
        self.at_shop("import", "--from", str(files))

    def open(self):
        said = json.loads(self.at_shop("trailer", "look", self.copy, "--json"))
        return {one["name"]: [choice["word"] for choice in one["choices"]]
                for one in said["disagreements"] if one["decided"] is None}

    def bring(self, *decisions):
        words = [word for one in decisions for word in ("--decide", one)]
        before = self.open()
        if before:
            self.at_shop("trailer", "bring", self.copy, status=1)
            assert self.open() == before, "it was brought, or decided, before a word was said"
        self.at_shop("trailer", "bring", self.copy, *words)
        assert "nothing new" in self.at_shop("trailer", "bring", self.copy)
        self.run("verify", self.shop)

    def on_hand(self, part, place):
        lines = json.loads(self.at_shop("stock", "--find", part, "--json"))["stock"]
        return sum(float(one["onHand"]) for one in lines if one["part"] == part and one["place"] == place)


def counted_on_both_sides(folder):
    for word, left in (("shop", 2), ("copy", 0), ("both", 1)):
        pair = Pair(folder)
        pair.in_copy("count", "EM-40-S", "0", "--place", "trailer-1")
        pair.at_shop("count", "EM-40-S", "2", "--place", "trailer-1")
        assert list(pair.open()) == ["count:EM-40-S@trailer-1"], pair.open()
        assert set(pair.open()["count:EM-40-S@trailer-1"]) == {"shop", "copy", "both"}
        pair.bring(f"count:EM-40-S@trailer-1={word}")
        assert pair.on_hand("EM-40-S", "trailer-1") == left, (word, pair.on_hand("EM-40-S", "trailer-1"))


def emptied_on_both_sides(folder):
    """What both have found is asked once at most, and lies there by each answer as the answer says."""
    name = "count:EC-100-S@H4"
    take, count = ("move", "--to", "used-up"), ("count",)

    def done(side, work, much):
        where = ("--from", "H4") if work is take else ("--place", "H4")
        side(work[0], "EC-100-S", str(much), *where, *work[1:])

    # Two lie in H4: what is done in the copy, what at home, and what lies there by each word.
    for there, here, left in (
            ([(count, 0)], [(count, 0)], {None: 0}),
            ([(count, 1)], [(count, 1)], {None: 1}),
            ([(count, 5)], [(count, 5)], {None: 5}),
            ([(count, 1)], [(count, 0)], {"shop": 0, "copy": 1, "both": 0}),
            ([(count, 0)], [(count, 1)], {"shop": 1, "copy": 0, "both": 0}),
            ([(count, 2)], [(count, 0)], {"shop": 0, "copy": 2, "both": 0}),
            ([(count, 5)], [(count, 0)], {"shop": 0, "copy": 5, "both": 3}),
            ([(take, 1), (count, 1)], [(count, 0)], {"shop": 0, "copy": 1, "both": 0}),
            ([(count, 0)], [(take, 2), (count, 0)], {"shop": 0, "copy": 0, "both": 0}),
            ([(take, 1), (count, 0)], [(take, 1), (count, 0)], {None: 0}),
            ([(count, 0), (count, 2)], [(count, 0)], {"shop": 0, "copy": 2, "both": 0})):
        for word, lies in left.items():
            pair = Pair(folder)
            for deeds, side in ((there, pair.in_copy), (here, pair.at_shop)):
                for work, much in deeds:
                    done(side, work, much)
            assert list(pair.open()) == ([name] if word else []), (there, here, pair.open())
            pair.bring(*([f"{name}={word}"] if word else []))
            assert pair.on_hand("EC-100-S", "H4") == lies, (there, here, word, pair.on_hand("EC-100-S", "H4"))
    # Both took two of the two and counted none: that is no matter of counting.
    pair = Pair(folder)
    for side in (pair.in_copy, pair.at_shop):
        done(side, take, 2)
        done(side, count, 0)
    assert list(pair.open()) == ["below-zero:EC-100-S@H4"], pair.open()
    pair.bring("below-zero:EC-100-S@H4=difference")
    assert pair.on_hand("EC-100-S", "H4") == 0


def below_zero(folder):
    for word, there in (("difference", 0), ("from:E3", -1)):
        pair = Pair(folder)
        had = pair.on_hand("HE-6", "E3")
        pair.in_copy("move", "HE-6", "2", "--from", "trailer-2", "--to", "used-up")
        pair.at_shop("move", "HE-6", "1", "--from", "trailer-2", "--to", "car-1")
        assert list(pair.open()) == ["below-zero:HE-6@trailer-2"], pair.open()
        pair.bring(f"below-zero:HE-6@trailer-2={word}")
        assert pair.on_hand("HE-6", "trailer-2") == 0
        assert pair.on_hand("HE-6", "E3") == had + there
        # Of what was made up for neither side's goes back alone; else a piece would lie there that is not.
        done = json.loads(pair.at_shop("history", "HE-6", "--json"))["movements"]
        for to in ("used-up", "car-1"):
            took = next(one for one in done if (one["from"], one["to"]) == ("trailer-2", to))
            pair.at_shop("take-back", took["movement"], status=2 if word == "difference" else 0)
            assert pair.on_hand("HE-6", "trailer-2") == (0 if word == "difference" else 2 if to == "used-up" else 3)


def several_below_zero(folder):
    """All that lacks is asked about once; only a place that has that much is offered, and taken."""
    name = "below-zero:HE-6@trailer-2"
    pair = Pair(folder)
    had = pair.on_hand("HE-6", "E3")
    for _ in range(2):
        pair.in_copy("move", "HE-6", "1", "--from", "trailer-2", "--to", "used-up")
    pair.at_shop("move", "HE-6", "2", "--from", "trailer-2", "--to", "car-1")
    pair.at_shop("move", "HE-6", "1", "--from", "E3", "--to", "E4")
    (asked,) = json.loads(pair.at_shop("trailer", "look", pair.copy, "--json"))["disagreements"]
    assert asked["name"] == name, asked
    assert asked["lacking"] == {"part": "HE-6", "smallestUnits": "2"}, asked
    words = [one["word"] for one in asked["choices"]]
    assert words == ["difference", "from:E3"], words
    for wrong in ("from:E4", "from:NOWHERE", "from:"):
        pair.at_shop("trailer", "bring", pair.copy, "--decide", f"{name}={wrong}", status=2)
    pair.bring(f"{name}=from:E3")
    assert pair.on_hand("HE-6", "trailer-2") == 0
    assert pair.on_hand("HE-6", "E3") == had - 3, pair.on_hand("HE-6", "E3")


def a_part_is_called_otherwise(folder):
    def add(text):
        return text + "".join(line.replace("CP-6,", "CP-6A,", 1) for line in text.splitlines(True)
                              if line.startswith("CP-6,"))

    for word, found in (("keep", ("CP-6A", "CP-6B")), ("as:CP-6B", ("CP-6B", "CP-6A"))):
        pair = Pair.__new__(Pair)
        pair.folder = Path(tempfile.mkdtemp(dir=folder))
        pair.shop, pair.copy = str(pair.folder / "shop"), str(pair.folder / "copy")
        pair.run("demo", "--to", pair.shop)
        pair.edit("parts/caps-plugs.csv", add)
        pair.at_shop("trailer", "take", "--to", pair.copy, "--name", "along")
        pair.in_copy("receive", "CP-6A", "3", "--from", "supplier-TCF", "--to", "trailer-2", "--cost", "9")
        pair.edit("parts/caps-plugs.csv", lambda text: text.replace("CP-6A,", "CP-6B,"))
        assert pair.open() == {"part:CP-6A": ["keep", "as:"]}, pair.open()
        pair.bring(f"part:CP-6A={word}")
        assert pair.on_hand(found[1], "trailer-2") == 0
        if word != "keep":  # What the catalogue has no more is not found by its words.
            assert pair.on_hand(found[0], "trailer-2") == 3


def a_build_and_its_template(folder):
    pair = Pair(folder)
    pair.in_copy("reserve", "coupe-classic", "LC-6")
    pair.edit("builds.toml", lambda text: text.replace('id = "coupe-classic"', 'id = "coupe-old"'))
    assert pair.open() == {"build:coupe-classic": ["keep"]}, pair.open()
    pair.bring("build:coupe-classic=keep")

    pair = Pair(folder)
    pair.in_copy("reserve", "coupe-classic", "LC-6")
    pair.edit("templates/carburettor-dead-head.toml", lambda text: "# Looked through.\n" + text)
    assert pair.open() == {"template:coupe-classic": ["seen"]}, pair.open()
    pair.bring("template:coupe-classic=seen")


def orders_under_one_number(folder):
    for word in ("renumber", "shop"):
        pair = Pair(folder)
        pair.in_copy("order", "new", "--supplier", "TCF", "--line", "AD-3-3 12")
        pair.at_shop("order", "new", "--supplier", "TCF", "--line", "AD-8-8 4")
        (name, words), = pair.open().items()
        assert name.startswith("order:") and set(words) == {"shop", "renumber"}, (name, words)
        pair.bring(f"{name}={word}")
        orders = {one["number"]: [line["part"] for line in one["lines"]] for one in
                  (json.loads(pair.at_shop("order", "show", order["number"], "--json"))
                   for order in json.loads(pair.at_shop("order", "list", "--json"))["orders"])}
        number = name.split(":")[1]
        assert orders[number] == ["AD-8-8"], orders
        other = number[:-1] + str(int(number[-1]) + 1)
        assert orders.get(other) == (["AD-3-3"] if word == "renumber" else None), orders


def the_newest_word(folder):
    for word, least in (("copy", "5"), ("shop", "9")):
        pair = Pair(folder)
        pair.in_copy("keep", "HE-6", "--place", "trailer-2", "--min", "5")
        pair.at_shop("keep", "HE-6", "--place", "trailer-2", "--min", "9")
        (name, words), = pair.open().items()
        assert name.startswith("word:") and set(words) == {"copy", "shop"}, (name, words)
        pair.bring(f"{name}={word}")
        lists = json.loads(pair.at_shop("load", "list", "--json"))
        said = [line["min"] for drawer in lists["drawers"] for line in drawer["lines"] if line["part"] == "HE-6"]
        assert said == [least], (word, said)


def promised_twice(folder):
    both = {"coupe-gearbox", "roadster-gearbox"}  # One is left for two.
    for word, builds in (("both", both), ("shop", {"coupe-gearbox"}), ("copy", {"roadster-gearbox"})):
        pair = Pair(folder, [("move", "EC-100-S", "2", "--from", "H4", "--to", "used-up")])
        pair.in_copy("reserve", "roadster-gearbox", "EC-100-S")
        pair.at_shop("reserve", "coupe-gearbox", "EC-100-S")
        (name, words), = pair.open().items()
        assert name == "promise:EC-100-S" and set(words) == {"both", "shop", "copy"}, (name, words)
        pair.bring(f"{name}={word}")
        # Two come by: then each that is promised one has it.
        pair.at_shop("receive", "EC-100-S", "2", "--from", "supplier-TCF", "--to", "H4", "--cost", "40")
        lines = json.loads(pair.at_shop("stock", "--find", "EC-100-S", "--json"))["stock"]
        promised = {build for build in both if any(f"promised to {build}" in (one["notFree"] or "") for one in lines)}
        assert promised == builds, (word, lines)


class Element:
    """Car 1's coarse element, which no movement brought: one is in the car, two lie in H4 and one in
    trailer-1. It is renewed in the copy from trailer-1 and at home from H4."""

    at = "coarse element"
    name = f"renewed:{at}@car-1"

    def __init__(self, folder, words=((), ()), works=(("replace",), ("replace",))):
        self.pair = Pair(folder)
        before = self.balances()
        assert before == {("H4", "", "new"): 2, ("trailer-1", "", "new"): 1}, before
        self.worth = self.values()
        for side, work, more, away in ((self.pair.in_copy, works[0], words[0], "trailer-1"),
                                       (self.pair.at_shop, works[1], words[1], "H4")):
            taken = ("--from", away) if work[0] == "replace" else ()
            side("service", "car-1", *work, self.at, *taken, "--old-to", away, *more)

    def rows(self):
        """What the file says of it where pieces can be, by sqlite alone."""
        shop = sqlite3.connect(f"file:{self.pair.shop}?mode=ro", uri=True)
        try:
            return shop.execute("SELECT place, lot, condition, quantity, value FROM balance JOIN place ON "
                                "place.id = balance.place WHERE part = 'EC-100-S' AND kind IN "
                                "('shelf', 'bin', 'drawer', 'car', 'scrap')").fetchall()
        finally:
            shop.close()

    def balances(self):
        return {(place, lot, condition): quantity for place, lot, condition, quantity, _ in self.rows() if quantity}

    def values(self):
        return sum(row[4] for row in self.rows())

    def fitted(self):
        cars = json.loads(self.pair.at_shop("service", "car-1", "--json"))["cars"]
        return next((one for one in cars[0]["positions"] if one["position"] == self.at), None)

    def bring(self, word, words):
        assert self.pair.open() == {self.name: words}, self.pair.open()
        self.pair.bring(f"{self.name}={word}")
        assert self.values() == self.worth, (word, self.values(), self.worth)
        return self.balances()


def renewed_on_both_sides(folder):
    """By hand: four there are, and four there stay: what is in, what was there before, and two more."""
    new, used = "new", "to be checked"
    words = ["copy-last", "shop-last", "shop", "copy"]
    for word, left in (
            # Home first: its new one went out to the trailer.
            ("copy-last", {("H4", "", new): 1, ("H4", "S-1", used): 1, ("trailer-1", "T-1", used): 1}),
            ("shop-last", {("H4", "", new): 1, ("H4", "S-1", used): 1, ("trailer-1", "T-1", used): 1}),
            ("shop", {("H4", "", new): 1, ("H4", "S-1", used): 1, ("trailer-1", "", new): 1}),
            ("copy", {("H4", "", new): 2, ("trailer-1", "T-1", used): 1})):
        element = Element(folder, (("--tag", "T-1"), ("--tag", "S-1")))
        now = element.bring(word, words)
        assert now == {**left, ("car-1", "", new): 1}, (word, now)
        if word == "copy-last":  # One alone would leave what the other took out.
            for side in ("trailer-1", "H4"):
                done = json.loads(element.pair.at_shop("history", "EC-100-S", "--json"))["movements"]
                came = next(one for one in done if one["from"] == side and one["to"] == "car-1")
                element.pair.at_shop("take-back", came["movement"], status=2)
    # Of different days it is known which was first.
    for days, out in ((("2026-11-20", "2026-11-22"), "H4"), (("2026-11-22", "2026-11-20"), "trailer-1")):
        element = Element(folder, tuple(("--day", day) for day in days))
        now = element.bring("both", ["both", "shop", "copy"])
        assert now == {("H4", "", new): 1, ("H4", "", used): 1, ("trailer-1", "", used): 1, ("car-1", "", new): 1}, now
        assert element.fitted()["since"] == max(days), element.fitted()
    # What was taken out on both sides went out once.
    element = Element(folder, ((), ()), (("take-out",), ("take-out",)))
    assert element.bring("shop", ["shop", "copy"]) == {("H4", "", new): 2, ("trailer-1", "", new): 1,
                                                       ("H4", "", used): 1}
    assert element.fitted() is None
    # The copy goes on and renews it again. Decided to be the last one it is known there; else it is asked again.
    for word, again in (("copy-last", {}), ("shop-last", {Element.name: words})):
        element = Element(folder)
        element.pair.at_shop("trailer", "bring", element.pair.copy, "--goes-on", "--decide", f"{element.name}={word}")
        element.pair.in_copy("receive", "EC-100-S", "1", "--from", "supplier-TCF", "--to", "trailer-1", "--cost", "9")
        element.pair.in_copy("service", "car-1", "replace", element.at, "--from", "trailer-1", "--old-to", "scrap")
        assert element.pair.open() == again, (word, element.pair.open())
        element.pair.bring(*(f"{name}=copy-last" for name in again))
        now = {key: much for key, much in element.balances().items() if key[0] != "scrap"}
        assert now == {("H4", "", new): 1, ("H4", "", used): 1, ("trailer-1", "", used): 1, ("car-1", "", new): 1}, now
    # What was taken out here could not be taken out once more with the copy.
    element = Element(folder, ((), ()), (("replace",), ("take-out",)))
    now = element.bring("copy-last", words)
    assert now == {("H4", "", new): 2, ("H4", "", used): 1, ("car-1", "", new): 1}, now


def washed_on_both_sides(folder):
    """Washed three times before: by each answer, how often it is then."""
    name = f"washed:{Element.at}@car-1"
    for word, washes in (("both", 5), ("shop", 4), ("copy", 4)):
        pair = Pair(folder)
        for side in (pair.at_shop, pair.in_copy):
            side("service", "car-1", "wash", Element.at)
        assert pair.open() == {name: ["both", "shop", "copy"]}, pair.open()
        pair.bring(f"{name}={word}")
        cars = json.loads(pair.at_shop("service", "car-1", "--json"))["cars"]
        washed = next(one for one in cars[0]["positions"] if one["position"] == Element.at)["washed"]
        assert washed == washes, (word, washed)
    # What one side alone has washed is no matter.
    pair = Pair(folder)
    pair.at_shop("service", "car-1", "wash", Element.at)
    assert not pair.open(), pair.open()


def main():
    with tempfile.TemporaryDirectory() as folder:
        for play in (counted_on_both_sides, emptied_on_both_sides, below_zero, several_below_zero, a_part_is_called_otherwise, a_build_and_its_template,
                     orders_under_one_number, the_newest_word, promised_twice, renewed_on_both_sides, washed_on_both_sides):
            play(folder)
            print(play.__name__.replace("_", " "), "as decided")


if __name__ == "__main__":
    main()
