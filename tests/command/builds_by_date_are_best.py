#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Whether `flarestock short` chooses the joints of several builds as well as can be, by date.

    builds_by_date_are_best.py FLARESTOCK [SEED [SHOPS]]

The shops are those of whole_build_is_best.py, with further hose ends and twins of what they have, and
two or three builds by date, of the whole system or one of its lines, each with its own preference; some
pieces are promised. Of all choices for the earliest build those are kept that are
best for it; for each of them, with what it leaves, the best of the next, and so on. It knows nothing
of the program but its files and its answers.
"""

import itertools
import json
import random
import sys
import tempfile
from collections import Counter
from decimal import Decimal
from pathlib import Path

from whole_build_is_best import JOINTS, RINGS, TEMPLATE, Shop, in_order, run

MOST_CHOICES = 20_000
DAYS = ["2027-01-10", "2027-02-10", "2027-03-10"]
ENDS = [("ORB -6 male", "hose"), ("ORB -8 male", "hose"), ("AN -8 female swivel", "hose")]


def line_of(name, stations, run_of_it):
    """A template with that line of the system only, and its stations."""
    parts = TEMPLATE.split("\n\n")
    kept = [part for part in parts[1:] if f'id = "{run_of_it}"' in part
            or any(f'id = "{station}"' in part for station in stations)]
    return "\n\n".join([parts[0].replace('"feed"', f'"{name}"'), *kept]) + "\n"


TEMPLATES = {"feed": (TEMPLATE, JOINTS),
             "front": (line_of("front", ["cell", "pump"], "supply"), JOINTS[:2]),
             "back": (line_of("back", ["pump", "regulator"], "pressure"), JOINTS[2:])}


class DatedShop(Shop):
    def __init__(self, draw):
        super().__init__(draw)
        for i, ports in enumerate(draw.sample(ENDS, 2)):
            self.pieces[f"HX{i}"] = ports
        for number in draw.sample(sorted(self.pieces), 2):
            self.pieces[f"{number}T"] = self.pieces[number]
        for number in self.pieces:
            if number.startswith("HX") or number.endswith("T"):
                self.price[number] = Decimal(draw.randint(1, 40)) / 4
                if free := draw.choice([0, 1, 1]):
                    self.free[number] = free
                    self.value[number] = free * Decimal(draw.randint(1, 40)) / 4
        if draw.random() < 0.9:  # All alike, so that many ways are as good as another.
            self.price = dict.fromkeys(self.price, Decimal(2))
            self.value = {number: Decimal(2) * free for number, free in self.free.items()}
        days = draw.sample(DAYS, draw.choice([2, 2, 3]))
        self.builds = [(f"car-{i}", day, draw.choice(["shelf", "shelf", "joints", "money"]),
                        draw.choice(["feed", "front", "back"])) for i, day in enumerate(days)]
        self.promised = {}  # By build.
        for build, *_ in self.builds:
            kept = [number for number, free in self.free.items()
                    if free and draw.random() < 0.1 and
                    free > sum(other.get(number, 0) for other in self.promised.values())]
            self.promised[build] = dict.fromkeys(kept, 1)

    def files(self, folder):
        super().files(folder)
        for name, (text, _) in TEMPLATES.items():
            (folder / "templates" / f"{name}.toml").write_text(text)
        (folder / "builds.toml").write_text("".join(
            f'[[build]]\nid = "{build}"\ntitle = "{build}"\ncar = "{build}"\n'
            f'template = "{template}"\nprefer = "{prefer}"\nby = "{day}"\n'
            for build, day, prefer, template in self.builds))

    def ways(self, preference, template):
        ways = [self.chains(port, 4) for port, _ in TEMPLATES[template][1]]
        if preference == "shelf":  # At most one piece more than the shortest way.
            ways = [[way for way in one if len(way[0]) <= 1 + min(len(other[0]) for other in one)]
                    for one in ways]
        return ways

    def takings(self, preference, template):
        """What can be taken for a build, with its number of pieces; None where there is too much."""
        ways = self.ways(preference, template)
        choices = 1
        for one in ways:
            choices *= len(one)
        if choices > MOST_CHOICES:
            return None
        return {(tuple(sorted(sum((way[1] for way in choice), Counter()).items())),
                 sum(len(way[0]) for way in choice)) for choice in itertools.product(*ways)}

    def sums(self, taken, pieces, left, own):
        """To buy, pieces, without a price, cost; and what is left then."""
        to_buy = unpriced = 0
        cost = Decimal(0)
        after = dict(left)
        for number, count in taken:
            mine = min(count, own.get(number, 0))
            shared = min(count - mine, left.get(number, 0))
            after[number] = left.get(number, 0) - shared
            bought = count - mine - shared
            if mine + shared:
                cost += self.value[number] / self.free[number] * (mine + shared)
            cost += self.price.get(number, 0) * bought
            unpriced += bought if number not in self.price else 0
            to_buy += bought
        return (to_buy, pieces, unpriced, cost), tuple(sorted(after.items()))

    def best(self, alone=False):
        """Of each build, by date, its sums; alone: whatever it takes is chosen for it only, the
        first of those that are as good. None where there is too much to try."""
        free = dict(self.free)
        for own in self.promised.values():
            for number, count in own.items():
                free[number] -= count
        lefts, said = {tuple(sorted(free.items()))}, []
        for build, _, preference, template in sorted(self.builds, key=lambda one: one[1]):
            takings = self.takings(preference, template)
            if takings is None:
                return None
            lowest, kept, sums_of_it = None, set(), None
            for left in lefts:
                for taken, pieces in takings:
                    sums, after = self.sums(taken, pieces, dict(left), self.promised[build])
                    order = in_order(sums, preference)
                    if lowest is None or order < lowest:
                        lowest, kept, sums_of_it = order, set(), sums
                    if order == lowest:
                        kept.add(after)
            lefts = {min(kept)} if alone else kept
            said.append((build, sums_of_it))
        return said


def compare(program, shop, folder):
    """Whether it was compared, and whether the builds had to look at each other; ends where
    something is not the best."""
    best = shop.best()
    if best is None:
        return False, False
    shop.files(folder / "files")
    file = str(folder / "own.flarestock")
    run(program, "begin", "--from", str(folder / "files"), "--to", file)
    for build, kept in shop.promised.items():
        for number, count in kept.items():
            run(program, "reserve", build, number, str(count), "--shop", file)
    said = json.loads(run(program, "short", "--on", "2026-12-01", "--json", "--shop", file))
    together = said["together"]
    if [build["build"] for build in together["builds"]] != [build for build, _ in best]:
        sys.exit(f"other builds: {together}")
    if not together["proven"] or together["bound"] is not None:
        sys.exit(f"not said to be proven: {together}; {shop.__dict__}")
    joining = {*shop.pieces, *RINGS.values()}
    for (build, sums), of_it in zip(best, together["builds"], strict=True):
        if (of_it["toBuy"], of_it["pieces"], Decimal(of_it["cost"])) != (sums[0], sums[1], sums[3]):
            sys.exit(f"{build}: {of_it} where {best} can be had; {shop.__dict__}")
        lacks = sum(Decimal(line["short"]) for line in said["lines"]
                    if line["for"] == build and line["part"] in joining)
        if lacks != sums[0]:
            sys.exit(f"{build}: {lacks} are short where {sums[0]} are to buy; {shop.__dict__}")
    return True, shop.best(alone=True) != best


def main():
    program, seed = sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 1512
    shops = int(sys.argv[3]) if len(sys.argv) > 3 else 120
    print("seed", seed)
    draw = random.Random(seed)
    compared = together = 0
    for _ in range(shops):
        with tempfile.TemporaryDirectory() as folder:
            more = compare(program, DatedShop(draw), Path(folder))
            compared, together = compared + more[0], together + more[1]
    print(compared, "shops compared;", together, "where each build by itself would be worse")
    if compared < shops * 2 // 3 or together < shops // 30:
        sys.exit("too few to say anything")


if __name__ == "__main__":
    main()
