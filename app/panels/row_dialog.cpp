#include "app/panels/row_dialog.h"

#include "app/document/text.h"
#include "app/panels/quantity_edit.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>

namespace shawlwright::app {

QStringList turnMethodNames()
{
    return {RowDialog::tr("just turn"),
            RowDialog::tr("wrap and turn"),
            RowDialog::tr("double stitch (German)"),
            RowDialog::tr("yarn over turn"),
            RowDialog::tr("pinned yarn (Japanese)"),
            RowDialog::tr("twin stitch (shadow)")};
}

QStringList sizeNames(const PatternHead& head)
{
    QStringList names;
    for (const std::string& size : head.sizes)
        names << toQt(size);
    return names;
}

RowDialog::RowDialog(const Row& row, const PatternHead& head, const QString& place, QWidget* parent)
    : FormDialog(tr("Row settings"), tr("Keep"), parent), m_row(row), m_yarns(head.yarns)
{
    auto* title = new QLabel(place, this);
    title->setObjectName(QStringLiteral("dialogHeading"));
    body()->addWidget(title);
    const QStringList sizes = sizeNames(head);

    // Label, field, and what belongs to it, each on an edge of its own.
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(16);
    grid->setVerticalSpacing(8);
    grid->setColumnStretch(1, 1);
    body()->addLayout(grid);
    const auto addRow = [&](const QString& words, QWidget* field, QWidget* beside = nullptr) {
        const int line = grid->rowCount();
        auto* label = new QLabel(words, this);
        label->setBuddy(field);
        grid->addWidget(label, line, 0);
        grid->addWidget(field, line, 1, 1, beside ? 1 : 2);
        if (beside)
            grid->addWidget(beside, line, 2);
    };
    m_side = new QComboBox(this);
    m_side->setObjectName(QStringLiteral("side"));
    m_side->addItems({tr("Right side (RS)"), tr("Wrong side (WS)")});
    m_side->setCurrentIndex(row.side == Side::RS ? 0 : 1);
    addRow(tr("&Side"), m_side);

    m_yarn = new QComboBox(this);
    m_yarn->setObjectName(QStringLiteral("yarn"));
    for (const Yarn& yarn : m_yarns) {
        QPixmap swatch(14, 14);
        swatch.fill(QColor(static_cast<QRgb>(yarn.colour)));
        m_yarn->addItem(QIcon(swatch),
                        yarn.name.empty() ? toQt(yarn.code) : toQt(yarn.code + "  " + yarn.name));
        if (yarn.id == row.yarn)
            m_yarn->setCurrentIndex(m_yarn->count() - 1);
    }
    m_joins = new QCheckBox(tr("&join it here"), this);
    m_joins->setChecked(row.start.joins);
    addRow(tr("&Yarn"), m_yarn, m_joins);

    m_start = new QComboBox(this);
    m_start->setObjectName(QStringLiteral("start"));
    m_start->addItems(
        {tr("where the last row ended"), tr("after slipping some stitches"), tr("at the edge")});
    m_start->setCurrentIndex(static_cast<int>(row.start.kind));
    m_slip = new QuantityEdit(sizes, 1, mostCount, this);
    m_slip->setQuantity(row.start.kind == StartKind::AfterSlipping ? row.start.slip : Quantity(1));
    m_slip->setAccessibleName(tr("Stitches slipped before the row starts"));
    addRow(tr("S&tarts"), m_start, m_slip);

    m_finish = new QComboBox(this);
    m_finish->setObjectName(QStringLiteral("finish"));
    m_finish->addItems({tr("turn at the end"), tr("turn early (short row)"), tr("slide to the other end"),
                        tr("go on in the round"), tr("bind off")});
    m_finish->setCurrentIndex(static_cast<int>(row.finish.kind));
    m_breaks = new QCheckBox(tr("&break the yarn"), this);
    m_breaks->setChecked(row.finish.breaksYarn);
    addRow(tr("&Finishes"), m_finish, m_breaks);
    m_method = new QComboBox(this);
    m_method->setObjectName(QStringLiteral("method"));
    m_method->addItems(turnMethodNames());
    m_method->setCurrentIndex(static_cast<int>(row.finish.method));
    addRow(tr("&Method of turning"), m_method);

    m_states = new QCheckBox(tr("&print this count:"), this);
    m_states->setChecked(row.stated.has_value());
    m_stated = new QuantityEdit(sizes, 0, mostCount, this);
    m_stated->setAccessibleName(tr("Stitch count that is printed"));
    if (row.stated)
        m_stated->setQuantity(*row.stated);
    addRow(tr("Stitch count"), m_states, m_stated);

    m_label = new QLineEdit(toQt(row.label), this);
    m_label->setObjectName(QStringLiteral("label"));
    m_label->setMaxLength(20);
    m_label->setPlaceholderText(tr("counted by itself"));
    addRow(tr("Row &number"), m_label);
    m_note = new QLineEdit(toQt(row.note), this);
    m_note->setObjectName(QStringLiteral("note"));
    m_note->setPlaceholderText(tr("printed below the row"));
    addRow(tr("N&ote"), m_note);
    m_words = new QLineEdit(toQt(row.words), this);
    m_words->setObjectName(QStringLiteral("words"));
    m_words->setPlaceholderText(tr("instead of the words written from the chart"));
    addRow(tr("Your own &words"), m_words);
    setMinimumWidth(520);

    connect(m_start, &QComboBox::currentIndexChanged, this, &RowDialog::followChoices);
    connect(m_finish, &QComboBox::currentIndexChanged, this, &RowDialog::followChoices);
    connect(m_states, &QCheckBox::toggled, this, &RowDialog::followChoices);
    followChoices();
}

void RowDialog::followChoices()
{
    m_slip->setEnabled(m_start->currentIndex() == static_cast<int>(StartKind::AfterSlipping));
    m_method->setEnabled(m_finish->currentIndex() == static_cast<int>(FinishKind::TurnEarly));
    m_stated->setEnabled(m_states->isChecked());
}

std::optional<QString> RowDialog::whatWrong() const
{
    if (m_slip->isEnabled())
        if (const auto wrong = m_slip->whatWrong(tr("Stitches to slip")))
            return wrong;
    if (m_states->isChecked())
        return m_stated->whatWrong(tr("Stitch count"));
    return {};
}

Row RowDialog::row() const
{
    Row row = m_row;
    row.side = m_side->currentIndex() == 0 ? Side::RS : Side::WS;
    if (m_yarn->currentIndex() >= 0)
        row.yarn = m_yarns[static_cast<std::size_t>(m_yarn->currentIndex())].id;
    row.start.kind = static_cast<StartKind>(m_start->currentIndex());
    if (row.start.kind != StartKind::AfterSlipping)
        row.start.slip = m_row.start.kind == row.start.kind ? m_row.start.slip : Quantity();
    else if (const auto slip = m_slip->quantity())
        row.start.slip = *slip;
    row.start.joins = m_joins->isChecked();
    row.finish.kind = static_cast<FinishKind>(m_finish->currentIndex());
    if (row.finish.kind == FinishKind::TurnEarly)
        row.finish.method = static_cast<TurnMethod>(m_method->currentIndex());
    row.finish.breaksYarn = m_breaks->isChecked();
    row.stated = m_states->isChecked() ? m_stated->quantity() : std::optional<Quantity>{};
    row.label = fromQt(m_label->text().trimmed());
    row.note = fromQt(m_note->text().trimmed());
    row.words = fromQt(m_words->text().trimmed());
    return row;
}

} // namespace shawlwright::app
