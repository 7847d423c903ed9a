# SPDX-License-Identifier: MIT
"""R2: what was acknowledged survives power loss. Every lasting call of real runs is recorded; at each of
them the power goes, and what was not synced meets five fates (crash_images.py). Another program reads
each image. The same recordings without the syncs that synchronous=NORMAL and OFF leave out must be seen
to lose acknowledged movements.

Measured: 0 lost, 0 half, 0 wrong in 2,000 images, with --long in at least 20,000."""

import hashlib
import os
import re
import sys

import bench as b
from crash_images import FATES, Recording, read_trace, without_commit_syncs, without_syncs
from shop_reader import Shop, Wrong

IMAGES = 60_000 if b.LONG else 2_000  # At most; of some kinds every call and fate is fewer.
TRIED_BY_PROGRAM = 400 if b.LONG else 25


class Kind:
    """One kind of action: what runs, in a folder of its own, and from which shop it starts."""

    def __init__(self, name, share, runs, made_before=True):
        self.name, self.share, self.runs, self.made_before = name, share, runs, made_before


def kinds(programs):
    writer = programs.writer

    def commands(shop, dice):
        for _ in range(6):
            movement = b.fresh_id(dice)
            yield b.move_words(programs, shop, movement), f"moved {movement}"

    every = [
        Kind("flarestock move", 5, commands),
        # The log is brought into the file in the middle, after 1,000 pages.
        Kind("moves of a long-lived writer", 9,
             lambda shop, _: [([writer, "moves", shop, "2", "150"], "")]),
        Kind("a document", 3, lambda shop, _: [([writer, "document", shop, "1", "12"], "")]),
        Kind("looks into boxes", 2, lambda shop, _: [([writer, "box", shop, "1", "8"], "")]),
        Kind("a shop is made", 2, lambda shop, _: [([writer, "make", shop], "")], False),
        Kind("flarestock demo", 3,
             lambda shop, _: [([programs.command, "demo", "--to", shop], "made demo")], False),
    ]
    if b.LONG:
        every.append(Kind("writers after each other", 8, lambda shop, _: [
            ([writer, "moves", shop, first, "40"], "") for first in ("2", "42", "82", "122")]))
    return every


def recorded(bench, kind):
    folder = bench.folder / re.sub("[^a-z]", "-", kind.name)
    folder.mkdir()
    shop, trace = str(folder / "shop"), str(bench.folder / "trace")
    if os.path.exists(trace):
        os.unlink(trace)
    start = {}
    if kind.made_before:
        b.run(bench.programs.writer, "make", shop)
        for name in os.listdir(folder):
            if not name.endswith("-shm"):
                start[str(folder / name)] = (folder / name).read_bytes()
    calls = []
    for words, said in kind.runs(shop, bench.dice):
        ran = b.run(*words, LD_PRELOAD=bench.programs.failing_disk, DISK_FOLDER=folder,
                    DISK_TRACE=trace)
        if not ran.done:
            sys.exit(f"{kind.name} cannot be recorded: {ran}")
        if said:  # A command acknowledges by ending well.
            calls += read_trace(trace) + [("A", "said", 0, f"{said}\n".encode())]
            os.unlink(trace)
    return shop, calls or read_trace(trace), start


def judged(path, said, there_before):
    """What is wrong with an image, or nothing. `said`: what had been acknowledged."""
    if not os.path.exists(path):
        return "the file is lost" if there_before or said else ""
    try:
        seen = Shop.of_image(path)
    except Wrong as wrong:
        return f"the file {wrong}"
    if seen.wrong:
        return seen.wrong[0]
    ids, actions = set(seen.ids), {}
    for row in seen.movements:
        actions[row["document"]] = actions.get(row["document"], 0) + 1
    notes = [row[2] for row in seen.documents if row[1] == "notes.txt"]
    for line in said:
        what, _, name = line.partition(" ")
        lost = {"action": lambda: actions.get(line) != 2,
                "moved": lambda: name.replace("-", "") not in ids,
                "document": lambda: len(notes) < int(name),
                "box": lambda: len(seen.boxes) < int(name),
                "made": lambda: len(ids) < 400 if name == "demo" else actions.get("action 0") != 3,
                }[what]
        if lost():
            return f"acknowledged and lost: {line}"
    half = [what for what, count in actions.items() if re.fullmatch("action [1-9].*", what) and count != 2]
    return f"half of {half[0]} is there" if half else ""


