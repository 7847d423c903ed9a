# SPDX-License-Identifier: MIT
"""Copies of a shop that travel come back, whatever happened: 10,000 seeds played with the real writer
and the real merge (copies_played.cpp says what has to hold), twenty of them a play, also under wrong
clocks; and by commands alone, killed in the middle (copies_used.py). Planted faults: entries taken
anew, one dropped, taken by the clock, values not settled, what disagrees decided silently, half of
it left behind, what both found empty counted full."""

import subprocess

from bench import LONG, SEED, environment, main, run
import copies_used

SEEDS = 100_000 if LONG else 10_000
KILLS = 60 if LONG else 12


class FileShop:
    def __init__(self, bench):
        self.bench, self.folder = bench, bench.folder
        self.address = str(bench.small_shop())

    def run(self, *words):
        return run(self.bench.programs.command, *words)

    def start(self, *words):
        return subprocess.Popen([self.bench.programs.command, *map(str, words)],
                                stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, env=environment())

    def read(self):
        return self.bench.read(self.address, "while it is used")


def played(bench, seeds, program="copies_played"):
    folder = bench.folder / program
    folder.mkdir()
    ran = run(bench.programs.folder / "tests" / "faults" / program, folder, SEED, seeds, seconds=3600)
    bench.count("seeds", seeds)
    bench.expect(ran.done, f"{program}: {ran.out.strip().splitlines()[0] if ran.out else ran}")


def test(bench):
    played(bench, SEEDS)
    copies_used.all_of_it(bench, FileShop(bench), KILLS)


def planted(name):
    return lambda bench: played(bench, 300, f"copies_played_{name}")


if __name__ == "__main__":
    main("Copies come back", test, [
        ("known entries are taken anew", planted("brought_anew"), None),
        ("one is dropped", planted("one_dropped"), None),
        ("taken by the clock", planted("brought_by_clock"), None),
        ("values are not settled", planted("not_settled"), None),
        ("what disagrees is decided silently", planted("decided_silently"), None),
        ("half of it is left behind", planted("half_brought"), None),
        ("what both found empty is full", planted("counts_summed"), None)])
