# SPDX-License-Identifier: MIT
"""An order as it reaches its supplier, read by other programs.

    order_goes_out_whole.py FLARESTOCK

pdftotext reads every line, sum and letter off the paper, zbarimg the number off a picture of it, and
Python's csv adds the lines up. Ten seats that draft at once get ten numbers.
"""

import csv
import io
import json
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from decimal import ROUND_HALF_UP, Decimal
from pathlib import Path

FLARESTOCK = sys.argv[1]


def flarestock(*words, status=0):
    ran = subprocess.run([FLARESTOCK, *words], capture_output=True, text=True, check=False)
    assert ran.returncode == status, (words, ran.returncode, ran.stderr)
    return ran.stdout if status == 0 else ran.stderr


def document(*words):
    return json.loads(flarestock(*words, "--json"))


def pdf(file, *words):
    return subprocess.run([words[0], *words[1:], str(file), "-"], capture_output=True, check=True,
                          text=words[0] == "pdftotext").stdout


def paperIsRead(folder, shop, order, paper):
    file = folder / f"{paper}.pdf"
    flarestock("order", "show", order["number"], "--shop", shop, "--pdf", str(file), "--paper", paper)
    read = pdf(file, "pdftotext", "-layout")
    for line in order["lines"]:
        row = next(row for row in read.split("\n") if row.split()[1:2] == [line["supplierPart"]])
        assert row.split()[-1] == line["cost"] and row.split()[-3] == line["quantity"], row
        assert "ours: " + line["part"] in read
    for name, amount in (("Goods", order["goods"]), ("Freight", order["freight"]),
                         ("Discount", "-" + order["discount"]), ("Total USD", order["total"])):
        assert any(row.split() and name in row and row.split()[-1] == amount
                   for row in read.split("\n")), (name, amount)
    assert "µ Ø € ł" in read and "flare" in read
    pages = read.count("\f")
    assert pages > 1 and read.count("Your number") == pages
    for page in range(1, pages + 1):
        assert f"page {page} of {pages}" in read
    size = subprocess.run(["pdfinfo", file], capture_output=True, text=True, check=True).stdout
    assert {"A4": "(A4)", "Letter": "(letter)"}[paper] in size and "Nov 30 00:00:00 2026" in size
    picture = folder / f"{paper}"
    subprocess.run(["pdftoppm", "-r", "200", "-png", "-singlefile", file, picture], check=True)
    code = subprocess.run(["zbarimg", "-q", "--raw", f"{picture}.png"], capture_output=True,
                          text=True, check=True).stdout
    assert code.strip() == order["number"], code
    again = folder / "again.pdf"
    flarestock("order", "show", order["number"], "--shop", shop, "--pdf", str(again), "--paper", paper)
    assert again.read_bytes() == file.read_bytes(), "the same paper is not the same file"


def sheetAddsUp(folder, shop, order):
    file = folder / "order.csv"
    flarestock("order", "show", order["number"], "--shop", shop, "--csv", str(file))
    bytesRead = file.read_bytes()
    assert bytesRead.count(b"\r\n") == bytesRead.count(b"\n")
    rows = list(csv.DictReader(io.StringIO(bytesRead.decode("utf-8"), newline="")))
    assert [row["part"] for row in rows] == [line["part"] for line in order["lines"]]
    for column, whole in (("cost", "goods"), ("discount", "discount"), ("freight", "freight"),
                          ("tax", "tax"), ("total", "total")):
        assert sum(Decimal(row[column]) for row in rows) == Decimal(order[whole]), column
    for row in rows:
        assert all(cell[:1] not in ("=", "+", "-", "@", "\t") for cell in row.values()), row


def seatsDrawTheirNumbers(shop, supplier, part):
    def draft(_):
        return document("order", "new", "--supplier", supplier, "--line", f"{part} 1 at 1", "--day",
                        "2027-01-05", "--shop", shop)["number"]

    with ThreadPoolExecutor(10) as seats:
        numbers = sorted(seats.map(draft, range(10)))
    assert numbers == [f"2027-{number:04}" for number in range(1, 11)], numbers


def stepsAreTakenAndTakenBack(shop, number):
    placed = document("order", "place", number, "--day", "2026-11-30", "--shop", shop)
    assert placed["state"] == "placed" and placed["due"] > "2026-11-30"
    assert "is placed" in flarestock("order", "place", number, "--shop", shop, status=2)
    flarestock("take-back", placed["record"], "--shop", shop)
    assert document("order", "show", number, "--shop", shop)["state"] == "draft"
    one = "018f0000-0000-7000-8000-00000000000a"
    for already in (False, True):
        assert document("order", "place", number, "--id", one, "--day", "2026-11-30", "--shop",
                        shop)["already"] == already
    cancelled = document("order", "cancel", number, "--shop", shop)
    assert cancelled["state"] == "cancelled"
    assert "is cancelled" in flarestock("order", "close", number, "--shop", shop, status=2)
    flarestock("take-back", cancelled["record"], "--shop", shop)
    assert document("order", "show", number, "--shop", shop)["state"] == "placed"


def main():
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        shop = str(folder / "shop")
        flarestock("demo", "--to", shop)
        offers = csv.DictReader((Path(__file__).parents[2] / "demo-data/offers.csv").open(
            encoding="utf-8", newline=""))
        parts = list(dict.fromkeys(row["part"] for row in offers if row["supplier"] == "TCF"))[:45]
        lines = [word for part in parts for word in ("--line", f"{part} 7 at 3.335")]
        order = document("order", "new", "--supplier", "TCF", *lines, "--freight", "25.00",
                         "--discount", "11.11", "--note", "=µ Ø € ł", "--day", "2026-11-30",
                         "--shop", shop)
        assert order["number"] == "2026-0001" and order["lines"][0]["cost"] == "23.34"  # 23.345
        taxed = 45 * Decimal("23.34") + Decimal("13.89")
        tax = (taxed * 8 / 100).quantize(Decimal("0.01"), ROUND_HALF_UP)  # The demo's TCF, by document.
        assert order["total"] == str(taxed + tax)
        stepsAreTakenAndTakenBack(shop, "2026-0001")
        for paper in ("A4", "Letter"):
            paperIsRead(folder, shop, order, paper)
        sheetAddsUp(folder, shop, order)
        seatsDrawTheirNumbers(shop, "TCF", parts[0])
        assert json.loads(flarestock("verify", shop, "--json"))["whole"]


main()
