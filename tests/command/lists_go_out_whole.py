# SPDX-License-Identifier: MIT
"""Plans, shortages, due work, load lists, claims and what came in, as they leave the shop, read by others.

    lists_go_out_whole.py FLARESTOCK

Each says the same as CSV (Python's csv), as a sheet (Gnumeric's ssconvert, which adds it up itself)
and on paper (pdftotext) as its command does with --json. What a spreadsheet would take for a
formula stays a text.
"""

import csv
import json
import subprocess
import sys
import tempfile
from decimal import Decimal
from pathlib import Path

FLARESTOCK = sys.argv[1]
TODAY = "2026-11-28"


def flarestock(*words, status=0):
    ran = subprocess.run([FLARESTOCK, *words], capture_output=True, text=True, check=False)
    assert ran.returncode == status, (words, ran.returncode, ran.stdout, ran.stderr)
    return ran.stdout if status == 0 else ran.stderr


def written(folder, *words):
    """What a command says, its CSV, its sheet as the spreadsheet program shows it, and its paper."""
    pdf, text, sheet, shown = (folder / f"list.{end}" for end in ("pdf", "csv", "xlsx", "shown"))
    said = json.loads(flarestock(*words, "--json", "--pdf", str(pdf), "--csv", str(text), "--xlsx",
                                 str(sheet)))
    subprocess.run(["ssconvert", "--recalc", "-O", "format=raw", "-T", "Gnumeric_stf:stf_assistant",
                    str(sheet), str(shown)], check=True, capture_output=True)
    rows, cells = ([dict(row) for row in csv.DictReader(file.open(encoding="utf-8", newline=""))]
                   for file in (text, shown))
    paper = subprocess.run(["pdftotext", "-layout", str(pdf), "-"], capture_output=True, check=True,
                           text=True).stdout
    for row in rows:
        assert not any(cell[:1] in ("=", "@", "\t") for cell in row.values()), row
    return said, rows, cells, paper


def agree(rows, cells):
    """The sheet has the rows of the CSV, and beside each price its number."""
    for row, shown in zip(rows, cells):
        for column, cell in row.items():
            assert shown[column].lstrip("'") == cell.lstrip("'"), (column, row, shown)
            if column + " (number)" in shown and cell:
                # ssconvert prints the double to 20 digits: 7.87 as 7.8699999999999999999.
                number = Decimal(shown[column + " (number)"]).quantize(Decimal(1).scaleb(-9))
                assert number == Decimal(cell), (column, shown)


def plan(folder, shop):
    said, rows, cells, paper = written(folder, "plan", "--today", TODAY, "--shop", shop)
    agree(rows, cells)
    worth = next(column for column in rows[0] if column.startswith("worth "))
    assert sum(Decimal(row[worth]) for row in rows) == Decimal(said["total"])
    assert Decimal(cells[-1][worth + " (number)"]) == Decimal(said["total"])
    lines = [(order["supplier"], line["part"], line["cost"], line["quantity"])
             for order in said["orders"] for line in order["lines"]]
    assert lines == [(row["supplier"], row["part"], row["cost"], row["quantity"])
                     for row in rows if row["part"]]
    for _, part, cost, _ in lines:
        assert part in paper and cost in paper, (part, cost)
    assert said["total"] in paper and "Purchase plan" in paper


def short(folder, shop):
    said, rows, cells, paper = written(folder, "short", "--on", TODAY, "--shop", shop)
    agree(rows, cells)
    lacking = [(line["part"], line["short"]) for line in said["lines"] if Decimal(line["short"]) > 0]
    assert lacking and lacking == [(row["part"], row["short"]) for row in rows]
    for part, _ in lacking:
        assert part in paper, part
    assert f"Linesshort{len(lacking)}" in "".join(paper.split()), paper