class Judge:
    """Writes images and has them read; the same image with the same acknowledgements only once."""

    def __init__(self, bench, kind, shop):
        self.bench, self.kind, self.shop = bench, kind, shop
        self.known = {}
        self.folder = bench.folder / "image"
        self.folder.mkdir(exist_ok=True)

    def write(self, image):
        for name in os.listdir(self.folder):
            os.unlink(self.folder / name)
        root = os.path.dirname(self.shop)
        for path, raw in image.items():
            (self.folder / os.path.relpath(path, root)).write_bytes(raw)

    def wrong(self, image, said):
        key = hashlib.sha256(repr(sorted(image)).encode())
        for path in sorted(image):
            key.update(hashlib.sha256(image[path]).digest())
        key = (key.digest(), len(said))
        if key not in self.known:
            self.write(image)
            self.bench.count("different images")
            self.known[key] = judged(str(self.folder / "shop"), said, self.kind.made_before)
        return self.known[key]

    def try_program(self, image, said):
        """The program itself opens it, finds it whole, says the last action again, and it counts
        once."""
        self.write(image)
        shop = self.folder / "shop"
        if not shop.exists():
            return
        again = b.run(self.bench.programs.command, "verify", shop)
        self.bench.expect(again.done, f"{self.kind.name}: flarestock verify of an image: {again}")
        if said and said[-1].startswith("action"):
            ran = b.run(self.bench.programs.writer, "moves", shop, said[-1].split()[1], 1)
            self.bench.expect(ran.done and "already" in ran.out, f"an action said again: {ran}")
        if said and said[-1].startswith("moved"):
            ran = b.run(*b.move_words(self.bench.programs, shop, said[-1].split()[1]))
            self.bench.expect(ran.done and "already" in ran.out, f"a move said again: {ran}")
        self.bench.count("images opened by the program")


def crashed(bench, kind, images, weaken=None):
    shop, calls, start = recorded(bench, kind)
    if weaken:
        calls = weaken(calls)
    points = set(range(len(calls)))
    if len(calls) * len(FATES) > images:
        points = set(bench.dice.sample(range(len(calls)), images // len(FATES)))
    judge, recording = Judge(bench, kind, shop), Recording(calls, start)
    share = max(1, TRIED_BY_PROGRAM * kind.share // 24)
    chosen = set(bench.dice.sample(sorted(points), min(share, len(points))))
    for number in recording.walk():
        if number not in points:
            continue
        for fate in FATES:
            image = recording.image(fate, f"{b.SEED} {kind.name} {number} {fate}")
            wrong = judge.wrong(image, recording.said)
            bench.count("images")
            if wrong:
                bench.fail(f"{kind.name}, call {number} of {len(calls)}, {fate}: {wrong}")
                bench.count("of them losing what was acknowledged", "lost" in wrong)
        if number in chosen and not weaken:
            judge.try_program(image, recording.said)
    print(f"  {kind.name}: {len(points)} of {len(calls)} calls, "
          f"{sum(call[0] == 'S' for call in calls)} syncs, {len(recording.said)} acknowledged")


def test(bench):
    every = kinds(bench.programs)
    for kind in every:
        crashed(bench, kind, IMAGES * kind.share // sum(each.share for each in every))
    bench.expect(bench.counts["images"] >= (20_000 if b.LONG else 1_800), "too few images")


def weakened(weaken):
    def planted(bench):
        crashed(bench, kinds(bench.programs)[1], 1_000 if b.LONG else 250, weaken)
        if not bench.counts.get("of them losing what was acknowledged"):
            bench.wrong.clear()  # Noticed, but not what had to be noticed.
        else:
            b.tell(bench, "  seen")
    return planted


def planted_making(bench):
    crashed(bench, kinds(bench.programs)[4], 400)


if __name__ == "__main__":
    b.main("what was acknowledged survives power loss", test, [
        ("synchronous=NORMAL", weakened(without_commit_syncs), None),
        ("synchronous=OFF", weakened(without_syncs), None),
        ("the name of a new shop is not synced", planted_making, "folder_not_synced"),
    ])
