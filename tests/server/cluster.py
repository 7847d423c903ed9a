# SPDX-License-Identifier: MIT
"""cluster.py start|stop FILE: a PostgreSQL server of its own for the tests, in a folder that goes with it.

`start` writes into FILE where it is, one fact a line: its folder, its port. Over the Unix socket in
that folder everybody is let in, and only who runs the tests gets into the folder; over TCP (127.0.0.1)
there is TLS, with a certificate for the name "localhost", signed by the authority in `authority.pem`,
and SCRAM. Where PostgreSQL is missing this fails; nothing is skipped."""

import os
import shutil
import socket
import subprocess
import sys
import tempfile
from pathlib import Path

SETTINGS = """
listen_addresses = '127.0.0.1'
port = {port}
unix_socket_directories = '{folder}'
ssl = on
ssl_cert_file = '{folder}/server.pem'
ssl_key_file = '{folder}/server.key'
password_encryption = 'scram-sha-256'
max_connections = 60
shared_buffers = '32MB'
lc_messages = 'C'
log_statement = 'all'
"""
RULES = """
local all all trust
hostssl all all 127.0.0.1/32 scram-sha-256
"""


def binary(name):
    found = sorted(Path("/usr/lib/postgresql").glob(f"*/bin/{name}"))
    if not found:
        sys.exit(f"{name} is missing: install postgresql-15")
    return str(found[-1])


def asServer(*words):
    """Runs it as the user that a server may run as: never root."""
    if os.geteuid() == 0:
        words = ("runuser", "-u", "postgres", "--", *words)
    done = subprocess.run(words, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, check=False,
                          stdin=subprocess.DEVNULL, cwd="/")
    if done.returncode != 0:
        sys.exit(f"{' '.join(words)}:\n{done.stdout.decode(errors='replace')}")


def openssl(folder, *words):
    subprocess.run(["openssl", *words], cwd=folder, check=True, capture_output=True)


def authority(folder, name):
    """A self-signed certificate that may sign others."""
    openssl(folder, "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj",
            f"/CN={name} of the tests", "-keyout", f"{name}.key", "-out", f"{name}.pem")


def certificates(folder):
    authority(folder, "authority")
    authority(folder, "stranger")
    openssl(folder, "req", "-newkey", "rsa:2048", "-nodes", "-subj", "/CN=localhost",
            "-keyout", "server.key", "-out", "server.csr")
    (folder / "names").write_text("subjectAltName = DNS:localhost\n")
    openssl(folder, "x509", "-req", "-in", "server.csr", "-CA", "authority.pem", "-CAkey",
            "authority.key", "-CAcreateserial", "-days", "2", "-extfile", "names",
            "-out", "server.pem")
    os.chmod(folder / "server.key", 0o600)


def freePort():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


def start(file):
    stop(file)
    folder = Path(tempfile.mkdtemp(prefix="flarestock-server-"))
    file.parent.mkdir(parents=True, exist_ok=True)
    port = freePort()
    file.write_text(f"{folder}\n{port}\n")
    certificates(folder)
    if os.geteuid() == 0:
        for path in [folder, *folder.iterdir()]:
            shutil.chown(path, "postgres", "postgres")
    asServer(binary("initdb"), "-D", f"{folder}/data", "-U", "postgres", "-E", "UTF8",
             "--locale=C.UTF-8", "-A", "scram-sha-256", "--auth-local=trust")
    with open(folder / "data" / "postgresql.conf", "a", encoding="utf-8") as settings:
        settings.write(SETTINGS.format(folder=folder, port=port))
    (folder / "data" / "pg_hba.conf").write_text(RULES)
    run(folder, "start")


def run(folder, deed, *more):
    """deed: start, stop, kill (as when the power goes)."""
    words = {"start": ["start"], "reload": ["reload"], "stop": ["stop", "-m", "fast"], "kill": ["stop", "-m", "immediate"]}
    asServer(binary("pg_ctl"), "-D", f"{folder}/data", "-l", f"{folder}/log", "-w", *words[deed], *more)


def stop(file):
    if not file.exists():
        return
    folder = Path(file.read_text().split("\n")[0])
    if (folder / "data" / "postmaster.pid").exists():
        run(folder, "stop")
    if folder.name.startswith("flarestock-server-"):
        shutil.rmtree(folder, ignore_errors=True)
    file.unlink()


if __name__ == "__main__":
    {"start": start, "stop": stop}[sys.argv[1]](Path(sys.argv[2]))
