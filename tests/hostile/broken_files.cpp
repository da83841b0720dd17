#include "tests/hostile/broken_files.h"

#include <cstdlib>

namespace shawlwright::tests {
namespace {

enum class Schema { Sees, Misses };

struct Change {
    const char* name;
    const char* from; // a stretch of soundFile() that is there once
    std::string to;
    const char* expected;
    Schema schema = Schema::Sees;
};

const std::string rowBegin = R"({"id": 1, "side": "RS")";

std::string nested(int levels)
{
    return "\"extra\": " + std::string(levels, '[') + std::string(levels, ']') + ", \"title\": \"B";
}

std::string numbered(int count, const std::string& before, const std::string& after)
{
    std::string list;
    for (int i = 1; i <= count; ++i)
        list += (i > 1 ? ", " : "") + before + std::to_string(i) + after;
    return list;
}

const std::vector<Change>& changes()
{
    static const std::vector<Change> all = {
        // The format comes first.
        {"format-newer", "\"format\": 1", "\"format\": 2",
         "line 2, column 13, format: the file has format 2, and this program reads format 1; open it with a "
         "newer version "
         "of the program. The file is left as it is"},
        {"format-far-newer", "\"format\": 1", "\"format\": 4000000000",
         "line 2, column 13, format: the file has format 4000000000, and this program reads format 1; open "
         "it with a newer "
         "version of the program. The file is left as it is"},
        {"format-zero", "\"format\": 1", "\"format\": 0",
         "line 2, column 13, format: a whole number from 1 to 1 belongs here, not the number 0"},
        {"format-negative", "\"format\": 1", "\"format\": -1",
         "line 2, column 13, format: a whole number from 1 to 1 belongs here, not the number -1"},
        {"format-text", "\"format\": 1", "\"format\": \"7\"",
         "line 2, column 13, format: a whole number from 1 to 1 belongs here, not the text '7'"},
        {"format-half", "\"format\": 1", "\"format\": 7.5",
         "line 2, column 13, format: a whole number from 1 to 1 belongs here, not the number 7.5"},
        {"format-true", "\"format\": 1", "\"format\": true",
         "line 2, column 13, format: a whole number from 1 to 1 belongs here, not true"},
        {"format-missing", "\"format\": 1,", "",
         "line 1, column 1: \"format\" is missing, so this is no pattern file; one begins with \"format\": "
         "1"},

        // Motifs.
        {"motif-nameless", "\"castOn\": {\"stitches\": 5", R"("motifs": [{"columns": 2, "rows": []}],
  "castOn": {"stitches": 5)",
         "line 12, column 14, motifs[0]: \"name\" is missing here; add it"},
        {"motif-wide", "\"castOn\": {\"stitches\": 5", R"("motifs": [{"name": "leaf", "columns": 401, "rows": []}],
  "castOn": {"stitches": 5)",
         "line 12, column 42, motifs[0].columns: a whole number from 1 to 400 belongs here, not the number 401"},
        {"motif-no-rows", "\"castOn\": {\"stitches\": 5", R"("motifs": [{"name": "leaf", "columns": 2}],
  "castOn": {"stitches": 5)",
         "line 12, column 14, motifs[0]: \"rows\" is missing here; add it"},
        {"motif-number-row", "\"castOn\": {\"stitches\": 5", R"("motifs": [{"name": "leaf", "columns": 2, "rows": [7]}],
  "castOn": {"stitches": 5)",
         "line 12, column 54, motifs[0].rows[0]: a text in quotes belongs here, not the number 7"},
        {"motif-unknown-stitch", "\"castOn\": {\"stitches\": 5", R"("motifs": [{"name": "leaf", "columns": 2, "rows": ["k", "kk7"]}],
  "castOn": {"stitches": 5)",
         "line 12, column 59, motifs[0].rows[1]: column 1 holds 'kk7', a stitch that neither the program nor this "
         "pattern knows; correct its name, or describe it under \"stitches\"",
         Schema::Misses},
        {"motif-too-wide-row", "\"castOn\": {\"stitches\": 5", R"("motifs": [{"name": "leaf", "columns": 2, "rows": ["k*3"]}],
  "castOn": {"stitches": 5)",
         "line 12, column 54, motifs[0].rows[0]: 'k*3' at column 1 goes past the last column, 2; widen the section or "
         "shorten the row",
         Schema::Misses},
        {"motif-named-twice", "\"castOn\": {\"stitches\": 5", R"("motifs": [{"name": "leaf", "columns": 1, "rows": ["k"]}, {"name": "leaf", "columns": 1, "rows": ["p"]}],
  "castOn": {"stitches": 5)",
         "line 12, column 61, motifs[1]: two motifs are called 'leaf'; give each a name of its own",
         Schema::Misses},

        // Not JSON.
        {"remark", "\"title\": \"B", "// mine\n  \"title\": \"B",
         "line 3, column 3: a remark can't stand in a pattern file; put it into \"notes\""},
        {"comma-missing", "\"Broken\",", "\"Broken\"",
         "line 4, column 3: '\"' can't stand here; look for a comma, a quote or a bracket that is missing or "
         "too many"},
        {"comma-too-many", "{\"code\": \"CC\"}", "{\"code\": \"CC\"},",
         "line 8, column 3: ']' can't stand here; look for a comma, a quote or a bracket that is missing or "
         "too many"},
        {"text-open", "\"Broken\",", "\"Broken,",
         "line 3, column 20: the text isn't closed at the end of its line; put a \" behind it, and \\n for a "
         "new line within"},
        {"backslash", "\"Broken\"", "\"C:\\Shawls\"",
         "line 3, column 16: the text has a \\ that says nothing; write \\\\ for a \\ and \\\" for a \""},
        {"lone-surrogate", "\"Broken\"", "\"\\ud800\"",
         "line 3, column 19: the text has a \\ that says nothing; write \\\\ for a \\ and \\\" for a \"",
         Schema::Misses}, // Python takes it
        {"not-a-number", "\"columns\": 6", "\"columns\": NaN",
         "line 17, column 18: 'N' can't stand here; look for a comma, a quote or a bracket that is missing "
         "or too many"},
        {"number-too-great", "\"columns\": 6", "\"columns\": 1e400",
         "line 17, column 18: the number is too great to be read; write a smaller one"},
        {"latin-1", "\"Broken\"",
         "\"Gr\xFC\xDF"
         "e\"",
         "line 3, column 15: these letters are not UTF-8; save the file with the encoding UTF-8"},
        {"nul-byte", "\"Broken\"", std::string("\"Bro\0ken\"", 9),
         "line 3, column 16: there is a NUL byte, so this is no text; a pattern file is UTF-8 text"},
        {"nul-escaped", "\"Broken\"", "\"Bro\\u0000ken\"",
         "line 3, column 12: the text holds a NUL (\\u0000), which is no letter; take it out"},
        {"text-after", "\"sizes\"", "\"x\": 1}\n{\"sizes\"",
         "line 5, column 1: '{' can't stand here; look for a comma, a quote or a bracket that is missing or "
         "too many"},

        // Sizes.
        {"deep", "\"title\": \"B", nested(16),
         "line 3, column 27: brackets lie more than 16 deep in each other; no pattern needs that",
         Schema::Misses},
        {"very-deep", "\"title\": \"B", nested(200'000),
         "line 3, column 27: brackets lie more than 16 deep in each other; no pattern needs that"},
        {"long-text", "\"Broken\"", "\"" + std::string(1'000'001, 'x') + "\"",
         "line 3, column 12: the text is 1000001 bytes long; up to 1000000 are possible", Schema::Misses},
        {"many-keys", "\"title\": \"B", numbered(1001, "\"x", "\": 0") + ", \"title\": \"B",
         "line 1, column 1: there are 1008 keys within one { }; up to 1000 are possible", Schema::Misses},
        {"many-yarns", R"({"code": "CC"})", numbered(250, R"({"code": "C)", "\"}"),
         "line 5, column 12, yarns: the list has 251 entries; up to 250 are possible"},
        {"columns-too-many", "\"columns\": 6", "\"columns\": 2001",
         "line 17, column 18, sections[0].columns: a whole number from 0 to 2000 belongs here, not the "
         "number 2001"},
        {"columns-huge", "\"columns\": 6", "\"columns\": 99999999999999999999",
         "line 17, column 18, sections[0].columns: a whole number from 0 to 2000 belongs here, not the "
         "number "
         "99999999999999999999"},
        {"times-huge", "\"times\": 3", "\"times\": 1000000000",
         "line 19, column 63, sections[0].boxes[0].times: a whole number from 0 to 10000 belongs here, not "
         "the number "
         "1000000000"},
        {"cells-huge", "\"k*6\"", "\"k*2000000000\"",
         "line 26, column 57, Section 'Left wing', Row 1: 'k*2000000000' at column 1 goes past the last "
         "column, 6; widen "
         "the section or shorten the row",
         Schema::Misses},

        // Keys doubled, missing and of the wrong kind.
        {"key-twice", "\"side\": \"WS\"", "\"side\": \"WS\", \"side\": \"RS\"",
         "line 27, column 33: the key \"side\" is here for the second time (first: line 27); keep one of "
         "them"},
        {"unknown-key-twice", "\"title\": \"Broken\"", "\"mine\": 1, \"title\": \"Broken\", \"mine\": 2",
         "line 3, column 33: the key \"mine\" is here for the second time (first: line 3); keep one of them"},
        {"row-without-id", rowBegin.c_str(), R"({"side": "RS")",
         "line 19, column 27, sections[0].boxes[0].rows: no row of this section has the id 1; give the ids "
         "of the first "
         "and the last row of the repeat\n"
         "line 22, column 18, sections[0].brackets[0].rows: no row of this section has the id 1; give the "
         "ids of the first "
         "and the last row of the repeat\n"
         "line 26, column 9, sections[0].rows[0]: \"id\" is missing here; add it"},
        {"row-without-side", rowBegin.c_str(), R"({"id": 1)",
         "line 26, column 9, sections[0].rows[0]: \"side\" is missing here; add it"},
        {"cast-on-missing", "\"castOn\"", "\"cast on\"",
         "line 1, column 1: \"castOn\" is missing here; add it"},
        {"sections-missing", "\"sections\"", "\"parts\"",
         "line 1, column 1: \"sections\" is missing here; add it"},
        {"side-wrong", "\"side\": \"RS\"", "\"side\": \"front\"",
         "line 26, column 27, sections[0].rows[0].side: one of \"RS\" and \"WS\" belongs here, not the text "
         "'front'"},
        {"id-half", rowBegin.c_str(), R"({"id": 1.0, "side": "RS")",
         "line 19, column 27, sections[0].boxes[0].rows: no row of this section has the id 1; give the ids "
         "of the first "
         "and the last row of the repeat\n"
         "line 22, column 18, sections[0].brackets[0].rows: no row of this section has the id 1; give the "
         "ids of the first "
         "and the last row of the repeat\n"
         "line 26, column 16, sections[0].rows[0].id: a whole number from 1 to 1000000000 belongs here, not "
         "the number 1.0",
         Schema::Misses}, // 1.0 is an integer to JSON Schema
        {"title-number", "\"Broken\"", "3",
         "line 3, column 12, title: a text in quotes belongs here, not the number 3"},
        {"stitches-negative", "\"stitches\": 5", "\"stitches\": -5",
         "line 12, column 26, castOn.stitches: a whole number from 0 to 100000 belongs here, not the number "
         "-5"},
        {"stitches-true", "\"stitches\": 5", "\"stitches\": true",
         "line 12, column 26, castOn.stitches: a whole number, or one per size as a list in [ ], belongs "
         "here, not true"},
        {"stitches-half", "\"stitches\": 5", "\"stitches\": [5, 3.7]",
         "line 12, column 30, castOn.stitches[1]: a whole number from 0 to 100000 belongs here, not the "
         "number 3.7"},
        {"stitches-none", "\"stitches\": 5", "\"stitches\": []",
         "line 12, column 26, castOn.stitches: the list is empty; give one number, or one per size"},
        {"colour-wrong", "\"#112233\"", "\"red\"",
         "line 6, column 30, yarns[0].colour: a colour such as \"#7f3a5c\" belongs here, not the text 'red'"},
        {"rows-object", "\"rows\": [1, 2], \"columns\"", "\"rows\": {\"from\": 1}, \"columns\"",
         "line 19, column 27, sections[0].boxes[0].rows: a list in [ ] belongs here, not an object in { }"},
        {"row-number", rowBegin.c_str(), R"(12, {"id": 1, "side": "RS")",
         "line 26, column 9, sections[0].rows[0]: an object in { } belongs here, not the number 12"},
        {"joins-text", rowBegin.c_str(), R"({"joins": "yes", "id": 1, "side": "RS")",
         "line 26, column 19, sections[0].rows[0].joins: true or false belongs here, not the text 'yes'"},
        {"span-of-one", "\"rows\": [1, 2], \"columns\"", "\"rows\": [1], \"columns\"",
         "line 19, column 27, sections[0].boxes[0].rows: two numbers belong here, the first and the last; "
         "there is 1"},

        // What names something that isn't there, or is there twice.
        {"stitch-unknown", "\"k*6\"", "\"k*2 k3tgo k\"",
         "line 26, column 61, Section 'Left wing', Row 1: column 3 holds 'k3tgo', a stitch that neither the "
         "program nor "
         "this pattern knows; correct its name, or describe it under \"stitches\"",
         Schema::Misses},
        {"yarn-unknown", "\"p*6\"", "\"p p@XX\"",
         "line 27, column 59, Section 'Left wing', Row 2: column 2 is worked with 'XX', a yarn that the "
         "pattern doesn't "
         "have; name one of its yarns (MC and CC)",
         Schema::Misses},
        {"times-of-cells", "\"k*6\"", "\"k*six\"",
         "line 26, column 57, Section 'Left wing', Row 1: column 1 holds 'k*six'; after * goes a whole "
         "number from 1 to 2000"},
        {"row-too-long", "\"k*6\"", "\"k*7\"",
         "line 26, column 57, Section 'Left wing', Row 1: 'k*7' at column 1 goes past the last column, 6; "
         "widen the section "
         "or shorten the row",
         Schema::Misses},
        {"yarn-of-row", "\"yarn\": \"MC\", \"cells\": \"k*6\"", "\"yarn\": \"mc\", \"cells\": \"k*6\"",
         "line 26, column 41, sections[0].rows[0].yarn: no yarn has the code 'mc'; name one of the pattern's "
         "yarns (MC and CC)",
         Schema::Misses},
        {"marker-unknown", "\"place\": \"A\"", "\"place\": \"B\"",
         "line 27, column 85, sections[0].rows[1].markers[0].place: no marker is called 'B'; add it under "
         "\"markers\", or "
         "name another",
         Schema::Misses},
        {"marker-twice-moved", "\"place\": \"A\"", "\"place\": \"A\", \"remove\": \"A\"",
         "line 27, column 75, sections[0].rows[1].markers[0]: a marker is moved by one of \"place\", "
         "\"remove\" and "
         "\"shift\"; there are 2"},
        {"box-row-unknown", "\"rows\": [1, 2], \"columns\"", "\"rows\": [1, 9], \"columns\"",
         "line 19, column 27, sections[0].boxes[0].rows: no row of this section has the id 9; give the ids "
         "of the first "
         "and the last row of the repeat",
         Schema::Misses},
        {"row-id-twice", "{\"id\": 2, \"side\"", "{\"id\": 1, \"side\"",
         "line 19, column 27, sections[0].boxes[0].rows: no row of this section has the id 2; give the ids "
         "of the first "
         "and the last row of the repeat\n"
         "line 22, column 18, sections[0].brackets[0].rows: no row of this section has the id 2; give the "
         "ids of the first "
         "and the last row of the repeat\n"
         "line 27, column 16, sections[0].rows[1].id: two rows have the id 1 (the other: line 26); give each "
         "its own",
         Schema::Misses},
        {"section-id-twice", "\"sections\": [", R"("sections": [ {"id": 1, "columns": 0},)",
         "line 15, column 13, sections[1].id: two sections have the id 1 (the other: line 13); give each its "
         "own",
         Schema::Misses},
        {"yarn-code-twice", "\"code\": \"CC\"", "\"code\": \"MC\"",
         "line 7, column 5, yarns[1]: two yarns have the code 'MC'; give each its own", Schema::Misses},
        {"yarn-id-twice", "\"code\": \"CC\"", "\"id\": 1, \"code\": \"CC\"",
         "line 7, column 5, yarns[1]: two yarns have the number 1; give each its own", Schema::Misses},
        {"marker-name-twice", "{\"name\": \"A\"}", "{\"name\": \"A\"}, {\"name\": \"A\"}",
         "line 10, column 20, markers[1]: two markers are called 'A'; give each a name of its own",
         Schema::Misses},
        {"own-stitch-wrong", "\"castOn\"",
         R"("stitches": [{"key": "My Nupp", "takesUp": 1, "leaves": 1, "onRS": "n", "onWS": "n"}], "castOn")",
         "line 12, column 16, stitches[0]: the key may hold lower case letters, digits and _ only"},

        // Shapes that break.
        {"boxes-cross", "\"times\": 3}", R"("times": 3}, {"id": 2, "rows": [2, 2], "columns": [4, 6]})",
         "line 14, column 5, Section 'Left wing': stitch repeats cross: columns 2 to 4 and 4 to 6 share "
         "rows; nest them or "
         "part them",
         Schema::Misses},
        {"box-outside", "\"columns\": [2, 4]", "\"columns\": [2, 7]",
         "line 14, column 5, Section 'Left wing': a stitch repeat lies outside of the chart (columns 2 to 7 "
         "of 6); draw it "
         "again inside",
         Schema::Misses},
        {"box-backwards", "\"columns\": [2, 4]", "\"columns\": [4, 2]",
         "line 14, column 5, Section 'Left wing': a stitch repeat lies outside of the chart (columns 4 to 2 "
         "of 6); draw it "
         "again inside",
         Schema::Misses},
        {"brackets-backwards", "\"rows\": [1, 2], \"times\"", "\"rows\": [2, 1], \"times\"",
         "line 14, column 5, Section 'Left wing': a row repeat lies outside of the chart; draw it again",
         Schema::Misses},
        {"marker-outside", "\"after\": 3", "\"after\": 7",
         "line 27, column 9, Section 'Left wing', Row 2: has a marker after column 7 of 6; move it into the "
         "chart",
         Schema::Misses},
        {"sizes-disagree", "\"stitches\": 5", "\"stitches\": [5, 6, 7]",
         "line 12, column 13, castOn: the number of stitches has 3 numbers for 2 sizes; give one number, or "
         "one per size",
         Schema::Misses},

        // Several at once, in the order of the file.
        {"several", "\"id\": 1, \"rows\": [1, 2], \"columns\": [2, 4], \"times\": 3",
         "\"id\": 0, \"rows\": 4, \"times\": \"3\"",
         "line 19, column 9, sections[0].boxes[0]: \"columns\" is missing here; add it\n"
         "line 19, column 16, sections[0].boxes[0].id: a whole number from 1 to 1000000000 belongs here, not "
         "the number 0\n"
         "line 19, column 27, sections[0].boxes[0].rows: a list in [ ] belongs here, not the number 4\n"
         "line 19, column 39, sections[0].boxes[0].times: a whole number, or one per size as a list in [ ], "
         "belongs here, "
         "not the text '3'"},
    };
    return all;
}

std::string changed(const Change& change)
{
    std::string text = soundFile();
    const std::size_t at = text.find(change.from);
    if (at == std::string::npos || text.find(change.from, at + 1) != std::string::npos)
        std::abort(); // the table is wrong, not the program
    return text.replace(at, std::string(change.from).size(), change.to);
}

} // namespace

std::string soundFile()
{
    return R"({
  "format": 1,
  "title": "Broken",
  "sizes": ["S", "M"],
  "yarns": [
    {"code": "MC", "colour": "#112233"},
    {"code": "CC"}
  ],
  "markers": [
    {"name": "A"}
  ],
  "castOn": {"stitches": 5, "yarn": "MC"},
  "sections": [
    {
      "id": 1,
      "title": "Left wing",
      "columns": 6,
      "boxes": [
        {"id": 1, "rows": [1, 2], "columns": [2, 4], "times": 3}
      ],
      "brackets": [
        {"rows": [1, 2], "times": 2}
      ],
      "needless": "a key of tomorrow",
      "rows": [
        {"id": 1, "side": "RS", "yarn": "MC", "cells": "k*6"},
        {"id": 2, "side": "WS", "yarn": "MC", "cells": "p*6", "markers": [{"place": "A", "after": 3}]}
      ]
    }
  ]
}
)";
}

