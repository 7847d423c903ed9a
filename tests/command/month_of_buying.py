#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""A month in the shop by commands, and what it was worth by another program: month_of_buying.py FLARESTOCK

Orders are placed, come in part by part, short or over, are taken to cars, taken back, charged late and
credited, in a shop of each costing. Then this program reads the raw file (tests/faults/shop_reader.py, with
nothing of Flarestock in it) and works out from what was typed: what each order landed for, what each
receipt carries, how each late cost splits, and what the stock is worth. All is equal to the millionth.

FLARESTOCK_SEED gives another month; the seed is printed.
"""

import json
import os
import random
import subprocess
import sys
import tempfile
from fractions import Fraction

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "faults"))
import shop_reader  # noqa: E402

FLARESTOCK = sys.argv[1]
PARTS = ("AD-6-6", "AD-8-8", "EL-6-90", "EL-8-90", "EL-6-45")
STOCK = ("shelf", "bin", "drawer")


def half_even(number):
    return round(Fraction(number))


def shared(total, weights):
    """Largest remainder, ties to the earlier; alike where nothing weighs."""
    if not any(weights):
        weights = [1] * len(weights)
    sign, whole, everything = (-1 if total < 0 else 1), abs(total), sum(weights)
    exact = [Fraction(whole * weight, everything) for weight in weights]
    parts = [int(each) for each in exact]
    order = sorted(range(len(parts)), key=lambda i: (-(exact[i] - parts[i]), i))
    for i in order[:whole - sum(parts)]:
        parts[i] += 1
    return [sign * part for part in parts]


class Month:
    def __init__(self, dice, shop, costing):
        self.dice, self.shop, self.costing = dice, shop, costing
        self.orders = {}  # number: lines {part: (quantity, price)}, freight, discount in cents
        self.done = []    # what can be taken back: movement ids
        self.day = 0

    def run(self, *words, good=True):
        ran = subprocess.run([FLARESTOCK, *words, "--shop", self.shop, "--json"],
                             capture_output=True, text=True, check=False)
        if good and ran.returncode != 0:
            sys.exit(f"{' '.join(words)}: {ran.stderr}")
        return json.loads(ran.stdout) if ran.stdout else None

    def order(self):
        parts = self.dice.sample(PARTS, self.dice.randint(1, 4))
        lines = {part: (self.dice.randint(2, 24), Fraction(self.dice.randint(1, 90_000), 10_000))
                 for part in parts}
        goods = [half_even(count * price * 100) for count, price in lines.values()]
        freight = self.dice.choice((0, self.dice.randint(1, 4000)))
        discount = self.dice.choice((0, self.dice.randint(0, sum(goods) // 3)))
        words = ["order", "new", "--supplier", "TCF", "--freight", f"{freight / 100:.2f}",
                 "--discount", f"{discount / 100:.2f}"]
        for part, (count, price) in lines.items():
            words += ["--line", f"{part} {count} at {float(price):.4f}"]
        number = self.run(*words)["number"]
        self.run("order", "place", number)
        self.orders[number] = {"lines": lines, "landed": dict(zip(lines, (
            10_000 * (net - off + on) for net, off, on in
            zip(goods, shared(discount, goods), shared(freight, goods)))))}

    def awaited(self, number):
        came = self.run("order", "show", number)
        return {line["part"]: int(line["awaited"]) for line in came["lines"]
                if int(line["awaited"]) > 0}

    def open_orders(self):
        return [number for number in self.orders if self.awaited(number)]

    def receive(self):
        number = self.dice.choice(self.open_orders() or [None])
        if not number:
            return self.order()
        words = ["receive", "--order", number, "--to", "A2"]
        for part, count in self.awaited(number).items():
            came = self.dice.randint(0, count)
            if came:
                words += ["--line", part, str(came)]
            if came < count and self.dice.random() < 0.2:
                words += ["--short", part, "1"]
        if "--line" in words:
            self.done.append(self.run(*words)["movement"])
        return None

    def receive_all(self):
        number = self.dice.choice(self.open_orders() or [None])
        if number:
            self.run("receive", "--order", number, "--all", "--to", "A2")

    def take(self):
        part = self.dice.choice(PARTS)
        there = [row for row in self.run("stock", "--find", part)["stock"]
                 if row["part"] == part and row["place"] == "A2" and int(row["free"]) > 0]
        if there:
            count = self.dice.randint(1, int(there[0]["free"]))
            self.run("move", part, str(count), "--from", "A2", "--to",
                     self.dice.choice(("car-1", "car-1", "A3")))

    def charge(self):
        number = self.dice.choice(list(self.orders) or [None])
        if number:
            kind = self.dice.choice(("freight", "duty", "credit"))
            self.run("cost", "late", number, f"{self.dice.randint(1, 900) / 100:.2f}", "--kind", kind,
                     good=False)  # Of an order of which nothing came it is refused.

    def settle(self):
        claims = [claim for claim in self.run("claim", "list", "--open")["claims"]]
        if not claims:
            return
        number, way = claims[0]["number"], self.dice.random()
        if way < 0.4:
            self.run("claim", "settle", number, "--came", claims[0]["owed"], "--to", "A2", good=False)
        elif way < 0.8:
            self.run("claim", "settle", number, "--credit", f"{self.dice.randint(0, 500) / 100:.2f}",
                     good=False)
        else:
            self.run("claim", "settle", number, "--given-up")

    def take_back(self):
        if self.done:
            self.run("take-back", self.done.pop(), good=False)  # Where the pieces are gone it cannot.

    def play(self, steps):
        self.order()
        deeds = (self.order, self.receive, self.receive, self.receive_all, self.take, self.take,
                 self.charge, self.settle, self.take_back)
        for _ in range(steps):
            self.dice.choice(deeds)()


class Recomputed:
    """From the raw file, and from what was typed."""

    def __init__(self, month):
        self.month = month
        self.shop = shop_reader.Shop(month.shop)
        self.wrong = list(self.shop.wrong)
        self.reversed = {row["reverses"].hex() for row in self.shop.movements if row["reverses"]}
        self.receipts = self._of("receipt")
        self.lates = self._of("late cost")

    def expect(self, good, what):
        if not good:
            self.wrong.append(what)

    def _of(self, kind):
        found = []
        for row in self.shop.entries:
            if row.get("kind") != kind:
                continue
            fields = json.loads(row["fields"])
            fields["order"] = row["subject"]
            fields["entry"] = row
            if fields["action"].replace("-", "") not in self.reversed:
                found.append(fields)
        return found

    def receipts_add_up(self):
        for number, order in self.month.orders.items():
            for part, (ordered, _) in order["lines"].items():
                whole, count, value = order["landed"][part], 0, 0
                for receipt in self.receipts:
                    if receipt["order"] != number or receipt["part"] != part:
                        continue
                    came = int(receipt["quantity"])
                    then = whole if count + came >= ordered else \
                        half_even(Fraction(whole * (count + came), ordered))
                    # Where an earlier one was taken back, what is there still carries its own.
                    expected = max(0, then - value)
                    off = abs(expected - int(receipt["value"]))
                    self.expect(off <= self.taken_back, f"{number} {part}: {receipt['value']} came, "
                                                        f"{expected} was to come")
                    count += came
                    value += int(receipt["value"])
                if count >= ordered:
                    self.expect(value == whole, f"{number} {part} came for {value}, not {whole}")

    @property
    def taken_back(self):
        """One millionth for each receipt that was taken back."""
        return sum(1 for row in self.shop.movements if row["reverses"])

    def lates_split(self):
        for late in self.lates:
            amount, shares = int(late["amount"]), []
            for line in late["shares"].split("\n"):
                part, lot, *numbers = line.split("\t")
                shares.append((part, lot, *map(int, numbers)))
            self.expect(sum(share[4] for share in shares) == amount,
                        f"the shares of {late['order']} are not {amount}")
            before = [r for r in self.receipts_of_then(late) if r["order"] == late["order"]]
            before.sort(key=lambda receipt: receipt["part"].encode())
            expected = shared(amount, [int(receipt["value"]) for receipt in before])
            self.expect([share[4] for share in shares] == expected,
                        f"the shares of {late['order']} are {shares}, not {expected}")
            for share, receipt in zip(shares, before):
                here = self.here(receipt, late["entry"])
                self.expect(share[3] == here, f"{here} of {receipt['part']} were here, not {share[3]}")
                whole = half_even(Fraction(share[4] * here, share[2]))
                if amount > 0:
                    self.expect(share[5] == whole, f"{share[5]} went into stock, not {whole}")
                else:  # No further down than to nothing.
                    self.expect(whole <= share[5] <= 0, f"{share[5]} came off stock, of {whole}")

    def receipts_of_then(self, late):
        place = (late["entry"]["lamport"], late["entry"]["sequence"])
        found = []
        for row in self.shop.entries:
            if (row["lamport"], row["sequence"]) >= place:
                break
            if row.get("kind") == "receipt":
                fields = json.loads(row["fields"])
                if not self.is_taken_back(fields["action"], late["entry"]):
                    found.append({**fields, "order": row["subject"], "entry": row})
        return found

    def is_taken_back(self, action, by):
        raw = bytes.fromhex(action.replace("-", ""))
        return any(row.get("reverses") == raw and row["lamport"] < by["lamport"]
                   for row in self.shop.entries)

    def here(self, receipt, late):
        """How many of a receipt lie in stock before that entry: the oldest leave first."""
        raw = bytes.fromhex(receipt["action"].replace("-", ""))
        lying, moved, mine = {}, {}, None
        for row in self.shop.movements:
            if row["lamport"] >= late["lamport"]:
                break
            if row["part"] != receipt["part"] or row["quantity"] == 0:
                continue
            if "bench" in (row["from_place"], row["to_place"]):
                continue  # Over the bench and back: no piece more or less.
            ours = (row["action"] or row["id"]) == raw and row["deed"] == "receive" and mine is None \
                and row["quantity"] == int(receipt["quantity"])
            if ours:
                mine = row["id"]
            if row["reverses"] is not None and row["reverses"] in moved:
                gone = moved[row["reverses"]]
            elif self.shop.places[row["from_place"]] in STOCK:
                gone, left = [], row["quantity"]
                here = lying.setdefault(row["from_place"], [])
                for rank, origin, count in sorted(here):
                    some = min(left, count)
                    if some:
                        gone.append((rank, origin, some))
                        left -= some
            else:
                gone = [(row["lamport"] * 1000 + row["sequence"], row["id"], row["quantity"])]
            moved[row["id"]] = gone
            for place, sign in ((row["from_place"], -1), (row["to_place"], 1)):
                if self.shop.places[place] not in STOCK:
                    continue
                layers = {(rank, origin): count for rank, origin, count in lying.get(place, [])}
                for rank, origin, count in gone:
                    layers[rank, origin] = layers.get((rank, origin), 0) + sign * count
                lying[place] = [(*key, count) for key, count in layers.items() if count > 0]
        return sum(count for layers in lying.values() for _, origin, count in layers
                   if origin == mine)

    def worth(self):
        """What every place holds besides the suppliers' is the opening and what they were paid."""
        supplier = sum(value for (_, place, _, _), (_, value) in self.shop.balances.items()
                       if self.shop.places[place] == "supplier")
        booked = sum(int(receipt["value"]) for receipt in self.receipts)
        booked += sum(int(late["amount"]) for late in self.lates)
        booked += self.given_up()
        self.expect(-supplier == booked, f"the suppliers gave {-supplier}, and {booked} is booked")
        stock = sum(value for (_, place, _, _), (_, value) in self.shop.balances.items()
                    if self.shop.places[place] in STOCK)
        said = sum(Fraction(row["value"]) for row in self.month.run("stock")["stock"]) \
            if "value" in self.month.run("stock")["stock"][0] else None
        if said is not None:
            self.expect(said * 1_000_000 == stock, f"stock is said to be {said}, and is {stock}")
        return Fraction(stock, 1_000_000)

    def given_up(self):
        """What went to the differences with a claim, and with no late cost."""
        late = {bytes.fromhex(late["action"].replace("-", "")) for late in self.lates}
        claims = {json.loads(row["fields"])["action"].replace("-", "") for row in self.shop.records
                  if row["kind"] == "supplier claim"}
        total = 0
        for row in self.shop.movements:
            action = row["action"] or row["id"]
            if row["quantity"] == 0 and action not in late and action.hex() in claims and \
                    action.hex() not in self.reversed:
                total += row["value"] if self.shop.places[row["from_place"]] == "supplier" \
                    else -row["value"]
        return total


