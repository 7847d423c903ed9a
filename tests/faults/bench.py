# SPDX-License-Identifier: MIT
"""What the fault tests share: the programs, a folder, the tier, and how a test counts and ends."""

import hashlib
import os
import random
import resource
import shutil
import subprocess
import sys
import tempfile
import time
import uuid
from pathlib import Path

from shop_reader import Shop, Wrong

LONG = bool(os.environ.get("FLARESTOCK_LONG"))
SEED = int(os.environ.get("FLARESTOCK_SEED") or 2026)
HERE = Path(__file__).resolve().parent


class Ran:
    """How a run of a program ended, and what it said."""

    def __init__(self, status, out, err):
        self.status, self.out, self.err = status, out, err

    @property
    def done(self):
        return self.status == 0

    @property
    def refused(self):
        """Exit status 2 and one sentence that says what is wrong and what to do; where it is of a
        place in a text, the line and a mark below it follow."""
        lines = self.err.strip().split("\n")
        if lines[-1].strip() == "^" and len(lines) > 2:
            lines = lines[:-2]
        return self.status == 2 and len(lines[-1]) > 20 and lines[-1].endswith(".")

    def __str__(self):
        return f"status {self.status}, said {self.out.strip()!r} {self.err.strip()!r}"


class Programs:
    """The programs of one build; `writer` may be one with a planted fault."""

    def __init__(self, folder, writer=None):
        self.folder = Path(folder)
        self.command = str(self.folder / "bin" / "flarestock")
        made = self.folder / "tests" / "faults"
        self.writer = str(made / (writer or "shop_writer"))
        self.failing_disk = str(made / "failing_disk.so")
        self.wrong_clock = str(made / "wrong_clock.so")

    def planted(self, name):
        return Programs(self.folder, f"shop_writer_{name}")


def environment(**more):
    return {**os.environ, "LC_ALL": "C.UTF-8", **{key: str(value) for key, value in more.items()}}


def run(*words, seconds=600 if LONG else 60, **more):
    done = subprocess.run([str(word) for word in words], capture_output=True, timeout=seconds,
                          env=environment(**more), check=False)
    return Ran(done.returncode, done.stdout.decode(errors="replace"),
               done.stderr.decode(errors="replace"))


def move_words(programs, shop, movement, quantity=1, way=("A1", "used-up")):
    """One piece of BK-A (or more) from the bin, as a person types it."""
    return [programs.command, "move", "BK-A", str(quantity), "--from", way[0], "--to", way[1],
            "--shop", str(shop), "--id", movement]


def fresh_id(dice):
    """A UUIDv7 out of seeded dice."""
    raw = bytearray((1_780_000_000_000).to_bytes(6, "big") + dice.randbytes(10))
    raw[6], raw[8] = raw[6] & 0x0F | 0x70, raw[8] & 0x3F | 0x80
    return str(uuid.UUID(bytes=bytes(raw)))


def sha256(path):
    return hashlib.sha256(Path(path).read_bytes()).hexdigest()


def copy_shop(shop, to):
    """A shop file with the log that lies beside it, as another program would find both."""
    for tail in ("", "-wal", "-journal"):
        if os.path.exists(f"{to}{tail}"):
            os.unlink(f"{to}{tail}")
        if os.path.exists(f"{shop}{tail}"):
            shutil.copyfile(f"{shop}{tail}", f"{to}{tail}")
    if os.path.exists(f"{to}-shm"):
        os.unlink(f"{to}-shm")


def children_seconds():
    """What the programs that were run took of the processor so far."""
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


class Bench:
    """One test: its folder, its dice, its counts, and what went wrong."""

    def __init__(self, promise, programs):
        self.promise, self.programs = promise, programs
        memory = "/dev/shm" if os.access("/dev/shm", os.W_OK) else None
        self._folder = tempfile.TemporaryDirectory(prefix="flarestock-faults-", dir=memory)
        self.folder = Path(self._folder.name)
        self.dice = random.Random(SEED)
        self.counts = {}
        self.wrong = []

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self._folder.cleanup()

    def count(self, what, more=1):
        self.counts[what] = self.counts.get(what, 0) + more

    def fail(self, what):
        self.count("FAILURES")
        if len(self.wrong) < 20:
            self.wrong.append(what)

    def expect(self, good, what):
        if not good:
            self.fail(what)
        return good

    def small_shop(self, name="shop"):
        shop = self.folder / name
        made = run(self.programs.writer, "make", shop)
        if not made.done:
            sys.exit(f"the small shop cannot be made: {made}")
        return shop

    def read(self, shop, when):
        """What another program sees in it; None, and a failure, where it is not whole."""
        try:
            seen = Shop(str(shop))
        except (Wrong, OSError) as wrong:
            self.fail(f"{when}: the shop file {wrong}")
            return None
        if seen.wrong:
            self.fail(f"{when}: {seen.wrong[0]}")
        return seen

    def opens_soon(self, shop, when):
        """Opened for writing, judged and closed within a second: the best of three, as others use
        the machine too; where they want more than it has, by the processor's time."""
        busy = os.getloadavg()[0] > 1.5 * os.cpu_count()
        clock = children_seconds if busy else time.monotonic
        best = 60.0
        for _ in range(3):
            copy_shop(shop, self.folder / "reopened")
            began = clock()
            ran = run(self.programs.writer, "moves", self.folder / "reopened", 0, 0)
            best = min(best, clock() - began)
            if not ran.done:
                return self.fail(f"{when}: does not open again: {ran}")
            if best <= 1:
                break
        self.counts["slowest opening, ms"] = max(self.counts.get("slowest opening, ms", 0),
                                                 round(best * 1000))
        return self.expect(best <= 1, f"{when}: opening took {best:.2f} s")


def tell(bench, title):
    said = ", ".join(f"{count:,} {what}" if not what.endswith(", ms") else f"{what}: {count}"
                     for what, count in bench.counts.items())
    print(f"{title}: {said}", flush=True)


def main(promise, test, plants):
    """Runs the promise, then each planted fault, which has to fail. `test(bench)` does the former;
    `plants` is a row of (what is planted, test, programs or None for the same)."""
    programs = Programs(sys.argv[1])
    print(f"{promise}; {'long' if LONG else 'short'} tier, seed {SEED}")
    began = time.monotonic()
    failed = False
    with Bench(promise, programs) as bench:
        test(bench)
        tell(bench, "tried")
        for wrong in bench.wrong:
            print("  WRONG:", wrong)
        failed = bool(bench.wrong)
    for what, planted, writer in plants:
        with Bench(promise, programs.planted(writer) if writer else programs) as bench:
            planted(bench)
            if bench.wrong:
                print(f"planted: {what}: noticed {bench.counts['FAILURES']:,} times, as "
                      f"\"{bench.wrong[0][:160]}\"")
            else:
                tell(bench, f"planted: {what}: NOT NOTICED")
                failed = True
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    print(f"{time.monotonic() - began:.1f} s, of which {used.ru_utime + used.ru_stime:.1f} s in the "
          "programs")
    sys.exit(1 if failed else 0)
