# SPDX-License-Identifier: MIT
"""Copies of a shop on a server are taken along in a file and come back: by commands alone, in odd
orders, twice, killed in the middle, as a hand that may not change the journal; and two seats that
bring one copy at the same moment bring it once. What the server holds then, Python reads."""

import json
import subprocess

from seats import COMMAND, LONG, Server, ServerShop, environment, main, run
import copies_used
from bench import Ran

KILLS = 40 if LONG else 3


class Hand:
    """Works in the shop as a hand."""

    def __init__(self, bench, shop):
        self.shop, self.folder, self.address = shop, bench.folder, shop.hand

    def run(self, *words):
        done = run(COMMAND, *words, home=self.shop.folder)
        return Ran(done.returncode, done.stdout, done.stderr)

    def start(self, *words):
        return subprocess.Popen([str(COMMAND), *map(str, words)], stdout=subprocess.DEVNULL,
                                stderr=subprocess.DEVNULL, env=environment(self.shop.folder))

    def read(self):
        return self.shop.read()


def fail(bench):
    """The other benches' way to say it."""
    bench.fail = lambda what: bench.expect(False, what)
    return bench


def bothAtOnce(bench, shop):
    used = copies_used.Used(bench, Hand(bench, shop))
    path = used.take("seven", "trailer-1")
    for _ in range(6):
        used.move(1, "A1", "car-1", part="BK-B", where=path)
    seats = [subprocess.Popen([str(COMMAND), "trailer", "bring", str(path), "--shop", shop.hand, "--json"],
                              stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
                              env=environment(bench.folder / f"seat-{nth}")) for nth in range(3)]
    said = [(seat.communicate()[0], seat.returncode) for seat in seats]
    bench.expect(all(status == 0 for _, status in said), f"at once: {said}")
    bench.expect(sum(json.loads(out)["brought"] for out, _ in said) == 1, f"brought more than once: {said}")
    seen = used.whole("brought by three at once")
    bench.expect(len({row["id"] for row in seen.movements}) == len(seen.movements), "an entry stands twice")
    copies_used.nothing_lost(used)


def test(bench):
    fail(bench)
    with Server() as server:
        shop = ServerShop(server, bench.folder, "copies")
        copies_used.all_of_it(bench, Hand(bench, shop), KILLS)
        bench.expect(shop.verified().returncode == 0, f"not whole: {shop.verified().stdout}")
        bothAtOnce(bench, shop)


if __name__ == "__main__":
    main("Copies come back to a server", test)
