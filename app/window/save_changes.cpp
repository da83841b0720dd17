#include "app/window/save_changes.h"

#include "app/document/text.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <optional>

namespace shawlwright::app {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("SaveChanges", text);
}

bool sameRow(const RowRef& a, const RowRef& b)
{
    Row other = *b;
    other.id = a->id;
    return *a == other;
}

// Rows that came, went or are not as they were; those before and after them that stayed are left out.
std::size_t rowsChanged(const std::vector<RowRef>& before, const std::vector<RowRef>& after)
{
    const std::size_t both = std::min(before.size(), after.size());
    std::size_t first = 0, last = 0;
    while (first < both && sameRow(before[first], after[first]))
        ++first;
    while (last < both - first && sameRow(before[before.size() - 1 - last], after[after.size() - 1 - last]))
        ++last;
    return std::max(before.size(), after.size()) - first - last;
}

// For each section after, which one it was: the one of its title, at its own place if there are several; else the one at
// its place, if that has gone.
std::vector<std::optional<std::size_t>> whatTheyWere(const std::vector<Section>& before, const std::vector<Section>& after)
{
    std::vector<std::optional<std::size_t>> was(after.size());
    std::vector<bool> taken(before.size(), false);
    const auto take = [&](std::size_t now, std::size_t then) {
        was[now] = then;
        taken[then] = true;
    };
    const auto sameTitle = [&](std::size_t now, std::size_t then) {
        return before[then].frame.title == after[now].frame.title;
    };
    for (std::size_t i = 0; i < std::min(before.size(), after.size()); ++i)
        if (sameTitle(i, i))
            take(i, i);
    for (std::size_t now = 0; now < after.size(); ++now)
        for (std::size_t then = 0; then < before.size() && !was[now]; ++then)
            if (!taken[then] && sameTitle(now, then))
                take(now, then);
    for (std::size_t i = 0; i < std::min(before.size(), after.size()); ++i)
        if (!was[i] && !taken[i])
            take(i, i);
    return was;
}

} // namespace

QString changesInWords(const Pattern& before, const Pattern& after)
{
    const auto was = whatTheyWere(before.sections, after.sections);
    std::size_t rows = 0, came = 0, frames = 0;
    std::optional<std::size_t> latest;
    bool moved = false;
    for (std::size_t now = 0; now < was.size(); ++now) {
        if (!was[now]) {
            ++came;
            continue;
        }
        const Section& then = before.sections[*was[now]];
        rows += rowsChanged(then.rows, after.sections[now].rows);
        frames += then.frame != after.sections[now].frame ? 1U : 0U;
        moved = moved || (latest && *was[now] < *latest);
        latest = std::max(latest.value_or(0), *was[now]);
    }
    const std::size_t went = before.sections.size() - (after.sections.size() - came);
    QStringList parts;
    if (rows > 0)
        parts << oneOrMany(rows, tr("1 row changed"), tr("%1 rows changed"));
    if (came > 0)
        parts << oneOrMany(came, tr("1 section came"), tr("%1 sections came"));
    if (went > 0)
        parts << oneOrMany(went, tr("1 section went"), tr("%1 sections went"));
    if (moved)
        parts << tr("sections in another order");
    if (parts.isEmpty() && frames > 0)
        parts << oneOrMany(frames, tr("repeats or settings of 1 section changed"),
                         tr("repeats or settings of %1 sections changed"));
    if (parts.isEmpty())
        parts << (before.head == after.head ? tr("nothing changed") : tr("settings of the pattern changed"));
    return parts.join(QStringLiteral(", "));
}

} // namespace shawlwright::app
