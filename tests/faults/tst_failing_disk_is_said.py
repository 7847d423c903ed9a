# SPDX-License-Identifier: MIT
"""R3: a failing disk loses nothing and is said. The k-th write, sync, open, unlink, rename or read fails,
once or from then on, with ENOSPC or EIO, k from 1 until the action finishes; or everything fails from the k-th
call on. (A disk that is full: tst_full_disk_is_said.py.)

Measured at every point: a sentence and exit status 2, or done and then on the disk too (what had not been
synced when the program said so is taken away to see that); nothing acknowledged is lost, nothing is half;
the same action said again is done, and counts once."""

import csv
import errno
import os
import re
import shutil
from pathlib import Path

import bench as b
from crash_images import Recording, read_trace
from shop_reader import Shop, Wrong

CALLS = {"w": "write", "s": "sync", "o": "open", "u": "unlink", "r": "rename", "i": "read",
         "*": "call of any kind"}
FAULTS = [(error, ever) for error in (errno.ENOSPC, errno.EIO) for ever in (0, 1)]
GONE = [(errno.EIO, 1)]  # What happens when any call fails: the disk is gone.
BEFORE = ["action 2", "action 3", "action 4", "action 5"]


class Action:
    """What is done, and how to see that it is there: `there(seen, name)` counts it. In the short tier
    only every step-th call fails, and in one of the four ways, by turns; in the long tier every call in
    each way. Only of the demo shop, which is made as the small one is, it is every eighth then."""

    def __init__(self, what, step, words, there, made_before=True):
        self.what, self.words = what, words
        self.step = step if not b.LONG else 8 if step > 10 else 1
        self.there, self.made_before = there, made_before


def actions(programs):
    writer = programs.writer
    return [
        Action("flarestock move", 2, lambda shop, name: b.move_words(programs, shop, name),
               lambda seen, name: seen.ids.count(name.replace("-", ""))),
        Action("two actions of a writer", 2, lambda shop, _: [writer, "moves", shop, 6, 2],
               lambda seen, _: sum(row["document"] in ("action 6", "action 7")
                                   for row in seen.movements) / 4),
        Action("a document", 4, lambda shop, _: [writer, "document", shop, 20, 1],
               lambda seen, _: sum(row[1] == "notes.txt" for row in seen.documents)),
        Action("a look into a box", 4, lambda shop, _: [writer, "box", shop, 1, 1],
               lambda seen, _: len(seen.boxes)),
        Action("a shop is made", 3, lambda shop, _: [writer, "make", shop],
               lambda seen, _: len(seen.movements) / 3, False),
        Action("flarestock demo", 61, lambda shop, _: [programs.command, "demo", "--to", shop],
               lambda seen, _: len(seen.movements) / opening_stock(), False),
    ]


def opening_stock():
    """How many rows the demo's opening stock has; each becomes one movement."""
    with open(Path(__file__).parents[2] / "demo-data" / "stock.csv", encoding="utf-8") as file:
        return sum(1 for _ in csv.DictReader(file))


