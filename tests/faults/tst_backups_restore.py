# SPDX-License-Identifier: MIT
"""R13: backups restore. While a program writes as fast as it can, a backup is taken; from each a shop is
made again, by the command or by copying the file into its place, and goes on. Another program reads it:
whole, nothing missing that was acknowledged before the backup began, no action by halves, and what is
written into it bears no number of the shop's own journal.

Measured: 100 of 100 with --long, 20 of 20 without."""

import contextlib
import json
import shutil
import signal
import sqlite3
import subprocess
import threading
import time

import bench as b

BACKUPS = 100 if b.LONG else 20


class Writing:
    """A program that writes whenever it is let go on; `said` is what it acknowledged. It stops by itself
    after so many actions, or a long journal would grow the longer the more its backup takes."""

    AT_ONCE = 100

    def __init__(self, programs, shop):
        self.said = 0
        self.until = 0
        self.process = subprocess.Popen([programs.writer, "moves", str(shop), "2", "1000000"],
                                        stdout=subprocess.PIPE, text=True, env=b.environment())
        self.reading = threading.Thread(target=self._read, daemon=True)

    def _read(self):
        for line in self.process.stdout:
            self.said = int(line.split()[1])
            if self.said >= self.until:
                self.pause()

    def go_on(self):
        """Until it has acknowledged something more."""
        before = self.said
        self.until = before + self.AT_ONCE
        self.process.send_signal(signal.SIGCONT)
        while self.said == before and self.process.poll() is None:
            time.sleep(0.001)

    def pause(self):
        self.process.send_signal(signal.SIGSTOP)

    def __enter__(self):
        self.reading.start()
        return self

    def __exit__(self, *_):
        self.process.kill()
        self.process.wait()
        self.reading.join()


def complete(bench, seen, said, what):
    """Everything acknowledged by then is in it, and of no action only a half."""
    actions = {}
    for row in seen.movements:
        actions[row["document"]] = actions.get(row["document"], 0) + 1
    there = {int(name.split()[1]) for name in actions if name.startswith("action ")}
    bench.expect(set(range(2, said + 1)) <= there, f"{what}: acknowledged and lost")
    halves = [name for name, count in actions.items() if name != "action 0" and count != 2]
    bench.expect(not halves, f"{what}: half of {halves[:1]} is there")


def restored(bench, backup, said, number):
    what = f"backup {number}"
    shop = bench.folder / f"restored-{number}"
    if number % 2:  # As a person does it who has only the files.
        shutil.copyfile(backup, shop)
    else:
        made = b.run(bench.programs.command, "restore", backup, "--to", shop)
        if not bench.expect(made.done, f"{what} is not restored: {made}"):
            return
    seen = bench.read(shop, what)
    if not seen:
        return
    complete(bench, seen, said, what)
    before = {row["replica"] for row in seen.movements}
    went_on = b.run(bench.programs.writer, "moves", shop, 900_000 + 2 * number, 1)
    bench.expect(went_on.done, f"{what}: the shop does not go on: {went_on}")
    # Of a journal that was read whole a moment ago its new rows, and every tenth once more whole.
    if number % 10 == 0 and not bench.read(shop, f"{what}, gone on with"):
        return
    new = rows_of_document(shop, f"action {900_000 + 2 * number}")
    own = {replica for (replica,) in new} - before
    bench.expect(len(new) == 2 and own, f"{what}: what is new bears the shop's own numbers")
    bench.count("restored, read and gone on with")
    shop.unlink()


def rows_of_document(shop, document):
    with contextlib.closing(sqlite3.connect(f"file:{shop}?mode=ro", uri=True)) as connection:
        return connection.execute("SELECT replica FROM movement WHERE document = ?",
                                  (document,)).fetchall()


def under_writes(bench, take, until_wrong=False):
    """`take(shop, number)` makes a backup and says (how it ran, where it is)."""
    shop = bench.small_shop()
    taken = []
    with Writing(bench.programs, shop) as writing:
        for number in range(BACKUPS):
            writing.go_on()
            said = writing.said
            ran, backup = take(shop, number)
            writing.pause()
            bench.count("backups with writes meanwhile", writing.said > said)
            if bench.expect(ran.done, f"backup {number} was not made: {ran}"):
                bench.count("backups")
                taken.append(number)
                restored(bench, backup, said, number)
            if until_wrong and bench.wrong:
                return
        bench.expect(writing.process.poll() is None, "the writer ended meanwhile")
    bench.expect(bench.counts["backups with writes meanwhile"] >= 0.9 * BACKUPS,
                 "the writer hardly wrote meanwhile")
    bench.read(shop, "the shop itself")
    bench.counts["movements in the end"] = 2 * writing.said
    bench.expect(len(taken) == BACKUPS, "too few backups")


def test(bench):
    def kept(shop, _):
        ran = b.run(bench.programs.command, "backup", "--shop", shop, "--json")
        return ran, json.loads(ran.out)["backup"] if ran.done else None

    under_writes(bench, kept)
    names = sorted(path.name for path in bench.folder.glob("shop.backups/*"))
    numbers = [int(name.split("-")[1]) for name in names]
    # All of them of one month, but where the test runs over its end.
    bench.expect(numbers[-10:] == list(range(BACKUPS - 9, BACKUPS + 1)) and len(numbers) <= 11,
                 f"kept are {names}")


def planted(bench):
    def copied(shop, number):
        backup = bench.folder / f"copy-{number}"
        return b.run(bench.programs.writer, "backup", shop, backup), backup

    under_writes(bench, copied, until_wrong=True)


if __name__ == "__main__":
    b.main("backups restore", test, [
        ("the live file is copied as any file", planted, "file_copied"),
        ("a backup goes on under the shop's own numbers", planted, "replica_shared"),
    ])
