#!/usr/bin/python3
"""Makes the workbooks of tests/data/workbooks with openpyxl and odfpy (Debian: python3-openpyxl python3-odf).

Invented readings of an invented board. The files are kept in the repository; run this again only to change them.
"""

import datetime
import io
import pathlib
import zipfile

import openpyxl
from odf.opendocument import OpenDocumentSpreadsheet
from odf.table import CoveredTableCell, Table, TableCell, TableRow
from odf.text import P
from openpyxl.utils.datetime import CALENDAR_MAC_1904

FOLDER = pathlib.Path(__file__).resolve().parent.parent / "tests" / "data" / "workbooks"
START = datetime.datetime(2031, 3, 12, 23, 59, 59)


def keep(name, data):
    """Writes a zip anew with one fixed time on every member, so that the same input gives the same bytes."""
    made = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as new:
        for member in old.infolist():
            info = zipfile.ZipInfo(member.filename, (2031, 3, 12, 0, 0, 0))
            info.compress_type = zipfile.ZIP_DEFLATED
            new.writestr(info, old.read(member))
    (FOLDER / name).write_bytes(made.getvalue())


def save_workbook(name, book):
    book.properties.created = book.properties.modified = START
    data = io.BytesIO()
    book.save(data)
    keep(name, data.getvalue())


def log_xlsx():
    book = openpyxl.Workbook()
    notes = book.active
    notes.title = "Notes"
    notes["A1"] = "Quillmarsh Assembly, board Tern, lot QM-1042"
    log = book.create_sheet("Log")
    log.merge_cells("A1:C1")
    log["A1"] = "Tern, main side"
    log.append(["Time [s]", "U1 corner [°C]", "Socket [°C]"])
    for i in range(12):
        log.append([i * 0.5, 25 + i * 0.1, round(25 + i * 0.37, 2)])
    book.create_sheet("Nothing")
    save_workbook("log.xlsx", book)


def types_xlsx():
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Types"
    formats = [
        (START + datetime.timedelta(milliseconds=500), "yyyy-mm-dd hh:mm:ss.000"),
        (START + datetime.timedelta(seconds=1.5), "dd/mm/yyyy h:mm"),
        (datetime.date(2031, 3, 12), "d mmm yyyy"),
        (datetime.time(9, 14, 22, 500000), "h:mm:ss.000"),
        (datetime.time(0, 1, 2, 250000), "mm:ss.00"),
        (datetime.timedelta(hours=25, minutes=1, seconds=2), "[h]:mm:ss"),
        (START, '[$-409]h:mm:ss AM/PM'),
        (217.25, '0.0 "days"'),
        (217.25, "[Red]0.00;[Blue]-0.00"),
        (0.125, "0.00%"),
    ]
    for row, (value, number_format) in enumerate(formats, start=1):
        sheet.cell(row, 1, number_format)
        cell = sheet.cell(row, 2, value)
        cell.number_format = number_format
    sheet["D1"] = True
    sheet["D2"] = False
    sheet["D3"] = "=B8+1"
    sheet["D4"] = "#N/A"
    sheet["F20"] = "far"
    save_workbook("types.xlsx", book)


def from_1904_xlsx():
    book = openpyxl.Workbook()
    book.epoch = CALENDAR_MAC_1904
    sheet = book.active
    sheet.append(["when", "TC1"])
    for i in range(3):
        sheet.append([START + datetime.timedelta(seconds=i), 25 + i])
        sheet.cell(i + 2, 1).number_format = "yyyy-mm-dd hh:mm:ss"
    save_workbook("from_1904.xlsx", book)


def log_ods():
    book = OpenDocumentSpreadsheet()

    def text(content):
        cell = TableCell(valuetype="string")
        cell.addElement(P(text=content))
        return cell

    def shown(content, **stored):
        cell = TableCell(**stored)
        cell.addElement(P(text=content))
        return cell

    notes = Table(name="Notes")
    row = TableRow()
    row.addElement(text("lot QM-1042"))
    notes.addElement(row)
    book.spreadsheet.addElement(notes)

    log = Table(name="Log")
    title = TableRow()
    merged = TableCell(valuetype="string", numbercolumnsspanned=3)
    merged.addElement(P(text="Tern, main side"))
    title.addElement(merged)
    title.addElement(CoveredTableCell(numbercolumnsrepeated=2))
    log.addElement(title)
    log.addElement(TableRow(numberrowsrepeated=2))
    head = TableRow()
    for name in ["when", "for", "U1 corner [°C]", "good"]:
        head.addElement(text(name))
    log.addElement(head)
    for i in range(3):
        row = TableRow()
        when = START + datetime.timedelta(seconds=i * 0.5)
        row.addElement(shown("12.03.31 23:59", valuetype="date", datevalue=when.isoformat()))
        row.addElement(shown("0:00", valuetype="time", timevalue=f"PT00H00M{i * 0.5:07.4f}S"))
        row.addElement(shown(f"{25 + i * 0.1:.1f}".replace(".", ","), valuetype="float", value=repr(25 + i * 0.125)))
        row.addElement(shown("WAHR", valuetype="boolean", booleanvalue="true"))
        log.addElement(row)
    again = TableRow(numberrowsrepeated=2)
    again.addElement(TableCell(numbercolumnsrepeated=2))
    again.addElement(shown("25,0", valuetype="float", value="25", numbercolumnsrepeated=2))
    log.addElement(again)
    end = TableRow(numberrowsrepeated=1048567)
    end.addElement(TableCell(numbercolumnsrepeated=16384))
    log.addElement(end)
    book.spreadsheet.addElement(log)

    data = io.BytesIO()
    book.write(data)
    keep("log.ods", data.getvalue())


FOLDER.mkdir(parents=True, exist_ok=True)
log_xlsx()
types_xlsx()
from_1904_xlsx()
log_ods()
