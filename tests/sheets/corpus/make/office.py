# Tests: typed sheets to files by LibreOffice, which reads the typed cells as its user's language does.
# In: jobs as JSON on standard input. Out: their files. Needs Debian's python3-uno; called by make-corpus.mjs.
import json
import subprocess
import sys
import time
from pathlib import Path

import uno
from com.sun.star.beans import NamedValue, PropertyValue
from com.sun.star.connection import NoConnectException
from com.sun.star.lang import Locale

PIPE = "halfpot-corpus"


def properties(**values):
    return tuple(PropertyValue(Name=name, Value=value) for name, value in values.items())


def connect():
    local = uno.getComponentContext()
    resolver = local.ServiceManager.createInstance("com.sun.star.bridge.UnoUrlResolver")
    for _ in range(120):
        try:
            context = resolver.resolve(f"uno:pipe,name={PIPE};urp;StarOffice.ComponentContext")
            return context.ServiceManager.createInstance("com.sun.star.frame.Desktop")
        except NoConnectException:
            time.sleep(0.5)
    raise SystemExit("LibreOffice does not answer.")


def open_typed(desktop, sheet):
    """Commas, quotes, UTF-8, from line 1, every column as it comes, the language, what is money or a day as such."""
    options = f"44,34,76,1,,{sheet['language']},false,{'false' if sheet['asText'] else 'true'}"
    reading = properties(Hidden=True, FilterName="Text - txt - csv (StarCalc)", FilterOptions=options)
    return desktop.loadComponentFromURL(sheet["url"], "_blank", 0, reading)


def format_key(book, code, locale):
    of_user = Locale(*locale.split("-"), "")
    key = book.NumberFormats.queryKey(code, of_user, False)
    return key if key != -1 else book.NumberFormats.addNew(code, of_user)


def dress(book, sheet, locale):
    target = book.Sheets.getByName(sheet["name"])
    for formula in sheet["formulas"]:
        target.getCellRangeByName(formula["cell"]).setFormula(formula["formula"])
    for merged in sheet["merges"]:
        target.getCellRangeByName(merged).merge(True)
    for cells, code in sheet["formats"].items():
        target.getCellRangeByName(cells).NumberFormat = format_key(book, code, locale)


def locked(job):
    """An OpenDocument file takes the password as it is, Office Open XML as data of its encryption."""
    if job["url"].endswith(".ods"):
        return properties(Password=job["password"])
    data = (NamedValue("CryptoType", "Standard"), NamedValue("OOXPassword", job["password"]))
    return properties(EncryptionData=uno.Any("[]com.sun.star.beans.NamedValue", data))


def make(desktop, job, locale):
    book = open_typed(desktop, job["sheets"][0])
    book.Sheets.getByIndex(0).Name = job["sheets"][0]["name"]
    for place, sheet in enumerate(job["sheets"][1:], 1):
        other = open_typed(desktop, sheet)
        other.Sheets.getByIndex(0).Name = sheet["name"]
        book.Sheets.importSheet(other, sheet["name"], place)
        other.close(True)
    for sheet in job["sheets"]:
        dress(book, sheet, locale)
    book.calculateAll()
    saving = properties(**job["saving"])
    if job["password"] is not None:
        saving += locked(job)
    book.storeToURL(job["url"], saving)
    book.close(True)


SETTINGS = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>{locale}</value></prop></item>
<item oor:path="/org.openoffice.Office.Common/Save/Document"><prop oor:name="GenerateThumbnail" oor:op="fuse"><value>false</value></prop></item>
</oor:items>
"""


def make_profile(folder, locale):
    """An office of that locale, which shows money and days as its users see them."""
    user = Path(folder, "user")
    user.mkdir(parents=True)
    (user / "registrymodifications.xcu").write_text(SETTINGS.format(locale=locale), encoding="utf-8")
    return Path(folder).as_uri()


jobs = json.load(sys.stdin)
profile = make_profile(jobs["profile"], jobs["locale"])
office = subprocess.Popen(
    ["soffice", f"-env:UserInstallation={profile}", "--headless", "--norestore", f"--accept=pipe,name={PIPE};urp"]
)
front = connect()
try:
    for one in jobs["jobs"]:
        make(front, one, jobs["locale"])
finally:
    front.terminate()
    office.wait(60)
