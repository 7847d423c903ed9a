#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""A season of services by commands, and what came of it by another program: season_of_services.py FLARESTOCK

Cars run at events; elements are washed, replaced by fresh ones and by used ones with a tag, looked at, found
damaged; outings are written down late; what was done is taken back. Then this program, with nothing of Flarestock in
it, works out from what was typed what is in each car, how far it ran since it was fitted, washed and looked at, how
often it was washed, what is spent and what is due before which event; all has to be equal.

FLARESTOCK_SEED gives another season, FLARESTOCK_STEPS a longer one; the seed is printed. The rules are those of
model/servicing; the intervals are the test's own.
"""

import datetime
import json
import os
import random
import subprocess
import sys
import tempfile
from decimal import Decimal

FLARESTOCK = sys.argv[1]
CARS = ("car-1", "car-2")
# Position: the parts that may be there.
MESH, GLASS, PUMP = ("EC-100-S", "EC-150-S"), ("EG-10-S",), ("EP-255",)
POSITIONS = {"pre element": MESH, "post element": GLASS, "left pump": PUMP, "scavenge element": ("EQ-60",)}
WASHES = 3
INTERVALS = """kind,medium,part,position,car,do,runs,hours,events,months,age,washes,warn percent,warn days,source
element,stainless mesh,,,,wash,,,1,,,%d,,,test
element,,,scavenge element,,wash,14,,,,,%d,50,,test
element,microglass,,,,replace,,9.5,,3,,,10,20,test
pump,,,,,inspect,40,6,,,,,25,,test
pump,,,,car-2,inspect,12,,,6,,,0,5,test
pump,,,,,replace,,,,,12,,,40,test
""" % (WASHES, WASHES + 1)
SEASON = [("may-hill", "2027-05-08", "2027-05-09", CARS, "6", "0.4"),
          ("june-six", "2027-06-05", "2027-06-06", ("car-1",), "", "7.5"),
          ("july-sprint", "2027-07-10", "2027-07-11", CARS, "", ""),
          ("autumn", "2027-09-25", "2027-09-26", ("car-2",), "8", "1")]


def day_after(day, days):
    return (datetime.date.fromisoformat(day) + datetime.timedelta(days)).isoformat()


def months_after(day, months):
    """Of a shorter month its last day."""
    at = datetime.date.fromisoformat(day)
    count = at.year * 12 + at.month - 1 + months
    year, month = divmod(count, 12)
    for last in range(at.day, 0, -1):
        try:
            return datetime.date(year, month + 1, last).isoformat()
        except ValueError:
            continue
    raise AssertionError


def plain(number):
    text = format(Decimal(number), "f")
    return text.rstrip("0").rstrip(".") if "." in text else text


class Use:
    def __init__(self, runs=0, hours=Decimal(0), events=()):
        self.runs, self.hours, self.events = runs, hours, set(events)

    def add(self, entry):
        self.runs += entry["runs"]
        self.hours += entry["hours"]
        self.events.add(entry["event"])

    def said(self):
        return {"runs": self.runs, "hours": plain(self.hours), "events": len(self.events)}


class Season:
    def __init__(self, dice, shop):
        self.dice, self.shop = dice, shop
        self.entries = []  # what stands: dicts in the order of writing
        self.today = "2027-01-10"
        self.tags = 0
        self.wrong = []
        self.refused = {"wash": 0, "take-back": 0}

    def run(self, *words):
        ran = subprocess.run([FLARESTOCK, *words, "--shop", self.shop, "--json"],
                             capture_output=True, text=True, check=False)
        return json.loads(ran.stdout) if ran.returncode == 0 and ran.stdout else None

    def must(self, *words):
        said = self.run(*words)
        if said is None:
            ran = subprocess.run([FLARESTOCK, *words, "--shop", self.shop], capture_output=True, text=True,
                                 check=False)
            sys.exit(f"{' '.join(words)}: {ran.stderr}{ran.stdout}")
        return said

    # What is in the cars, from what was typed alone.

    def cars(self):
        fitted, out, known, ran = {}, [], {}, {car: Use() for car in CARS}

        def leave(entry):
            old = fitted.pop((entry["car"], entry["at"]), None)
            if old is None:
                return
            lot = entry.get("tag") or old["lot"]
            if lot:
                known[(old["part"], lot)] = (old["life"], old["washed"])
            out.insert(0, {"part": old["part"], "lot": lot, "washed": old["washed"]})

        for entry in sorted(self.entries, key=lambda one: one["day"]):  # Stable: then as written.
            key = (entry["car"], entry.get("at"))
            if entry["kind"] == "ran":
                ran[entry["car"]].add(entry)
                for (car, _), piece in fitted.items():
                    if car == entry["car"]:
                        for use in ("fitted", "worked", "looked", "life"):
                            piece[use].add(entry)
            elif entry["kind"] in ("fit", "replace"):
                leave(entry)
                life, washed = known.get((entry["part"], entry["lot"]), (None, 0)) if entry["lot"] else (None, 0)
                had = [entry.get("had", 0), Decimal(0)]
                piece = {"part": entry["part"], "lot": entry["lot"], "since": entry["day"], "worked on": entry["day"],
                         "looked on": entry["day"], "washed": max(washed, entry.get("washed", 0)),
                         "fitted": Use(*had), "worked": Use(*had), "looked": Use(*had), "damaged": False,
                         "made": entry.get("made", ""),
                         "life": Use(life.runs, life.hours, life.events) if life else Use(*had)}
                out = [one for one in out if not entry["lot"] or (one["part"], one["lot"]) != (entry["part"],
                                                                                              entry["lot"])]
                fitted[key] = piece
            elif key in fitted:
                piece = fitted[key]
                if entry["kind"] == "wash":
                    piece["washed"] += 1
                    piece["worked"], piece["worked on"] = Use(), entry["day"]
                if entry["kind"] in ("wash", "inspect"):
                    piece["looked"], piece["looked on"] = Use(), entry["day"]
                if entry["kind"] == "damaged":
                    piece["damaged"] = True
        return fitted, ran

    # What is due, from the intervals as a person reads them.

    @staticmethod
    def rules(car, at, part):
        if at == "pre element":
            return [("wash", {"events": 1}, WASHES, 20, 30)]
        if at == "scavenge element":
            return [("wash", {"runs": 14}, WASHES + 1, 50, 30)]
        if at == "post element":
            return [("replace", {"hours": Decimal("9.5"), "months": 3}, None, 10, 20)]
        inspect = ({"runs": 12, "months": 6}, 0, 5) if car == "car-2" else ({"runs": 40, "hours": Decimal(6)}, 25, 30)
        return [("inspect", inspect[0], None, inspect[1], inspect[2]), ("replace", {"age": 12}, None, 20, 40)]

    def coming(self, car, today):
        return [one for one in SEASON if car in one[3] and one[2] >= today]

    def spent(self, piece, rules):
        most = [rule[2] for rule in rules if rule[2]]
        return piece["damaged"] or any(piece["washed"] >= washes for washes in most)

    def due(self, fitted, ran, today):
        lines = []
        for (car, at), piece in fitted.items():
            rules = self.rules(car, at, piece["part"])
            events = self.coming(car, today)
            if piece["damaged"]:
                lines.append((car, at, "replace", "over", None, [one[0] for one in events]))
                continue
            for do, every, washes, percent, days in rules:
                use = piece[{"wash": "worked", "inspect": "looked", "replace": "fitted"}[do]]
                since = piece[{"wash": "worked on", "inspect": "looked on", "replace": "since"}[do]]
                standing, before, last = 0, None, None
                for what in ("runs", "hours", "events"):
                    if what not in every:
                        continue
                    used = Decimal({"runs": use.runs, "hours": use.hours, "events": len(use.events)}[what])
                    limit = Decimal(every[what])
                    left = limit - used
                    standing = max(standing, 4 if left < 0 else 3 if left == 0 else
                                   1 if left * 100 <= limit * percent else 0)
                    met = len(ran[car].events)
                    total = used * max(met, 1)
                    for index, event in enumerate(events):
                        said = {"runs": event[4], "hours": event[5], "events": "1"}[what]
                        if said:
                            more = Decimal(said) * max(met, 1)
                        elif met:
                            more = Decimal(ran[car].runs if what == "runs" else ran[car].hours)
                        else:
                            break
                        total += more
                        if total > limit * max(met, 1):
                            if before is None or index < before:
                                before = index
                            standing = max(standing, 2)
                            break
                ends = [months_after(since, every["months"])] if "months" in every else []
                if "age" in every:
                    ends.append(months_after(piece["made"] or piece["since"], every["age"]))
                stops = []
                if ends:
                    last = min(ends)
                    standing = max(standing, 4 if last < today else 1 if last <= day_after(today, days) else 0)
                    past = [index for index, event in enumerate(events) if event[2] > last]
                    standing = max(standing, 2 if past else 0)
                    if do == "replace":
                        stops = [events[index][0] for index in past]
                    elif past:  # What was only not looked at in time stops no event.
                        before = past[0] if before is None else min(before, past[0])
                if do == "wash" and self.spent(piece, rules):
                    do = "replace"
                word = ("fine", "soon", "before", "now", "over")[standing]
                lines.append((car, at, do, word, events[before][0] if before is not None else None, stops))
        return sorted(lines, key=str)

    # What hands do.

    def note(self, said, kind, car, **more):
        self.entries.append({"kind": kind, "car": car, "day": more.pop("day", self.today),
                             "id": said.get("movement") or said.get("record"), "moves": "movement" in said, **more})

    def begin(self):
        for parts in POSITIONS.values():
            for part in parts:
                self.must("receive", part, "60", "--from", "supplier-OXS", "--to", "trailer-1", "--cost", "600")
        for car in CARS:
            for at, parts in POSITIONS.items():
                washed = self.dice.choice((0, 0, 1)) if parts[0] not in GLASS + PUMP else 0
                had = self.dice.choice((0, 5))
                since = f"2026-{self.dice.randint(6, 12):02}-28"
                made = f"2026-{self.dice.randint(1, 6):02}-30" if self.dice.random() < .5 and parts == PUMP else ""
                made = made.replace("-02-30", "-02-28")
                lot = f"{car} {at}" if self.dice.random() < .5 else ""
                words = ["service", car, "fit", parts[0], "--at", at, "--since", since, "--washed", str(washed),
                         "--had-runs", str(had)]
                words += ["--lot", lot] if lot else []
                words += ["--made", made] if made else []
                self.note(self.must(*words), "fit", car, at=at, part=parts[0], lot=lot, day=since, washed=washed,
                          had=had, made=made)

    def ran_out(self):
        car = self.dice.choice(CARS)
        event = self.dice.choice(("may-hill", "june-six", "test day", "july-sprint", self.today))
        day = self.today if self.dice.random() < .8 else day_after(self.today, -self.dice.randint(1, 20))
        runs, hours = self.dice.randint(0, 8), Decimal(self.dice.randint(1, 40)) / 10
        said = self.must("service", car, "ran", "--event", event, "--runs", str(runs), "--hours", str(hours),
                         "--day", day)
        self.note(said, "ran", car, event=event, runs=runs, hours=hours, day=day)

    def serviced(self):
        car, at = self.dice.choice(CARS), self.dice.choice(tuple(POSITIONS))
        fitted, _ = self.cars()
        piece = fitted.get((car, at))
        kind = self.dice.choice(("wash", "wash", "wash", "replace", "replace", "inspect", "damaged"))
        if kind == "damaged" and self.dice.random() < .6:
            kind = "inspect"
        if piece is None or self.today < piece["since"]:
            return
        words = ["service", car, kind, at, "--day", self.today]
        more = {}
        if kind == "wash":
            rules = self.rules(car, at, piece["part"])
            allowed = at in ("pre element", "scavenge element") and not self.spent(piece, rules)
            said = self.run(*words)
            if (said is not None) != allowed:
                self.wrong.append(f"wash of {at} in {car}, washed {piece['washed']}: {said}")
            if said is None:
                self.refused["wash"] += 1
                return
        elif kind == "replace":
            part = self.dice.choice(POSITIONS[at])
            back = [one for one in self.free_tags if one[0] == part]
            lot = self.dice.choice(back)[1] if back and self.dice.random() < .5 else ""
            self.tags += 1
            tag = f"T{self.tags}"
            words += ["--with", part, "--from", "trailer-1", "--tag", tag]
            keep = not self.spent(piece, self.rules(car, at, piece["part"])) and self.dice.random() < .7
            if keep:
                words += ["--old-to", "trailer-1", "--old-is", "used and good"]
            words += ["--lot", lot] if lot else []
            if not lot and any(one[0] == part for one in self.free_tags):
                # Which of them goes in the journal says: the one without a lot lies first.
                pass
            said = self.must(*words)
            if said["lot"] != lot:
                self.wrong.append(f"asked for {part} {lot or 'without a lot'}, got {said['lot']}")
            more = {"part": part, "lot": lot, "tag": tag}
            self.free_tags = [one for one in self.free_tags if one != (part, lot)]
            if keep:
                self.free_tags.append((piece["part"], tag))
        elif kind == "inspect" and piece["damaged"]:
            if self.run(*words) is not None:
                self.wrong.append(f"what was found damaged, {at} in {car}, is found good")
            return
        else:
            said = self.must(*words)
        self.note(said, kind, car, at=at, **more)

    free_tags = []

    def take_back(self):
        """An outing, a wash, a look: any of them. With movements: only the newest of all."""
        which = [one for one in self.entries if not one["moves"] and one["kind"] != "fit"]
        if not which:
            return
        entry = self.dice.choice(which)
        self.must("take-back", entry["id"])
        self.entries.remove(entry)

    def take_back_newest(self):
        entry = self.entries[-1]
        if entry["kind"] != "replace":
            return
        self.must("take-back", entry["id"])
        self.entries.remove(entry)
        piece = self.cars()[0][(entry["car"], entry["at"])]
        self.free_tags = [one for one in self.free_tags if one != (piece["part"], entry["tag"])]
        if entry["lot"]:
            self.free_tags.append((entry["part"], entry["lot"]))

    def compare(self):
        fitted, ran = self.cars()
        for car in self.must("service")["cars"]:
            name = car["car"]
            if name not in CARS:
                continue
            if car["ran"] != ran[name].said():
                self.wrong.append(f"{name} ran {car['ran']}, not {ran[name].said()}")
            said = {one["position"]: one for one in car["positions"]}
            mine = {at: piece for (of, at), piece in fitted.items() if of == name}
            if set(said) != set(mine):
                self.wrong.append(f"{name} has {sorted(said)}, not {sorted(mine)}")
                continue
            for at, piece in mine.items():
                one = said[at]
                spent = "spent" if self.spent(piece, self.rules(name, at, piece["part"])) else "in"
                expected = [piece["part"], piece["lot"] or None, piece["since"], piece["washed"], spent,
                            piece["fitted"].said(), piece["worked"].said(), piece["looked"].said(),
                            piece["life"].said()]
                got = [one[key] for key in ("part", "lot", "since", "washed", "state", "sinceFitted", "sinceWashed",
                                            "sinceSeen", "life")]
                if got != expected:
                    self.wrong.append(f"{name} {at}: {got}, not {expected}")
        today = self.today
        due = sorted(((one["car"], one["position"], one["do"], one["standing"], one["before"], one["stops"])
                      for one in self.must("due", "--all", "--today", today)["due"] if one["car"] in CARS), key=str)
        mine = self.due(fitted, ran, today)
        if due != mine:
            more = [one for one in due if one not in mine] + ["instead of"] + [one for one in mine if one not in due]
            self.wrong.append(f"due on {today}: {more}")


def main():
    seed = int(os.environ.get("FLARESTOCK_SEED", "20270508"))
    steps = int(os.environ.get("FLARESTOCK_STEPS", "110"))
    print(f"seed {seed}")
    with tempfile.TemporaryDirectory() as folder:
        demo, shop, files = (os.path.join(folder, name) for name in ("demo", "shop", "files"))
        subprocess.run([FLARESTOCK, "demo", "--to", demo], check=True, capture_output=True)
        subprocess.run([FLARESTOCK, "export", "--to", files, "--shop", demo], check=True, capture_output=True)
        for name in ("fitted.csv", "outings.csv"):  # Cars with nothing in them.
            os.remove(os.path.join(files, name))
        with open(os.path.join(files, "intervals.csv"), "w", encoding="utf-8") as file:
            file.write(INTERVALS)
        with open(os.path.join(files, "season.csv"), "w", encoding="utf-8") as file:
            file.write("event,title,first day,last day,cars,runs,hours\n")
            for one in SEASON:
                file.write(",".join((one[0], one[0], one[1], one[2], "; ".join(one[3]), one[4], one[5])) + "\n")
        subprocess.run([FLARESTOCK, "begin", "--from", files, "--to", shop], check=True, capture_output=True)
        season = Season(random.Random(seed), shop)
        season.begin()
        season.free_tags = []
        for step in range(steps):
            season.dice.choice((season.ran_out, season.serviced, season.serviced, season.serviced, season.take_back,
                                season.take_back_newest))()
            if season.dice.random() < .3:
                season.today = day_after(season.today, season.dice.randint(1, 9))
            if step % 22 == 21:
                season.compare()
        season.compare()
        kinds = {}
        for entry in season.entries:
            kinds[entry["kind"]] = kinds.get(entry["kind"], 0) + 1
        print(f"stands: {kinds}, refused: {season.refused}, until {season.today}")
        if subprocess.run([FLARESTOCK, "verify", shop], capture_output=True, check=False).returncode != 0:
            season.wrong.append("the shop is not whole")
        for one in season.wrong:
            print(one)
        sys.exit(1 if season.wrong else 0)


main()
