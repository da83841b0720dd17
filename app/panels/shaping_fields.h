// Fields that the dialogs of short rows and increases have in common.
#pragma once

#include "core/pattern/pattern.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

class QComboBox;
class QFormLayout;

namespace shawlwright::app {

// What comes of the wishes as they stand, in words, or why they don't fit.
struct ShapingPreview {
    bool fits = false;
    QString words;
};

QComboBox* addChoice(QFormLayout* form, const QString& label, const char* name, const QStringList& choices);
QString yarnInWords(const Yarn& yarn);
// All of them, `chosen` preselected where it is there; they are added behind what the box has already.
void addYarns(QComboBox* box, const std::vector<Yarn>& yarns, YarnId chosen);
// A second yarn beside `own`: the first entry (none) stays, then every other one as `words` say it ("%1"), the chosen one kept.
void offerSecondYarns(QComboBox* box, const std::vector<Yarn>& yarns, YarnId own, const QString& words);
YarnId secondYarn(const QComboBox& box); // YarnId{}: none

QString turnExplained(TurnMethod method);
// The first stitch after such a turn is slipped anyway.
bool alwaysSlips(TurnMethod method);

// "20, 40 61": numbers from 1, and the first word that is none.
struct StitchNumbers {
    std::vector<int> numbers;
    QString wrong;
};
StitchNumbers numbersIn(const QString& text);

} // namespace shawlwright::app
