# SPDX-License-Identifier: MIT
"""Seats that draft orders at the same time: each order has a number of its own, none is left out, and
each number is that of the seat which was told it. Of two that place one draft at once one does."""

import json
import subprocess

from seats import COMMAND, LONG, Server, environment, main, run

SEATS = 8 if LONG else 4
ROUNDS = 12 if LONG else 3


class Orders:
    """The demo shop on the server."""

    def __init__(self, bench, server):
        self.bench = bench
        database = "orders"
        server.psql("postgres", f"DROP DATABASE IF EXISTS {database}")
        server.psql("postgres", f"CREATE DATABASE {database}")
        owner = server.address("postgres", database)
        self.hand = server.address("hand", database)
        file = bench.folder / "demo.flarestock"
        for words in (["demo", "--to", file], ["server", "move", "--from", file, "--to", owner],
                      ["server", "setup", owner, "--hand", "hand"]):
            done = run(COMMAND, *words, home=bench.folder)
            bench.expect(done.returncode == 0, f"{words}: {done.stderr}")

    def atOnce(self, each):
        """All seats at the same time; what each was told, and how it ended."""
        seats = []
        for seat in range(SEATS):
            home = self.bench.folder / f"seat-{seat}"
            home.mkdir(exist_ok=True)
            seats.append(subprocess.Popen(
                [str(word) for word in (COMMAND, *each(seat), "--shop", self.hand, "--json")],
                stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=environment(home)))
        return [(*seat.communicate(timeout=600), seat.returncode) for seat in seats]

    def told(self, *words):
        return json.loads(run(COMMAND, *words, "--shop", self.hand, "--json",
                              home=self.bench.folder).stdout)


def drawn(bench, shop):
    numbers = []
    for _ in range(ROUNDS):
        for seat, (out, err, status) in enumerate(shop.atOnce(lambda seat: (
                "order", "new", "--supplier", "TCF", "--line", f"AD-3-3 {seat + 1} at 1", "--day",
                "2027-01-05", "--who", f"seat {seat}"))):
            if bench.expect(status == 0, f"seat {seat} drafted nothing: {err.strip()}"):
                order = json.loads(out)
                numbers.append(order["number"])
                stands = shop.told("order", "show", order["number"])
                bench.expect(stands["lines"][0]["quantity"] == str(seat + 1),
                             f"{order['number']} is another seat's")
    count = SEATS * ROUNDS
    bench.expect(sorted(numbers) == [f"2027-{n:04}" for n in range(1, count + 1)],
                 f"the numbers drawn are {sorted(numbers)}")
    bench.count("numbers drawn", len(set(numbers)))


def placed(bench, shop):
    ends = shop.atOnce(lambda seat: ("order", "place", "2027-0001", "--day", f"2027-01-{10 + seat}"))
    done = [seat for seat, (_, _, status) in enumerate(ends) if status == 0]
    bench.expect(len(done) == 1, f"{len(done)} seats placed one order")
    for _, err, status in ends:
        bench.expect(status == 0 or "changed by somebody else" in err or "is placed" in err, err)
    stands = shop.told("order", "show", "2027-0001")
    bench.expect(done and stands["day"] == f"2027-01-{10 + done[0]}", "it is placed as nobody was told")
    bench.count("seats refused", SEATS - len(done))


def plain(bench):
    with Server() as server:
        shop = Orders(bench, server)
        drawn(bench, shop)
        placed(bench, shop)
        said = run(COMMAND, "verify", shop.hand, home=bench.folder)
        bench.expect(said.returncode == 0, f"verify: {said.stdout} {said.stderr}")


if __name__ == "__main__":
    main(f"{SEATS} seats draw the numbers of orders", plain)
