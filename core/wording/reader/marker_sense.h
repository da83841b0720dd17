// What a row's words mean on the needle: which marker "sm" and "to marker" speak of, and on which side of a
// yarn over a marker is slipped.
//
// Shape:   the phrases come back with every marker named. "sm" stays only where the chart has to say it,
// beside a stitch
//          that takes up none; elsewhere a marker is slipped as it is reached. A repeat in which "sm" means
//          another marker each time is told time by time.
// Errors:  a marker that isn't there, and a yarn over beside a marker with no word on the side, give notes.
// Source:  slip markers as you come to them: Yours UK shawl (2017); markers beside yarn overs: Kate Atherley,
// 2006-08-13.
#pragma once

#include "core/needle/needle.h"
#include "core/wording/phrases.h"
#include "core/wording/reader/reading_note.h"
#include "core/wording/reader/vocabulary.h"

namespace shawlwright {

struct SenseContext {
    const Needle& before;
    const Row& row; // side and start
    int size = 0;
    Place at; // for notes
};

Phrases inSense(Phrases phrases, const SenseContext& context, Vocabulary& words,
                std::vector<ReadingNote>& notes);

// The loops from where a row starts to the edge it works towards, as distances: its markers, nearest first.
int startOf(const Needle& before, const Row& row, int size);

// "Knit the knits and purl the purls": runs by what the loops ahead show.
Phrases asLoopsFace(const SenseContext& context, const Catalogue& catalogue);

} // namespace shawlwright
