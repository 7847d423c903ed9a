# SPDX-License-Identifier: MIT
"""Crash images: the disk as it may look after the power went at any one call of a recorded trace.

What was synced is on the disk. What was not may be there, or not, or by halves, in any order:

    kept        all of it came to the disk, though nobody asked
    dropped     none of it did
    torn        it came in order, up to some write, of which some sectors came
    reordered   any of the writes came and others did not
    scattered   any sectors of any writes came

Sectors have 512 bytes. Names (made, renamed, unlinked) come to the disk when their folder is synced, and
otherwise in their order, as journalling file systems keep them; that syncing a file brings its name too,
as some do, is not relied on. A file is not its name: a write goes to the file that had the name then.
"""

import random
import struct

FATES = ("kept", "dropped", "torn", "reordered", "scattered")
SECTOR = 512


def read_trace(path):
    """[(call, path, offset, content)], as failing_disk.c writes them."""
    raw, at, calls = open(path, "rb").read(), 0, []
    while at + 16 <= len(raw):
        call, _, path_length, size, offset = struct.unpack_from("<BBHIq", raw, at)
        at += 16
        name = raw[at:at + path_length].decode()
        calls.append((chr(call), name, offset, raw[at + path_length:at + path_length + size]))
        at += path_length + size
    return calls


def without_syncs(calls):
    """As with synchronous=OFF: nothing is synced."""
    return [call for call in calls if call[0] != "S"]


def without_commit_syncs(calls):
    """As with synchronous=NORMAL: the log is synced before it is brought into the file (the next call
    writes the file), and not at each COMMIT."""
    kept = []
    for at, call in enumerate(calls):
        if call[0] == "S" and call[1].endswith("-wal"):
            following = next((c for c in calls[at + 1:] if c[0] != "A"), None)
            if not following or following[0] != "W" or following[1].endswith("-wal"):
                continue
        kept.append(call)
    return kept


class Disk:
    """Names to files, files to bytes."""

    def __init__(self, other=None):
        self.names = dict(other.names) if other else {}
        self.bytes = {key: bytearray(raw) for key, raw in other.bytes.items()} if other else {}

    def name(self, call, path, content, file):
        if call == "C":
            self.names[path] = file
        elif self.names.get(path) == file:
            del self.names[path]
            if call == "R":
                self.names[content.decode()] = file

    def change(self, call, offset, content, file):
        raw = self.bytes.setdefault(file, bytearray())
        if call == "T":
            del raw[offset:]
            raw.extend(bytes(max(0, offset - len(raw))))
        else:
            raw.extend(bytes(max(0, offset - len(raw))))
            raw[offset:offset + len(content)] = content

    def sectors(self, offset, content, file, dice):
        """About half of the sectors of one write; they lie at whole multiples of their size."""
        start = offset
        while start < offset + len(content):
            end = min(offset + len(content), (start // SECTOR + 1) * SECTOR)
            if dice.random() < 0.5:
                self.change("W", start, content[start - offset:end - offset], file)
            start = end

    def files(self):
        return {name: bytes(self.bytes.get(file, b"")) for name, file in self.names.items()}


class Recording:
    """A trace walked through call by call: what is on the disk, and what is still on its way."""

    def __init__(self, calls, start=None, brings_names=False):
        """`start`: what lay in the folder before, synced: path to bytes. `brings_names`: syncing a
        file brings its name too."""
        self.calls, self.brings_names = calls, brings_names
        self.disk, self.files, self.said = Disk(), {}, []
        self.waiting = []  # (call, path, offset, content, file), names and writes as they came
        for number, (path, raw) in enumerate((start or {}).items()):
            self.disk.names[path] = self.files[path] = -1 - number
            self.disk.bytes[-1 - number] = bytearray(raw)

    def walk(self):
        """After each call: its number. `said` then holds what was acknowledged up to it."""
        for number, (call, path, offset, content) in enumerate(self.calls):
            if call == "A":
                self.said += content.decode().split("\n")[:-1]
            elif call == "S":
                self._sync(path)
            else:
                if call == "C" or path not in self.files:
                    self.files[path] = number
                file = self.files[path]
                self.waiting.append((call, path, offset, content, file))
                if call in "UR":
                    del self.files[path]
                if call == "R":
                    self.files[content.decode()] = file
            yield number

    def _sync(self, path):
        file, left = self.files.get(path), []
        for each in self.waiting:
            call, name, offset, content, of = each
            if call in "CUR" and (name.rsplit("/", 1)[0] == path.rstrip("/") or
                                  (self.brings_names and call == "C" and of == file)):
                self.disk.name(call, name, content, of)
            elif call in "WT" and file is not None and of == file:
                self.disk.change(call, offset, content, of)
            else:
                left.append(each)
        self.waiting = left

    def image(self, fate, seed):
        """{path: bytes} after power loss now."""
        dice, disk = random.Random(seed), Disk(self.disk)
        names = sum(each[0] in "CUR" for each in self.waiting)
        names_kept = {"kept": names, "dropped": 0}.get(fate, dice.randint(0, names))
        last = {"kept": len(self.waiting), "torn": dice.randint(0, len(self.waiting))}.get(fate, 0)
        for at, (call, path, offset, content, file) in enumerate(self.waiting):
            if call in "CUR":
                if names_kept > 0:
                    disk.name(call, path, content, file)
                names_kept -= 1
            elif at < last or (fate in ("reordered", "scattered") and dice.random() < 0.5):
                if call == "W" and fate == "scattered":
                    disk.sectors(offset, content, file, dice)
                else:
                    disk.change(call, offset, content, file)
            elif at == last and fate == "torn" and call == "W":
                disk.sectors(offset, content, file, dice)
        return disk.files()
