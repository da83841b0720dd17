#include "app/window/questions.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <QLineEdit>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QSettings>

namespace shawlwright::app {

namespace {

QString inWords(const char* text)
{
    return QCoreApplication::translate("Questions", text);
}

// Files lie where the last one lay.
QString lastFolder()
{
    return QSettings().value(QStringLiteral("folder"), QDir::homePath()).toString();
}

QString inFolder(const QString& name)
{
    return QFileInfo(name).isAbsolute() ? name : QDir(lastFolder()).filePath(name);
}

QString withEnding(QString path, const QString& ending)
{
    if (!path.isEmpty() && QFileInfo(path).suffix().isEmpty())
        path += ending;
    return path;
}

} // namespace

void keepFolder(const QString& path)
{
    if (!path.isEmpty())
        QSettings().setValue(QStringLiteral("folder"), QFileInfo(path).absolutePath());
}

Questions askInDialogs(QWidget* window)
{
    Questions ask;
    ask.unsaved = [window](const QString& name) {
        QMessageBox box(QMessageBox::NoIcon, inWords("Shawlwright"),
                        inWords("Save what you changed in \"%1\"?").arg(name), QMessageBox::NoButton, window);
        box.setInformativeText(inWords("What is not saved is lost."));
        QPushButton* save = box.addButton(inWords("&Save"), QMessageBox::AcceptRole);
        QPushButton* dont = box.addButton(inWords("&Don't save"), QMessageBox::DestructiveRole);
        QPushButton* goOn = box.addButton(inWords("&Go on editing"), QMessageBox::RejectRole);
        box.setDefaultButton(save);
        box.setEscapeButton(goOn);
        box.exec();
        return box.clickedButton() == save   ? Unsaved::Save
               : box.clickedButton() == dont ? Unsaved::DontSave
                                             : Unsaved::GoOnEditing;
    };
    ask.changedOnDisk = [window](const QString& name) {
        QMessageBox box(QMessageBox::NoIcon, inWords("Shawlwright"),
                        inWords("\"%1\" was changed by somebody else since you opened it.").arg(name),
                        QMessageBox::NoButton, window);
        box.setInformativeText(inWords("Writing over it loses what they changed."));
        QPushButton* elsewhere =
            box.addButton(inWords("Save under another name..."), QMessageBox::AcceptRole);
        QPushButton* over = box.addButton(inWords("Write over it"), QMessageBox::DestructiveRole);
        QPushButton* goOn = box.addButton(inWords("Go on editing"), QMessageBox::RejectRole);
        box.setDefaultButton(elsewhere);
        box.setEscapeButton(goOn);
        box.exec();
        return box.clickedButton() == over        ? Overwrite::WriteOver
               : box.clickedButton() == elsewhere ? Overwrite::SaveElsewhere
                                                  : Overwrite::GoOnEditing;
    };
    ask.rescued = [window](const QString& name, const QDateTime& written) {
        QMessageBox box(QMessageBox::NoIcon, inWords("Shawlwright"),
                        name.isEmpty() ? inWords("Shawlwright ended before a shawl without a title was saved.")
                                       : inWords("Shawlwright ended before \"%1\" was saved.").arg(name),
                        QMessageBox::NoButton, window);
        box.setInformativeText(
            inWords("A rescue copy of %1 is here. Opened, it is a shawl of its own without a file; "
                    "your saved file stays as it is.")
                .arg(QLocale().toString(written, QLocale::ShortFormat)));
        QPushButton* open = box.addButton(inWords("Open the copy"), QMessageBox::AcceptRole);
        QPushButton* away = box.addButton(inWords("Throw it away"), QMessageBox::DestructiveRole);
        QPushButton* again = box.addButton(inWords("Ask again next time"), QMessageBox::RejectRole);
        box.setDefaultButton(open);
        box.setEscapeButton(again);
        box.exec();
        return box.clickedButton() == open   ? Rescued::OpenIt
               : box.clickedButton() == away ? Rescued::ThrowAway
                                             : Rescued::AskAgain;
    };
    ask.openElsewhere = [window](const QString& name, const QString& holder) {
        QMessageBox box(QMessageBox::NoIcon, inWords("Shawlwright"),
                        inWords("\"%1\" is open in another window.").arg(name), QMessageBox::NoButton, window);
        box.setInformativeText(
            (holder.isEmpty() ? QString() : inWords("It is open on %1.").arg(holder) + QLatin1Char(' ')) +
            inWords("If both windows saved it, one would lose what the other changed. Here it can be read, or "
                    "changed as a copy with a name of its own."));
        QPushButton* read = box.addButton(inWords("Open to read only"), QMessageBox::AcceptRole);
        QPushButton* copy = box.addButton(inWords("Open a copy"), QMessageBox::ActionRole);
        QPushButton* notNow = box.addButton(inWords("Don't open it"), QMessageBox::RejectRole);
        box.setDefaultButton(read);
        box.setEscapeButton(notNow);
        box.exec();
        return box.clickedButton() == read   ? OpenElsewhere::ReadOnly
               : box.clickedButton() == copy ? OpenElsewhere::Copy
                                             : OpenElsewhere::NotNow;
    };
    ask.differs = [window](const QString& name, OnDisk now, bool modifiedHere) {
        const bool gone = now == OnDisk::Gone;
        QMessageBox box(QMessageBox::NoIcon, inWords("Shawlwright"),
                        (gone ? inWords("The file of \"%1\" was removed or renamed by another program.")
                              : inWords("The file of \"%1\" was changed by another program."))
                            .arg(name),
                        QMessageBox::NoButton, window);
        box.setInformativeText(
            gone ? inWords("Your shawl is still here, whole. Keep it open and save it to put the file back, or "
                           "save it under another name.")
            : modifiedHere
                ? inWords("Reading it again loses what you changed here since the last save. Keeping yours "
                          "leaves the file alone until you save.")
                : inWords("Reading it again shows what is in the file now. Keeping yours leaves the file alone "
                          "until you save."));
        QPushButton* again =
            gone ? nullptr : box.addButton(inWords("Read it again"), QMessageBox::DestructiveRole);
        QPushButton* mine = box.addButton(inWords("Keep mine"), QMessageBox::RejectRole);
        QPushButton* elsewhere =
            box.addButton(inWords("Save mine under another name..."), QMessageBox::AcceptRole);
        box.setDefaultButton(!gone && !modifiedHere ? again : mine);
        box.setEscapeButton(mine);
        box.exec();
        return again && box.clickedButton() == again  ? Differs::ReadAgain
               : box.clickedButton() == elsewhere     ? Differs::SaveElsewhere
                                                      : Differs::KeepMine;
    };
    ask.sure = [window](const QString& question, const QString& doIt) {
        QMessageBox box(QMessageBox::NoIcon, inWords("Shawlwright"), question, QMessageBox::NoButton, window);
        QPushButton* yes = box.addButton(doIt, QMessageBox::AcceptRole);
        box.addButton(inWords("Cancel"), QMessageBox::RejectRole);
        box.exec();
        return box.clickedButton() == yes;
    };
    ask.openPath = [window] {
        const QString path = QFileDialog::getOpenFileName(window, inWords("Open a shawl"), lastFolder(),
                                                          inWords("Shawls and written rows (*.shawl *.txt);;All files (*)"));
        keepFolder(path);
        return path;
    };
    ask.savePath = [window](const QString& suggested) {
        const QString path =
            withEnding(QFileDialog::getSaveFileName(window, inWords("Save the shawl"), inFolder(suggested),
                                                    inWords("Shawls (*.shawl)")),
                       QStringLiteral(".shawl"));
        keepFolder(path);
        return path;
    };
    ask.exportPath = [window](const QString& suggested, const QString& filter) {
        return withEnding(
            QFileDialog::getSaveFileName(window, inWords("Export"), inFolder(suggested), filter),
            QLatin1Char('.') + QFileInfo(suggested).suffix());
    };
    ask.words = [window](const QString& question, const QString& suggested) {
        QInputDialog dialog(window);
        dialog.setWindowTitle(question);
        dialog.setLabelText(question);
        dialog.setTextValue(suggested);
        if (auto* field = dialog.findChild<QLineEdit*>()) // room for a sentence
            field->setMinimumWidth(60 * field->fontMetrics().averageCharWidth());
        dialog.setOkButtonText(inWords("Keep"));
        dialog.setCancelButtonText(inWords("Cancel"));
        return dialog.exec() == QDialog::Accepted ? dialog.textValue() : QString();
    };
    ask.failed = [window](const QString& heading, const QString& sentence) {
        QMessageBox box(QMessageBox::NoIcon, inWords("Shawlwright"), heading, QMessageBox::NoButton, window);
        box.setInformativeText(sentence);
        box.addButton(inWords("Close"), QMessageBox::AcceptRole);
        box.exec();
    };
    return ask;
}

} // namespace shawlwright::app
