#include "app/panels/times_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

TimesDialog::TimesDialog(Fits fits, Preview preview, QWidget* parent)
    : FormDialog(tr("Repeat the selection several times"), tr("Repeat it"), parent), m_fits(std::move(fits)),
      m_preview(std::move(preview))
{
    auto* form = addForm();
    m_along = new QComboBox(this);
    m_along->setObjectName(QStringLiteral("along"));
    m_along->addItems({tr("upwards, over the rows above"), tr("upwards, in new rows"), tr("to the left"),
                       tr("to the right")});
    for (int i = 0; i < m_along->count(); ++i) // the first way with room
        if (m_fits(static_cast<Along>(i)) > 0) {
            m_along->setCurrentIndex(i);
            break;
        }
    form->addRow(tr("&Where"), m_along);
    auto* line = new QHBoxLayout;
    m_times = new QSpinBox(this);
    m_times->setObjectName(QStringLiteral("times"));
    m_times->setRange(1, mostRows);
    m_times->setAccelerated(true);
    m_fit = softLabel({}, this);
    m_fit->setObjectName(QStringLiteral("fit"));
    line->addWidget(m_times);
    line->addWidget(m_fit, 1);
    addLine(form, tr("&Times more"), line, m_times);
    m_note = addNote({});
    m_words = addPreview(2);
    connect(m_along, &QComboBox::currentIndexChanged, this, [this] { follow(); });
    connect(m_times, &QSpinBox::valueChanged, this, [this] { follow(); });
    follow();
    setMinimumWidth(440);
}

Along TimesDialog::along() const
{
    return static_cast<Along>(m_along->currentIndex());
}

int TimesDialog::times() const
{
    return m_times->value();
}

void TimesDialog::follow()
{
    const int fit = m_fits(along());
    m_fit->setText(fit == 0 ? tr("there is no room") : tr("there is room for %1").arg(fit));
    m_note->setText(along() == Along::UpNewRows
                        ? tr("Nothing is replaced. Turns, markers, repeats and notes are not copied.")
                        : tr("The copies replace the stitches that are there. Turns, markers, repeats and notes are not copied."));
    const TimesPreview now = m_preview(along(), times());
    showOutcome(*m_words, now.words, now.fits);
    forgetWrong();
}

std::optional<QString> TimesDialog::whatWrong() const
{
    const TimesPreview now = m_preview(along(), times());
    return now.fits ? std::optional<QString>{} : now.words;
}

} // namespace shawlwright::app
