"""hear_chart.py PROGRAM SHAWL: what a screen reader hears while somebody walks over the chart.

Starts a display, a window manager and the accessibility bus, then the program, and listens. Ends with 0 where every step was
heard with row, place and stitch, and the table has the size of the chart.
"""
import json
import os
import subprocess
import sys
import tempfile
import threading
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Gio, GLib  # noqa: E402

started = []


def start(words, **more):
    process = subprocess.Popen(words, **more)
    started.append(process)
    return process


def end(code):
    for process in reversed(started):
        process.kill()
        process.wait()
    sys.stdout.flush()
    os._exit(code)


def fail(why):
    print("FAILED:", why)
    end(1)


def display():
    ours, theirs = os.pipe()
    start(["Xvfb", "-displayfd", str(theirs), "-screen", "0", "1280x800x24"], pass_fds=[theirs],
          stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    os.environ["DISPLAY"] = ":" + os.read(ours, 20).decode().strip()
    start(["openbox"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


def bus():
    launcher = next(path for path in ("/usr/libexec/at-spi-bus-launcher", "/usr/lib/at-spi2-core/at-spi-bus-launcher")
                    if os.path.exists(path))
    start([launcher, "--launch-immediately"])
    session = Gio.bus_get_sync(Gio.BusType.SESSION)
    deadline = time.time() + 30
    while True:
        try:
            session.call_sync("org.a11y.Bus", "/org/a11y/bus", "org.freedesktop.DBus.Properties", "Set",
                              GLib.Variant("(ssv)", ("org.a11y.Status", "ScreenReaderEnabled", GLib.Variant("b", True))),
                              None, Gio.DBusCallFlags.NONE, 5000)
            return
        except GLib.Error as error:
            if time.time() > deadline:
                fail("no accessibility bus: %s" % error)
            time.sleep(0.2)


def main(program, shawl):
    display()
    bus()
    import pyatspi  # connects when it is imported, so not before the bus is there

    home = tempfile.mkdtemp(prefix="shawlwright-heard-")
    environment = dict(os.environ, HOME=home, XDG_CONFIG_HOME=home, XDG_DATA_HOME=home, QT_QPA_PLATFORM="xcb",
                       LC_ALL="C.UTF-8")
    environment["ASAN_OPTIONS"] = "detect_leaks=0"
    heard = []
    tables = []

    def focused(event):
        if event.detail1 and event.source.getRole() == pyatspi.ROLE_TABLE_CELL:
            heard.append(event.source.name)
            if not tables:
                table = event.source.parent.queryTable()
                tables.append((table.nRows, table.nColumns, table.getRowDescription(0)))

    pyatspi.Registry.registerEventListener(focused, "object:state-changed:focused")
    child = start([program, shawl], env=environment)

    def walk():
        window = ""
        deadline = time.time() + 90
        while not window and time.time() < deadline and child.poll() is None:
            found = subprocess.run(["xdotool", "search", "--onlyvisible", "--name", "Shawlwright"],
                                   capture_output=True, text=True)
            window = found.stdout.split()[0] if found.stdout.split() else ""
            time.sleep(0.3)
        if not window:
            GLib.idle_add(lambda: fail("the window never came"))
            return
        subprocess.run(["xdotool", "windowactivate", "--sync", window], timeout=20)
        for key in ["Left", "Left", "Up", "Right"] * 20:
            subprocess.run(["xdotool", "key", "--clearmodifiers", key])
            time.sleep(0.3)
            if len(heard) >= 8:
                break
        time.sleep(1)
        GLib.idle_add(pyatspi.Registry.stop)

    threading.Thread(target=walk, daemon=True).start()
    GLib.timeout_add_seconds(150, lambda: fail("it took too long; heard: %s" % heard))
    pyatspi.Registry.start()

    print("\n".join(heard))
    print(tables)
    if len(heard) < 4:
        fail("steps over the chart were not heard")
    for name in heard:
        if not (name.startswith("Row ") and ", stitch " in name and ": " in name):
            fail("'%s' says neither row nor stitch" % name)
    if len(set(heard[:4])) < 3:
        fail("each step is said to be at the same stitch")
    section = json.load(open(shawl, encoding="utf-8"))["sections"][0]
    rows, columns, description = tables[0]
    if (rows, columns) != (len(section["rows"]), section["columns"]) or "sts before" not in description:
        fail("the table is not the chart's: %s" % tables)
    end(0)


main(*sys.argv[1:])
