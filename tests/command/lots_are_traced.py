#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Lots through boxes, hoses, builds and cars, and where they went by another program: lots_are_traced.py FLARESTOCK

Lots come in, boxes are opened, hoses are made up, a build takes its parts, pieces go to cars and back, some of it is
taken back. Then this program reads the raw file (tests/faults/shop_reader.py) and walks over all movements again and
again until nothing more comes of a lot: the same pieces, places, cars and builds have to be in `trace`.

FLARESTOCK_SEED gives other lots; the seed is printed. A piece that goes on without a lot is told and not followed.
"""

import json
import os
import random
import subprocess
import sys
import tempfile

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "faults"))
import shop_reader  # noqa: E402

FLARESTOCK = sys.argv[1]
BENCH = "bench"
CARS = ("car-1", "car-2", "car-3")
REAL = ("shelf", "bin", "drawer", "car", "borrower", "repair", "in transit")


class Lots:
    def __init__(self, dice, shop):
        self.dice, self.shop = dice, shop
        self.count, self.ids, self.lots, self.tags = 0, [], [], []

    def run(self, *words, must=False):
        ran = subprocess.run([FLARESTOCK, *words, "--shop", self.shop, "--json"], capture_output=True, text=True,
                             check=False)
        if ran.returncode != 0:
            if must:
                sys.exit(f"{' '.join(words)}: {ran.stderr}")
            return None
        said = json.loads(ran.stdout)
        if "movement" in said:
            self.ids.append(said["movement"])
        return said

    def receive(self):
        self.count += 1
        part, much = self.dice.choice((("EP-460", "1"), ("EP-255", "1"), ("PT-6", "120 in"), ("EC-100-S", "4"),
                                       ("HE-6", "4"), ("AD-8-8", "6")))
        lot = f"L{self.count}"
        self.run("receive", part, much, "--from", "supplier-MPW", "--to", "SH-1", "--cost", "90", "--lot", lot,
                 must=True)
        self.lots.append((part, lot))

    def open_box(self):
        pumps = [one for one in self.lots if one[0].startswith("EP-")]
        if pumps:
            part, lot = self.dice.choice(pumps)
            self.run("open", part, "--from", "SH-1", "--lot", lot, "--to", self.dice.choice(("G4", "SH-1")))

    def make_up(self):
        hoses = [one for one in self.lots if one[0] == "PT-6"]
        if hoses:
            self.count += 1
            tag = f"H-{self.count}"
            if self.run("make-up", "PT-6", "24 in", "--start", "HE-6", "--end", "HE-6", "--tag", tag, "--to", "SH-4",
                        "--lot", self.dice.choice(hoses)[1], "--proof-pressure", "2000 psi", "--proof-medium", "water",
                        "--proof", "passed", "--tested-by", "fitter"):
                self.tags.append(tag)

    def move(self):
        stock = [line for line in self.run("stock")["stock"] if line["lot"] and line["unit"] == "each"]
        if stock:
            line = self.dice.choice(stock)
            self.run("move", line["part"], "1", "--from", line["place"], "--to",
                     self.dice.choice(CARS + ("trailer-1", "SH-1")), "--lot", line["lot"])

    def cut(self):
        hoses = [one for one in self.lots if one[0] == "PT-6"]
        if hoses:
            self.run("cut", "PT-6", "20 in", "--to", self.dice.choice(CARS), "--lot", self.dice.choice(hoses)[1])

    def fit(self):
        pieces = [one for one in self.lots if one[0] == "EC-100-S"]
        if pieces:
            self.run("service", self.dice.choice(CARS), "fit", "EC-100-S", "--at", "pre element", "--from", "SH-1",
                     "--lot", self.dice.choice(pieces)[1])

    def replace(self):
        self.count += 1
        self.run("service", self.dice.choice(CARS), "replace", "pre element", "--tag", f"T{self.count}", "--old-to",
                 "trailer-1")

    def take_back(self):
        if self.ids:
            self.run("take-back", self.dice.choice(self.ids[-6:]))


def walked(shop, asked):
    """What became of a lot, by going over all movements until nothing is new."""
    gone = {row["reverses"] for row in shop.movements if row["reverses"]}
    by_id = {row["id"]: row for row in shop.movements}

    def times_back(row):
        return 1 + times_back(by_id[row["reverses"]]) if row["reverses"] else 0

    rows = [row for row in shop.movements if row["id"] not in gone and times_back(row) % 2 == 0]

    def source(row):
        return row["part"], row["lot"]

    def target(row):
        return row["part"], row["lot"] if row["new_lot"] is None else row["new_lot"]

    names = {key for row in shop.movements for key in (source(row), target(row))
             if key[1] and (key[1] == asked or key[1].split("/")[0] == asked)}
    pieces, unnamed = set(names), set()
    while True:
        before = len(pieces) + len(unnamed)
        for row in rows:
            if source(row) in pieces:
                (pieces if target(row)[1] else unnamed).add(target(row))
            if row["to_place"] == BENCH and row["deed"] in ("open", "make up") and source(row) in pieces:
                action = row["action"] or row["id"]
                for other in rows:
                    if (other["action"] or other["id"]) == action and other["from_place"] == BENCH:
                        (pieces if target(other)[1] else unnamed).add(target(other))
        if len(pieces) + len(unnamed) == before:
            return rows, pieces, unnamed - pieces, target


def compare(lots, wrong):
    shop = shop_reader.Shop(lots.shop)
    kinds = shop.places
    for asked in sorted({lot for _, lot in lots.lots} | set(lots.tags)):
        said = lots.run("trace", asked)
        rows, pieces, unnamed, target = walked(shop, asked)
        if said is None:
            if pieces:
                wrong.append(f"{asked} is not found")
            continue
        got = {(one["part"], one["lot"] or "") for one in said["pieces"]}
        if got != pieces:
            wrong.append(f"{asked}: pieces {sorted(got)}, not {sorted(pieces)}")
        got = {(one["part"], "") for one in said["withoutLot"]}
        if got != unnamed:
            wrong.append(f"{asked}: without a lot {sorted(got)}, not {sorted(unnamed)}")
        now = {}
        for row in rows:
            for sign, place, (part, lot) in ((-1, row["from_place"], (row["part"], row["lot"])),
                                             (1, row["to_place"], target(row))):
                if (part, lot) in pieces and kinds[place] in REAL:
                    now[(part, lot, place)] = now.get((part, lot, place), 0) + sign * row["quantity"]
        here = {key for key, quantity in now.items() if quantity > 0}
        got = {(one["part"], one["lot"], one["place"]) for one in said["now"]}
        if got != here:
            wrong.append(f"{asked}: lies {sorted(got)}, not {sorted(here)}")
        acts = {(one["part"], one["lot"], one["place"]) for one in said["acts"]}
        if acts != here:
            wrong.append(f"{asked}: to act on {sorted(acts)}, not {sorted(here)}")
        cars = {}
        for row in rows:
            if kinds[row["to_place"]] == "car" and target(row) in pieces:
                cars.setdefault(row["to_place"], set())
                if row["document"] in lots.builds:
                    cars[row["to_place"]].add(row["document"])
        mine = {car: (sorted(builds), any(key[2] == car for key in here)) for car, builds in cars.items()}
        got = {one["car"]: (one["builds"], one["has"]) for one in said["cars"]}
        if got != mine:
            wrong.append(f"{asked}: cars {got}, not {mine}")
        received = {row["id"].hex() for row in rows if kinds[row["from_place"]] == "supplier" and target(row) in pieces}
        got = {one["movement"].replace("-", "") for one in said["cameIn"]}
        if not received <= got:
            wrong.append(f"{asked}: came in by {sorted(got)}, and by {sorted(received - got)}")
        order = [{"brakes": 0, "fuel": 1}.get(one["system"], 2) if one["kind"] == "car" else
                 4 if one["kind"] in REAL[:3] else 3 for one in said["acts"]]
        if order != sorted(order):
            wrong.append(f"{asked}: what is most dangerous does not come first: {order}")


def main():
    seed = int(os.environ.get("FLARESTOCK_SEED", "4417"))
    print(f"seed {seed}")
    wrong = []
    with tempfile.TemporaryDirectory() as folder:
        shop = os.path.join(folder, "shop")
        subprocess.run([FLARESTOCK, "demo", "--to", shop], check=True, capture_output=True)
        lots = Lots(random.Random(seed), shop)
        lots.builds = {"coupe-fuel", "roadster-fuel", "single-seater-fuel"}
        for _ in range(8):
            lots.receive()
        for step in range(70):
            if step == 35:  # A build takes what is nearest, lots among it.
                lots.run("reserve", "coupe-fuel", must=True)
                lots.run("issue", "coupe-fuel")
            lots.dice.choice((lots.receive, lots.open_box, lots.make_up, lots.move, lots.move, lots.cut, lots.fit,
                              lots.replace, lots.take_back))()
        compare(lots, wrong)
        print(f"{len(lots.lots)} lots, {len(lots.tags)} hoses, {len(lots.ids)} actions")
    for one in wrong:
        print(one)
    sys.exit(1 if wrong else 0)


main()