def due(folder, shop):
    """Its CSV is what lacks, as `plan --needs` takes it; sheet and paper have all that is due."""
    flarestock("service", "car-2", "fit", "EG-10-L", "--at", "spare", "--since", "2026-11-01", "--shop", shop)
    flarestock("service", "car-2", "damaged", "spare", "--day", TODAY, "--shop", shop)
    said, rows, cells, paper = written(folder, "due", "--today", TODAY, "--shop", shop)
    assert [(one["car"], one["do"], one["by"] or "") for one in said["due"]] == \
           [(row["car"], row["do"], row["by"]) for row in cells]
    lacking = [(part["part"], part["short"], one["by"] or "", one["car"]) for one in said["due"]
               for part in one["parts"] if Decimal(part["short"]) > 0]
    assert ("EG-10-L", "1", TODAY, "car-2") in lacking
    assert lacking == [(row["part"], row["quantity"], row["day"], row["for"]) for row in rows]
    for one in said["due"]:
        assert one["said"] in paper and (one["by"] or "") in paper, (one, paper)


def load(folder, shop):
    said, rows, cells, paper = written(folder, "load", "list", "--on", TODAY, "--shop", shop)
    agree(rows, cells)
    bring = [(drawer["drawer"], line["part"], take["quantity"], take["from"]) for drawer in said["drawers"]
             for line in drawer["lines"] for take in line["bring"]]
    assert bring and bring == [(row["drawer"], row["part"], row["quantity"], row["from"]) for row in rows]
    assert all(part in paper for _, part, _, _ in bring) and "".join(paper.split()).count("[]") == len(bring), paper
    flarestock("move", "AD-8-8", "1", "--from", "A3", "--to", "trailer-1", "--shop", shop)
    said, rows, cells, paper = written(folder, "load", "back", "--on", TODAY, "--shop", shop)
    agree(rows, cells)
    assert [(one["from"], one["part"], one["quantity"]) for one in said["unload"]] == \
           [(row["drawer"], row["part"], row["quantity"]) for row in rows]
    assert "does not belong" in paper and "AD-8-8" in paper, paper


def pick(folder, shop):
    flarestock("reserve", "coupe-fuel", "--shop", shop)
    said, rows, cells, paper = written(folder, "issue", "coupe-fuel", "--list", "--shop", shop)
    agree(rows, cells)
    assert len(said["picks"]) > 10
    assert [(one["place"], one["part"], one["quantity"], one["lot"] or "") for one in said["picks"]] == \
           [(row["place"], row["part"], row["quantity"], row["lot"]) for row in rows]
    assert all(one["part"] in paper and one["place"] in paper for one in said["picks"])
    assert "ignition" in paper, "the cautions are missing"


def bench(folder, shop):
    """Every joint of the bill with its pieces, and each torque as `torque` has it, in its order."""
    said, rows, cells, paper = written(folder, "build-sheet", "coupe-fuel", "--shop", shop)
    agree(rows, cells)
    bill = json.loads(flarestock("bill", "--build", "coupe-fuel", "--shop", shop, "--json"))
    joins = [step for step in said["steps"] if step["work"] == "join"]
    assert [step["at"] for step in joins] == [joint["at"] for joint in bill["joints"]] and len(joins) > 10
    for step, joint in zip(joins, bill["joints"]):
        pieces = [part for part in joint["through"] if part != "direct"]
        assert step["what"].startswith(", then ".join(pieces) if pieces else "straight together"), (step, joint)
        assert " ".join(step["at"].split()[:2]) in paper
    card = json.loads(flarestock("torque", "--build", "coupe-fuel", "--shop", shop, "--json"))["joints"]
    figures = [f"{torque['leastNm']:.1f}" for line in card for torque in line["torques"]]
    assert len(figures) > 10
    told = " ".join(step["torque"] for step in joins)
    at = 0
    for figure in figures:
        at = told.index(figure, at) + len(figure)
    for length in (line for step in said["steps"] if step["work"] == "cut" for line in step["what"].split("\n")[1:]):
        assert length.split(":")[0] in paper, length
    assert said["steps"][-1]["work"] == "test" and "ignition" in paper and "Looked at by" in paper


