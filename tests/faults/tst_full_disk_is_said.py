# SPDX-License-Identifier: MIT
"""R3: a full disk loses nothing and is said. A disk of 2 MB (tmpfs, in a mount namespace of its own, so
that it needs no root where user namespaces are allowed) has so much room left, from none to enough.

Measured at every size of room: what is done is there, and what is not is refused in a sentence with exit
status 2; nothing by half; with room again, the same is done, and counts once. Where the disk cannot be
mounted the test fails and says why."""

import os
import re
import shutil
import subprocess
import sys

import bench as b

SIZE = 2 * 1024 * 1024
STEP = 4096 if b.LONG else 36864
ACTIONS = 60


def free(disk):
    status = os.statvfs(disk)
    return status.f_bavail * status.f_frsize


class SmallDisk:
    """2 MB, of which a filler takes all but the room wanted."""

    def __init__(self, bench):
        self.bench, self.disk = bench, bench.folder / "disk"
        self.disk.mkdir(exist_ok=True)

    def __enter__(self):
        subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={SIZE}", "none", self.disk], check=True)
        return self

    def __exit__(self, *_):
        subprocess.run(["umount", self.disk], check=True)

    def empty(self):
        for name in os.listdir(self.disk):
            os.unlink(self.disk / name)

    def leave(self, room):
        with open(self.disk / "filler", "wb") as filler:
            filler.write(bytes(max(0, free(self.disk) - room)))

    def make_room(self):
        os.unlink(self.disk / "filler")


def refused(bench, ran, when):
    if not bench.expect(ran.refused, f"{when}: {ran}"):
        return
    bench.count("refusals")
    bench.expect("full" in ran.err, f"{when}: not said that the disk is full: {ran}")


def judged(bench, shop, when, documents, actions):
    """`actions`: numbers that were acknowledged."""
    seen = bench.read(bench.copied(shop), when)
    if seen is None:
        return
    legs = [row["document"] for row in seen.movements]
    for action in actions:
        bench.expect(legs.count(f"action {action}") == 2, f"{when}: action {action} is lost")
    for action in set(legs) - {"action 0", ""}:
        bench.expect(legs.count(action) == 2, f"{when}: {action} is there by half")
    notes = sum(row[1] == "notes.txt" for row in seen.documents)
    bench.expect(notes >= documents, f"{when}: {documents - notes} documents are lost")


def written_until_full(bench, small):
    """Actions and documents until the disk is full."""
    shop, original = small.disk / "shop", bench.small_shop("original")
    for room in range(0, 700_000, STEP):
        for what, count in (("moves", ACTIONS), ("document", 24)):
            small.empty()
            b.copy_shop(original, shop)
            small.leave(room)
            when = f"{what}, room {room}"
            words = [bench.programs.writer, what, shop, 2, count]
            ran = b.run(*words)
            numbers = [int(n) for n in re.findall(r"^(?:action|document) (\d+)", ran.out, re.M)]
            if not ran.done:
                refused(bench, ran, when)
            bench.expect(len(numbers) == count or not ran.done, f"{when}: done without doing all")
            documents = len(numbers) if what == "document" else 0
            actions = numbers if what == "moves" else ()
            judged(bench, shop, when, documents, actions)
            small.make_room()
            again = b.run(*words)
            bench.expect(again.done, f"{when}, with room again: {again}")
            bench.expect(what != "moves" or again.out.count("already") >= len(numbers),
                         f"{when}, with room again: counts twice")
            judged(bench, shop, f"{when}, with room again", documents, actions)
            bench.count("sizes of room")
            bench.count("acknowledged before it was full", len(numbers))


def made_on_a_small_disk(bench, small):
    """A shop is made whole, or nothing of it is left."""
    shop = small.disk / "shop"
    demo = [bench.programs.command, "demo", "--to", shop]
    for words, most, step in (([bench.programs.writer, "make", shop], 400_000, STEP),
                              (demo, 1_300_000, 2 * STEP if b.LONG else 5 * STEP)):
        for room in range(0, most, step):
            small.empty()
            small.leave(room)
            when = f"{words[1]}, room {room}"
            ran = b.run(*words)
            if not ran.done:
                refused(bench, ran, when)
            if shop.exists():
                bench.read(bench.copied(shop), when)
                bench.count("shops made")
            else:
                bench.expect(not ran.done, f"{when}: done, and nothing is there")
                left = sorted(os.listdir(small.disk))
                bench.expect(left == ["filler"], f"{when}: leaves {left}")
                small.make_room()
                again = b.run(*words)
                bench.expect(again.done, f"{when}, with room again: {again}")
            bench.count("sizes of room")


def moved_on_a_full_disk(bench, small):
    """The command that a person types."""
    shop, original = small.disk / "shop", bench.folder / "original"
    for room in range(0, 120_000, STEP):
        small.empty()
        b.copy_shop(original, shop)
        small.leave(room)
        words = b.move_words(bench.programs, shop, b.fresh_id(bench.dice))
        ran = b.run(*words)
        if not ran.done:
            refused(bench, ran, f"move, room {room}")
        looked = b.run(bench.programs.command, "verify", shop)
        bench.expect(looked.done or looked.refused, f"verify, room {room}: {looked}")
        small.make_room()
        again = b.run(*words)
        bench.expect(again.done and ("already" in again.out or not ran.done),
                     f"move, room {room}, said again: {again}")
        bench.count("sizes of room")


def on(*tests):
    def test(bench):
        def copied(shop):  # Beside the small disk, on which there is no room for it.
            b.copy_shop(shop, bench.folder / "copied")
            return bench.folder / "copied"
        bench.copied = copied
        with SmallDisk(bench) as small:
            for each in tests:
                each(bench, small)
    return test


def in_a_namespace():
    """This program again, where it may mount."""
    ways = [["unshare", "-m"]] if os.geteuid() == 0 else []
    ways.append(["unshare", "-Urm"])
    for way in ways:
        tried = subprocess.run([*way, "true"], capture_output=True, text=True, check=False)
        print(f"{' '.join(way)}: {'is allowed' if tried.returncode == 0 else tried.stderr.strip()}",
              flush=True)
        if tried.returncode == 0:
            os.execvp(way[0], [*way, sys.executable, "-B", *sys.argv, "inside"])
    sys.exit("a small disk cannot be mounted here; allow user namespaces, or run this as root")


if __name__ == "__main__":
    if sys.argv[2:] != ["inside"]:
        in_a_namespace()
    b.main("a full disk loses nothing and is said",
           on(written_until_full, made_on_a_small_disk, moved_on_a_full_disk), [
               ("what SQLite says is not listened to", on(written_until_full), "errors_swallowed"),
           ])
