#include "app/panels/shaping_fields.h"

#include "app/document/text.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QFormLayout>
#include <QRegularExpression>
#include <QSignalBlocker>

namespace shawlwright::app {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("ShapingFields", text);
}

} // namespace

QComboBox* addChoice(QFormLayout* form, const QString& label, const char* name, const QStringList& choices)
{
    auto* box = new QComboBox(form->parentWidget());
    box->setObjectName(QString::fromLatin1(name));
    box->addItems(choices);
    form->addRow(label, box);
    return box;
}

QString yarnInWords(const Yarn& yarn)
{
    return toQt(yarn.name.empty() ? yarn.code : yarn.code + " " + yarn.name);
}

void addYarns(QComboBox* box, const std::vector<Yarn>& yarns, YarnId chosen)
{
    for (const Yarn& yarn : yarns) {
        box->addItem(yarnInWords(yarn));
        if (yarn.id == chosen)
            box->setCurrentIndex(box->count() - 1);
    }
}

void offerSecondYarns(QComboBox* box, const std::vector<Yarn>& yarns, YarnId own, const QString& words)
{
    const QSignalBlocker quiet(box); // it follows another field, which tells
    const YarnId chosen = secondYarn(*box);
    while (box->count() > 1)
        box->removeItem(1);
    for (const Yarn& yarn : yarns) {
        if (yarn.id == own)
            continue;
        box->addItem(words.arg(yarnInWords(yarn)), yarn.id.value);
        if (yarn.id == chosen)
            box->setCurrentIndex(box->count() - 1);
    }
}

YarnId secondYarn(const QComboBox& box)
{
    return YarnId{static_cast<std::uint8_t>(box.currentData().toInt())};
}

QString turnExplained(TurnMethod method)
{
    switch (method) {
    case TurnMethod::Plain:
        return tr("Nothing is done at the turn, so a small hole stays.");
    case TurnMethod::WrapAndTurn:
        return tr("The next stitch is wrapped, not worked, before the turn.");
    case TurnMethod::DoubleStitch:
        return tr("The last stitch is pulled up into two legs when the next row begins.");
    case TurnMethod::YarnOver:
        return tr("The next row begins with a loop over the needle, worked together with a neighbour later.");
    case TurnMethod::PinnedYarn:
        return tr("The next row begins with a slipped stitch, and a pin marks the yarn there.");
    case TurnMethod::TwinStitch:
        return tr("A second loop is worked into the next stitch before the turn.");
    }
    return {};
}

bool alwaysSlips(TurnMethod method)
{
    return method == TurnMethod::DoubleStitch || method == TurnMethod::PinnedYarn;
}

StitchNumbers numbersIn(const QString& text)
{
    StitchNumbers read;
    static const QRegularExpression apart(QStringLiteral("[\\s,;]+"));
    for (const QString& word : text.split(apart, Qt::SkipEmptyParts)) {
        bool isNumber = false;
        const int number = word.toInt(&isNumber);
        if (isNumber && number >= 1)
            read.numbers.push_back(number);
        else if (read.wrong.isEmpty())
            read.wrong = word;
    }
    return read;
}

} // namespace shawlwright::app
