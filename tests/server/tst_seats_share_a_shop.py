# SPDX-License-Identifier: MIT
"""Eight seats take from one bin at the same time: what was acknowledged is there, each id once; not
one piece more was taken than there were; every chain and every sum holds, as Python reads it from the
server. Planted: the isolation that PostgreSQL has by itself, which has to be noticed."""

import subprocess

from seats import LONG, Server, ServerShop, environment, main, seatWriter

SEATS = 8
STOCK = 700  # Of BK-A, as shop_writer makes the shop.
PIECES, ATTEMPTS = (1, 300) if LONG else (7, 30)


def race(bench, server, planted=None):
    shop = ServerShop(server, bench.folder)
    seats = []
    for seat in range(SEATS):
        home = bench.folder / f"seat-{seat}"
        home.mkdir()
        seats.append(subprocess.Popen(
            [seatWriter(planted), "take", shop.hand, str(1 + seat * 10_000), str(ATTEMPTS), str(PIECES)],
            stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=environment(home)))
    took, refused = [], 0
    for number, seat in enumerate(seats):
        out, err = seat.communicate(timeout=900)
        bench.expect(seat.returncode == 0, f"seat {number} ended with {seat.returncode}: {err.strip()}")
        words = [line.split() for line in out.splitlines()]
        took += [line[1].replace("-", "") for line in words if line[0] == "took"]
        refused += sum(line[0] == "refused" for line in words)
    bench.count("seats", SEATS)
    bench.count("acknowledged", len(took))
    bench.count("refused", refused)
    bench.count("times in each other's way",
                server.log().count("could not serialize access") - server.conflictsBefore)
    judge(bench, shop, took)
    bench.expect(len(took) + refused == SEATS * ATTEMPTS, "not every attempt was answered")
    bench.expect(len(took) == min(SEATS * ATTEMPTS, STOCK // PIECES),
                 f"{len(took)} times {PIECES} were taken from {STOCK}")


def judge(bench, shop, took):
    seen = shop.read()
    for wrong in seen.wrong:
        bench.expect(False, f"as Python reads it: {wrong}")
    ids = seen.ids
    bench.expect(len(set(ids)) == len(ids), "an id stands twice")
    for each in took:
        bench.expect(each in set(ids), f"acknowledged and not there: {each}")
    bench.expect(len(ids) == 3 + len(took), f"{len(ids)} movements, {len(took)} acknowledged")
    bench.expect(all(value[0] >= 0 for key, value in seen.balances.items() if key[1] == "A1"),
                 "a bin is below zero")
    bench.expect(len(seen.replicas) == 1 + SEATS, f"{len(seen.replicas)} chains")
    said = shop.verified()
    bench.expect(said.returncode == 0, f"verify: {said.stdout} {said.stderr}")


def plain(bench):
    with Server() as server:
        server.markConflicts()
        race(bench, server)
        bench.expect(bench.counts["times in each other's way"] > 0, "nobody was in another's way")


def committed(bench):
    with Server() as server:
        server.markConflicts()
        race(bench, server, "read_committed")


if __name__ == "__main__":
    main(f"{SEATS} seats share a shop", plain,
         [("READ COMMITTED instead of SERIALIZABLE", committed)])
