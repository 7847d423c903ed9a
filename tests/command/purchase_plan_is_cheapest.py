#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The purchase plan is the cheapest: purchase_plan_is_cheapest.py FLARESTOCK

Price breaks (4.20 / 3.85 from 10 / 3.30 from 50 / 3.10 from 100) and packs (0.90; 10 for 6.50; 25
for 14.00) worked by hand; then random shops, every choice of which is tried here: quantities,
freight by the value of the goods, minimum orders, days, another currency, tax.
"""

import itertools
import json
import os
import random
import subprocess
import sys
import tempfile
from decimal import ROUND_HALF_EVEN, ROUND_HALF_UP, Decimal
from pathlib import Path

program = sys.argv[1]
seed = int(os.environ.get("FLARESTOCK_SEED", "20261128"))
cases = int(os.environ.get("FLARESTOCK_CASES", "40"))
print(f"FLARESTOCK_SEED={seed}")
dice = random.Random(seed)
wrong = []
CENT = Decimal("0.01")
TODAY = "2026-12-01"


def cents(amount, rounding=ROUND_HALF_EVEN):
    return amount.quantize(CENT, rounding)


def run(*words):
    ran = subprocess.run([program, *map(str, words)], capture_output=True, text=True, check=False)
    if ran.returncode != 0:
        raise SystemExit(f"{words}: {ran.stderr}")
    return ran.stdout


def planned(folder, shop, needs, prefer="cheapest"):
    """shop: suppliers (id -> dict), offers (list of dict), rate of EUR; needs: (part, n, days)."""
    files = Path(folder) / "files"
    (files / "parts").mkdir(parents=True)
    parts = sorted({offer["part"] for offer in shop["offers"]})
    (files / "shop.toml").write_text(
        'title = "T"\ncurrency = "USD"\n'
        '[[place]]\nid = "o"\ntitle = "o"\nkind = "opening"\n'
        '[[place]]\nid = "b"\ntitle = "b"\nkind = "bin"\n')
    (files / "parts/x.csv").write_text("part,kind,description\n" + "".join(
        f"{part},tool,thing\n" for part in parts))
    (files / "suppliers.csv").write_text(
        "supplier,name,lead days,currency,freight,minimum order,tax percent,tax by,tax rounding,"
        "tax recovered\n" + "".join(
            f"{name},{name},0,{one['currency']},"
            f"{'; '.join(f'{a}: {b}' for a, b in one['freight'])},{one['minimum']},"
            f"{one['tax']},document,{one['rounding']},no\n"
            for name, one in shop["suppliers"].items()))
    (files / "offers.csv").write_text(
        "part,supplier,supplier part,currency,pack,minimum,multiple,prices,lead days\n" + "".join(
            f"{o['part']},{o['supplier']},{i},{shop['suppliers'][o['supplier']]['currency']},"
            f"{o['pack']},{o['minimum']},{o['multiple']},"
            f"{'; '.join(f'{a}: {b}' for a, b in o['prices'])},{o['lead']}\n"
            for i, o in enumerate(shop["offers"])))
    (files / "rates.csv").write_text(f"currency,rate,day\nEUR,{shop['rate']},2026-01-01\n")
    table = Path(folder) / "needs.csv"
    table.write_text("part,quantity,day\n" + "".join(
        f"{part},{n},{f'2026-12-{1 + days:02}' if days is not None else ''}\n"
        for part, n, days in needs))
    file = Path(folder) / "shop.flarestock"
    run("begin", "--from", files, "--to", file)
    return json.loads(run("plan", "--needs", table, "--prefer", prefer, "--today", TODAY,
                          "--shop", file, "--json"))


def price(offer, quantity):
    return [cost for least, cost in offer["prices"] if least <= quantity or least <= 1][-1]


def cheapest(shop, needs, most):
    """Every quantity of every offer up to `most`; nothing where no choice serves."""
    best = None
    parts = sorted({part for part, _, _ in needs})
    ways = []
    for part in parts:
        offers = [o for o in shop["offers"] if o["part"] == part]
        first = min(o["lead"] for o in offers)
        dues = sorted((days if days is not None else 99, n) for p, n, days in needs if p == part)
        last = max(dues[-1][0], first)  # What comes after that is not taken.
        offers = [o for o in offers if o["lead"] <= last]
        mine = []
        ranges = []
        for offer in offers:
            lot = offer["pack"] * offer["multiple"]
            ranges.append([0] + [q for q in range(lot, most + lot, lot) if q >= offer["minimum"]])
        for quantities in itertools.product(*ranges):
            total = 0
            good = True
            for days, n in dues:
                total += n
                come = sum(q for q, o in zip(quantities, offers)
                           if o["lead"] <= max(days, first))
                good = good and come >= total
            if good:
                goods = {}
                for q, offer in zip(quantities, offers):
                    if q:
                        goods.setdefault(offer["supplier"], []).append(
                            cents(q * price(offer, q)))
                mine.append(goods)
        ways.append(mine)
    for choice in itertools.product(*ways):
        lines = {}
        for goods in choice:
            for supplier, costs in goods.items():
                lines.setdefault(supplier, []).extend(costs)
        sum_all = Decimal(0)
        for name, costs in lines.items():
            one = shop["suppliers"][name]
            rate = shop["rate"] if one["currency"] == "EUR" else Decimal(1)
            goods = sum(costs)
            if goods < one["minimum"]:
                sum_all = None
                break
            freight = [cost for least, cost in one["freight"] if least <= goods][-1]
            tax = cents((goods + freight) * one["tax"] / 100,
                        ROUND_HALF_UP if one["rounding"] == "half up" else ROUND_HALF_EVEN)
            sum_all += sum(cents(cost * rate) for cost in costs)
            sum_all += cents(freight * rate) + cents(tax * rate)
        if sum_all is not None and (best is None or sum_all < best):
            best = sum_all
    return best


def offer(part, supplier, prices, **more):
    return {"part": part, "supplier": supplier, "pack": 1, "minimum": 1, "multiple": 1,
            "prices": [(a, Decimal(b)) for a, b in prices], "lead": 3, **more}


PLAIN = {"currency": "USD", "freight": [(0, Decimal(0))], "minimum": Decimal(0),
         "tax": Decimal(0), "rounding": "half up"}
BREAKS = [(1, "4.20"), (10, "3.85"), (50, "3.30"), (100, "3.10")]
PACKS = [offer("X", "A", [(1, "0.90")]), offer("X", "A", [(10, "0.65")], pack=10),
         offer("X", "A", [(25, "0.56")], pack=25)]
for offers, need, bought, cost in [
        ([offer("X", "A", BREAKS)], 42, 42, "161.70"), ([offer("X", "A", BREAKS)], 43, 50, "165.00"),
        ([offer("X", "A", BREAKS)], 94, 100, "310.00"), (PACKS, 7, 7, "6.30"),
        (PACKS, 8, 10, "6.50"), (PACKS, 23, 25, "14.00"), (PACKS, 37, 37, "22.30"),
        (PACKS, 43, 45, "27.00"), (PACKS, 47, 50, "28.00")]:
    with tempfile.TemporaryDirectory() as folder:
        plan = planned(folder, {"suppliers": {"A": PLAIN}, "offers": offers, "rate": 1},
                       [("X", need, None)])
    if (plan["total"], plan["parts"][0]["bought"], plan["proven"]) != (cost, str(bought), True):
        wrong.append(f"need {need}: {plan['total']} for {plan['parts'][0]['bought']}, not {cost} "
                     f"for {bought}; proven {plan['proven']}")


def some_shop():
    suppliers = {}
    for name in "AB" if dice.random() < 0.5 else "ABC":
        freight = [(0, Decimal(dice.randint(0, 900)) / 100)]
        if dice.random() < 0.7:
            freight.append((dice.randint(5, 30), Decimal(dice.randint(0, 900)) / 100))
        suppliers[name] = {
            "currency": dice.choice(["USD", "USD", "EUR"]), "freight": freight,
            "minimum": Decimal(dice.choice([0, 0, 0, 8])),
            "tax": Decimal(dice.choice(["0", "0", "8.25", "5"])),
            "rounding": dice.choice(["half up", "half even"])}
    offers = []
    for part in ["P", "Q"]:
        for name in dice.sample(sorted(suppliers), dice.randint(1, len(suppliers))):
            each = Decimal(dice.randint(1500, 6000)) / 1000
            prices = [(1, each)]
            if dice.random() < 0.6:
                prices.append((dice.randint(3, 5),
                               (each * dice.randint(60, 95) / 100).quantize(Decimal("0.001"))))
            offers.append({"part": part, "supplier": name, "pack": dice.choice([1, 1, 2]),
                           "minimum": dice.choice([1, 1, 2]), "multiple": dice.choice([1, 1, 2]),
                           "prices": prices, "lead": dice.choice([2, 5, 9])})
    return {"suppliers": suppliers, "offers": offers,
            "rate": Decimal(dice.randint(9000, 12000)) / 10000}


for case in range(cases):
    shop = some_shop()
    needs = [(part, dice.randint(1, 3), dice.choice([None, 1, 4, 6])) for part in "PQ"]
    if dice.random() < 0.3:
        needs.append(("P", dice.randint(1, 2), 10))
    with tempfile.TemporaryDirectory() as folder:
        plan = planned(folder, shop, needs)
    best = cheapest(shop, needs, 8)
    if plan["unplaced"]:
        if best is not None:
            wrong.append(f"case {case}: unplaced {plan['unplaced']}, though {best} would do")
        continue
    is_same = Decimal(plan["total"]) == best
    if not is_same or not plan["proven"]:
        wrong.append(f"case {case}: {plan['total']} and not {best}, proven {plan['proven']}: "
                     f"{shop} {needs}")
    for part in plan["parts"]:
        short = sum(n for name, n, _ in needs if name == part["part"])
        if Decimal(part["short"]) != short or Decimal(part["bought"]) < short:
            wrong.append(f"case {case}: {part}")

print("\n".join(wrong) or f"{cases} random shops and 9 worked plans are as they should be")
sys.exit(1 if wrong else 0)
