#include "app/panels/short_row_fields.h"

#include "app/panels/form_dialog.h"
#include "app/panels/number_fields.h"
#include "app/panels/plain_rows_dialog.h"
#include "app/panels/row_dialog.h"

#include <QCoreApplication>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>

namespace shawlwright::app {

namespace {

QString tr(const char* text)
{
    return QCoreApplication::translate("ShortRowFields", text);
}

} // namespace

HowFarFields::HowFarFields(QFormLayout* form, const QStringList& ways, bool second, QSpinBox* times,
                           QSpinBox* stitches)
    : m_until(new QComboBox(form->parentWidget())), m_times(times), m_stitches(stitches)
{
    m_until->setObjectName(QStringLiteral("until"));
    m_until->addItems(ways);
    m_until->setCurrentIndex(second ? 1 : 0);
    setUnit(*m_times, {}, {});
    auto* line = new QHBoxLayout;
    line->addWidget(m_until, 1);
    line->addWidget(m_times);
    line->addWidget(m_stitches);
    FormDialog::addLine(form, tr("&How far"), line, m_until);
}

void HowFarFields::follow()
{
    m_times->setVisible(!untilStitches());
    m_stitches->setVisible(untilStitches());
}

TurnFields::TurnFields(QFormLayout* form, const std::vector<Yarn>& yarns, TurnMethod method, PlainStitch stitches,
                       YarnId yarn)
    : m_method(addChoice(form, tr("&Turn"), "method", turnMethodNames())),
      m_explained(softLabel({}, form->parentWidget()))
{
    m_method->setCurrentIndex(static_cast<int>(method));
    form->addRow(QString(), m_explained);
    m_stitches = addChoice(form, tr("St&itches"), "stitches", plainStitchNames());
    m_stitches->setCurrentIndex(static_cast<int>(stitches));
    m_yarn = addChoice(form, tr("&Yarn"), "yarn", {});
    addYarns(m_yarn, yarns, yarn);
}

void TurnFields::addSlip(QFormLayout* form, bool slips)
{
    m_slip = new QCheckBox(tr("S&lip the first stitch of the row after each turn"), form->parentWidget());
    m_slip->setObjectName(QStringLiteral("slip"));
    m_slip->setChecked(slips);
    m_slips = slips;
    form->addRow(QString(), m_slip);
}

void TurnFields::follow()
{
    const auto method = static_cast<TurnMethod>(m_method->currentIndex());
    m_explained->setText(turnExplained(method));
    if (m_slip->isEnabled())
        m_slips = m_slip->isChecked();
    // Greyed it shows what the method does: the stitch of a double stitch is pulled up, not slipped alone.
    const QSignalBlocker quiet(m_slip);
    const bool pinned = method == TurnMethod::PinnedYarn;
    m_slip->setEnabled(!alwaysSlips(method));
    m_slip->setChecked(alwaysSlips(method) ? pinned : m_slips);
    m_slip->setToolTip(m_slip->isEnabled() ? QString()
                       : pinned            ? tr("With a pinned yarn the first stitch is always slipped.")
                                           : tr("With a double stitch the first stitch is pulled up into two legs instead."));
}

} // namespace shawlwright::app
