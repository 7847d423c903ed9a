# SPDX-License-Identifier: MIT
"""A connection over a network is made only to the server that was meant: another name, a certificate
that somebody else has signed, a server without TLS and one that wants the password in plain are
refused, and so is an address that asks for less (PostgreSQL 15, 34.19 "SSL Support"; RFC 5929 for the
channel binding). The password is shown nowhere and is in no file afterwards."""

import os
import pty
import secrets
import select
import socket
import threading
import time

import cluster
from seats import COMMAND, Server, ServerShop, address, environment, filesWith, main, run, scramVerifier


class PlainServer:
    """Answers "N" to whoever asks for TLS (PostgreSQL 15, 55.2.10), and keeps what it is told then."""

    def __init__(self):
        self.socket = socket.create_server(("127.0.0.1", 0))
        self.port = self.socket.getsockname()[1]
        self.told = b""
        threading.Thread(target=self.serve, daemon=True).start()

    def serve(self):
        while True:
            caller, _ = self.socket.accept()
            with caller:
                caller.recv(8)
                caller.sendall(b"N")
                caller.settimeout(2)
                try:
                    self.told += caller.recv(1000)
                except OSError:
                    pass


def stock(shop, url, password):
    return run(COMMAND, "stock", "--shop", url, "--password-stdin", home=shop.folder, input=password + "\n")


def onTerminal(shop, url, password):
    """As a person types it: what the terminal shows, and how it ends."""
    child, terminal = pty.fork()
    if child == 0:
        os.execve(COMMAND, [str(COMMAND), "stock", "--shop", url], environment(shop.folder))
    shown, typed = b"", False
    until = time.monotonic() + 60
    while time.monotonic() < until:
        if not select.select([terminal], [], [], 1)[0]:
            continue
        try:
            more = os.read(terminal, 4096)
        except OSError:
            break
        if not more:
            break
        shown += more
        if not typed and b"password of" in shown:
            os.write(terminal, password.encode() + b"\n")
            typed = True
    return os.waitpid(child, 0)[1], shown.decode(errors="replace")


def refused(bench, said, words, what):
    bench.count("refused")
    bench.expect(said.returncode == 2 and words in said.stderr and len(said.stderr.splitlines()) == 1,
                 f"{what}: {said.returncode} {said.stdout}{said.stderr}")


def strangers(bench, shop, secret):
    plain = PlainServer()
    for url, words, what in (
            (address(shop, host="127.0.0.1"), "does not match host name", "another name"),
            (address(shop, authority="stranger"), "certificate verify failed", "another authority"),
            (address(shop, port=plain.port), "server does not support SSL", "no TLS")):
        refused(bench, stock(shop, url, secret), words, what)
    bench.expect(secret.encode() not in plain.told, "the password was told to a server without TLS")
    for url, words, what in (
            (address(shop, more="&sslmode=require"), "only verify-full", "less than verify-full"),
            (address(shop, more="&sslmode=disable"), "only verify-full", "no TLS asked for"),
            (address(shop, more="&options=x"), "an option that is not ours", "an option"),
            (address(shop).replace("hand@", "hand:secret@"), "holds a password", "a password")):
        refused(bench, stock(shop, url, secret), words, what)
    bench.expect("secret" not in stock(shop, address(shop).replace("hand@", "hand:secret@"), "").stderr,
                 "a password that stood in the address is shown")
    refused(bench, stock(shop, address(shop), "another"), "does not take the password", "wrong password")


def plainPasswords(bench, shop, secret):
    """The same server, asking for the password itself instead of a proof that the other knows it."""
    rules = shop.server.folder / "data" / "pg_hba.conf"
    rules.write_text(cluster.RULES.replace("scram-sha-256", "password"))
    cluster.run(shop.server.folder, "reload")
    time.sleep(1)
    refused(bench, stock(shop, address(shop), secret), "channel binding", "a password in plain")


def test(bench):
    secret = "pw-" + secrets.token_hex(12)
    with Server(own=True) as server:
        shop = ServerShop(server, bench.folder)
        server.psql("postgres", f"ALTER ROLE hand PASSWORD '{scramVerifier(secret)}'")
        said = stock(shop, address(shop), secret)
        bench.expect(said.returncode == 0 and "BK-A" in said.stdout,
                     f"the right one: {said.stdout}{said.stderr}")
        bench.count("let in")
        status, shown = onTerminal(shop, address(shop), secret)
        bench.expect(status == 0 and "BK-A" in shown, f"on a terminal: {status} {shown}")
        bench.expect(secret not in shown, "the terminal shows the password")
        bench.count("let in")
        strangers(bench, shop, secret)
        plainPasswords(bench, shop, secret)
        found = filesWith(secret, [bench.folder, server.folder])
        bench.expect(not found, f"the password is in {found}")
        (bench.folder / "planted").write_text(secret)
        bench.expect(len(filesWith(secret, [bench.folder])) == 1, "a planted password is not found")


if __name__ == "__main__":
    main("A server proves who it is, and no password is left behind", test)
