# SPDX-License-Identifier: MIT
"""R4: when the memory runs out, nothing is lost and nothing crashes. The k-th allocation fails, once or from then
on, k from 1 until the operation ends without one: a shop is opened, an action appended, the stock read, a bill
expanded, a shop verified (starved.cpp), and the same by whole commands.

Measured at every point: done all the same, or said; no crash and no hang; the file is whole, what was
acknowledged is there once, and the same again goes well in the same process. Where every allocation fails from
then on no sentence can be made: the program then ends with the one that it has ready, and status 2.
Qt throws std::bad_alloc like C++; where that comes in one of its noexcept functions the program ends likewise.

The limit is Qt's SQLite driver (6.4): it takes the text of a column without asking whether SQLite had memory for
it, and reads through null. The process then dies by a signal, at two to four points in 100; the file is whole all the same,
and that is measured too."""

import signal

import bench as b

MOST = 10_000_000
OPERATIONS = ("open", "append", "stock", "verify", "bill")


def starve(bench, operation, shop, ever, program="starved", part=None):
    """Every k in the long tier, else some of them to the end; `part`: of a few, from, step, below."""
    at, step, most = part or (1, 1, MOST)
    if not b.LONG and not part:
        step = STEPS[operation]
        at = 1 + bench.dice.randrange(step)
    path = bench.programs.folder / "tests" / "faults" / program
    ran = b.run(path, operation, shop, at, step, most, ever, seconds=3600,
                LD_PRELOAD=bench.programs.folder / "tests" / "faults" / "failing_memory.so")
    lines = ran.out.strip().split("\n")
    when = f"{operation}, memory fails {'for ever' if ever else 'once'}"
    if part:
        lines.append("")  # It has not come to the end.
    elif not bench.expect(ran.done and lines[-1].startswith("end "), f"{when}: {ran.err[-200:]}"):
        return
    bench.expect(len(lines) > 5, f"{when}: only {len(lines)} points")
    in_qt = sum(line.split()[1] == "qt" for line in lines[:-1])
    bench.expect(in_qt <= 3 + len(lines) // 10, f"{when}: {in_qt} of {len(lines)} die in Qt")
    for line in lines[:-1]:
        at, word, *more = line.split()
        good = ["done", "said"] if operation != "bill" else ["done", "through"]
        good += ["ended", "qt"] + (["through"] if ever else [])
        bench.count(f"{operation}: {word}")
        bench.expect(word in good and not more, f"{when}: at {line}")


STEPS = {"open": 61, "append": 197, "stock": 31, "verify": 307, "bill": 151}


def commands(bench, small, demo):
    """Whole commands: their sentence and their status."""
    began = bench.counts.get("commands starved", 0)
    points = range(1, 4_000, 97) if b.LONG else (3, 700, 2_500)
    for at in points:
        for ever in (0, 1):
            name = b.fresh_id(bench.dice)
            for words, shop in ((b.move_words(bench.programs, small, name), small),
                                ([bench.programs.command, "stock", "--shop", demo], demo),
                                ([bench.programs.command, "verify", small], small),
                                ([bench.programs.command, "bill", "--build", "coupe-fuel",
                                  "--shop", demo], demo)):
                mark = bench.folder / "mark"
                mark.unlink(missing_ok=True)
                ran = b.run(*words, LD_PRELOAD=bench.programs.folder / "tests" / "faults" /
                            "failing_memory.so", MEMORY_FROM=shop, MEMORY_AT=at * (1 + 20 * (
                                words[1] == "bill")), MEMORY_EVER=ever, MEMORY_SEEN=mark)
                when = f"flarestock {words[1]}, allocation {at} fails {'for ever' if ever else ''}"
                bench.count("commands starved" if mark.exists() else "commands not reached")
                in_qt = ran.status == -signal.SIGSEGV
                bench.count("commands that died in Qt", in_qt)
                bench.expect(ran.done or ran.refused or in_qt, f"{when}: {ran}")
                if words[1] != "move":
                    continue
                bench.read(small, when)
                again = b.run(*words)
                bench.expect(again.done, f"{when}, said again: {again}")
                seen = bench.read(small, when)
                bench.expect(seen and seen.ids.count(name.replace("-", "")) == 1,
                             f"{when}: not there once")
    starved = bench.counts.get("commands starved", 0) - began
    bench.expect(starved > 10, f"only {starved} commands were starved")
    bench.expect(bench.counts["commands that died in Qt"] <= 1 + starved // 20,
                 "too many commands died in Qt")


def test(bench):
    small = bench.small_shop()
    b.run(bench.programs.writer, "moves", small, 2, 4)
    demo = bench.folder / "demo.shop"
    b.run(bench.programs.command, "demo", "--to", demo)
    for ever in (0, 1):
        for operation in OPERATIONS:
            starve(bench, operation, demo if operation == "bill" else small, ever)
    bench.read(small, "at the end")
    commands(bench, small, demo)


def planted(bench):
    small = bench.small_shop()
    starve(bench, "stock", small, 1, "starved_left_begun")


def planted_rows(bench):
    small = bench.small_shop()
    starve(bench, "append", small, 0, "starved_rows_cut_short", (1000, 3, 4000))


if __name__ == "__main__":
    b.main("memory that runs out loses nothing", test, [
        ("what was begun without memory is not ended", planted, None),
        ("rows that end for want of memory are taken for all", planted_rows, None),
    ])
