# SPDX-License-Identifier: MIT
"""R1: what was acknowledged survives the program being killed (kill -9), at random moments and just
before each single call that lasts, and another program reads it whole.

Measured: 0 lost, 0 half, 0 wrong sums, opened again within a second."""

import random
import re
import shutil
import signal
import subprocess
import time

import bench as b

ROUNDS = 200 if b.LONG else 20
COMMANDS = 200 if b.LONG else 30
STEP = 1 if b.LONG else 5


def judge(bench, shop, said, when):
    """`said`: the actions that the writer acknowledged, by number."""
    seen = bench.read(shop, when)
    if seen is None:
        return None
    legs = {}
    for row in seen.movements:
        if row["document"].startswith("action ") and row["document"] != "action 0":
            legs.setdefault(int(row["document"].split()[1]), []).append(row)
    for action in said:
        if action not in legs:
            bench.fail(f"{when}: action {action} was acknowledged and is lost")
    for action, rows in legs.items():
        if len(rows) != 2:
            bench.fail(f"{when}: of action {action} half is there")
    return seen


def killed_writer(bench):
    """A program that lives long is killed in the middle of its work."""
    shop = bench.small_shop("of-a-writer")
    said, first = [], 2
    for turn in range(ROUNDS):
        writer = subprocess.Popen([bench.programs.writer, "moves", str(shop), str(first), "1000000"],
                                  stdout=subprocess.PIPE, stderr=subprocess.DEVNULL,
                                  env=b.environment())
        head = writer.stdout.readline()
        time.sleep(bench.dice.uniform(0, 0.12))
        writer.send_signal(signal.SIGKILL)
        lines = (head + writer.stdout.read()).decode().split("\n")
        writer.wait()
        new = [int(line.split()[1]) for line in lines if re.fullmatch(r"action \d+", line)]
        said += new
        bench.count("acknowledged actions", len(new))
        bench.count("kills of a writer")
        judge(bench, shop, said, f"kill {turn}")
        if turn % 5 == 0:
            bench.opens_soon(shop, f"kill {turn}")
        first = max([first, *said]) // 2 * 2 + 4
    bench.expect(bench.counts["acknowledged actions"] >= 5 * ROUNDS, "too few actions to say anything")


def killed_command(bench):
    """The command that a person types is killed; typed again with its id it counts once."""
    shop = bench.small_shop("of-commands")
    began = time.monotonic()
    moved = [b.fresh_id(bench.dice)]
    b.run(*b.move_words(bench.programs, shop, moved[0]))
    usual = time.monotonic() - began
    for turn in range(COMMANDS):
        movement = b.fresh_id(bench.dice)
        words = b.move_words(bench.programs, shop, movement)
        command = subprocess.Popen(words, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                                   env=b.environment())
        time.sleep(bench.dice.uniform(0, 1.2 * usual))
        command.send_signal(signal.SIGKILL)
        acknowledged = command.wait() == 0
        bench.count("kills of flarestock move")
        bench.count("of them acknowledged before", acknowledged)
        seen = bench.read(shop, f"command {turn}")
        there = seen is not None and seen.ids.count(movement.replace("-", ""))
        bench.expect(there or not acknowledged, f"command {turn}: acknowledged and lost")
        bench.count("of them there", bool(there))
        again = b.run(*words)
        bench.expect(again.done and ("already" in again.out) == bool(there),
                     f"command {turn}: said again: {again}")
        moved.append(movement)
    seen = bench.read(shop, "after all commands")
    for movement in moved if seen else ():
        bench.expect(seen.ids.count(movement.replace("-", "")) == 1, f"{movement} is not there once")


def killed_at_every_call(bench):
    """Killed just before the k-th lasting call, k from 1 until it finishes."""
    original = bench.small_shop("original")
    b.run(bench.programs.writer, "moves", original, 2, 4)
    actions = [
        ("flarestock move", lambda shop, name: b.move_words(bench.programs, shop, name)),
        ("two actions", lambda shop, _: [bench.programs.writer, "moves", shop, 6, 2]),
        ("a document", lambda shop, _: [bench.programs.writer, "document", shop, 20, 1]),
    ]
    for what, words in actions:
        at, finished = 1 + bench.dice.randrange(STEP), False
        while not finished:
            shop = bench.folder / "shop"
            b.copy_shop(original, shop)
            name = b.fresh_id(bench.dice)
            ran = b.run(*words(shop, name), LD_PRELOAD=bench.programs.failing_disk, DISK_CALL="*",
                        DISK_FOLDER=bench.folder, DISK_AT=at, DISK_ERRNO=0)
            finished = ran.done
            if not finished and ran.status != -signal.SIGKILL:
                bench.fail(f"{what}, call {at}: {ran}")
            said = [int(n) for n in re.findall(r"^action (\d+)$", ran.out, re.M)]
            judge(bench, shop, [2, 3, 4, 5, *said], f"{what}, killed before call {at}")
            again = b.run(*words(shop, name))
            bench.expect(again.done, f"{what}, killed before call {at}, done again: {again}")
            judge(bench, shop, [2, 3, 4, 5], f"{what}, killed before call {at}, done again")
            bench.count("kills before a call")
            at += STEP


def killed_while_made(bench):
    """A shop that is being made is there whole, or not at all."""
    at, finished = 1 + bench.dice.randrange(STEP), False
    while not finished:
        shutil.rmtree(bench.folder)
        bench.folder.mkdir()
        shop = bench.folder / "made"
        ran = b.run(bench.programs.writer, "make", shop, LD_PRELOAD=bench.programs.failing_disk,
                    DISK_CALL="*", DISK_FOLDER=bench.folder, DISK_AT=at, DISK_ERRNO=0)
        finished = ran.done
        if shop.exists():
            seen = bench.read(shop, f"made, killed before call {at}")
            bench.expect(seen and len(seen.movements) == 3, f"call {at}: made by half")
        else:
            again = b.run(bench.programs.writer, "make", shop)
            bench.expect(again.done, f"made again after a kill before call {at}: {again}")
        bench.count("kills while a shop is made")
        at += STEP


def test(bench):
    killed_writer(bench)
    killed_command(bench)
    killed_at_every_call(bench)
    killed_while_made(bench)


if __name__ == "__main__":
    b.main("what was acknowledged survives kill -9", test, [
        ("journal of SQLite in memory only", killed_at_every_call, "journal_in_memory"),
        ("two transactions for one action", killed_at_every_call, "two_transactions"),
    ])
