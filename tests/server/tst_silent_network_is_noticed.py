# SPDX-License-Identifier: MIT
"""A network that swallows everything, as a cable that was pulled, is noticed within a minute instead
of the quarter of an hour that TCP tries by itself (RFC 9293, 3.8.3: R2 of at least 100 seconds; Linux
tries 15 times), and the sentence says so. It has a network of its own for that, where Linux lets it."""

import fcntl
import os
import secrets
import socket
import struct
import subprocess
import sys
import time

from seats import COMMAND, Server, ServerShop, address, environment, main, run, scramVerifier

WITHIN = 60
SKIPPED = 77
# Linux: <linux/sockios.h>, <linux/if.h>.
GET_FLAGS, SET_FLAGS, IS_UP = 0x8913, 0x8914, 1


def setNetwork(isThere):
    with socket.socket() as any_:
        name = b"lo".ljust(16, b"\0")
        flags = struct.unpack_from("H", fcntl.ioctl(any_, GET_FLAGS, name.ljust(40, b"\0")), 16)[0]
        flags = flags | IS_UP if isThere else flags & ~IS_UP
        fcntl.ioctl(any_, SET_FLAGS, (name + struct.pack("H", flags)).ljust(40, b"\0"))


def waitUntilItWaits(server, database):
    for _ in range(600):
        if server.psql("postgres", "SELECT 1 AS one FROM pg_stat_activity WHERE wait_event_type = 'Lock' "
                       f"AND datname = '{database}'"):
            return
        time.sleep(0.05)
    sys.exit("nobody waits for the lock")


def test(bench):
    secret = "pw-" + secrets.token_hex(12)
    setNetwork(True)
    with Server(own=True) as server:
        shop = ServerShop(server, bench.folder)
        server.psql("postgres", f"ALTER ROLE hand PASSWORD '{scramVerifier(secret)}'")
        words = (COMMAND, "stock", "--shop", address(shop), "--password-stdin")
        said = run(*words, home=bench.folder, input=secret + "\n")
        bench.expect(said.returncode == 0 and "BK-A" in said.stdout, f"{said.stdout}{said.stderr}")
        locking = subprocess.Popen(
            [*server.psqlWords(shop.database), "-c",
             "BEGIN; LOCK TABLE flarestock.movement IN ACCESS EXCLUSIVE MODE; SELECT pg_sleep(300)"],
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        asking = subprocess.Popen([str(word) for word in words], stdin=subprocess.PIPE, text=True,
                                  stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=environment(bench.folder))
        try:
            asking.stdin.write(secret + "\n")
            asking.stdin.close()
            asking.stdin = None
            waitUntilItWaits(server, shop.database)
            setNetwork(False)
            began = time.monotonic()
            try:
                shown, told = asking.communicate(timeout=3 * WITHIN)
            except subprocess.TimeoutExpired:
                bench.expect(False, f"not noticed within {3 * WITHIN} s")
                return
            bench.counts["s until it was noticed"] = round(time.monotonic() - began)
            bench.count("silences")
            bench.expect(time.monotonic() - began < WITHIN, f"noticed after {time.monotonic() - began:.0f} s")
            bench.expect(asking.returncode == 2 and "no longer answers" in told, f"{asking.returncode} {shown}{told}")
        finally:
            asking.kill()
            locking.kill()
            locking.wait()


if __name__ == "__main__":
    if os.environ.get("FLARESTOCK_OWN_NETWORK") is None:
        own = ["unshare", "--net"] if os.geteuid() == 0 else ["unshare", "--map-current-user", "--keep-caps", "--net"]
        if subprocess.run([*own, "true"], check=False).returncode:
            print("this machine lets nobody have a network of one's own: not tried")
            sys.exit(SKIPPED)
        os.environ["FLARESTOCK_OWN_NETWORK"] = "yes"
        os.execvp(own[0], [*own, sys.executable, "-B", *sys.argv])
    main("A network that has gone silent is noticed", test)
