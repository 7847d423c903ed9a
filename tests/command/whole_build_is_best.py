#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Whether `flarestock bill` chooses the joints of a build as well as can be.

    whole_build_is_best.py FLARESTOCK [SEED]

Makes small shops of its own out of files: a tank, a pump and a regulator with two hoses between them,
and some adapters, hose ends and rings of random number and price. For each preference it tries every
chain of pieces at every joint, all of them together, and counts what they take. It knows nothing of
the program but its files and its answers: an O-ring boss takes its own male thread and one ring, a
flare its own swivel nut (SAE J1926-1, SAE J514; common practice for which parts go together).
"""

import itertools
import json
import random
import subprocess
import sys
import tempfile
from collections import Counter
from decimal import Decimal
from pathlib import Path

RINGS = {"-6": "OR-6", "-8": "OR-8"}
TEMPLATE = """id = "feed"
title = "Feed"
system = "fuel"
fluid = "gasoline"
filters = "none"

[[station]]
id = "cell"
title = "cell"
kind = "tank"
level = "suction"

[[station]]
id = "pump"
title = "pump"
kind = "pump"
level = "suction"
bracketed = false

[[station]]
id = "regulator"
title = "regulator"
kind = "regulator"
level = "pressure"
bracketed = false

[[run]]
id = "supply"
level = "suction"
from = "cell.out"
to = "pump.in"
length = "36 in"
dash = "-6"

[[run]]
id = "pressure"
level = "pressure"
from = "pump.out"
to = "regulator.in"
length = "24 in"
dash = "-6"
"""
PLACES = [("B1", "bin"), ("supplier-S", "supplier"), ("scrap", "scrap"), ("way", "in transit"),
          ("used", "used up"), ("opening", "opening"), ("bench", "bench"), ("diff", "difference")]
# From the component's port to the hose, in the order of the bill's joints.
JOINTS = [("ORB -6 female", "cell"), ("AN -6 male", "pump"), ("ORB -8 female", "pump"),
          ("AN -6 male", "regulator")]
ADAPTERS = [("ORB -6 male", "AN -6 male"), ("ORB -8 male", "AN -6 male"),
            ("ORB -8 male", "AN -8 male"), ("ORB -6 male", "AN -8 male"),
            ("AN -8 female swivel", "AN -6 male"), ("AN -6 female swivel", "AN -6 male"),
            ("ORB -8 male", "ORB -6 female"), ("AN -6 female swivel", "ORB -6 male")]
MATES = [("ORB", "male", "female"), ("AN", "male", "female swivel")]
MOST_CHOICES = 60_000


def meet(a, b):
    """None where two ports do not go together, else the rings that it takes."""
    (family, size, gender), (other, other_size, other_gender) = (port.split(" ", 2)
                                                                 for port in (a, b))
    if family != other or size != other_size:
        return None
    for known, one, two in MATES:
        if family == known and {gender, other_gender} == {one, two}:
            return [RINGS[size]] if family == "ORB" else []
    return None


class Shop:
    def __init__(self, draw):
        self.pieces = {}  # Number: its two ports; a hose end's far one is the hose.
        self.price, self.free, self.value = {}, {}, {}
        for i, ports in enumerate(ADAPTERS[:5] + draw.choices(ADAPTERS, k=1)):
            self.pieces[f"A{i}"] = ports
        for i in range(2):
            self.pieces[f"HE{i}"] = ("AN -6 female swivel", "hose")
        for number in [*self.pieces, *RINGS.values()]:
            if not number.startswith("A") or draw.random() < 0.85:
                self.price[number] = Decimal(draw.randint(1, 40)) / 4
            if free := draw.choice([0, 0, 1, 1, 2]):
                self.free[number] = free
                self.value[number] = free * Decimal(draw.randint(1, 40)) / 4

    def files(self, folder):
        (folder / "parts").mkdir(parents=True)
        (folder / "templates").mkdir()
        rows = ["part,kind,description,unit,ports,construction,liner,dash,fits,angle,designation",
                "FC,tank,cell,,out: ORB -6 female,,,,,,",
                "EP,pump,pump,,in: AN -6 male; out: ORB -8 female,,,,,,",
                "RG,regulator,regulator,,in: AN -6 male,,,,,,",
                "PT-6,hose,hose,in,cut: HOSE PT -6,PT,PTFE,6,,,"]
        for size, number in RINGS.items():
            rows.append(f"{number},ring,ring,,,,,,,,AS568-90{size[1:]}")
        for number, (a, b) in self.pieces.items():
            if b == "hose":
                rows.append(f"{number},hose end,end,,hose: HOSE PT -6; end: {a},,,6,PT,0,")
            else:
                rows.append(f"{number},adapter,adapter,,a: {a}; b: {b},,,,,,")
        (folder / "parts" / "all.csv").write_text("\n".join(rows) + "\n")
        (folder / "suppliers.csv").write_text("supplier,name,lead days\nS,Supplier,3\n")
        offers = [f"{number},S,,USD,1,1,1: {price}," for number, price in self.price.items()]
        (folder / "offers.csv").write_text("\n".join(
            ["part,supplier,supplier part,currency,pack,minimum,prices,lead days", *offers]) + "\n")
        stock = [f"{number},B1,{free},{self.value[number]},,new,"
                 for number, free in self.free.items()]
        (folder / "stock.csv").write_text("\n".join(
            ["part,place,quantity,value,lot,condition,missing", *stock]) + "\n")
        (folder / "builds.toml").write_text("")
        (folder / "templates" / "feed.toml").write_text(TEMPLATE)
        (folder / "shop.toml").write_text('title = "Shop"\ncurrency = "USD"\n' + "".join(
            f'[[place]]\nid = "{place}"\ntitle = "{place}"\nkind = "{kind}"\n'
            for place, kind in PLACES))

    def chains(self, port, most):
        """All chains of pieces from a port to the hose: their numbers, what they take, how many of
        their ports are smaller than the line's -6 (none here is)."""
        found = []

        def grow(at, numbers, taken):
            if at == "hose":
                found.append((tuple(numbers), Counter(taken)))
                return
            if len(numbers) == most:
                return
            for number, ports in self.pieces.items():
                for enters, leaves in (ports, ports[::-1]):
                    if enters == "hose":
                        continue
                    rings = meet(at, enters)
                    if rings is not None:
                        grow(leaves, [*numbers, number], [*taken, number, *rings])

        grow(port, [], [])
        return found

    def come_to(self, chains):
        """To buy, pieces, without a price, cost."""
        taken = sum((chain[1] for chain in chains), Counter())
        to_buy = unpriced = 0
        cost = Decimal(0)
        for number, count in taken.items():
            free = self.free.get(number, 0)
            bought = max(0, count - free)
            if free:
                cost += self.value[number] / free * (count - bought)
            cost += self.price.get(number, 0) * bought
            unpriced += bought if number not in self.price else 0
            to_buy += bought
        return to_buy, sum(len(chain[0]) for chain in chains), unpriced, cost


