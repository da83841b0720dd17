#include "app/panels/new_shawl_dialog.h"

#include "app/document/text.h"
#include "app/panels/number_fields.h"
#include "app/panels/yarn_rows.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace shawlwright::app {

NewShawlDialog::NewShawlDialog(QWidget* parent) : FormDialog(tr("New shawl"), tr("Cast on"), parent)
{
    auto* top = addForm();
    m_title = new QLineEdit(tr("New shawl"), this);
    m_title->setObjectName(QStringLiteral("title"));
    m_title->selectAll();
    top->addRow(tr("&Title"), m_title);
    m_designer = new QLineEdit(this);
    m_designer->setPlaceholderText(tr("your name, as it is to be printed"));
    top->addRow(tr("&Designer"), m_designer);

    addHeading(tr("Yarns"));
    Yarn main, contrast;
    main.id = YarnId{1};
    main.code = "MC";
    main.name = fromQt(tr("Main colour"));
    main.colour = 0x3B5B8C;
    contrast.id = YarnId{2};
    contrast.code = "CC";
    contrast.name = fromQt(tr("Contrast colour"));
    contrast.colour = 0xE9B44C;
    for (Yarn* yarn : {&main, &contrast}) {
        yarn->weight = 1;
        yarn->metresPerBall = 400;
        yarn->gramsPerBall = 100;
    }
    m_yarns = new YarnRows({main, contrast}, this);
    body()->addWidget(m_yarns);
    connect(m_yarns, &YarnRows::yarnsChanged, this, &NewShawlDialog::fillCastOnYarns);

    auto* halves = new QHBoxLayout;
    halves->setSpacing(32);
    body()->addLayout(halves);
    auto* left = new QVBoxLayout;
    auto* right = new QVBoxLayout;
    for (auto* half : {left, right}) {
        half->setSpacing(8);
        halves->addLayout(half, 1);
    }
    // One form to a column, so that its fields stand in line.
    auto* leftForm = addForm(left);
    auto* rightForm = addForm(right);
    const auto headed = [this](QFormLayout* form, const QString& text) {
        auto* label = new QLabel(text, this);
        label->setObjectName(QStringLiteral("strong"));
        label->setContentsMargins(0, form->rowCount() > 0 ? 8 : 0, 0, 0);
        form->addRow(label);
        return form;
    };

    auto* castOn = headed(leftForm, tr("Cast on"));
    m_castOn = stitchCount(7, 1, mostCount, this);
    m_castOn->setObjectName(QStringLiteral("castOn"));
    castOn->addRow(tr("&Cast on"), m_castOn);
    m_castOnYarn = new QComboBox(this);
    castOn->addRow(tr("&With"), m_castOnYarn);
    m_method = new QLineEdit(this);
    m_method->setPlaceholderText(tr("as you like, or: garter tab"));
    castOn->addRow(tr("&Method"), m_method);
    m_firstSide = new QComboBox(this);
    m_firstSide->addItems({tr("Right side"), tr("Wrong side")});
    castOn->addRow(tr("Row &1 is a"), m_firstSide);
    fillCastOnYarns();

    auto* section = headed(leftForm, tr("First section"));
    m_section = new QLineEdit(tr("Section 1"), this);
    section->addRow(tr("&Section title"), m_section);
    m_rows = new QSpinBox(this);
    m_rows->setRange(1, 2000);
    m_rows->setValue(20);
    setUnit(*m_rows, tr(" row"), tr(" rows"));
    section->addRow(tr("&Rows"), m_rows);
    m_columns = new QSpinBox(this);
    m_columns->setRange(1, mostColumns);
    m_columns->setValue(25);
    setUnit(*m_columns, tr(" stitch"), tr(" stitches"));
    section->addRow(tr("&Grid"), m_columns);

    auto* gauge = headed(rightForm, tr("Gauge and needle"));
    m_stitches = lengthField(20, 1, 100, tr(" sts to 10 cm"), this);
    gauge->addRow(tr("St&itches"), m_stitches);
    m_rowsGauge = lengthField(40, 1, 200, tr(" rows to 10 cm"), this);
    gauge->addRow(tr("R&ows"), m_rowsGauge);
    m_over = new QLineEdit(tr("garter stitch, blocked"), this);
    gauge->addRow(tr("O&ver"), m_over);
    m_needle = lengthField(4.0, 0.5, 50, tr(" mm"), this);
    gauge->addRow(tr("&Needle"), m_needle);
    lineUp({top, leftForm});
    right->addStretch();
    left->addStretch();
    body()->addStretch();
}

void NewShawlDialog::fillCastOnYarns()
{
    const int was = std::max(0, m_castOnYarn->currentIndex());
    m_castOnYarn->clear();
    for (const Yarn& yarn : m_yarns->yarns())
        m_castOnYarn->addItem(toQt(yarn.code));
    m_castOnYarn->setCurrentIndex(std::min(was, m_castOnYarn->count() - 1));
}

std::optional<QString> NewShawlDialog::whatWrong() const
{
    if (m_title->text().trimmed().isEmpty())
        return tr("The shawl has no title. Give it one; it can be changed later.");
    if (m_section->text().trimmed().isEmpty())
        return tr("The first section has no title. Give it one, such as Body.");
    return m_yarns->whatWrong();
}

NewPattern NewShawlDialog::wishes() const
{
    NewPattern wishes;
    wishes.title = fromQt(m_title->text().trimmed());
    wishes.designer = fromQt(m_designer->text().trimmed());
    wishes.yarns = m_yarns->yarns();
    wishes.castOn.stitches = Quantity(m_castOn->value());
    const int yarn = std::clamp(m_castOnYarn->currentIndex(), 0, static_cast<int>(wishes.yarns.size()) - 1);
    wishes.castOn.yarn = wishes.yarns[static_cast<std::size_t>(yarn)].id;
    wishes.castOn.method = fromQt(m_method->text().trimmed());
    wishes.castOn.firstSide = m_firstSide->currentIndex() == 0 ? Side::RS : Side::WS;
    wishes.gauge = Gauge{m_stitches->value(), m_rowsGauge->value(), fromQt(m_over->text().trimmed())};
    wishes.needleMm = m_needle->value();
    wishes.sectionTitle = fromQt(m_section->text().trimmed());
    wishes.rows = m_rows->value();
    wishes.columns = m_columns->value();
    return wishes;
}

} // namespace shawlwright::app
