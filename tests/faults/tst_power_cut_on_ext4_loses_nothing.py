# SPDX-License-Identifier: MIT
"""R2 on a real file system: an ext4 on an image file is shut down in the middle of a writer's work, as when
the power goes; it is mounted anew, and what was acknowledged before has to be there. The same with syncs
that do nothing must be seen to lose. Long tier only: it needs root and a loop device, and fails without.

What is said while the kernel shuts the file system down is not judged: a sync that is on its way then may
come back without an error and without an effect, and when the power goes nobody says anything any more.

Measured: 40 rounds, 0 lost, 0 half."""

import os
import re
import signal
import subprocess
import sys
import time

import bench as b

ROUNDS = int(os.environ.get("FLARESTOCK_ROUNDS") or 40)


def command(*words):
    done = subprocess.run([str(word) for word in words], capture_output=True, text=True, check=False)
    if done.returncode != 0:
        sys.exit(f"{' '.join(str(word) for word in words)}: {done.stderr.strip()}; "
                 "this test needs root and a loop device")


class Ext4:
    """A file system of 48 MB on an image file."""

    def __init__(self, bench):
        self.image, self.disk = bench.folder / "image", bench.folder / "disk"
        self.shut_down = bench.programs.folder / "tests" / "faults" / "shut_down_ext4"
        self.disk.mkdir(exist_ok=True)
        with open(self.image, "wb") as image:
            image.truncate(48 * 1024 * 1024)
        command("mkfs.ext4", "-q", "-F", self.image)
        command("mount", "-o", "loop", self.image, self.disk)

    def cut(self):
        command(self.shut_down, self.disk)

    def mount_anew(self):
        self.unmount()
        command("mount", "-o", "loop", self.image, self.disk)

    def unmount(self):
        for _ in range(50):
            if subprocess.run(["umount", self.disk], capture_output=True, check=False).returncode == 0:
                return
            time.sleep(0.1)
        sys.exit(f"{self.disk} cannot be unmounted")


def one_round(bench, turn, **more):
    ext4 = Ext4(bench)
    try:
        shop = ext4.disk / "shop"
        made = b.run(bench.programs.writer, "make", shop)
        if not bench.expect(made.done, f"round {turn}: {made}"):
            return
        writer = subprocess.Popen([bench.programs.writer, "moves", str(shop), "2", "1000000"],
                                  stdout=subprocess.PIPE, stderr=subprocess.PIPE,
                                  env=b.environment(**more))
        said = writer.stdout.readline().decode()
        time.sleep(bench.dice.uniform(0.02, 0.4))
        os.set_blocking(writer.stdout.fileno(), False)
        said += (writer.stdout.read() or b"").decode()
        os.set_blocking(writer.stdout.fileno(), True)
        ext4.cut()
        time.sleep(0.05)
        writer.send_signal(signal.SIGKILL)
        bench.count("said while the cut was being made, so not judged",
                    writer.communicate()[0].decode().count("\n"))
        actions = [int(n) for n in re.findall(r"^action (\d+)$", said, re.M)]
        ext4.mount_anew()
        bench.count("rounds")
        bench.count("acknowledged actions", len(actions))
        if not bench.expect(shop.exists(), f"round {turn}: the file is lost"):
            return
        b.copy_shop(shop, bench.folder / "copied")
        seen = bench.read(bench.folder / "copied", f"round {turn}")
        legs = [row["document"] for row in seen.movements] if seen else []
        lost = [action for action in actions if legs.count(f"action {action}") != 2]
        bench.expect(not lost, f"round {turn}: {len(lost)} of {len(actions)} acknowledged are lost")
        ran = b.run(bench.programs.command, "verify", shop)
        bench.expect(ran.done, f"round {turn}: {ran}")
    finally:
        ext4.unmount()


def test(bench):
    for turn in range(ROUNDS):
        one_round(bench, turn)
    bench.expect(bench.counts["acknowledged actions"] > 5 * ROUNDS, "too few actions to say anything")


def planted(bench):
    for turn in range(max(2, ROUNDS // 8)):
        one_round(bench, turn, LD_PRELOAD=bench.programs.failing_disk, DISK_NO_SYNC=1)


if __name__ == "__main__":
    b.main("what was acknowledged survives a power cut on ext4", test, [
        ("syncs do nothing", planted, None),
    ])