def in_order(sums, preference):
    """As the README and the model have it: what each preference looks at, one after the other."""
    to_buy, pieces, unpriced, cost = sums
    return {"shelf": (to_buy, pieces, unpriced, cost), "joints": (pieces, to_buy, unpriced, cost),
            "money": (unpriced, cost, to_buy, pieces)}[preference]


def run(program, *words):
    done = subprocess.run([program, *words], capture_output=True, text=True, check=False)
    if done.returncode != 0:
        sys.exit(f"{' '.join(words)}: {done.stderr}")
    return done.stdout


def compare(program, shop, folder):
    """How many bills were compared, and how many joints had to stand back. Ends where one is not
    the best."""
    shop.files(folder / "files")
    file = str(folder / "own.flarestock")
    run(program, "begin", "--from", str(folder / "files"), "--to", file)
    compared = searched = 0
    for preference in ("shelf", "joints", "money"):
        bill = json.loads(run(program, "bill", "feed", "--prefer", preference, "--json",
                              "--shop", file))
        ways = [shop.chains(port, 4) for port, _ in JOINTS]
        if preference == "shelf":  # At most one piece more than the shortest way.
            ways = [[way for way in all_ways
                     if len(way[0]) <= 1 + min(len(other[0]) for other in all_ways)]
                    for all_ways in ways]
        choices = 1
        for all_ways in ways:
            choices *= len(all_ways)
        if choices > MOST_CHOICES:
            continue
        best = min(in_order(shop.come_to(choice), preference)
                   for choice in itertools.product(*ways))
        chosen = [next(way for way in all_ways if list(way[0]) == joint["through"])
                  for all_ways, joint in zip(ways, bill["joints"], strict=True)]
        sums = shop.come_to(chosen)
        together = bill["together"]
        if in_order(sums, preference) != best:
            sys.exit(f"{preference}: {sums} where {best} can be had; {shop.__dict__}")
        if not together["proven"] or together["bound"] is not None:
            sys.exit(f"{preference}: the best, and not said to be; {shop.__dict__}")
        if (together["toBuy"], together["pieces"], Decimal(together["cost"])) != (
                sums[0], sums[1], sums[3]):
            sys.exit(f"{preference}: {sums} is said to be {together}")
        compared += 1
        searched += together["searched"]
    return compared, searched


def main():
    program, seed = sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 1512
    print("seed", seed)
    draw = random.Random(seed)
    compared = searched = 0
    for _ in range(40):
        with tempfile.TemporaryDirectory() as folder:
            more = compare(program, Shop(draw), Path(folder))
            compared, searched = compared + more[0], searched + more[1]
    print(compared, "bills compared,", searched, "with joints in each other's way")
    if compared < 60 or searched < 15:
        sys.exit("too few to say anything")


if __name__ == "__main__":
    main()
