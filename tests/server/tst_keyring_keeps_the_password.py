# SPDX-License-Identifier: MIT
"""The desk keeps a server's password in the desktop's keyring where it is told to, and desk and
commands take it from there the next time; it is in no file that can be read without the keyring, and where there is no
keyring nothing is kept. The keyring is Debian's gnome-keyring, on a message bus of its own."""

import secrets
import subprocess
from urllib.parse import quote

from seats import COMMAND, FOLDER, Server, ServerShop, environment, filesWith, main, scramVerifier

DESK = FOLDER / "bin" / "flarestock-desk"
UNLOCK = ("printf 'of the tests' | gnome-keyring-daemon --unlock --components=secrets >/dev/null 2>&1; "
          "for i in 1 2 3; do sleep 0.3; done; exec \"$@\"")


def desk(shop, url, *more, given="", keyring=True):
    picture = shop.folder / "picture.png"
    picture.unlink(missing_ok=True)
    done = program(shop, [str(DESK), "--shop", url, "--screenshot", str(picture), *more], given, keyring)
    return done, picture.exists()


def command(shop, url, keyring):
    return program(shop, [str(COMMAND), "verify", url], "", keyring)


def program(shop, words, given, keyring):
    home = shop.folder / "home"
    home.mkdir(exist_ok=True)
    if keyring:
        words = ["dbus-run-session", "--", "sh", "-c", UNLOCK, "sh", *words]
    surroundings = {**environment(home), "QT_QPA_PLATFORM": "offscreen", "QT_QUICK_BACKEND": "software"}
    surroundings.pop("DBUS_SESSION_BUS_ADDRESS", None)
    if keyring:
        surroundings["XDG_CURRENT_DESKTOP"] = "GNOME"
    return subprocess.run(words, input=given, text=True, capture_output=True, env=surroundings,
                          timeout=300, check=False, start_new_session=True)


def test(bench):
    secret = "pw-" + secrets.token_hex(12)
    with Server() as server:
        shop = ServerShop(server, bench.folder)
        server.psql("postgres", "DROP ROLE IF EXISTS keyed")
        server.psql("postgres", f"CREATE ROLE keyed LOGIN PASSWORD '{scramVerifier(secret)}' IN ROLE hand")
        file = quote(str(server.folder / "authority.pem"), safe="")
        url = f"postgresql://keyed@localhost:{server.port}/{shop.database}?sslrootcert={file}"
        done, shown = desk(shop, url, keyring=False)
        bench.expect(done.returncode == 2 and not shown, f"without a password: {done.stderr}")
        done, shown = desk(shop, url, "--password-stdin", "--keep-password", given=secret + "\n")
        bench.expect(done.returncode == 0 and shown and "does not take" not in done.stderr,
                     f"kept: {done.stderr}")
        bench.count("kept")
        done, shown = desk(shop, url)
        bench.expect(done.returncode == 0 and shown, f"from the keyring: {done.stderr}")
        done = command(shop, url, keyring=True)
        bench.expect(done.returncode == 0, f"a command, from the keyring: {done.stderr}")
        bench.count("taken from the keyring", 2)
        done = command(shop, url, keyring=False)
        bench.expect(done.returncode == 2, f"a command without the keyring: {done.stdout}")
        done, shown = desk(shop, url, keyring=False)
        bench.expect(done.returncode == 2 and not shown, "it is there without the keyring as well")
        done, shown = desk(shop, url, "--password-stdin", "--keep-password", given=secret + "\n",
                           keyring=False)
        bench.expect(done.returncode == 0 and "does not take the password" in done.stderr,
                     f"no keyring: {done.stderr}")
        found = filesWith(secret, [bench.folder, server.folder])
        bench.expect(not found, f"the password is in {found}")
        bench.count("without a keyring", 3)


if __name__ == "__main__":
    main("The keyring keeps the password", test)
