#include "tests/app/window/seat.h"

#include "core/edits/paint.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QSettings>
#include <QTest>
#include <QTimer>

namespace shawlwright::app {

Seat::Seat(int castOn, int rows, int columns)
{
    // No test reads or writes a person's settings.
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, m_folder.path());
    QCoreApplication::setOrganizationName(QStringLiteral("ShawlwrightTests"));
    QCoreApplication::setApplicationName(QStringLiteral("Window"));
    m_window = std::make_unique<MainWindow>();
    m_window->questions().failed = [](const QString& heading, const QString& sentence) {
        ADD_FAILURE() << qPrintable(heading) << " " << qPrintable(sentence);
    };
    m_window->questions().unsaved = [](const QString&) { return Unsaved::DontSave; };
    m_window->setWindowState(Qt::WindowNoState);
    m_window->resize(1280, 800);
    m_window->show();
    NewPattern wishes;
    wishes.castOn.stitches = castOn;
    wishes.rows = rows;
    wishes.columns = columns;
    m_window->newShawl(wishes);
    settle();
}

std::string Seat::key(int row, int column)
{
    return document()
        .catalogue()
        .stitch(cellAt(*section().rows[static_cast<std::size_t>(row)], column).stitch)
        .key;
}

void Seat::paintRow(int row, const char* key)
{
    const Section& shown = section();
    document().performOrTell(fill(pattern(), document().catalogue(), shown.id,
                                  Area{row, row, 1, shown.frame.columns}, stitch(key)));
    settle();
}

void Seat::click(int row, int column, Qt::MouseButton button)
{
    Canvas& canvas = m_window->canvas();
    canvas.showCell(row, column);
    QTest::mouseClick(canvas.viewport(), button, {}, canvas.cellRectOnViewport(row, column).center());
    settle();
}

void Seat::doubleClickNumber(int row)
{
    Canvas& canvas = m_window->canvas();
    canvas.showRow(row);
    const QRect cell = canvas.cellRectOnViewport(row, 1);
    const bool right = section().rows[static_cast<std::size_t>(row)]->side == Side::RS;
    const int columns = section().frame.columns;
    const QRect last = canvas.cellRectOnViewport(row, columns);
    QTest::mouseDClick(canvas.viewport(), Qt::LeftButton, {},
                       QPoint(right ? cell.right() + 22 : last.left() - 22, cell.center().y()));
}

void Seat::press(Qt::Key key, Qt::KeyboardModifiers modifiers)
{
    QWidget* focus = QApplication::focusWidget();
    QTest::keyClick(focus ? focus : m_window.get(), key, modifiers);
    settle();
}

void Seat::settle()
{
    QCoreApplication::processEvents();
    m_window->refresh();
    QCoreApplication::processEvents();
}

void Seat::inDialog(const std::function<void()>& act, const std::function<void(QDialog&)>& during)
{
    bool came = false;
    QTimer waiting;
    waiting.setInterval(5);
    QObject::connect(&waiting, &QTimer::timeout, [&] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog)
            return;
        came = true;
        waiting.stop();
        during(*dialog);
        if (dialog->isVisible())
            dialog->reject();
    });
    waiting.start();
    act();
    for (int i = 0; i < 400 && !came; ++i)
        QTest::qWait(5);
    EXPECT_TRUE(came) << "no dialog opened";
    settle();
}

static void pressButton(QDialog& dialog, QDialogButtonBox::ButtonRole role)
{
    auto* box = dialog.findChild<QDialogButtonBox*>();
    ASSERT_NE(box, nullptr);
    for (QAbstractButton* button : box->buttons())
        if (box->buttonRole(button) == role)
            return button->click();
    ADD_FAILURE() << "no such button";
}

void Seat::take(QDialog& dialog)
{
    pressButton(dialog, QDialogButtonBox::AcceptRole);
}

void Seat::leave(QDialog& dialog)
{
    pressButton(dialog, QDialogButtonBox::RejectRole);
}

} // namespace shawlwright::app