def begun(folder, costing):
    shop = os.path.join(folder, "demo.shop")
    subprocess.run([FLARESTOCK, "demo", "--to", shop], check=True, capture_output=True)
    if costing == "moving average":
        return shop
    files, fifo = os.path.join(folder, "files"), os.path.join(folder, "fifo.shop")
    subprocess.run([FLARESTOCK, "export", "--to", files, "--shop", shop], check=True,
                   capture_output=True)
    named = os.path.join(files, "shop.toml")
    with open(named, encoding="utf-8") as file:
        said = file.read()
    with open(named, "w", encoding="utf-8") as file:
        file.write(f'costing = "{costing}"\n' + said)
    subprocess.run([FLARESTOCK, "begin", "--from", files, "--to", fifo], check=True,
                   capture_output=True)
    return fifo


def main():
    seed = os.environ.get("FLARESTOCK_SEED") or "1"
    steps = int(os.environ.get("FLARESTOCK_STEPS") or "45")
    wrong = []
    for costing in ("moving average", "first in, first out"):
        with tempfile.TemporaryDirectory() as folder:
            month = Month(random.Random(f"{seed} {costing}"), begun(folder, costing), costing)
            month.play(steps)
            again = Recomputed(month)
            again.receipts_add_up()
            again.lates_split()
            worth = again.worth()
            print(f"seed {seed}, {costing}: {len(month.orders)} orders, {len(again.receipts)} receipts, "
                  f"{len(again.lates)} late costs, stock {float(worth):.6f}")
            wrong += again.wrong
    print("\n".join(wrong) or "another program says the same")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
