"""Writes workbook.xlsx beside this file: what another program (openpyxl) makes of readings, for the reader's tests.

python3 make-workbook.py, with Debian's python3-openpyxl
"""
import datetime
from pathlib import Path

from openpyxl import Workbook

book = Workbook()
sheet = book.active
sheet.title = "Readings"
sheet.append(["place", "characteristic", "plane", "axis", "reading", "unit", "note"])
rows = [
    ("main.1", "main-journal-diameter", "front", "vertical", 54.98, "0.000", "mm"),
    ("main.1", "main-journal-diameter", "front", "horizontal", "54.982", "@", "mm"),
    ("main.1", "main-journal-diameter", "rear", "vertical", "54,981", "@", "mm"),
    ("main.1", "main-journal-diameter", "rear", "horizontal", 54.97965, "0.000", "mm"),
    ("main.2", "main-journal-diameter", "front", "vertical", "2 9/16", "@", "in"),
    ("main.2", "main-journal-diameter", "front", "horizontal", 2.5625, "# ??/??", "in"),
    ("main.2", "main-journal-diameter", "rear", "vertical", 0.1 + 0.2, "General", "mm"),
    ("main.2", "main-journal-diameter", "rear", "horizontal", datetime.date(2026, 9, 16), "d mmm", "mm"),
    ("main.3", "main-journal-diameter", "front", "vertical", True, "General", "mm"),
    ("main.3", "main-journal-diameter", "front", "horizontal", "=1/0", "General", "mm"),
    ("main.3", "main-journal-diameter", "rear", "vertical", 0.5, "0%", "mm"),
    ("main.3", "main-journal-diameter", "rear", "horizontal", 1e300, "General", "mm"),
    ("main.4", "main-journal-diameter", "front", "vertical", -0.02, "0.00", "µm"),
]
for place, characteristic, plane, axis, reading, shown, unit in rows:
    sheet.append([place, characteristic, plane, axis, reading, unit])
    sheet.cell(row=sheet.max_row, column=5).number_format = shown
# A date in a column that nobody reads, and a row far below with nothing between.
sheet["G2"] = datetime.datetime(2026, 3, 2, 8, 0)
sheet["A40"] = "  main.4  "
sheet["E40"] = "Ü < & > \" ‰"
book.create_sheet("Prices")["A1"] = "not this one"
book.save(Path(__file__).with_name("workbook.xlsx"))