class Point:
    """One failing call of one action."""

    def __init__(self, bench, action, call, fault):
        self.bench, self.action, self.call, self.fault = bench, action, call, fault
        self.folder, self.shop = bench.folder / "shops", bench.folder / "shops" / "shop"
        self.mark, self.trace = bench.folder / "mark", bench.folder / "trace"

    def when(self, at):
        error, ever = self.fault
        return (f"{self.action.what}, {CALLS[self.call]} {at} fails "
                f"{'for ever' if ever else 'once'} with {errno.errorcode[error]}")

    def prepare(self):
        shutil.rmtree(self.folder, ignore_errors=True)
        self.folder.mkdir()
        for path in (self.mark, self.trace):
            if path.exists():
                path.unlink()
        if not self.action.made_before:
            return {}
        b.copy_shop(self.bench.folder / "original", self.shop)
        return {str(self.shop): self.shop.read_bytes()}

    def tried(self, at):
        """Whether there was an at-th call to fail."""
        start = self.prepare()
        name = b.fresh_id(self.bench.dice)
        words = self.action.words(self.shop, name)
        error, ever = self.fault
        ran = b.run(*words, LD_PRELOAD=self.bench.programs.failing_disk, DISK_FOLDER=self.folder,
                    DISK_CALL=self.call, DISK_AT=at, DISK_ERRNO=error, DISK_EVER=ever,
                    DISK_SEEN=self.mark, DISK_TRACE=self.trace)
        if not self.mark.exists():
            self.bench.expect(ran.done, f"{self.action.what} without a fault: {ran}")
            return False
        self.bench.count("disks gone" if self.call == "*" else f"failing {CALLS[self.call]}s")
        when = self.when(at)
        self.bench.expect(ran.done or ran.refused, f"{when}: {ran}")
        self.bench.count("refused in a sentence" if not ran.done else "done all the same")
        count = self.look(self.shop, name, ran.done, when)
        if count == 1 and not ran.done and self.action.what == "flarestock move":
            # The disk failed in the middle of it: it may come back, so it has to be named.
            self.bench.expect(name in ran.err, f"{when}: not said which movement is not confirmed")
            self.bench.count("there although not confirmed, and named")
        if ran.done:
            self.take_away_unsynced(start, name, when)
        self.again(words, name, when)
        return True

    def look(self, shop, name, done, when):
        """It is whole; what was done before is there, and this action where it was acknowledged.
        Returns how often it is there."""
        if not self.action.made_before and not done and not shop.exists():
            return 0
        try:
            seen = Shop(str(shop))
        except (Wrong, OSError) as wrong:
            self.bench.fail(f"{when}: {wrong}")
            return None
        if seen.wrong:
            self.bench.fail(f"{when}: {seen.wrong[0]}")
        count = self.action.there(seen, name)
        if count not in (0, 0.5, 1) or (done and count != 1):
            self.bench.fail(f"{when}: said {'done' if done else 'no'}, is there {count:g} times")
        if self.action.made_before:
            there = {row["document"] for row in seen.movements}
            for each in BEFORE:
                self.bench.expect(each in there, f"{when}: {each} is lost")
        return count

    def take_away_unsynced(self, start, name, when):
        recording = Recording(read_trace(self.trace), start, brings_names=True)
        for _ in recording.walk():
            pass
        image = self.bench.folder / "image"
        image.mkdir(exist_ok=True)
        for each in os.listdir(image):
            os.unlink(image / each)
        for path, raw in recording.image("dropped", 0).items():
            (image / os.path.basename(path)).write_bytes(raw)
        self.look(image / "shop", name, True, f"{when}, and then the power goes")

    def again(self, words, name, when):
        there = self.shop.exists()
        ran = b.run(*words)
        if not self.action.made_before and there:
            self.bench.expect(ran.refused and "exists" in ran.err, f"{when}, made again: {ran}")
            return
        self.bench.expect(ran.done, f"{when}, done again: {ran}")
        self.look(self.shop, name, True, f"{when}, done again")
        left = re.findall(r"shop\.new-\S+", " ".join(os.listdir(self.folder)))
        self.bench.count("unfinished files left behind", len(left))


def failing(bench, every, calls="wsouri*"):
    original = bench.small_shop("original")
    b.run(bench.programs.writer, "moves", original, 2, 4)
    for action in every:
        for call in calls:
            # Of writes and reads there are many.
            step = action.step if call in "wi*" or action.step > 10 else 1
            step = 1 if call == "*" and action.what == "flarestock move" else step
            faults = GONE if call == "*" else FAULTS
            for turn in range(len(faults) if b.LONG else 1):
                at = 1 + bench.dice.randrange(step)
                while Point(bench, action, call, faults[(at // step + turn) % len(faults)]).tried(at):
                    at += step


def test(bench):
    failing(bench, actions(bench.programs))


def planted(bench):
    failing(bench, actions(bench.programs)[1:2], "ws")


def planted_making(bench):
    failing(bench, actions(bench.programs)[4:5], "w")


if __name__ == "__main__":
    b.main("a failing disk loses nothing and is said", test, [
        ("what SQLite says is not listened to", planted, "errors_swallowed"),
        ("a new shop is brought into its file by closing it", planted_making, "left_to_closing"),
    ])
