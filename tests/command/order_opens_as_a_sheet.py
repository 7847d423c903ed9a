# SPDX-License-Identifier: MIT
"""An order as a sheet, opened and recalculated by a spreadsheet program (Gnumeric's ssconvert).

    order_opens_as_a_sheet.py FLARESTOCK LOCALES

Its sums are those of the order to the cent; a part or supplier's number that begins like a formula
(OWASP, "CSV Injection": = + - @) stays a text, in the sheet and in the CSV; a comma locale changes
nothing; and where the sheet cannot be written, what stood there stays.
"""

import csv
import json
import os
import subprocess
import sys
import tempfile
import zipfile
from decimal import Decimal
from pathlib import Path
from xml.etree import ElementTree

FLARESTOCK, LOCALES = sys.argv[1:3]
ODD = ("=1+1", "+CL-1", "-CL-1", "@SUM(A1)")
MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
MONEY = ("cost", "discount", "freight", "tax", "total")


def flarestock(*words, status=0, **more):
    ran = subprocess.run([FLARESTOCK, *words], capture_output=True, text=True, check=False,
                         env={**os.environ, **more})
    assert ran.returncode == status, (words, ran.returncode, ran.stderr)
    return ran.stdout if status == 0 else ran.stderr


def oddShop(folder):
    """The demo shop with parts whose numbers begin like formulas."""
    files = folder / "files"
    flarestock("demo", "--to", str(folder / "demo"))
    flarestock("export", "--to", str(files), "--shop", str(folder / "demo"))
    with (files / "parts/clamps-brackets.csv").open("a", encoding="utf-8", newline="") as parts:
        for number in ODD:
            csv.writer(parts).writerow([number, "clamp", f"{number} clamp, 5\" µØ", "stainless",
                                        "BARB 1", ""])
    with (files / "offers.csv").open("a", encoding="utf-8", newline="") as offers:
        for number in ODD:
            csv.writer(offers).writerow([number, "TCF", number[0] + "7*7", "USD", "1", "1",
                                         "1: 3.335", ""])
    flarestock("begin", "--from", str(files), "--to", str(folder / "shop"))
    return str(folder / "shop")


def opened(folder, file):
    """The sheet as the program shows it once it has added everything up itself."""
    shown = folder / "shown.csv"
    subprocess.run(["ssconvert", "--recalc", "-O", "format=raw", "-T", "Gnumeric_stf:stf_assistant",
                    str(file), str(shown)], check=True, capture_output=True)
    with shown.open(encoding="utf-8", newline="") as rows:
        return list(csv.DictReader(rows))


def isAddedUp(rows, order):
    lines, sums = rows[:-1], rows[-1]
    assert [row["part"] for row in lines] == [line["part"] for line in order["lines"]]
    for column, whole in zip(MONEY, ("goods", "discount", "freight", "tax", "total")):
        number = column + " (number)"
        assert sum(Decimal(row[column]) for row in lines) == Decimal(order[whole]), column
        assert Decimal(sums[number]) == Decimal(sums[column]) == Decimal(order[whole]), column
        for row in lines:
            assert Decimal(row[number]) == Decimal(row[column]), (column, row)
    for row, line in zip(lines, order["lines"]):
        assert Decimal(row["quantity"]) == Decimal(line["quantity"])
        assert row["each"] == line["unitPrice"] and row["cost"] == line["cost"]
        assert row["supplier part"] == line["supplierPart"]
        assert row["description"] == line["description"]


def staysText(file):
    """Nothing but the sums is a formula, and money is a text beside a number with its digits."""
    with zipfile.ZipFile(file) as book:
        page = ElementTree.fromstring(book.read("xl/worksheets/sheet1.xml"))
        styles = book.read("xl/styles.xml").decode()
    formulas = [cell.find(f"{MAIN}f").text for cell in page.iter(f"{MAIN}c")
                if cell.find(f"{MAIN}f") is not None]
    assert len(formulas) == len(MONEY) and all(f.startswith("ROUND(SUM(") for f in formulas), formulas
    assert "#,##0.000" in styles and ("numFmtId=\"4\"" in styles or "#,##0.00\"" in styles)


def csvIsGuarded(folder, shop, number):
    file = folder / "order.csv"
    flarestock("order", "show", number, "--shop", shop, "--csv", str(file))
    with file.open(encoding="utf-8", newline="") as text:
        rows = list(csv.DictReader(text))
    for odd in ODD:
        row = next(row for row in rows if row["part"] == "'" + odd)
        assert row["supplier part"] == "'" + odd[0] + "7*7" and row["description"].startswith("'" + odd)


def isWrittenWholeOrNot(folder, shop, number):
    kept = folder / "kept.xlsx"
    kept.write_bytes(b"as it was")
    said = flarestock("order", "show", number, "--shop", shop, "--xlsx", str(kept), status=2,
                      TMPDIR=str(kept))
    assert "the sheet: cannot be written" in said and kept.read_bytes() == b"as it was", said
    said = flarestock("order", "show", number, "--shop", shop, "--xlsx", str(folder / "no" / "a.xlsx"),
                      status=2)
    assert "cannot be written" in said, said


def main():
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        shop = oddShop(folder)
        lines = [word for part in ODD for word in ("--line", f"{part} 7")]
        lines += ["--line", "AD-3-3 12000 at 123.4567"]
        file = folder / "order.xlsx"
        order = json.loads(flarestock(
            "order", "new", "--supplier", "TCF", *lines, "--freight", "25.00", "--discount", "11.11",
            "--day", "2026-11-30", "--xlsx", str(file), "--shop", shop, "--json"))
        assert order["lines"][0]["cost"] == "23.34", order["lines"][0]  # 23.345, half even
        isAddedUp(opened(folder, file), order)
        staysText(file)
        again = folder / "again.xlsx"
        flarestock("order", "show", order["number"], "--shop", shop, "--xlsx", str(again),
                   LOCPATH=LOCALES, LC_ALL="de_DE.UTF-8")
        assert again.read_bytes() == file.read_bytes(), "the same order is not the same sheet"
        for step in (("place", "--day", "2026-11-30"), ("change", "--note", "=A1")):
            flarestock("order", step[0], order["number"], *step[1:], "--xlsx", str(again), "--shop", shop)
            isAddedUp(opened(folder, again), order)
        csvIsGuarded(folder, shop, order["number"])
        isWrittenWholeOrNot(folder, shop, order["number"])


main()