std::vector<BrokenFile> brokenFiles()
{
    std::vector<BrokenFile> files = {
        {"empty", "", "the file is empty; take another copy of it, or begin a new pattern", true},
        {"blank", " \n\n\t ", "the file is empty; take another copy of it, or begin a new pattern", true},
        {"prose", "Cast on 5 stitches.\n",
         "line 1, column 1: 'C' can't stand here; look for a comma, a quote or a bracket that is missing or "
         "too many",
         true},
        {"a-list", "[1, 2]", "line 1, column 1: an object in { } belongs here, not a list in [ ]", true},
        {"a-number", "7", "line 1, column 1: an object in { } belongs here, not the number 7", true},
        {"utf-16", std::string("\xFF\xFE{\0\"\0", 6),
         "line 1, column 4: there is a NUL byte, so this is no text; a pattern file is UTF-8 text", true},
        {"half-a-file", soundFile().substr(0, soundFile().find("\"side\": \"WS\"") + 10),
         "line 27, column 29: the file ends here in the middle of the pattern; it was cut short, so take "
         "another copy of it",
         true},
        {"brackets-only", std::string(5'000'000, '['),
         "line 1, column 17: brackets lie more than 16 deep in each other; no pattern needs that", true},
        {"objects-only",
         [] {
             std::string text;
             for (int i = 0; i < 200'000; ++i)
                 text += "{\"a\":";
             return text;
         }(),
         "line 1, column 81: brackets lie more than 16 deep in each other; no pattern needs that", true},
    };
    for (const Change& change : changes())
        files.push_back({change.name, changed(change), change.expected, change.schema == Schema::Sees});
    return files;
}

} // namespace shawlwright::tests
