#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Whether `flarestock carry` says the fewest spares, and the kit at least money.

    spares_are_recomputed.py FLARESTOCK [SEED]

Poisson sums are made anew with 60 digits, the predictive ones (negative binomial, flat prior) with
exact fractions; of small kits every one that costs no more is tried. It knows nothing of the program
but its answers.
"""

import json
import random
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from decimal import Decimal, getcontext
from fractions import Fraction
from math import comb
from pathlib import Path

getcontext().prec = 60
CASES = 120
KITS = 120


def carry(program, *words):
    ran = subprocess.run([program, "carry", *map(str, words), "--json"], capture_output=True,
                         text=True, timeout=60)
    assert ran.returncode == 0, (words, ran.stderr)
    return json.loads(ran.stdout)


def poisson(mean):
    """P(X <= 0), P(X <= 1), ..."""
    mean = Decimal(mean.numerator) / Decimal(mean.denominator)
    term = (-mean).exp()
    total = Decimal(0)
    used = 0
    while True:
        total += term
        yield total
        used += 1
        term = term * mean / used


def predictive(uses, seen, coming):
    success = Fraction(seen) / (Fraction(seen) + Fraction(coming))
    total = Fraction(0)
    used = 0
    while True:
        total += comb(uses + used, used) * success ** (uses + 1) * (1 - success) ** used
        yield total
        used += 1


def fewest(sums, certainty):
    before = None
    for carried, covered in enumerate(sums):
        if covered >= type(covered)(certainty.numerator) / type(covered)(certainty.denominator):
            return carried, covered, before
        before = covered


def agrees(said, carried, covered, words):
    assert said["carry"] == carried, (words, said, carried, covered)
    assert abs(float(said["covered"]) - float(covered)) < 1e-6, (words, said, covered)


def one_case(program, chance):
    percent = chance.choice(["80", "90", "95", "99", "99.9", "50", "62.5"])
    certainty = Fraction(percent) / 100
    events, cars, each = chance.randint(1, 12), chance.randint(1, 4), chance.randint(1, 3)
    coming = Fraction(events * cars * each)
    words = ["--events", events, "--cars", cars, "--each", each, "--confidence", percent + "%"]
    per = chance.choice(["event", "run", "hour"])
    if per != "event":
        much = chance.choice(["2", "0.5", "7.5", "12"])
        coming *= Fraction(much)
        words += ["--per", per, "--" + per + "s", much]
    if chance.random() < 0.5:
        rate = Fraction(chance.randint(0, 90), 100 if per == "event" else 1000)
        words += ["--rate", f"{rate.numerator}/{rate.denominator}"]
        carried, covered, before = fewest(poisson(rate * coming), certainty)
        model = "Poisson"
    else:
        uses, seen = chance.randint(0, 40), chance.randint(1, 60)
        words += ["--failures", uses, "--in-events", seen]
        model = "predictive" if uses < 25 else "Poisson"
        sums = predictive(uses, seen, coming) if uses < 25 else \
            poisson(Fraction(uses, seen) * coming)
        carried, covered, before = fewest(sums, certainty)
    said = carry(program, *words)
    assert said["model"] == model, (words, said)
    agrees(said, carried, covered, words)
    if before is not None:
        row = next(row for row in said["table"] if row["carry"] == carried - 1)
        assert abs(float(row["covered"]) - float(before)) < 1e-6, (words, row, before)


def cheapest(parts, certainty, money):
    """The least that a kit of that certainty costs, no more than `money`; None where there is none."""
    best = None

    def choose(at, cost, covered):
        nonlocal best
        if covered < certainty - 1e-10:
            return
        if at == len(parts):
            best = cost if best is None else min(best, cost)
            return
        price, sums = parts[at]
        for carried, one in enumerate(sums):
            if cost + carried * price > (money if best is None else best):
                break
            choose(at + 1, cost + carried * price, covered * one)

    choose(0, 0, 1.0)
    return best


def one_kit(program, folder, number, chance):
    percent = chance.choice(["80", "90", "95", "97"])
    events = chance.randint(1, 6)
    rows, parts = [], []
    for i in range(chance.randint(1, 4)):
        rate = Fraction(chance.randint(1, 40), 100)
        price = chance.randint(100, 4000)  # Cents.
        sums = poisson(rate * events)
        parts.append((price, [float(next(sums)) for _ in range(60)]))
        rows.append(f"P{i},{float(rate):.2f},{price // 100}.{price % 100:02}")
    file = folder / f"kit-{number}.csv"
    file.write_text("part,rate,price\n" + "\n".join(rows) + "\n")
    said = carry(program, "--kit", file, "--events", events, "--certainty", percent + "%")
    cost = round(float(said["cost"]) * 100)
    covered = 1.0
    money = 0
    for (price, sums), part in zip(parts, said["kit"]):
        covered *= sums[part["carry"]]
        money += price * part["carry"]
    assert money == cost, (rows, said)
    assert covered >= int(percent) / 100 - 1e-10, (rows, said, covered)
    assert abs(float(said["covered"]) - covered) < 1e-6, (rows, said, covered)
    assert said["proven"] is True and said["noLess"] == said["cost"], said
    best = cheapest(parts, int(percent) / 100, cost)
    assert best == cost, (rows, percent, events, said, best)
    marginal = said["marginal"]
    return bool(marginal) and round(float(marginal[-1]["cost"]) * 100) > cost


def published(program):
    """Published problems through the command; the sources stand with those of the model."""
    s1 = carry(program, "--rate", "0.003534", "--per", "hour", "--hours", 400, "--confidence", "95%")
    assert (s1["carry"], s1["covered"]) == (4, "0.985203"), s1
    s2 = carry(program, "--rate", "1/10000", "--per", "hour", "--hours", 2160, "--each", 30)
    assert (s2["carry"], s2["covered"], s2["mean"]) == (11, "0.966775", "6.48"), s2
    s6 = carry(program, "--rate", 1, "--events", 2, "--confidence", "0.95")
    assert s6["carry"] == 5 and {"carry": 4, "covered": "0.947347"} in s6["table"], s6
    s5 = carry(program, "--rate", 1, "--events", 1, "--confidence", "99%")
    assert (s5["carry"], s5["covered"]) == (4, "0.996340") and s5["fillRate"] != s5["covered"], s5
    thin = carry(program, "--failures", 1, "--in-events", 10, "--events", 5)
    assert (thin["carry"], thin["model"]) == (3, "predictive"), thin
    assert thin["otherModel"]["carry"] == 2, thin


def main():
    program = sys.argv[1]
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else random.randrange(2 ** 32)
    print("seed", seed)
    published(program)
    with tempfile.TemporaryDirectory() as folder, ThreadPoolExecutor(2) as pool:
        cases = [pool.submit(one_case, program, random.Random(seed + i)) for i in range(CASES)]
        kits = [pool.submit(one_kit, program, Path(folder), i, random.Random(seed + CASES + i))
                for i in range(KITS)]
        for case in cases:
            case.result()
        saved = sum(kit.result() for kit in kits)
    print(f"{CASES} sums and {KITS} kits agree; {saved} kits cost less than marginal allocation")
    assert saved > 0, "no kit tried what marginal allocation misses"


main()
