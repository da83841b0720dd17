#include "app/panels/plain_rows_dialog.h"

#include <QComboBox>
#include <QFormLayout>

namespace shawlwright::app {

QStringList plainStitchNames()
{
    return {PlainRowsDialog::tr("knit"), PlainRowsDialog::tr("purl"),
            PlainRowsDialog::tr("as the stitches show")};
}

PlainRowsDialog::PlainRowsDialog(const QString& rows, int emptyWrongSide, QWidget* parent)
    : FormDialog(tr("Fill with plain stitches"), tr("Fill"), parent)
{
    auto* form = addForm();
    m_which = new QComboBox(this);
    m_which->setObjectName(QStringLiteral("which"));
    m_which->addItem(rows);
    if (emptyWrongSide > 0)
        m_which->addItem(emptyWrongSide == 1 ? tr("the 1 empty WS row of the section")
                                             : tr("all %1 empty WS rows of the section").arg(emptyWrongSide));
    form->addRow(tr("&Rows"), m_which);
    m_how = new QComboBox(this);
    m_how->setObjectName(QStringLiteral("how"));
    m_how->addItems(plainStitchNames());
    m_how->setCurrentIndex(static_cast<int>(PlainStitch::AsTheyShow));
    form->addRow(tr("&Work them"), m_how);
    addNote(
        tr("Every stitch on the needle is worked, each row as the one before left it. The second loop of a "
           "double yarn over is worked the other way, so that the hole stays open."));
    setMinimumWidth(400);
}

bool PlainRowsDialog::allEmptyWrongSide() const
{
    return m_which->currentIndex() == 1;
}

PlainStitch PlainRowsDialog::how() const
{
    return static_cast<PlainStitch>(m_how->currentIndex());
}

} // namespace shawlwright::app
