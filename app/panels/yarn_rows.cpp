#include "app/panels/yarn_rows.h"

#include "app/document/text.h"
#include "app/panels/colour_button.h"
#include "app/panels/form_dialog.h"
#include "core/pattern/alike_yarns.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

struct YarnRows::Fields {
    ColourButton* colour;
    QLineEdit* code;
    QLineEdit* name;
    QComboBox* weight;
    QDoubleSpinBox* metres;
    QDoubleSpinBox* grams;
};

QStringList yarnWeightNames()
{
    return {YarnRows::tr("0 Lace"),        YarnRows::tr("1 Super fine"), YarnRows::tr("2 Fine"),
            YarnRows::tr("3 Light"),       YarnRows::tr("4 Medium"),     YarnRows::tr("5 Bulky"),
            YarnRows::tr("6 Super bulky"), YarnRows::tr("7 Jumbo")};
}

YarnRows::YarnRows(std::vector<Yarn> yarns, QWidget* parent) : QWidget(parent), m_yarns(std::move(yarns))
{
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(8);
    m_rows = new QWidget(this);
    outer->addWidget(m_rows);
    m_add = new QPushButton(tr("Add yarn"), this);
    m_add->setAutoDefault(false);
    connect(m_add, &QPushButton::clicked, this, &YarnRows::addYarn);
    outer->addWidget(m_add, 0, Qt::AlignLeft);
    m_alike = softLabel({}, this);
    m_alike->setWordWrap(true);
    outer->addWidget(m_alike);
    build();
}

YarnRows::~YarnRows() = default;

void YarnRows::build()
{
    m_fields.clear();
    auto* fresh = new QWidget(this);
    auto* grid = new QGridLayout(fresh);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(6);
    grid->setSizeConstraint(QLayout::SetMinimumSize); // explanations below never squeeze the fields
    const QString heads[] = {tr("Colour"), tr("Code"),          tr("Name"),
                             tr("Weight"), tr("Metres a ball"), tr("Grams a ball")};
    for (int column = 0; column < 6; ++column)
        grid->addWidget(softLabel(heads[column], fresh), 0, column);
    grid->setColumnStretch(2, 1);
    const auto number = [fresh](double value, const QString& suffix, const QString& name) {
        auto* box = new QDoubleSpinBox(fresh);
        box->setRange(0, 100000);
        box->setDecimals(0);
        box->setSuffix(suffix);
        box->setSpecialValueText(tr("not said"));
        box->setValue(value);
        box->setMinimumWidth(100);
        box->setAccessibleName(name);
        return box;
    };
    for (std::size_t i = 0; i < m_yarns.size(); ++i) {
        const Yarn& yarn = m_yarns[i];
        const int row = static_cast<int>(i) + 1;
        Fields fields{};
        fields.colour = new ColourButton(QColor(static_cast<QRgb>(yarn.colour)), fresh);
        fields.code = new QLineEdit(toQt(yarn.code), fresh);
        fields.code->setMaxLength(12);
        fields.code->setFixedWidth(72);
        fields.code->setAccessibleName(heads[1]);
        fields.name = new QLineEdit(toQt(yarn.name), fresh);
        fields.name->setMinimumWidth(140);
        fields.name->setAccessibleName(heads[2]);
        fields.weight = new QComboBox(fresh);
        fields.weight->addItem(tr("not said"));
        fields.weight->addItems(yarnWeightNames());
        fields.weight->setCurrentIndex(std::clamp(yarn.weight, -1, 7) + 1);
        fields.weight->setAccessibleName(heads[3]);
        fields.metres = number(yarn.metresPerBall, tr(" m"), heads[4]);
        fields.grams = number(yarn.gramsPerBall, tr(" g"), heads[5]);
        auto* remove = new QToolButton(fresh);
        remove->setObjectName(QStringLiteral("quiet"));
        remove->setText(tr("Remove"));
        remove->setEnabled(m_yarns.size() > 1);
        connect(
            remove, &QToolButton::clicked, this, [this, i] { removeYarn(i); }, Qt::QueuedConnection);
        connect(fields.code, &QLineEdit::editingFinished, this, &YarnRows::tellAlike);
        connect(fields.code, &QLineEdit::editingFinished, this, &YarnRows::yarnsChanged);
        connect(fields.colour, &ColourButton::colourChosen, this, &YarnRows::tellAlike);
        connect(fields.colour, &ColourButton::colourChosen, this, &YarnRows::yarnsChanged);
        int column = 0;
        for (QWidget* widget : {static_cast<QWidget*>(fields.colour), static_cast<QWidget*>(fields.code),
                                static_cast<QWidget*>(fields.name), static_cast<QWidget*>(fields.weight),
                                static_cast<QWidget*>(fields.metres), static_cast<QWidget*>(fields.grams),
                                static_cast<QWidget*>(remove)})
            grid->addWidget(widget, row, column++);
        m_fields.push_back(fields);
    }
    delete layout()->replaceWidget(m_rows, fresh);
    m_rows->hide();
    m_rows->deleteLater();
    m_rows = fresh;
    m_add->setEnabled(m_yarns.size() < 200);
    tellAlike();
}

