# SPDX-License-Identifier: MIT
"""R5: an action that is repeated with its id counts once, however often, in whatever order, from however
many programs at once, and after a kill in the middle. (After a kill of each command, after power loss and
after a failed disk it is repeated too: see the tests of those.)

Measured: 0 duplicates among 1,000 ids, each said 1 to 3 times."""

import subprocess

import bench as b

ACTIONS = 500  # of two movements each
COMMANDS = 100 if b.LONG else 15
TURNS = 40 if b.LONG else 6


def once(bench, shop, expected, when):
    seen = bench.read(shop, when)
    if seen is None:
        return
    actions = [row for row in seen.movements if row["document"] != "action 0"]
    twice = len(seen.ids) - len(set(seen.ids))
    bench.expect(twice == 0, f"{when}: {twice} ids stand there twice")
    bench.expect(len(actions) == expected, f"{when}: {len(actions)} movements instead of {expected}")


def said_by_a_writer(bench):
    shop = bench.small_shop("of-a-writer")
    repeats = 0
    # All of them once, two thirds a second time, a third a third time.
    for said, count in enumerate((ACTIONS, 2 * ACTIONS // 3, ACTIONS // 3)):
        ran = b.run(bench.programs.writer, "moves", shop, 2, count, seconds=300)
        bench.expect(ran.done, f"said {said} times before: {ran}")
        already = ran.out.count("already")
        bench.expect(already == (count if said else 0), f"{already} of {count} were there already")
        repeats += already
    bench.count("ids said 1 to 3 times", 2 * ACTIONS)
    bench.count("repeated actions", repeats)
    once(bench, shop, 2 * ACTIONS, "after 1,000 ids")
    for _ in range(3):
        b.run(bench.programs.writer, "box", shop, 1, 5)
        b.run(bench.programs.writer, "document", shop, 3, 1)
    seen = bench.read(shop, "after looks into boxes")
    bench.expect(seen and len(seen.boxes) == 5, "a look into a box counts twice")
    bench.expect(seen and sum(row[1] == "notes.txt" for row in seen.documents) == 1,
                 "a document of the same words has a second version")


def said_by_commands(bench):
    shop = bench.small_shop("of-commands")
    times = 0
    for turn in range(COMMANDS):
        words = b.move_words(bench.programs, shop, b.fresh_id(bench.dice))
        for repeat in range(1 + turn % 3):
            ran = b.run(*words)
            times += 1
            bench.expect(ran.done and ("already" in ran.out) == (repeat > 0), f"said again: {ran}")
    seen = bench.read(shop, "after the commands")
    moved = sum(row["to_place"] == "used-up" for row in seen.movements) if seen else -1
    bench.expect(moved == COMMANDS, f"{moved} movements instead of {COMMANDS}")
    bench.count("commands said 1 to 3 times", times)


def said_by_two_at_once(bench):
    """Two programs say the same actions at the same time; one of them is killed."""
    shop = bench.small_shop("of-two")
    first = 2
    for turn in range(TURNS):
        words = [bench.programs.writer, "moves", str(shop), str(first), "20"]
        two = [subprocess.Popen(words, stdout=subprocess.PIPE, stderr=subprocess.PIPE)
               for _ in range(2)]
        if turn % 2 == 1:
            two[0].stdout.readline()
            two[0].kill()
        for writer in two:
            _, err = writer.communicate()
            if writer.returncode not in (0, -9):
                bench.fail(f"two at once: {err.decode().strip()}")
        bench.count("turns of two programs at once")
        ran = b.run(*words)
        bench.expect(ran.done and (ran.out.count("already") == 20), f"said again: {ran}")
        first += 20
        once(bench, shop, 2 * (first - 2), f"turn {turn}")


def test(bench):
    said_by_a_writer(bench)
    said_by_commands(bench)
    said_by_two_at_once(bench)


if __name__ == "__main__":
    b.main("a repeated action counts once", test, [
        ("an id that is there counts as a new one", said_by_a_writer, "id_counts_anew"),
    ])
