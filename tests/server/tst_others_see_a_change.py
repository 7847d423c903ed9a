# SPDX-License-Identifier: MIT
"""Another seat learns within a second that somebody has written, on a server and in a file; and after
the server was away it learns that it may have missed something."""

import select
import subprocess
import time

import cluster
from seats import SHOP_WRITER, Server, ServerShop, environment, main, run, seatWriter

WITHIN = 1.0
LONGEST = 30


class Watcher:
    def __init__(self, bench, shop):
        home = bench.folder / "watcher"
        home.mkdir(exist_ok=True)
        self.process = subprocess.Popen([seatWriter(), "watch", str(shop), "120000"], text=True,
                                        stdout=subprocess.PIPE, env=environment(home))
        if self.process.stdout.readline() != "watching\n":
            raise SystemExit("it does not watch")

    def waited(self):
        """Seconds until it says so; very many where it does not at all."""
        began = time.monotonic()
        if not select.select([self.process.stdout], [], [], LONGEST)[0]:
            return 1e9
        said = self.process.stdout.readline()
        return time.monotonic() - began if said == "changed\n" else 1e9

    def end(self):
        self.process.kill()
        self.process.wait()


def watch(bench, shop, deeds):
    watcher = Watcher(bench, shop)
    try:
        for words in deeds:
            done = run(*words, home=bench.folder)
            bench.expect(done.returncode == 0, f"{words}: {done.stderr}")
            waited = watcher.waited()
            bench.count("changes seen")
            bench.counts["ms at most"] = max(bench.counts.get("ms at most", 0), round(waited * 1000))
            bench.expect(waited <= WITHIN, f"{words[1]}: seen after {waited:.2f} s")
    finally:
        watcher.end()


def deedsIn(shop):
    return ([SHOP_WRITER, "moves", shop, 2, 1], [SHOP_WRITER, "document", shop, 1, 1],
            [SHOP_WRITER, "box", shop, 1, 1], [seatWriter(), "take", shop, 1, 1, 1])


def test(bench):
    file = bench.folder / "shop"
    run(SHOP_WRITER, "make", file, home=bench.folder)
    watch(bench, file, deedsIn(file))
    with Server(own=True) as server:
        shop = ServerShop(server, bench.folder)
        watch(bench, shop.hand, deedsIn(shop.hand))
        watcher = Watcher(bench, shop.hand)
        cluster.run(server.folder, "kill")
        cluster.run(server.folder, "start")
        waited = watcher.waited()
        watcher.end()
        bench.count("servers that were away")
        bench.expect(waited < LONGEST, f"after the server was away: {waited:.1f} s")


def untold(bench):
    with Server() as server:
        shop = ServerShop(server, bench.folder)
        server.psql(shop.database, "DROP TRIGGER movement_told ON flarestock.movement")
        watch(bench, shop.hand, deedsIn(shop.hand)[-1:])


if __name__ == "__main__":
    main("Others see a change", test, [("the server tells nobody of movements", untold)])
