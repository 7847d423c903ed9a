# SPDX-License-Identifier: MIT
"""R9: a wrong clock harms nothing: a year behind, ten years ahead, in 1979, jumping to and fro in the middle
of the work, and a computer whose time zone changes at night.

Measured: the journal has the order in which movements were acknowledged, whatever their clocks said; the
sums are what they are with a right clock; ids are unique and of version 7 (RFC 9562, 5.7)."""

import json
import re
import uuid

import bench as b

YEAR = 365 * 24 * 3600
# What is wrong, by how many seconds, and by how many more at every second reading.
CLOCKS = [
    ("right", 0, None),
    ("a year behind", -YEAR, None),
    ("ten years ahead", 10 * YEAR, None),
    ("jumping back an hour", 0, -3600),
    ("jumping ahead a year", 0, YEAR),
    ("in 1979", -1_500_000_000, None),
]
# Where clocks are put forward and back; Berlin does it in March and October, Apia once left out a day.
ZONES = ["UTC", "Europe/Berlin", "Pacific/Apia", "America/St_Johns"]
COMMANDS = 12 if b.LONG else 4
ACTIONS = 100 if b.LONG else 30


def wrong_clock(bench, wrong, jump):
    more = {"LD_PRELOAD": bench.programs.wrong_clock, "CLOCK_WRONG": wrong}
    return {**more, "CLOCK_JUMP": jump} if jump is not None else more


def moved(bench, shop, **more):
    words = [bench.programs.command, "move", "BK-A", "3", "--from", "A1", "--to", "used-up",
             "--shop", shop, "--json"]
    ran = b.run(*words, **more)
    if not bench.expect(ran.done, f"move with a wrong clock: {ran}"):
        return None
    return json.loads(ran.out)["movement"]


def orderly(bench, shop, expected, when):
    """`expected`: the ids and actions in the order in which they were acknowledged."""
    seen = bench.read(shop, when)
    if seen is None:
        return None
    found = []
    for row in seen.movements:
        what = row["document"] or str(uuid.UUID(bytes=row["id"]))
        if what != "action 0" and found[-1:] != [what]:
            found.append(what)
        id_of = uuid.UUID(bytes=row["id"])
        bench.expect(id_of.version == 7 and id_of.variant == uuid.RFC_4122,
                     f"{when}: {id_of} is no id of version 7")
        bench.count("ids looked at")
    bench.expect(found == expected, f"{when}: the journal has another order: "
                 f"{[pair for pair in zip(found, expected) if pair[0] != pair[1]][:1]}")
    lamports = [row["lamport"] for row in seen.movements]
    bench.expect(lamports == list(range(1, len(lamports) + 1)), f"{when}: the count has gaps")
    whole = b.run(bench.programs.command, "verify", shop)
    bench.expect(whole.done, f"{when}: {whole}")
    return seen


def every_clock(bench):
    """All clocks after each other in one shop: commands, and a writer that lives long."""
    shop, expected, balances = bench.small_shop(), [], None
    first = 2
    for turn, (what, wrong, jump) in enumerate(CLOCKS):
        more = {**wrong_clock(bench, wrong, jump), "TZ": ZONES[turn % len(ZONES)]}
        for _ in range(COMMANDS):
            expected.append(moved(bench, shop, **more))
            bench.count("commands")
        ran = b.run(bench.programs.writer, "moves", shop, first, ACTIONS, **more)
        bench.expect(ran.done, f"clock {what}: {ran}")
        expected += re.findall(r"^(action \d+)$", ran.out, re.M)
        bench.count("actions of a writer", ACTIONS)
        first += ACTIONS
        seen = orderly(bench, shop, expected, f"clock {what}")
        if seen is None:
            continue
        clocks = [row["at"] // 1000 for row in seen.movements[-2 * ACTIONS:]]
        bench.expect(turn == 0 or wrong == 0 or abs(clocks[-1] - right - wrong) < YEAR / 2,
                     f"clock {what}: the clock was not wrong")
        if jump:
            bench.expect(max(clocks) - min(clocks) > abs(jump) / 2, f"clock {what}: did not jump")
        if turn == 0:
            right = clocks[-1]
        bench.count("clocks")
        balances = seen.balances
    # The same with a right clock gives the same sums.
    twin = bench.small_shop("twin")
    first = 2
    for _ in CLOCKS:
        for _ in range(COMMANDS):
            moved(bench, twin)
        b.run(bench.programs.writer, "moves", twin, first, ACTIONS)
        first += ACTIONS
    seen = bench.read(twin, "with a right clock")
    bench.expect(seen and seen.balances == balances, "the sums are others than with a right clock")


def made_at_a_wrong_time(bench):
    """A shop is made, and its files are of another time than its clock."""
    for what, wrong, jump in CLOCKS:
        shop = bench.folder / f"made {what}"
        ran = b.run(bench.programs.command, "demo", "--to", shop, **wrong_clock(bench, wrong, jump))
        bench.expect(ran.done, f"demo with a clock {what}: {ran}")
        seen = bench.read(shop, f"demo with a clock {what}")
        bench.expect(seen and len(seen.movements) > 400, f"demo with a clock {what}: too few")
        bench.count("shops made")


def repeated(bench):
    """A movement said again with another clock counts once."""
    shop = bench.small_shop("repeated")
    words = b.move_words(bench.programs, shop, b.fresh_id(bench.dice))
    for what, wrong, jump in CLOCKS:
        ran = b.run(*words, **wrong_clock(bench, wrong, jump))
        bench.expect(ran.done, f"said again with a clock {what}: {ran}")
    seen = bench.read(shop, "said again with other clocks")
    bench.expect(seen and len(seen.movements) == 4, "a movement counts twice with another clock")


def test(bench):
    every_clock(bench)
    made_at_a_wrong_time(bench)
    repeated(bench)


if __name__ == "__main__":
    b.main("a wrong clock harms nothing", test, [
        ("the order is that of the clock", every_clock, "order_by_clock"),
    ])