def received(folder, shop):
    number = json.loads(flarestock("order", "new", "--supplier", "TCF", "--line", "AD-3-3 12 at 5.333",
                                   "--line", "AD-8-8 4 at 5.95", "--day", "2026-11-02", "--shop", shop,
                                   "--json"))["number"]
    flarestock("order", "place", number, "--day", "2026-11-02", "--shop", shop)
    said, rows, cells, paper = written(folder, "receive", "--order", number, "--line", "AD-3-3", "7",
                                       "--line", "AD-8-8", "4", "--damaged", "AD-8-8", "1", "--to", "A3",
                                       "--document", "=2+5", "--shop", shop)
    agree(rows, cells)
    assert [(piece["part"], piece["quantity"], piece["value"]) for piece in said["pieces"]] == \
           [(row["part"], row["quantity"], row["value USD"]) for row in rows]
    whole = sum(Decimal(piece["value"]) for piece in said["pieces"])
    assert Decimal(cells[-1]["value USD (number)"]) == whole and str(whole) in paper
    assert rows[0]["document"] == "'=2+5" and number in paper and "still to come: 5" in paper
    claim = said["claims"][0]["number"]
    assert f"claim {claim}" in paper, paper
    slip = folder / "plain.pdf"
    flarestock("receive", "AD-3-3", "2", "--from", "supplier-TCF", "--to", "A3", "--cost", "9.00",
               "--pdf", str(slip), "--paper", "Letter", "--shop", shop)
    assert slip.read_bytes().startswith(b"%PDF")
    return claim


def claims(folder, shop, mine):
    flarestock("claim", "raise", "AD-3-3", "2", "--fault", "missing", "--supplier", "TCF", "--note",
               "=1+1", "--shop", shop)
    flarestock("claim", "raise", "AD-4-4", "1", "--fault", "damaged", "--supplier", "NHT", "--shop",
               shop)
    said, rows, cells, paper = written(folder, "claim", "list", "--supplier", "tcf", "--shop", shop)
    agree(rows, cells)
    assert [one["number"] for one in said["claims"]] == [row["claim"] for row in rows] and len(rows) == 2
    assert rows[1]["note"] == "'=1+1" and cells[1]["note"] == "=1+1"
    assert all(row["claim"] in paper for row in rows) and "3 Cross Street" in paper
    assert "Please send what is owed" in " ".join(paper.split()), paper
    said, rows, cells, paper = written(folder, "claim", "show", mine, "--shop", shop)
    assert [row["claim"] for row in rows] == [mine] and rows[0]["supplier part"] and mine in paper
    said = flarestock("claim", "list", "--pdf", str(folder / "all.pdf"), "--shop", shop, status=2)
    assert "--supplier" in said and not (folder / "all.pdf").exists()


def isWrittenBefore(folder, shop):
    """What a paper cannot be written of is said before anything is booked."""
    before = flarestock("order", "list", "--shop", shop)
    for words, why in ((("--pdf", str(folder / "no" / "a.pdf")), "cannot be written"),
                       (("--pdf", str(folder / "a.pdf"), "--paper", "A5"), "A4 or Letter")):
        said = flarestock("order", "new", "--supplier", "TCF", "--line", "AD-3-3 12", *words, "--shop",
                          shop, status=2)
        assert why in said and flarestock("order", "list", "--shop", shop) == before, said


def main():
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        shop = str(folder / "shop")
        flarestock("demo", "--to", shop)
        plan(folder, shop)
        short(folder, shop)
        due(folder, shop)
        load(folder, shop)
        pick(folder, shop)
        bench(folder, shop)
        claims(folder, shop, received(folder, shop))
        isWrittenBefore(folder, shop)


main()
