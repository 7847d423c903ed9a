#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""A month in the shop by commands, and what it was worth by another program: month_of_buying.py FLARESTOCK

Orders are placed, come in part by part, short, over, wrong or damaged, are taken to cars, taken back,
charged late, claimed for and credited, in a shop of each costing; at the end a build takes its parts. Then
this program reads the raw file (tests/faults/shop_reader.py, with nothing of Flarestock in it) and works out
from what was typed: the sums on each order's paper, what it landed for, what each receipt carries, how each
late cost splits, how each claim stands, what the build cost. All is equal to the millionth.

FLARESTOCK_SEED gives another month, FLARESTOCK_STEPS a longer one; the seed is printed. Rules: IAS 2.10 to
2.11 (what a purchase costs), 2.25 (first in, first out or an average); what stands in DEVELOPERS.md of late
costs; sums on paper half-even to the cent, tax half up, shares by largest remainder.
"""

import copy
import json
import os
import random
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from fractions import Fraction

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "faults"))
import shop_reader  # noqa: E402

FLARESTOCK = sys.argv[1]
PARTS = ("AD-6-6", "AD-8-8", "EL-6-90", "EL-8-90", "EL-6-45")
BUILD = "coupe-fuel"
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
        self.orders = {}  # number: lines {part: (quantity, price)}, landed, paper
        self.done = []    # what can be taken back: movement ids
        self.claims = {}  # number: how it was settled
        self.answers = []  # what was said of late costs
        self.wrong = []

    def run(self, *words, good=True):
        shop = [self.shop] if words[0] == "verify" else ["--shop", self.shop]
        ran = subprocess.run([FLARESTOCK, *words, *shop, "--json"],
                             capture_output=True, text=True, check=False)
        if good and ran.returncode != 0:
            sys.exit(f"{' '.join(words)}: {ran.stderr}")
        return json.loads(ran.stdout) if ran.returncode == 0 and ran.stdout else None

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
        said = self.run(*words)
        number = said["number"]
        self.paper(said, goods, shared(discount, goods), shared(freight, goods))
        self.run("order", "place", number)
        self.orders[number] = {"lines": lines, "landed": dict(zip(lines, (
            10_000 * (net - off + on) for net, off, on in
            zip(goods, shared(discount, goods), shared(freight, goods)))))}

    def paper(self, said, goods, off, on):
        """The sums of an order as its paper has them, in cents."""
        def cents(words):
            return int(Fraction(words) * 100)

        for name, own, column in (("goods", goods, "cost"), ("discount", off, "discount"),
                                  ("freight", on, "freight")):
            if [cents(line[column]) for line in said["lines"]] != own or \
                    cents(said[name]) != sum(own):
                self.wrong.append(f"{said['number']}: {name} is not {own}: {said}")
        rate = Fraction(said["taxRule"]["percent"])  # By document, half up, of what is paid for.
        tax = int((sum(goods) - sum(off) + sum(on)) * rate / 100 + Fraction(1, 2))
        if said["taxRule"]["by"] != "document" or cents(said["tax"]) != tax:
            self.wrong.append(f"{said['number']}: tax {said['tax']} is not {tax} cents")
        if cents(said["total"]) != sum(goods) - sum(off) + sum(on) + cents(said["tax"]):
            self.wrong.append(f"{said['number']} comes to {said['total']}")

    def awaited(self, number):
        came = self.run("order", "show", number)
        return {line["part"]: int(line["awaited"]) for line in came["lines"]
                if int(line["awaited"]) > 0}

    def receive(self):
        number = self.dice.choice(list(self.orders))
        words = ["receive", "--order", number, "--to", "A2"]
        for part, count in self.awaited(number).items():
            came = self.dice.randint(0, count)
            if came:
                words += ["--line", part, str(came)]
            if came > 1 and self.dice.random() < 0.3:
                words += ["--damaged", part, "1"]
            if came < count and self.dice.random() < 0.3:
                words += ["--short", part, "1"]
            elif came < count and self.dice.random() < 0.2:
                words += ["--wrong", self.dice.choice([one for one in PARTS if one != part]), "1", part]
            if came == count and self.dice.random() < 0.2:
                words[words.index(part, words.index("--line")) + 1] = str(came + 1)
                words.append("--over")
        if "--line" not in words:
            return self.order()
        self.done.append(self.run(*words)["movement"])
        return None

    def receive_all(self):
        number = self.dice.choice(list(self.orders))
        if self.awaited(number):
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
        number = self.dice.choice(list(self.orders))
        kind = self.dice.choice(("freight", "duty", "credit"))
        said = self.run("cost", "late", number, f"{self.dice.randint(1, 900) / 100:.2f}", "--kind",
                        kind, good=False)  # Of an order of which nothing came it is refused.
        if said:
            self.answers.append(said)

    def settle(self):
        claims = self.run("claim", "list", "--open")["claims"]
        if not claims:
            return
        number, way, state = claims[0]["number"], self.dice.random(), "piece came"
        if way < 0.4:
            done = self.run("claim", "settle", number, "--came", claims[0]["owed"], "--to", "A2")
        elif way < 0.8:
            state = "credited"
            done = self.run("claim", "settle", number, "--credit",
                            f"{self.dice.randint(0, 500) / 100:.2f}")
        else:
            state = "given up"
            done = self.run("claim", "settle", number, "--given-up")
        if done:
            self.claims[number] = state

    def take_back(self):
        if self.done:
            self.run("take-back", self.done.pop(), good=False)  # Where the pieces are gone it cannot.

    def mistaken(self):
        """What came was charged late and lies alone when its receipt is taken back."""
        self.order()
        number = list(self.orders)[-1]
        came = self.awaited(number)
        receipt = self.run("receive", "--order", number, "--all", "--to", "A2")["movement"]
        self.run("cost", "late", number, "7.77", "--kind", "freight")
        for part, count in came.items():
            there = [int(row["onHand"]) for row in self.run("stock", "--find", part)["stock"]
                     if row["part"] == part and row["place"] == "A2"]
            if sum(there) > count:
                self.run("move", part, str(sum(there) - count), "--from", "A2", "--to", "car-1")
        self.run("take-back", receipt)

    def play(self, steps):
        self.mistaken()
        deeds = (self.order, self.receive, self.receive, self.receive_all, self.take, self.take,
                 self.charge, self.settle, self.take_back)
        for _ in range(steps):
            self.dice.choice(deeds)()
        self.run("reserve", BUILD)
        self.run("issue", BUILD)


class Recomputed:
    """From the raw file, and from what was typed."""

    def __init__(self, month):
        self.month = month
        self.shop = shop_reader.Shop(month.shop)
        self.wrong = month.wrong + self.shop.wrong
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
                    if receipt["order"] != number or receipt["part"] != part or \
                            "is" in receipt or "comes" in receipt:
                        continue  # A wrong part, or in the place of what had come before.
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
            before = [r for r in self.receipts_of_then(late) if r["order"] == late["order"] and
                      "is" not in r and self.bears(r, late)]
            before.sort(key=lambda receipt: receipt["part"].encode())
            expected = shared(amount, [int(receipt["value"]) for receipt in before])
            self.expect([share[4] for share in shares] == expected,
                        f"the shares of {late['order']} are {shares}, not {expected}")
            used, there = set(), self.folded(late["entry"])
            for share, receipt in zip(shares, before):
                here = self.here(receipt, there, used)
                self.expect(share[3] == here, f"{here} of {receipt['part']} were here, not {share[3]}")
                whole = half_even(Fraction(share[4] * here, share[2]))
                if amount > 0:
                    self.expect(share[5] == whole, f"{share[5]} went into stock, not {whole}")
                else:  # No further down than to nothing.
                    self.expect(whole <= share[5] <= 0, f"{share[5]} came off stock, of {whole}")

    def bears(self, receipt, late):
        """A credit for a piece that came and was not good is borne by its part alone."""
        claim = next((json.loads(row["fields"]) for row in self.shop.records
                      if row["kind"] == "supplier claim" and late["claim"] and
                      json.loads(row["fields"])["claim"] == late["claim"]), None)
        return not claim or claim["fault"] != "damaged" or receipt["part"] == claim["part"]

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

    def folded(self, late):
        """What lies in stock before that entry, as layers, and the movement that brought each.

        Also by a moving average the oldest are taken to have left first; there what only goes over
        the bench to be worth something else stays where it is.
        """
        shop = copy.copy(self.shop)
        shop.wrong, shop.moved = [], {}
        average = shop.costing == "moving average"
        layers, past, origins, bench = {}, {}, {}, []
        for row in shop.movements:
            if row["lamport"] >= late["lamport"]:
                break
            onto, off = (shop.places[row[end]] == "bench" for end in ("to_place", "from_place"))
            if average and (row["quantity"] == 0 or onto or off):
                continue
            gone = shop._post_layers(row, layers, past)
            past[row["id"]] = (row["quantity"], row["value"], gone)
            if onto and row["quantity"]:
                bench.append(origins[row["part"], min(gone)])
            for rank in gone:  # What went onto the bench first comes off it first.
                origins.setdefault((row["part"], rank),
                                   bench.pop(0) if off and row["quantity"] else row["id"])
        return layers, origins

    def here(self, receipt, there, used):
        """How many of a receipt lie in stock then; of several alike the next."""
        raw, (layers, origins) = bytes.fromhex(receipt["action"].replace("-", "")), there
        mine = next(row["id"] for row in self.shop.movements
                    if (row["action"] or row["id"]) == raw and row["deed"] == "receive" and
                    row["part"] == receipt["part"] and row["lot"] == receipt["lot"] and
                    row["quantity"] == int(receipt["quantity"]) and
                    row["value"] == int(receipt["value"]) and row["id"] not in used)
        used.add(mine)
        return sum(count for (part, *_), lying in layers.items() if part == receipt["part"]
                   for rank, (count, _) in lying.items() if origins[part, rank] == mine)

    def answers_hold(self):
        """What was answered is what was written, and what verify and the build's costs say."""
        for said in self.month.answers:
            row = next(late for late in self.lates if late["action"] == said["movement"])
            for name, column in (("share", 4), ("intoStock", 5), ("here", 3)):
                own = [line.split("\t")[column] for line in row["shares"].split("\n")]
                answer = [Fraction(share[name]) * (1 if column == 3 else 1_000_000)
                          for share in said["shares"]]
                self.expect(list(map(int, own)) == answer, f"{said} is not {own} of {name}")
            self.expect(Fraction(said["intoStock"]) + Fraction(said["difference"]) ==
                        Fraction(int(row["amount"]), 1_000_000), f"{said} does not add up")
        for claim in self.month.run("claim", "list")["claims"]:
            state = self.month.claims.get(claim["number"], "raised")
            self.expect(claim["state"] == state, f"claim {claim['number']} is {claim['state']}, "
                                                 f"not {state}")
        self.expect(self.month.run("verify")["whole"], "verify says that it is not whole")
        cost, issued = self.month.run("cost", "build", BUILD), {}
        for row in self.shop.movements:
            if row["deed"] == "issue" and row["document"] == BUILD:
                issued[row["part"]] = issued.get(row["part"], 0) + row["value"]
        cents = sum(half_even(Fraction(value, 10_000)) for value in issued.values())
        self.expect(cents > 0 and Fraction(cost["actual"]) * 100 == cents,
                    f"the build cost {cost['actual']}, and took {cents} cents")

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


def month_of(seed, costing):
    with tempfile.TemporaryDirectory() as folder:
        month = Month(random.Random(f"{seed} {costing}"), begun(folder, costing), costing)
        month.play(int(os.environ.get("FLARESTOCK_STEPS") or "9"))
        again = Recomputed(month)
        again.receipts_add_up()
        again.lates_split()
        worth = again.worth()
        again.answers_hold()
        return f"seed {seed}, {costing}: {len(month.orders)} orders, {len(again.receipts)} receipts, " \
               f"{len(again.lates)} late costs, stock {float(worth):.6f}", again.wrong


def main():
    named = os.environ.get("FLARESTOCK_SEED")
    months = [(seed, costing) for seed in ([named] if named else ["2", "3"])
              for costing in ("moving average", "first in, first out")]
    wrong = []
    with ThreadPoolExecutor(2) as hands:
        for said, found in hands.map(lambda month: month_of(*month), months):
            print(said)
            wrong += found
    print("\n".join(wrong) or "another program says the same")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
