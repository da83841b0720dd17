#include "app/window/export_dialog.h"

#include "app/document/text.h"
#include "app/panels/number_fields.h"
#include "core/pattern/questions.h"
#include "core/wording/writer/writer.h"

#include <QComboBox>
#include <QFormLayout>
#include <QSpinBox>

namespace shawlwright::app {

ExportDialog::ExportDialog(ExportSubject subject, const Pattern& pattern, ExportOptions options,
                           SectionId section, QWidget* parent)
    : FormDialog(subject == ExportSubject::Chart   ? tr("Export chart")
                 : subject == ExportSubject::Words ? tr("Export words")
                                                   : tr("Export pattern"),
                 tr("Export..."), parent),
      m_subject(subject), m_options(options), m_section(section), m_versions(versionCount(pattern))
{
    auto* form = addForm();
    m_what = new QComboBox(this);
    const int at = sectionIndex(pattern, section);
    const std::string& title = at < 0 ? pattern.head.title : pattern.sections[static_cast<std::size_t>(at)].frame.title;
    m_what->addItems({tr("the whole shawl"), tr("only %1").arg(toQt(title))});
    m_what->setCurrentIndex(subject == ExportSubject::Chart ? 1 : 0);
    form->addRow(tr("&What"), m_what);
    if (versionCount(pattern) > 1) {
        m_version = new QComboBox(this);
        m_version->setObjectName(QStringLiteral("version"));
        for (const std::string& name : pattern.head.versions)
            m_version->addItem(toQt(name));
        if (subject == ExportSubject::Words)
            m_version->addItem(tr("all versions"));
        m_version->setCurrentIndex(options.choice.version);
        form->addRow(tr("&Version"), m_version);
    }
    if (sizeCount(pattern) > 1) {
        m_size = new QComboBox(this);
        m_size->setObjectName(QStringLiteral("size"));
        m_size->addItem(tr("all sizes, as %1").arg(toQt(sizesInWords(pattern))));
        for (const std::string& name : pattern.head.sizes)
            m_size->addItem(tr("%1 alone").arg(toQt(name)));
        m_size->setToolTip(tr("All sizes: numbers that differ stand as 23 (29), the smallest size first"));
        form->addRow(tr("Si&ze"), m_size);
    }
    if (subject == ExportSubject::Chart) {
        m_form = new QComboBox(this);
        m_form->addItems({tr("drawing for page layout (SVG)"), tr("picture (PNG)")});
        form->addRow(tr("&As"), m_form);
        m_letters = new QComboBox(this);
        m_letters->addItems(
            {tr("letters that can be searched"), tr("outlines, for a printer without the font")});
        form->addRow(tr("&Numbers as"), m_letters);
        m_dpi = new QSpinBox(this);
        m_dpi->setRange(36, 2400);
        m_dpi->setValue(options.dpi);
        m_dpi->setSuffix(tr(" dots per inch"));
        form->addRow(tr("&Fineness"), m_dpi);
        const auto follow = [this] {
            m_letters->setEnabled(m_form->currentIndex() == 0);
            m_dpi->setEnabled(m_form->currentIndex() == 1);
        };
        connect(m_form, &QComboBox::currentIndexChanged, this, follow);
        follow();
    }
    if (subject == ExportSubject::Pattern) {
        m_paper = new QComboBox(this);
        m_paper->addItems({tr("A4"), tr("US Letter")});
        form->addRow(tr("&Paper"), m_paper);
        addNote(tr("Pages (PDF) with the charts and the same rows in words."));
    }
    if (subject != ExportSubject::Words) {
        m_rows = new QComboBox(this);
        m_rows->addItems({tr("all of them"), tr("without plain WS rows, and a sentence that says so")});
        m_rows->setCurrentIndex(options.plainWsRows ? 0 : 1);
        form->addRow(tr("&Rows"), m_rows);
        m_cell = lengthField(options.cellMm, subject == ExportSubject::Pattern ? leastPrintedCellMm : 0.5, 50,
                             tr(" mm"), this);
        form->addRow(tr("Wi&dth of a stitch"), m_cell);
    } else {
        addNote(tr("Plain text, as every screen reader reads it."));
    }
    body()->addStretch();
    setMinimumWidth(420);
}

ExportKind ExportDialog::kind() const
{
    switch (m_subject) {
    case ExportSubject::Words:
        return ExportKind::Text;
    case ExportSubject::Pattern:
        return ExportKind::Pdf;
    case ExportSubject::Chart:
        break;
    }
    return m_form->currentIndex() == 0 ? ExportKind::Svg : ExportKind::Png;
}

QString ExportDialog::ending() const
{
    switch (kind()) {
    case ExportKind::Svg:
        return QStringLiteral("svg");
    case ExportKind::Png:
        return QStringLiteral("png");
    case ExportKind::Pdf:
        return QStringLiteral("pdf");
    case ExportKind::Text:
        return QStringLiteral("txt");
    }
    return {};
}

ExportOptions ExportDialog::options() const
{
    ExportOptions options = m_options;
    options.section = m_what->currentIndex() == 1 ? std::optional(m_section) : std::nullopt;
    if (m_version) {
        options.everyVersion = m_version->currentIndex() == m_versions;
        if (!options.everyVersion)
            options.choice.version = m_version->currentIndex();
    }
    options.everySize = !m_size || m_size->currentIndex() == 0;
    if (!options.everySize)
        options.choice.size = m_size->currentIndex() - 1;
    if (m_rows)
        options.plainWsRows = m_rows->currentIndex() == 0;
    if (m_cell)
        options.cellMm = m_cell->value();
    if (m_dpi)
        options.dpi = m_dpi->value();
    if (m_letters)
        options.lettering = m_letters->currentIndex() == 0 ? Lettering::Text : Lettering::Outlines;
    if (m_paper)
        options.paper = m_paper->currentIndex() == 0 ? Paper::A4 : Paper::Letter;
    return options;
}

} // namespace shawlwright::app