QString YarnRows::whatIsAlike() const
{
    constexpr std::size_t mostTold = 4;
    const std::vector<Yarn> all = yarns();
    const std::vector<AlikeYarns> alike = alikeYarns(all);
    QStringList lines;
    for (std::size_t i = 0; i < alike.size() && i < mostTold; ++i)
        lines << toQt(alike[i].message) + QLatin1Char('.');
    if (alike.size() > mostTold)
        lines << tr("\u2026 and %1 more pairs.").arg(alike.size() - mostTold);
    return lines.join(QLatin1Char('\n'));
}

void YarnRows::tellAlike()
{
    const QString words = whatIsAlike();
    m_alike->setText(words);
    m_alike->setVisible(!words.isEmpty());
}

void YarnRows::takeFields()
{
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        const Fields& fields = m_fields[i];
        Yarn& yarn = m_yarns[i];
        yarn.colour = fields.colour->colour().rgb() & 0xFFFFFFu;
        yarn.code = fromQt(fields.code->text().trimmed());
        yarn.name = fromQt(fields.name->text().trimmed());
        yarn.weight = fields.weight->currentIndex() - 1;
        yarn.metresPerBall = fields.metres->value();
        yarn.gramsPerBall = fields.grams->value();
    }
}

std::vector<Yarn> YarnRows::yarns() const
{
    auto* self = const_cast<YarnRows*>(this);
    self->takeFields();
    return m_yarns;
}

std::optional<QString> YarnRows::whatWrong() const
{
    const std::vector<Yarn> all = yarns();
    for (std::size_t i = 0; i < all.size(); ++i) {
        const QString code = toQt(all[i].code);
        if (code.isEmpty())
            return tr("Yarn %1 has no code. Give it one, such as MC or CC.").arg(i + 1);
        if (code.contains(QLatin1Char(' ')) || code.contains(QLatin1Char('@')) ||
            code.contains(QLatin1Char('*')))
            return tr("The code \"%1\" has a blank, @ or * in it. Use letters and digits only.").arg(code);
        for (std::size_t j = 0; j < i; ++j)
            if (all[j].code == all[i].code)
                return tr("Yarns %1 and %2 both have the code %3. Give each its own.")
                    .arg(j + 1)
                    .arg(i + 1)
                    .arg(code);
    }
    return {};
}

void YarnRows::addYarn()
{
    takeFields();
    static constexpr std::uint32_t colours[] = {0xE9B44C, 0x3B5B8C, 0x8C3B4A, 0x4E8C5A, 0x7A5BA6, 0xC26A3D};
    Yarn yarn;
    std::uint8_t id = 1;
    while (
        std::any_of(m_yarns.begin(), m_yarns.end(), [&](const Yarn& other) { return other.id.value == id; }))
        ++id;
    yarn.id = YarnId{id};
    for (int number = 1; yarn.code.empty(); ++number) {
        const std::string code = number == 1 ? "MC" : number == 2 ? "CC" : "CC" + std::to_string(number - 1);
        if (std::none_of(m_yarns.begin(), m_yarns.end(),
                         [&](const Yarn& other) { return other.code == code; }))
            yarn.code = code;
    }
    yarn.colour = colours[m_yarns.size() % std::size(colours)];
    m_yarns.push_back(yarn);
    build();
    Q_EMIT yarnsChanged();
}

void YarnRows::removeYarn(std::size_t at)
{
    if (at >= m_yarns.size() || m_yarns.size() < 2)
        return;
    takeFields();
    m_yarns.erase(m_yarns.begin() + static_cast<std::ptrdiff_t>(at));
    build();
    Q_EMIT yarnsChanged();
}

} // namespace shawlwright::app
