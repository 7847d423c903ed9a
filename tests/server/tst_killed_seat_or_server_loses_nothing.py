# SPDX-License-Identifier: MIT
"""A seat that is killed, and a server that goes away as when the power goes (an immediate stop, which
writes nothing more), lose nothing that was acknowledged. A seat whose answer was lost says which
movement is not confirmed; said again, every id counts once."""

import subprocess
import time

import cluster
from seats import LONG, Server, ServerShop, environment, main, run, seatWriter

SEATS = 4
KILLS, STOPS = (60, 12) if LONG else (3, 2)
PER_SEAT = 25


class Seat:
    def __init__(self, bench, shop, number, first):
        self.home = bench.folder / f"seat-{number}"
        self.home.mkdir(exist_ok=True)
        self.shop, self.first = shop, first
        self.process = subprocess.Popen(
            [seatWriter(), "take", shop.hand, str(first), str(PER_SEAT), "1"], text=True,
            stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=environment(self.home))

    def said(self):
        out, self.err = self.process.communicate(timeout=300)
        return [line.split()[1].replace("-", "") for line in out.splitlines()
                if line.startswith("took ")]


def again(bench, shop, firsts):
    """Every id once more: what is there is said to be there already, and nothing counts twice."""
    done = set()
    for first in firsts:
        said = run(seatWriter(), "take", shop.hand, first, PER_SEAT, 1, home=bench.folder / "seat-0")
        bench.expect(said.returncode == 0, f"again: {said.stderr}")
        done |= {line.split()[1].replace("-", "") for line in said.stdout.splitlines()}
    return done


def judge(bench, shop, took, when):
    seen = shop.read()
    ids = seen.ids
    bench.expect(not seen.wrong, f"{when}: {seen.wrong[:1]}")
    bench.expect(len(ids) == len(set(ids)), f"{when}: an id stands twice")
    lost = [each for each in took if each not in set(ids)]
    bench.expect(not lost, f"{when}: {len(lost)} acknowledged are lost, {lost[:1]}")
    said = shop.verified()
    bench.expect(said.returncode == 0, f"{when}: {said.stdout} {said.stderr}")


def round_(bench, server, shop, number):
    """Begins the seats, lets some time pass, does it to them, and judges."""
    stops = number >= KILLS
    firsts = [1 + (number * SEATS + seat) * PER_SEAT for seat in range(SEATS)]
    seats = [Seat(bench, shop, seat, first) for seat, first in enumerate(firsts)]
    time.sleep(0.15 + bench.dice.random() * 0.6)
    if stops:
        cluster.run(server.folder, "kill")
        bench.count("stops of the server")
    else:
        seats[0].process.kill()
        bench.count("kills of a seat")
    took = [each for seat in seats for each in seat.said()]
    bench.count("acknowledged", len(took))
    if stops:
        cut = [seat for seat in seats if seat.process.returncode != 0]
        bench.count("seats cut off", len(cut))
        for seat in cut:
            bench.expect(seat.process.returncode == 2 and seat.err.strip().endswith("."),
                         f"a seat that was cut off says: {seat.err.strip()}")
            bench.count("movements named as not confirmed", "Not confirmed is movement" in seat.err)
        cluster.run(server.folder, "start")
    judge(bench, shop, took, f"round {number}")
    done = again(bench, shop, firsts)
    bench.expect(set(took) <= done, "what was acknowledged is not said to be done")
    judge(bench, shop, done, f"round {number}, said again")


def test(bench):
    with Server(own=True) as server:
        shop = ServerShop(server, bench.folder)
        for number in range(KILLS + STOPS):
            if number % 7 == 6:  # A shop has 700 pieces of the part.
                shop = ServerShop(server, bench.folder)
            round_(bench, server, shop, number)
        bench.expect(bench.counts["movements named as not confirmed"] > 0, "none was cut off in the middle")


def forgetful(bench):
    """The server acknowledges before it has written: fsync stays, synchronous_commit is taken away."""
    with Server(own=True) as server:
        shop = ServerShop(server, bench.folder)
        for number in range(6):
            seats = [subprocess.Popen([seatWriter("forgets"), "take", shop.hand,
                                       str(1 + (number * SEATS + seat) * PER_SEAT), str(PER_SEAT), "1"],
                                      text=True, stdout=subprocess.PIPE, stderr=subprocess.PIPE,
                                      env=environment(bench.folder / f"home-{seat}"))
                     for seat in range(SEATS)]
            time.sleep(0.5)
            cluster.run(server.folder, "kill")
            took = [line.split()[1].replace("-", "") for seat in seats
                    for line in seat.communicate(timeout=300)[0].splitlines() if line.startswith("took ")]
            cluster.run(server.folder, "start")
            judge(bench, shop, took, f"round {number}")
            if bench.wrong:
                return


if __name__ == "__main__":
    main("A killed seat or server loses nothing", test,
         [("the server answers before it has written", forgetful)])
