#include "app/panels/increases_dialog.h"

#include "app/document/text.h"
#include "app/panels/number_fields.h"
#include "app/panels/plain_rows_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

#include <algorithm>

namespace shawlwright::app {

namespace {

QSpinBox* everyRows(int value, const char* name, QWidget* parent)
{
    auto* box = stitchCount(value, 1, 100, parent);
    box->setPrefix(IncreasesDialog::tr("every "));
    setUnit(*box, IncreasesDialog::tr(" row"), IncreasesDialog::tr(" rows"));
    box->setSpecialValueText(IncreasesDialog::tr("every row"));
    box->setObjectName(QString::fromLatin1(name));
    return box;
}

QCheckBox* tick(const QString& words, const char* name, bool on, QWidget* parent)
{
    auto* box = new QCheckBox(words, parent);
    box->setObjectName(QString::fromLatin1(name));
    box->setChecked(on);
    return box;
}

} // namespace

IncreasesDialog::IncreasesDialog(const QStringList& begins, const std::vector<Marker>& markers,
                                 const std::vector<Yarn>& yarns, int stitches, const IncreaseWishes& first,
                                 Preview preview, QWidget* parent)
    : FormDialog(tr("Rows with increases"), tr("Make them"), parent), m_markers(markers), m_yarns(yarns),
      m_preview(std::move(preview))
{
    auto* form = addForm();
    m_begin = addChoice(form, tr("&Begin"), "begin", begins);
    m_kind = addChoice(form, tr("&Where"), "kind", {tr("at places, again and again"), tr("evenly over one row")});
    m_spread = stitchCount(10, 1, mostColumns, this);
    setUnit(*m_spread, tr(" increase"), tr(" increases"));
    m_spread->setObjectName(QStringLiteral("spread"));
    m_spreadLabel = new QLabel(tr("&How many"), this);
    m_spreadLabel->setBuddy(m_spread);
    form->addRow(m_spreadLabel, m_spread);

    m_placeFields = new QWidget(this);
    // Label, where, how far from there, how often.
    auto* places = new QGridLayout(m_placeFields);
    places->setContentsMargins(0, 0, 0, 0);
    places->setHorizontalSpacing(16);
    places->setVerticalSpacing(8);
    for (const int column : {1, 2, 3})
        places->setColumnStretch(column, 1);
    const auto addPlaces = [&](const QString& words, QWidget* buddy) {
        auto* label = new QLabel(words, m_placeFields);
        label->setBuddy(buddy);
        const int row = places->rowCount();
        places->addWidget(label, row, 0);
        return row;
    };
    auto* edges = new QHBoxLayout;
    m_right = tick(tr("&right"), "right", true, m_placeFields);
    m_left = tick(tr("&left"), "left", true, m_placeFields);
    m_border = stitchCount(2, 0, 500, m_placeFields);
    m_border->setObjectName(QStringLiteral("border"));
    m_border->setPrefix(tr("inside of "));
    m_everyEdge = everyRows(2, "everyEdge", m_placeFields);
    edges->addWidget(m_right);
    edges->addWidget(m_left);
    edges->addStretch();
    int row = addPlaces(tr("At the edges"), m_right);
    places->addLayout(edges, row, 1);
    places->addWidget(m_border, row, 2);
    places->addWidget(m_everyEdge, row, 3);
    m_middle = tick(tr("the &middle one"), "middle", stitches % 2 == 1 && m_markers.empty(), m_placeFields);
    m_spines = new QLineEdit(m_placeFields);
    m_spines->setObjectName(QStringLiteral("spines"));
    m_spines->setPlaceholderText(tr("others, from the right edge: 12, 37"));
    row = addPlaces(tr("On both sides of a stitch"), m_middle);
    places->addWidget(m_middle, row, 1);
    places->addWidget(m_spines, row, 2, 1, 2);
    if (!m_markers.empty()) {
        auto* line = new QHBoxLayout;
        for (const Marker& marker : m_markers) {
            m_atMarker.push_back(tick(toQt(marker.name), "atMarker", true, m_placeFields));
            line->addWidget(m_atMarker.back());
        }
        line->addStretch();
        row = addPlaces(tr("At marker"), m_atMarker.front());
        places->addLayout(line, row, 1, 1, 3);
    }
    m_markerSide = new QComboBox(m_placeFields);
    m_markerSide->setObjectName(QStringLiteral("markerSide"));
    m_markerSide->addItems({tr("both sides"), tr("right of it"), tr("left of it")});
    m_markerSide->setAccessibleName(tr("Side of the marker"));
    m_markerSide->setVisible(!m_markers.empty());
    m_beside = stitchCount(0, 0, 500, m_placeFields);
    setUnit(*m_beside, tr(" stitch between"), tr(" stitches between"));
    m_beside->setSpecialValueText(tr("right beside"));
    m_beside->setObjectName(QStringLiteral("beside"));
    m_everyInner = everyRows(2, "everyInner", m_placeFields);
    row = addPlaces(tr("There"), m_beside);
    if (!m_markers.empty())
        places->addWidget(m_markerSide, row, 1);
    places->addWidget(m_beside, row, m_markers.empty() ? 1 : 2, 1, m_markers.empty() ? 2 : 1);
    places->addWidget(m_everyInner, row, 3);
    body()->addWidget(m_placeFields);

    auto* rest = addForm();
    auto* which = new QHBoxLayout;
    m_increase = new QComboBox(this);
    m_increase->setObjectName(QStringLiteral("increase"));
    m_increase->addItems({tr("yarn over"), tr("made stitch (M1)"), tr("lifted stitch (LLI, RLI)"),
                          tr("knit front and back (kfb)")});
    m_increase->setCurrentIndex(static_cast<int>(first.increase));
    m_lean = new QComboBox(this);
    m_lean->setObjectName(QStringLiteral("lean"));
    m_lean->addItems({tr("leaning away"), tr("leaning towards it")});
    which->addWidget(m_increase, 1);
    which->addWidget(m_lean);
    addLine(rest, tr("&Increase"), which, m_increase);
    auto* far = new QHBoxLayout;
    m_until = new QComboBox(this);
    m_until->setObjectName(QStringLiteral("until"));
    m_until->addItems({tr("so many rows with increases:"), tr("until there are:")});
    m_times = stitchCount(first.times, 1, mostIncreaseRows, this);
    setUnit(*m_times, {}, {});
    m_times->setObjectName(QStringLiteral("times"));
    m_stitchesWanted = stitchCount(stitches + 4 * first.times, 1, mostColumns, this);
    m_stitchesWanted->setObjectName(QStringLiteral("wanted"));
    far->addWidget(m_until, 1);
    far->addWidget(m_times);
    far->addWidget(m_stitchesWanted);
    addLine(rest, tr("How &far"), far, m_until);
    m_stitches = addChoice(rest, tr("&Other stitches"), "stitches", plainStitchNames());
    m_stitches->setCurrentIndex(static_cast<int>(first.stitches));
    m_yarn = addChoice(rest, tr("&Yarn"), "yarn", {});
    addYarns(m_yarn, m_yarns, first.yarn);
    lineUp({form, places, rest});
    m_words = addPreview(4);

    for (QComboBox* box : {m_begin, m_kind, m_markerSide, m_increase, m_lean, m_until, m_stitches, m_yarn})
        connect(box, &QComboBox::currentIndexChanged, this, [this] { follow(); });
    for (QSpinBox* box :
         {m_spread, m_border, m_everyEdge, m_beside, m_everyInner, m_times, m_stitchesWanted})
        connect(box, &QSpinBox::valueChanged, this, [this] { follow(); });
    for (QCheckBox* box : {m_right, m_left, m_middle})
        connect(box, &QCheckBox::toggled, this, [this] { follow(); });
    for (QCheckBox* box : m_atMarker)
        connect(box, &QCheckBox::toggled, this, [this] { follow(); });
    connect(m_spines, &QLineEdit::textChanged, this, [this] { follow(); });
    follow();
    setMinimumWidth(560);
}

int IncreasesDialog::begin() const
{
    return m_begin->currentIndex();
}

IncreaseWishes IncreasesDialog::wishes() const
{
    using At = IncreasePlace::At;
    IncreaseWishes wishes;
    if (m_kind->currentIndex() == 1)
        wishes.spread = m_spread->value();
    const auto add = [&](At at, int beside, int every) -> IncreasePlace& {
        IncreasePlace place;
        place.at = at;
        place.beside = beside;
        place.every = every;
        wishes.places.push_back(place);
        return wishes.places.back();
    };
    if (!wishes.spread) {
        if (m_right->isChecked())
            add(At::RightEdge, m_border->value(), m_everyEdge->value());
        if (m_left->isChecked())
            add(At::LeftEdge, m_border->value(), m_everyEdge->value());
        if (m_middle->isChecked())
            add(At::Middle, m_beside->value(), m_everyInner->value());
        for (const int stitch : numbersIn(m_spines->text()).numbers)
            add(At::Spine, m_beside->value(), m_everyInner->value()).stitch = stitch;
        const At sides[] = {At::AboutMarker, At::BeforeMarker, At::AfterMarker};
        for (std::size_t i = 0; i < m_atMarker.size(); ++i)
            if (m_atMarker[i]->isChecked())
                add(sides[std::max(0, m_markerSide->currentIndex())], m_beside->value(), m_everyInner->value())
                    .marker = m_markers[i].id;
    }
    wishes.increase = static_cast<Increase>(m_increase->currentIndex());
    wishes.lean = static_cast<LeanOf>(m_lean->currentIndex());
    wishes.times = m_times->value();
    if (m_until->currentIndex() == 1)
        wishes.until = m_stitchesWanted->value();
    wishes.stitches = static_cast<PlainStitch>(m_stitches->currentIndex());
    if (const int yarn = m_yarn->currentIndex(); yarn >= 0)
        wishes.yarn = m_yarns[static_cast<std::size_t>(yarn)].id;
    return wishes;
}

ShapingPreview IncreasesDialog::outcome() const
{
    if (const QString wrong = numbersIn(m_spines->text()).wrong; !wrong.isEmpty())
        return {false, tr("\"%1\" is no stitch number. Give numbers apart by commas, such as 12, 37.").arg(wrong)};
    return m_preview(begin(), wishes());
}

void IncreasesDialog::follow()
{
    const bool spread = m_kind->currentIndex() == 1;
    m_placeFields->setVisible(!spread);
    m_spread->setVisible(spread);
    m_spreadLabel->setVisible(spread);
    m_until->setEnabled(!spread);
    m_times->setEnabled(!spread);
    m_stitchesWanted->setEnabled(!spread);
    m_times->setVisible(m_until->currentIndex() == 0);
    m_stitchesWanted->setVisible(m_until->currentIndex() == 1);
    const auto increase = static_cast<Increase>(m_increase->currentIndex());
    m_lean->setEnabled(increase == Increase::MadeStitch || increase == Increase::LiftedStitch);
    const bool edges = m_right->isChecked() || m_left->isChecked();
    m_border->setEnabled(edges);
    m_everyEdge->setEnabled(edges);
    forgetWrong();
    const ShapingPreview now = outcome();
    showOutcome(*m_words, now.words, now.fits);
}

std::optional<QString> IncreasesDialog::whatWrong() const
{
    const ShapingPreview now = outcome();
    return now.fits ? std::optional<QString>{} : now.words;
}

} // namespace shawlwright::app
