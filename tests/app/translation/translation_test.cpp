// Every text of the window can be translated: tried with a translation that puts each one in brackets and makes it a third
// longer. What shows without brackets was not translated; what doesn't fit was measured by the English words.
#include "app/document/step_words.h"
#include "app/panels/stitches_panel.h"
#include "app/window/start_page.h"
#include "app/window/translations.h"
#include "tests/app/window/every_dialog.h"
#include "tests/support/knit.h"
#include "tests/support/random_pattern.h"

#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QDockWidget>
#include <QFile>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QProcess>
#include <QRegularExpression>
#include <QTabWidget>
#include <QTimer>
#include <QToolButton>
#include <QTranslator>

#include <set>

namespace shawlwright::app {

namespace {

using Source = std::pair<QString, QString>; // context and text

class InBrackets : public QTranslator {
public:
    QString translate(const char* context, const char* text, const char*, int) const override
    {
        const QString words = QString::fromUtf8(text);
        const QString of = QString::fromUtf8(context);
        if (words.isEmpty() || of.startsWith(QLatin1Char('Q')) || of == QStringLiteral("CloseButton"))
            return {}; // Qt's own
        asked.emplace(of, words);
        return QLatin1Char('[') + words + QString(std::max(qsizetype(1), words.size() / 3), QLatin1Char('~')) +
               QLatin1Char(']');
    }
    bool isEmpty() const override { return false; }
    mutable std::set<Source> asked;
};

InBrackets& translated()
{
    static InBrackets* brackets = [] {
        auto* one = new InBrackets;
        QCoreApplication::installTranslator(one);
        return one;
    }();
    return *brackets;
}

// Letters that stand outside of every pair of brackets. What the core says (stitches, rows in words, findings) and what
// somebody typed is no text of the window.
bool isBare(QString text)
{
    static const QRegularExpression markup(QStringLiteral("<[^>]*>")), inBrackets(QStringLiteral("\\[[^\\[\\]]*\\]"));
    static const QRegularExpression keys(QStringLiteral("  \\([^()]*\\)$")); // behind a tip; Qt names them
    text.remove(markup);
    text.remove(keys);
    for (QString before; before != text;) {
        before = text;
        text.remove(inBrackets);
    }
    static const QRegularExpression word(QStringLiteral("[A-Za-z]{4,}"));
    return text.contains(word);
}

bool isData(const QWidget* widget)
{
    for (const QWidget* at = widget; at; at = at->parentWidget())
        for (const char* name : {"app::WordsPanel", "app::FindingsPanel", "app::RowFactsPanel", "app::CountThread",
                                 "app::SectionsPanel", "app::StitchGrid", "app::StitchesPanel"})
            if (QByteArray(at->metaObject()->className()).endsWith(name))
                return true;
    return widget->property("data").toBool();
}

struct Look {
    int texts = 0;

    void text(const QWidget* widget, const QString& shown)
    {
        if (shown.trimmed().isEmpty())
            return;
        ++texts;
        EXPECT_FALSE(isBare(shown)) << place(widget) << ": " << qPrintable(shown);
    }
    // Room for the words, where they can't go on in the next line.
    void fits(const QWidget* widget, int needed)
    {
        EXPECT_LE(needed, widget->width() + 1) << place(widget) << " is too narrow";
    }
    static std::string place(const QWidget* widget)
    {
        QString path;
        for (const QWidget* at = widget; at; at = at->parentWidget())
            path.prepend(QLatin1Char('/') + QString::fromLatin1(at->metaObject()->className()).section(QLatin1Char(':'), -1) +
                         QLatin1Char('#') + at->objectName());
        return path.toStdString();
    }
    void over(QWidget* top)
    {
        for (QWidget* widget : top->findChildren<QWidget*>()) {
            if (!widget->isVisibleTo(top) || isData(widget))
                continue;
            text(widget, widget->toolTip());
            text(widget, widget->accessibleName());
            if (auto* label = qobject_cast<QLabel*>(widget)) {
                text(widget, label->text());
                if (!label->wordWrap() && !label->text().isEmpty() && label->minimumWidth() == 0)
                    fits(widget, label->sizeHint().width());
            } else if (auto* button = qobject_cast<QAbstractButton*>(widget)) {
                text(widget, button->text());
                if (!button->text().isEmpty())
                    fits(widget, std::min(button->sizeHint().width(), button->minimumSizeHint().width()));
            } else if (auto* box = qobject_cast<QGroupBox*>(widget)) {
                text(widget, box->title());
            } else if (auto* field = qobject_cast<QLineEdit*>(widget)) {
                text(widget, field->placeholderText());
            } else if (auto* dock = qobject_cast<QDockWidget*>(widget)) {
                text(widget, dock->windowTitle());
            }
        }
    }
};

} // namespace

TEST(Translation, MenusAreTranslated)
{
    translated();
    Seat seat;
    int seen = 0;
    for (QAction* menu : seat.window().menuBar()->actions()) {
        EXPECT_FALSE(isBare(menu->text())) << qPrintable(menu->text());
        for (QAction* action : menu->menu()->actions())
            if (!action->isSeparator() && !action->text().isEmpty()) {
                ++seen;
                if (!seat.window().stitches().favourites().isEmpty() &&
                    (action == seat.window().action(ActionId::Favourite1) || action->text().size() < 1))
                    continue;
                bool favourite = false; // bears a stitch's name
                for (int place = 0; place < 9; ++place)
                    favourite |= action == seat.window().action(static_cast<ActionId>(
                                               static_cast<int>(ActionId::Favourite1) + place));
                EXPECT_TRUE(favourite || !isBare(action->text())) << qPrintable(action->text());
                EXPECT_TRUE(favourite || !isBare(action->toolTip())) << qPrintable(action->toolTip());
            }
    }
    EXPECT_GT(seen, 80);
}

TEST(Translation, NothingBareAndNothingClippedInTheWindow)
{
    translated();
    Seat seat;
    Look look;
    look.over(&seat.window());
    EXPECT_GT(look.texts, 20);
    seat.window().showStartPage();
    seat.settle();
    Look start;
    start.over(seat.window().startPage());
    EXPECT_GT(start.texts, 10);
}

TEST(Translation, NothingBareAndNothingClippedInTheDialogs)
{
    translated();
    Seat seat;
    prepareForDialogs(seat);
    const auto seen = [](const std::string& name, QDialog& dialog) {
        SCOPED_TRACE(name);
        EXPECT_FALSE(isBare(dialog.windowTitle())) << qPrintable(dialog.windowTitle());
        if (auto* symbol = dialog.findChild<QComboBox*>(QStringLiteral("symbol")))
            symbol->setCurrentIndex(1);
        QApplication::processEvents();
        Look look;
        look.over(&dialog);
        EXPECT_GT(look.texts, 1);
    };
    inEveryDialog(seat, seen);
    seat.inDialog([&] { seat.act(ActionId::About); }, [&](QDialog& dialog) { seen("About", dialog); });
}

TEST(Translation, WhatARowIsIsTranslated)
{
    translated();
    Seat seat;
    seat.paintRow(0, "k");
    int texts = 0;
    QTimer::singleShot(0, qApp, [&] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        ASSERT_NE(menu, nullptr);
        for (const QAction* one : menu->actions()) {
            EXPECT_FALSE(isBare(one->text())) << qPrintable(one->text());
            const bool yarns = one->menu() && one->text().contains(QStringLiteral("Yarn")); // their names are the designer's
            for (const QAction* inner : one->menu() && !yarns ? one->menu()->actions() : QList<QAction*>()) {
                EXPECT_FALSE(isBare(inner->text())) << qPrintable(inner->text());
                texts += !inner->text().isEmpty();
            }
        }
        menu->close();
    });
    seat.act(ActionId::RowHead);
    EXPECT_GT(texts, 8);
}

