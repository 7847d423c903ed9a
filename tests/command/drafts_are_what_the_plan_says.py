# SPDX-License-Identifier: MIT
"""What `plan` proposes is drafted in one action: the same suppliers, parts, quantities, prices, rates
and sums, numbered one after the other; taken back as one. A rate that nobody says is the shop's own.

    drafts_are_what_the_plan_says.py FLARESTOCK
"""

import json
import subprocess
import sys
import tempfile
from collections import defaultdict
from decimal import Decimal
from pathlib import Path

FLARESTOCK = sys.argv[1]
ACTION = "018f0000-0000-7000-8000-0000000000b0"
# 4 pieces and 20 ft of hose, which the journal counts in another unit than pieces.
NEEDS = "part,quantity,day,for\nAD-3-3,14,2027-02-01,a\nAD-8-8,400,2027-02-01,a\nEP-6,2400,2027-02-01,b\n"


def flarestock(*words, status=0):
    ran = subprocess.run([FLARESTOCK, *words], capture_output=True, text=True, check=False)
    assert ran.returncode == status, (words, ran.returncode, ran.stderr, ran.stdout)
    return ran.stdout if status == 0 else ran.stderr


def document(*words):
    return json.loads(flarestock(*words, "--json"))


def bought(orders):
    """By supplier and currency: each line's quantity, price and cost, however they are drafted."""
    lines, sums = defaultdict(list), defaultdict(Decimal)
    for order in orders:
        key = order["supplier"], order["currency"], Decimal(order["rate"])
        for line in order["lines"]:
            lines[key].append((line["part"], line["supplierPart"], Decimal(line["quantity"]),
                               Decimal(line["unitPrice"]), Decimal(line["cost"])))
        for sum_ in ("goods", "freight", "tax", "total"):
            sums[key, sum_] += Decimal(order[sum_])
    return {key: sorted(each) for key, each in lines.items()}, dict(sums)


def agree(planned, drafted):
    assert bought(planned) == bought(drafted), (bought(planned), bought(drafted))
    assert all(order["state"] == "draft" for order in drafted)


def shopWithRates(folder):
    files = folder / "files"
    flarestock("demo", "--to", str(folder / "demo"))
    flarestock("export", "--to", str(files), "--shop", str(folder / "demo"))
    (files / "rates.csv").write_text("currency,rate,day\nEUR,1.0842,2026-01-01\nEUR,1.2500,2026-12-01\n")
    flarestock("begin", "--from", str(files), "--to", str(folder / "shop"))
    return str(folder / "shop")


def ratesAreTheShops(shop):
    supplier = next(row["supplier"] for row in rows(shop) if row["currency"] == "EUR")
    offer = next(row for row in rows(shop) if row["supplier"] == supplier)
    line = f"{offer['part']} {max(offer['minimum'], offer['pack'], key=Decimal)}"
    for day, rate in (("2026-11-30", "1.0842"), ("2026-12-01", "1.25")):
        order = document("order", "new", "--supplier", supplier, "--line", line, "--day", day,
                         "--shop", shop)
        assert order["currency"] == "EUR" and Decimal(order["rate"]) == Decimal(rate), order
    said = flarestock("order", "new", "--supplier", supplier, "--line", line, "--day",
                      "2025-12-31", "--shop", shop, status=2)
    assert "needs the rate" in said, said


def rows(shop):
    import csv
    return list(csv.DictReader((Path(shop).parent / "files/offers.csv").open(encoding="utf-8", newline="")))


def main():
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        shop = shopWithRates(folder)
        needs = folder / "needs.csv"
        needs.write_text(NEEDS)
        plans = [("--needs", str(needs), "--today", "2026-11-30", "--prefer", prefer)
                 for prefer in ("cheapest", "parcels")] + [("--today", "2026-12-02")]
        expected = {"2026": 0}
        for words in plans:
            planned = document("plan", *words, "--shop", shop)["orders"]
            assert planned, words
            drafted = document("order", "new", "--from-plan", *words, "--shop", shop)
            agree(planned, drafted["orders"])
            numbers = [order["number"] for order in drafted["orders"]]
            first = expected["2026"]
            assert numbers == [f"2026-{first + n + 1:04}" for n in range(len(numbers))], numbers
            expected["2026"] += len(numbers)
            hose = [line for order in drafted["orders"] for line in order["lines"] if line["part"] == "EP-6"]
            assert all(line["unit"] == "in" for line in hose) and (hose or "--needs" not in words)
            flarestock("take-back", drafted["record"], "--shop", shop)
            for number in numbers:
                assert document("order", "show", number, "--shop", shop)["state"] == "cancelled"
        once = [document("order", "new", "--from-plan", *plans[0], "--id", ACTION, "--shop", shop)
                for _ in range(2)]
        assert [one["already"] for one in once] == [False, True]
        assert once[0]["orders"] == once[1]["orders"] and once[0]["record"] == ACTION
        one = once[0]["orders"][0]["supplier"]
        only = document("order", "new", "--from-plan", *plans[0], "--supplier", one.lower(), "--shop", shop)
        assert {order["supplier"] for order in only["orders"]} == {one}
        said = flarestock("order", "new", "--from-plan", "--line", "AD-3-3 1", "--shop", shop, status=2)
        assert "--line" in said, said
        flarestock("order", "new", "--supplier", one, "--prefer", "parcels", "--shop", shop, status=2)
        assert "--supplier: is required" in flarestock("order", "new", "--line", "AD-3-3 1", "--shop", shop,
                                                      status=2)
        ratesAreTheShops(shop)
        assert document("verify", shop)["whole"]


main()
