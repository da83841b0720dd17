#include "app/document/step_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <optional>
#include <vector>

namespace shawlwright::app {

namespace {

// The first that fits counts: those with more words stand before those with fewer.
constexpr const char* sentences[] = {
    QT_TRANSLATE_NOOP("Steps", "paint %1"),
    QT_TRANSLATE_NOOP("Steps", "fill with %1"),
    QT_TRANSLATE_NOOP("Steps", "erase stitches"),
    QT_TRANSLATE_NOOP("Steps", "type %1"),
    QT_TRANSLATE_NOOP("Steps", "stitches in the row's yarn"),
    QT_TRANSLATE_NOOP("Steps", "stitches in %1"),
    QT_TRANSLATE_NOOP("Steps", "paste"),
    QT_TRANSLATE_NOOP("Steps", "mirror the selection"),
    QT_TRANSLATE_NOOP("Steps", "turn the selection upside down"),
    QT_TRANSLATE_NOOP("Steps", "move the selection"),
    QT_TRANSLATE_NOOP("Steps", "copy the selection along"),
    QT_TRANSLATE_NOOP("Steps", "repeat the selection %1 times"),
    QT_TRANSLATE_NOOP("Steps", "repeat the selection 1 time"),
    QT_TRANSLATE_NOOP("Steps", "move the left part of the row over"),
    QT_TRANSLATE_NOOP("Steps", "move the right part of the row over"),
    QT_TRANSLATE_NOOP("Steps", "close up the left part of the row"),
    QT_TRANSLATE_NOOP("Steps", "close up the right part of the row"),
    QT_TRANSLATE_NOOP("Steps", "shift the row to the left"),
    QT_TRANSLATE_NOOP("Steps", "shift the row to the right"),
    QT_TRANSLATE_NOOP("Steps", "replace %1 by %2"),
    QT_TRANSLATE_NOOP("Steps", "plain stitches in %1 rows"),
    QT_TRANSLATE_NOOP("Steps", "plain stitches"),
    QT_TRANSLATE_NOOP("Steps", "yarn of %1 rows"),
    QT_TRANSLATE_NOOP("Steps", "yarn of 1 row"),
    QT_TRANSLATE_NOOP("Steps", "wedge of %1 short rows"),
    QT_TRANSLATE_NOOP("Steps", "wedge of 1 short row"),
    QT_TRANSLATE_NOOP("Steps", "arch of short rows"),
    QT_TRANSLATE_NOOP("Steps", "%1 arches of short rows"),
    QT_TRANSLATE_NOOP("Steps", "increases in %1 rows"),
    QT_TRANSLATE_NOOP("Steps", "increases in 1 row"),
    QT_TRANSLATE_NOOP("Steps", "%1 increases over a row"),
    QT_TRANSLATE_NOOP("Steps", "1 increase over a row"),
    QT_TRANSLATE_NOOP("Steps", "insert %1 rows"),
    QT_TRANSLATE_NOOP("Steps", "insert 1 row"),
    QT_TRANSLATE_NOOP("Steps", "insert %1 columns"),
    QT_TRANSLATE_NOOP("Steps", "insert 1 column"),
    QT_TRANSLATE_NOOP("Steps", "delete rows %1 to %2"),
    QT_TRANSLATE_NOOP("Steps", "delete row %1"),
    QT_TRANSLATE_NOOP("Steps", "delete %1 rows"),
    QT_TRANSLATE_NOOP("Steps", "delete columns %1 to %2"),
    QT_TRANSLATE_NOOP("Steps", "delete column %1"),
    QT_TRANSLATE_NOOP("Steps", "delete %1 columns"),
    QT_TRANSLATE_NOOP("Steps", "duplicate rows %1 to %2"),
    QT_TRANSLATE_NOOP("Steps", "duplicate row %1"),
    QT_TRANSLATE_NOOP("Steps", "move rows %1 to %2"),
    QT_TRANSLATE_NOOP("Steps", "move row %1"),
    QT_TRANSLATE_NOOP("Steps", "row settings"),
    QT_TRANSLATE_NOOP("Steps", "own words of a row"),
    QT_TRANSLATE_NOOP("Steps", "words of row %1"),
    QT_TRANSLATE_NOOP("Steps", "words of %1 rows"),
    QT_TRANSLATE_NOOP("Steps", "turn early"),
    QT_TRANSLATE_NOOP("Steps", "turn at the end"),
    QT_TRANSLATE_NOOP("Steps", "add a stitch repeat"),
    QT_TRANSLATE_NOOP("Steps", "change a stitch repeat"),
    QT_TRANSLATE_NOOP("Steps", "delete a stitch repeat"),
    QT_TRANSLATE_NOOP("Steps", "add a row repeat"),
    QT_TRANSLATE_NOOP("Steps", "change a row repeat"),
    QT_TRANSLATE_NOOP("Steps", "delete a row repeat"),
    QT_TRANSLATE_NOOP("Steps", "place marker %1"),
    QT_TRANSLATE_NOOP("Steps", "remove marker %1"),
    QT_TRANSLATE_NOOP("Steps", "shift marker %1"),
    QT_TRANSLATE_NOOP("Steps", "move marker %1"),
    QT_TRANSLATE_NOOP("Steps", "take marker %1 out of the row"),
    QT_TRANSLATE_NOOP("Steps", "rename marker %1 to %2"),
    QT_TRANSLATE_NOOP("Steps", "rename markers"),
    QT_TRANSLATE_NOOP("Steps", "add section %1"),
    QT_TRANSLATE_NOOP("Steps", "rename section %1"),
    QT_TRANSLATE_NOOP("Steps", "move section %1"),
    QT_TRANSLATE_NOOP("Steps", "duplicate section %1"),
    QT_TRANSLATE_NOOP("Steps", "delete section %1"),
    QT_TRANSLATE_NOOP("Steps", "section settings"),
    QT_TRANSLATE_NOOP("Steps", "pattern settings"),
    QT_TRANSLATE_NOOP("Steps", "how words are written"),
    QT_TRANSLATE_NOOP("Steps", "yarns"),
    QT_TRANSLATE_NOOP("Steps", "a stitch of your own"),
    QT_TRANSLATE_NOOP("Steps", "change your stitch"),
    QT_TRANSLATE_NOOP("Steps", "delete a stitch of your own"),
    QT_TRANSLATE_NOOP("Steps", "rename motif"),
    QT_TRANSLATE_NOOP("Steps", "delete motif %1"),
    QT_TRANSLATE_NOOP("Steps", "motif %1"),
    QT_TRANSLATE_NOOP("Steps", "mend: %1"),
};

struct Sentence {
    const char* words;
    QRegularExpression shape;
};

const std::vector<Sentence>& shapes()
{
    static const std::vector<Sentence> made = [] {
        std::vector<Sentence> all;
        for (const char* words : sentences) {
            QString shape = QRegularExpression::escape(QString::fromLatin1(words));
            for (const char* place : {"\\%1", "\\%2"})
                shape.replace(QLatin1String(place), QStringLiteral("(.*)"));
            all.push_back({words, QRegularExpression(QRegularExpression::anchoredPattern(shape),
                                                     QRegularExpression::DotMatchesEverythingOption)});
        }
        return all;
    }();
    return made;
}

std::optional<QString> translated(const QString& name)
{
    for (const Sentence& sentence : shapes())
        if (const auto match = sentence.shape.match(name); match.hasMatch()) {
            const QString words = QCoreApplication::translate("Steps", sentence.words);
            const QString first = match.captured(1), second = match.captured(2);
            return match.lastCapturedIndex() >= 2   ? words.arg(first, second)
                   : match.lastCapturedIndex() == 1 ? words.arg(first)
                                                    : words;
        }
    return std::nullopt;
}

} // namespace

QString stepWords(const QString& name)
{
    return translated(name).value_or(name);
}

bool isKnownStep(const QString& name)
{
    return translated(name).has_value();
}

} // namespace shawlwright::app