TEST(Translation, NamesOfUndoStepsAreTranslated)
{
    translated();
    EXPECT_FALSE(isBare(stepWords(QStringLiteral("delete rows 3 to 5"))));
    EXPECT_TRUE(stepWords(QStringLiteral("delete rows 3 to 5")).startsWith(QStringLiteral("[delete rows 3 to 5~")));
    EXPECT_FALSE(isBare(stepWords(QStringLiteral("erase stitches"))));
    EXPECT_EQ(stepWords(QStringLiteral("frobnicate")), QStringLiteral("frobnicate"));
    // Every edit that a person could make has a name of the table.
    std::mt19937 random(20); // any
    std::set<std::string> names;
    for (int pattern = 0; pattern < 60; ++pattern) {
        const Pattern made = tests::randomPattern(random);
        for (int edit = 0; edit < 60; ++edit)
            if (const auto one = tests::randomEdit(random, made); one.ok() && !one.value().empty())
                names.insert(one.value().name);
    names.erase("change row"); // as the random edits call them themselves
    names.erase("change cast-on");
    }
    EXPECT_GT(names.size(), 40u);
    for (const std::string& name : names)
        EXPECT_TRUE(isKnownStep(QString::fromStdString(name))) << name;
}

// What the window has asked for is what a translator is given, and a translation beside the program is used.
TEST(Translation, TheCollectedTextsAreTheOnesThatAreAskedFor)
{
    translated();
    {
        Seat seat;
        seat.window().showStartPage();
        seat.settle();
    }
    QTemporaryDir folder;
    const QString collected = folder.filePath(QStringLiteral("shawlwright_eo.ts"));
    QProcess collect;
    collect.start(QStringLiteral(PYTHON),
                  {QStringLiteral(SHAWLWRIGHT_SOURCE "/resources/translations/collect"), collected,
                   QStringLiteral("--pseudo")});
    ASSERT_TRUE(collect.waitForFinished(120000));
    ASSERT_EQ(collect.exitCode(), 0) << collect.readAllStandardError().toStdString();

    const QString beside = QCoreApplication::applicationDirPath() + QStringLiteral("/translations");
    QDir(beside).removeRecursively();
    ASSERT_TRUE(QDir().mkpath(beside));
    QProcess release;
    release.start(QStringLiteral("/usr/lib/qt6/bin/lrelease"),
                  {collected, QStringLiteral("-qm"), beside + QStringLiteral("/shawlwright_eo.qm")});
    ASSERT_TRUE(release.waitForFinished(60000));
    ASSERT_EQ(release.exitCode(), 0);

    QTranslator given;
    ASSERT_TRUE(given.load(beside + QStringLiteral("/shawlwright_eo.qm")));
    EXPECT_GT(translated().asked.size(), 300u);
    for (const auto& [context, text] : translated().asked)
        EXPECT_FALSE(given.translate(context.toUtf8().constData(), text.toUtf8().constData()).isEmpty())
            << qPrintable(context) << ": " << qPrintable(text);

    QCoreApplication::removeTranslator(&translated());
    EXPECT_FALSE(useTranslation(QLocale(QLocale::Icelandic)));
    EXPECT_TRUE(useTranslation(QLocale(QLocale::Esperanto)));
    EXPECT_TRUE(MainWindow::tr("Tools").startsWith(QLatin1Char('['))) << qPrintable(MainWindow::tr("Tools"));
    QDir(beside).removeRecursively();
}

} // namespace shawlwright::app
