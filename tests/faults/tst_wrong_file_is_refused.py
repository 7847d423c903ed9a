# SPDX-License-Identifier: MIT
"""R11: a wrong file is refused in a sentence that says what is wrong, and stays as it is: every byte of it,
and everything that lies beside it.

Measured: each wrong file × `verify`, `move` and `demo --to`: exit status 2, the right words, 0 changed."""

import os
import shutil
import sqlite3
import stat
import subprocess
import sys

import bench as b

def text_file(path):
    path.write_text("part,place,quantity\n" * 40)


def empty_file(path):
    path.write_bytes(b"")


def short_file(path):
    path.write_bytes(b"SQLite format 3\0")


def other_application(path):
    connection = sqlite3.connect(path)
    connection.execute("CREATE TABLE movement (id INTEGER)")
    connection.execute("PRAGMA application_id = 1234")
    connection.commit()
    connection.close()


def folder(path):
    path.mkdir()


def link_to_nothing(path):
    path.symlink_to("not-there")


def nothing(_):
    pass


def changed(at, raw):
    """A good shop with other bytes in its header (sqlite.org/fileformat.html, 1.3)."""
    def make(path):
        good = (path.parent.parent / "good").read_bytes()
        path.write_bytes(good[:at] + raw + good[at + len(raw):])
    return make


# What lies there, how it is made, what has to be said.
WRONG_FILES = [
    ("text", text_file, "not a shop file"),
    ("nothing in it", empty_file, "is empty"),
    ("sixteen bytes", short_file, "not a shop file"),
    ("a database of another program", other_application, "another program"),
    ("a mark of another program", changed(68, b"\0\0\4\xd2"), "another program"),
    ("a newer schema", changed(60, b"\0\0\0\4"), "newer Flarestock"),
    ("a much newer schema", changed(60, b"\x7f\xff\xff\xff"), "newer Flarestock"),
    ("an unfinished shop", changed(60, b"\0\0\0\0"), "never finished"),
    ("a page too many", changed(28, b"\0\0\0\x01"), "damaged"),
    ("a folder", folder, "not a file"),
    ("a link to nothing", link_to_nothing, "not there"),
    ("no file", nothing, "not there"),
]


def everything_in(place):
    """Names, kinds, bytes and times of all that lies in a folder."""
    found = {}
    for name in sorted(os.listdir(place)):
        path = place / name
        status = os.lstat(path)
        raw = path.read_bytes() if stat.S_ISREG(status.st_mode) else b""
        found[name] = (status.st_mode, status.st_size, status.st_mtime_ns, raw)
    return found


def refused(bench, when, words, says, place):
    before = everything_in(place)
    ran = b.run(*words)
    bench.count("refusals")
    bench.expect(ran.refused and ran.err.strip().count("\n") == 0, f"{when}: {ran}")
    bench.expect(says in ran.err, f"{when}: \"{says}\" is not said: {ran}")
    bench.expect(everything_in(place) == before, f"{when}: what lies there has changed")


def commands(bench, path, writer):
    if writer:
        return [("verify", [bench.programs.writer, "verify", path]),
                ("moves", [bench.programs.writer, "moves", path, 2, 2])]
    return [("verify", [bench.programs.command, "verify", path]),
            ("move", b.move_words(bench.programs, path, b.fresh_id(bench.dice))),
            ("stock", [bench.programs.command, "stock", "--shop", path])]


def wrong_files(bench, writer=False):
    bench.small_shop("good")
    for what, make, says in WRONG_FILES:
        place = bench.folder / what
        place.mkdir()
        path = place / "shop"
        make(path)
        for command, words in commands(bench, path, writer):
            refused(bench, f"{command} of {what}", words, says, place)
        if what != "no file" and not writer:
            refused(bench, f"demo onto {what}", [bench.programs.command, "demo", "--to", path],
                    "exists already", place)
        bench.count("wrong files")


LOCKING = """
import sqlite3, sys
other = sqlite3.connect(sys.argv[1], isolation_level=None)
other.execute("PRAGMA locking_mode = EXCLUSIVE")
other.execute("BEGIN EXCLUSIVE")
print("locked", flush=True)
sys.stdin.read()
"""


def locked(bench):
    """Another program holds the file, so that nobody else may read or write it. (In a process of its
    own: whoever reads a file by plain means and closes it drops the locks of the whole process.)"""
    place = bench.folder / "locked"
    place.mkdir()
    path = place / "shop"
    b.copy_shop(bench.folder / "good", path)
    other = subprocess.Popen([sys.executable, "-c", LOCKING, str(path)], stdin=subprocess.PIPE,
                             stdout=subprocess.PIPE)
    other.stdout.readline()
    for command, words in commands(bench, path, False):
        refused(bench, f"{command} of a locked file", words, "locked by another program", place)
    other.communicate()
    again = b.run(*b.move_words(bench.programs, path, b.fresh_id(bench.dice)))
    bench.expect(again.done, f"move once it is free: {again}")
    bench.count("wrong files")


AS_NOBODY = """
import os, sys
os.setgroups([]); os.setgid(65534); os.setuid(65534)
os.execv(sys.argv[1], sys.argv[1:])
"""


def without_rights(bench, words):
    """As a user whom rights stop: as nobody (65534), where the test runs as root; with a copy of the
    program, as nobody may not look into everybody's folders."""
    if os.geteuid() != 0:
        return b.run(*words)
    copy = bench.folder / "flarestock"
    if not copy.exists():
        shutil.copy(bench.programs.command, copy)
    return b.run(sys.executable, "-c", AS_NOBODY, copy, *words[1:])


def read_only(bench):
    for what, folder_mode, file_mode, says in (
            ("a folder that may only be read", 0o555, 0o666, "may only be read"),
            ("a file that may only be read", 0o777, 0o444, "may only be read"),
            ("a file that may not be read", 0o777, 0o000, "cannot be read")):
        place = bench.folder / what
        place.mkdir()
        path = place / "shop"
        b.copy_shop(bench.folder / "good", path)
        os.chmod(bench.folder, 0o755)
        os.chmod(path, file_mode)
        os.chmod(place, folder_mode)
        words = b.move_words(bench.programs, path, b.fresh_id(bench.dice))
        before = b.sha256(path) if file_mode or os.geteuid() == 0 else ""
        ran = without_rights(bench, words)
        bench.count("refusals")
        bench.expect(ran.refused and says in ran.err, f"move in {what}: {ran}")
        if file_mode:
            looked = without_rights(bench, [bench.programs.command, "verify", path])
            bench.expect(looked.done, f"verify of {what}: {looked}")
        if before:
            bench.expect(b.sha256(path) == before, f"{what}: the file has changed")
        if folder_mode == 0o555:
            bench.expect(os.listdir(place) == ["shop"], f"{what}: {os.listdir(place)}")
            made = without_rights(bench, [bench.programs.command, "demo", "--to", place / "new"])
            bench.expect(made.refused, f"demo into {what}: {made}")
        os.chmod(place, 0o755)
        bench.count("wrong files")


def test(bench):
    wrong_files(bench)
    locked(bench)
    read_only(bench)


def planted(bench):
    wrong_files(bench, writer=True)


if __name__ == "__main__":
    b.main("a wrong file is refused kindly", test, [
        ("a newer schema is taken", planted, "newer_schema_taken"),
    ])
