#!/usr/bin/env python3
"""Pattern files against resources/shawl.schema.json, with readers that are not ours: Python's json and jsonschema.

validate.py SOURCE WRITTEN REFUSED
  SOURCE   the source tree: samples and test data must fit the schema
  WRITTEN  a folder of pattern files that the program has written: they must fit too
  REFUSED  a folder of broken pattern files: none may fit
"""

import json
import pathlib
import sys

try:
    import jsonschema
except ImportError:
    print("python3-jsonschema is not installed: nothing checked")
    sys.exit(77)


def load(path):
    # Python's json takes NaN and the last of two equal keys; a pattern file has neither.
    def no_doubles(pairs):
        keys = [key for key, _ in pairs]
        if len(keys) != len(set(keys)):
            raise ValueError("a key stands twice")
        return dict(pairs)

    def no_constant(name):
        raise ValueError(name + " is no JSON")

    text = path.read_text(encoding="utf-8")
    return json.loads(text, object_pairs_hook=no_doubles, parse_constant=no_constant)


def main():
    source, written, refused = map(pathlib.Path, sys.argv[1:4])
    schema = load(source / "resources" / "shawl.schema.json")
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    wrong = []

    good = sorted(source.glob("samples/**/*.shawl")) + sorted(source.glob("tests/data/**/*.shawl"))
    by_program = sorted(written.glob("*.shawl"))
    for path in good + by_program:
        try:
            errors = sorted(validator.iter_errors(load(path)), key=str)
        except ValueError as error:
            wrong.append(f"{path}: {error}")
            continue
        for error in errors[:5]:
            wrong.append(f"{path}: {error.json_path}: {error.message[:200]}")

    bad = sorted(refused.glob("*.shawl"))
    for path in bad:
        try:
            if validator.is_valid(load(path)):
                wrong.append(f"{path}: is broken, and fits the schema")
        except (ValueError, RecursionError):
            pass

    # What the program wrote means the same to another reader: the texts of tests/core/files/rich_pattern.cpp.
    rich = load(written / "rich.shawl")
    for key, text in {
        "title": 'Ebb & "flow" \\ Gr\u00fc\u00dfe',
        "introduction": "Two lines,\nand a\ttab; \u0001 too.",
        "needleMm": 3.25,
        "future": {"deep": [True, 'a , b : c " \\']},
    }.items():
        if rich.get(key) != text:
            wrong.append(f"rich.shawl: {key} is {rich.get(key)!r}, not {text!r}")

    if not by_program or not bad:
        wrong.append("no files to check; run test_formats and test_hostile first")
    print("\n".join(wrong) if wrong else f"{len(good) + len(by_program)} files fit, {len(bad)} are refused")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
