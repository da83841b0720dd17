#include "app/panels/pattern_dialogs.h"

#include "app/document/text.h"
#include "app/panels/number_fields.h"
#include "app/panels/quantity_edit.h"
#include "app/panels/row_dialog.h"
#include "app/panels/yarn_rows.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

YarnsDialog::YarnsDialog(const PatternHead& head, QWidget* parent)
    : FormDialog(tr("Yarns"), tr("Keep"), parent), m_head(head), m_yarns(new YarnRows(head.yarns, this))
{
    body()->addWidget(m_yarns);
    body()->addStretch();
    connect(m_yarns, &YarnRows::yarnsChanged, this, &YarnsDialog::grow);
}

PatternHead YarnsDialog::head() const
{
    PatternHead head = m_head;
    head.yarns = m_yarns->yarns();
    return head;
}

std::optional<QString> YarnsDialog::whatWrong() const
{
    return m_yarns->whatWrong();
}

MarkersDialog::MarkersDialog(const PatternHead& head, QWidget* parent)
    : FormDialog(tr("Markers"), tr("Keep"), parent), m_markers(head.markers)
{
    if (m_markers.empty())
        addNote(tr("There is no marker yet. Place one in the chart with the tool Marker."));
    auto* form = addForm();
    for (const Marker& marker : m_markers) {
        auto* name = new QLineEdit(toQt(marker.name), this);
        name->setMaxLength(20);
        form->addRow(tr("Marker %1").arg(toQt(marker.name)), name);
        m_names.push_back(name);
    }
    body()->addStretch();
    setMinimumWidth(320);
}

std::vector<Marker> MarkersDialog::markers() const
{
    std::vector<Marker> markers = m_markers;
    for (std::size_t i = 0; i < markers.size(); ++i)
        markers[i].name = fromQt(m_names[i]->text().trimmed());
    return markers;
}

std::optional<QString> MarkersDialog::whatWrong() const
{
    const std::vector<Marker> all = markers();
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].name.empty())
            return tr("Marker %1 has lost its name. Give it one, such as A.").arg(toQt(m_markers[i].name));
        for (std::size_t j = 0; j < i; ++j)
            if (all[i].name == all[j].name)
                return tr("Two markers are called %1. Give each its own name.").arg(toQt(all[i].name));
    }
    return {};
}

PatternDialog::PatternDialog(const PatternHead& head, QWidget* parent)
    : FormDialog(tr("Pattern"), tr("Keep"), parent), m_head(head)
{
    auto* tabs = new QTabWidget(this);
    body()->addWidget(tabs, 1);
    const auto page = [&](const QString& name) {
        auto* widget = new QWidget(tabs);
        auto* layout = new QVBoxLayout(widget);
        layout->setContentsMargins(0, 16, 0, 0);
        tabs->addTab(widget, name);
        QFormLayout* form = addForm(layout);
        layout->addStretch();
        return form;
    };

    auto* front = page(tr("Title page"));
    m_title = new QLineEdit(toQt(head.title), this);
    m_title->setObjectName(QStringLiteral("title"));
    front->addRow(tr("&Title"), m_title);
    m_designer = new QLineEdit(toQt(head.designer), this);
    front->addRow(tr("&Designer"), m_designer);
    m_introduction = new QPlainTextEdit(toQt(head.introduction), this);
    m_introduction->setTabChangesFocus(true);
    front->addRow(tr("&Introduction"), m_introduction);
    m_notes = new QPlainTextEdit(toQt(head.notes), this);
    m_notes->setTabChangesFocus(true);
    front->addRow(tr("&Notes"), m_notes);

    auto* knitting = page(tr("Knitting"));
    m_castOn = new QuantityEdit(sizeNames(head), 1, mostCount, this);
    m_castOn->setObjectName(QStringLiteral("castOn"));
    m_castOn->setQuantity(head.castOn.stitches);
    knitting->addRow(tr("&Cast on"), m_castOn);
    knitting->addRow(QString(), m_castOn->sizesHint());
    m_castOnYarn = new QComboBox(this);
    for (const Yarn& yarn : head.yarns) {
        m_castOnYarn->addItem(toQt(yarn.code));
        if (yarn.id == head.castOn.yarn)
            m_castOnYarn->setCurrentIndex(m_castOnYarn->count() - 1);
    }
    knitting->addRow(tr("&With"), m_castOnYarn);
    m_method = new QLineEdit(toQt(head.castOn.method), this);
    knitting->addRow(tr("&Method"), m_method);
    m_firstSide = new QComboBox(this);
    m_firstSide->addItems({tr("Right side"), tr("Wrong side")});
    m_firstSide->setCurrentIndex(head.castOn.firstSide == Side::RS ? 0 : 1);
    knitting->addRow(tr("Row &1 is a"), m_firstSide);
    m_stitches = lengthField(head.gauge.stitches, 1, 100, tr(" sts to 10 cm"), this);
    knitting->addRow(tr("Gauge, &stitches"), m_stitches);
    m_rows = lengthField(head.gauge.rows, 1, 200, tr(" rows to 10 cm"), this);
    knitting->addRow(tr("Gauge, &rows"), m_rows);
    m_over = new QLineEdit(toQt(head.gauge.over), this);
    knitting->addRow(tr("&Over"), m_over);
    m_needle = lengthField(head.needleMm, 0.5, 50, tr(" mm"), this);
    knitting->addRow(tr("&Needle"), m_needle);

    auto* versions = page(tr("Versions and sizes"));
    const auto list = [](const std::vector<std::string>& names) {
        QStringList words;
        for (const std::string& name : names)
            words << toQt(name);
        return words.join(QStringLiteral(", "));
    };
    m_versions = new QLineEdit(list(head.versions), this);
    m_versions->setObjectName(QStringLiteral("versions"));
    m_versions->setPlaceholderText(tr("one version only"));
    versions->addRow(tr("&Versions"), m_versions);
    versions->addRow(
        QString(), softLabel(tr("Ways to knit the same shawl, with commas: Garter, Brioche. In the settings "
                                "of a section you say which versions it belongs to."),
                             this));
    m_sizes = new QLineEdit(list(head.sizes), this);
    m_sizes->setObjectName(QStringLiteral("sizes"));
    m_sizes->setPlaceholderText(tr("one size only"));
    connect(m_sizes, &QLineEdit::textChanged, this, [this] { m_castOn->setSizes(listed(*m_sizes)); });
    versions->addRow(tr("&Sizes"), m_sizes);
    versions->addRow(QString(),
                     softLabel(tr("With commas: Small, Medium, Large. Counts may then be given once for all "
                                  "sizes or once for each."),
                               this));

    setMinimumSize(560, 480);
}

QStringList PatternDialog::listed(const QLineEdit& field) const
{
    QStringList names;
    for (const QString& part : field.text().split(QLatin1Char(',')))
        if (!part.trimmed().isEmpty())
            names << part.trimmed();
    return names;
}

std::optional<QString> PatternDialog::whatWrong() const
{
    if (m_title->text().trimmed().isEmpty())
        return tr("The shawl has no title. Give it one.");
    for (const auto* field : {m_versions, m_sizes}) {
        const QStringList names = listed(*field);
        const bool version = field == m_versions;
        if (QSet<QString>(names.begin(), names.end()).size() != names.size())
            return version ? tr("Two versions have the same name. Give each its own.")
                           : tr("Two sizes have the same name. Give each its own.");
    }
    const QStringList sizes = listed(*m_sizes);
    QuantityEdit asked(sizes, 1, mostCount);
    asked.setText(m_castOn->text());
    return asked.whatWrong(tr("Cast on"));
}

PatternHead PatternDialog::head() const
{
    PatternHead head = m_head;
    head.title = fromQt(m_title->text().trimmed());
    head.designer = fromQt(m_designer->text().trimmed());
    head.introduction = fromQt(m_introduction->toPlainText());
    head.notes = fromQt(m_notes->toPlainText());
    const auto names = [&](const QLineEdit& field) {
        std::vector<std::string> out;
        for (const QString& name : listed(field))
            out.push_back(fromQt(name));
        return out;
    };
    head.versions = names(*m_versions);
    head.sizes = names(*m_sizes);
    QuantityEdit asked(listed(*m_sizes), 1, mostCount);
    asked.setText(m_castOn->text());
    head.castOn.stitches = asked.quantity().value_or(head.castOn.stitches);
    if (m_castOnYarn->currentIndex() >= 0)
        head.castOn.yarn = head.yarns[static_cast<std::size_t>(m_castOnYarn->currentIndex())].id;
    head.castOn.method = fromQt(m_method->text().trimmed());
    head.castOn.firstSide = m_firstSide->currentIndex() == 0 ? Side::RS : Side::WS;
    // A field that was not touched keeps the value it has beyond the decimals shown.
    const auto keep = [](double was, const QDoubleSpinBox& field) {
        return std::abs(was - field.value()) < 0.0051 ? was : field.value();
    };
    head.gauge.stitches = keep(head.gauge.stitches, *m_stitches);
    head.gauge.rows = keep(head.gauge.rows, *m_rows);
    head.gauge.over = fromQt(m_over->text().trimmed());
    head.needleMm = keep(head.needleMm, *m_needle);
    return head;
}

SectionDialog::SectionDialog(const SectionFrame& frame, const PatternHead& head, QWidget* parent)
    : FormDialog(tr("Section settings"), tr("Keep"), parent), m_frame(frame)
{
    auto* form = addForm();
    m_title = new QLineEdit(toQt(frame.title), this);
    m_title->setObjectName(QStringLiteral("title"));
    form->addRow(tr("&Title"), m_title);
    m_note = new QPlainTextEdit(toQt(frame.note), this);
    m_note->setTabChangesFocus(true);
    m_note->setPlaceholderText(tr("printed above the rows"));
    m_note->setMaximumHeight(110);
    form->addRow(tr("&Note"), m_note);
    if (!head.versions.empty()) {
        auto* list = new QVBoxLayout;
        for (const std::string& version : head.versions) {
            auto* box = new QCheckBox(toQt(version), this);
            box->setChecked(frame.versions.empty() || std::find(frame.versions.begin(), frame.versions.end(),
                                                                version) != frame.versions.end());
            list->addWidget(box);
            m_versions.push_back(box);
        }
        form->addRow(tr("Belongs to"), list);
    }
    body()->addStretch();
    setMinimumWidth(440);
}

std::optional<QString> SectionDialog::whatWrong() const
{
    if (m_title->text().trimmed().isEmpty())
        return tr("The section has no title. Give it one.");
    if (!m_versions.empty() && std::none_of(m_versions.begin(), m_versions.end(),
                                            [](const QCheckBox* box) { return box->isChecked(); }))
        return tr("The section belongs to no version and would never be knit. Tick one at least.");
    return {};
}

SectionFrame SectionDialog::frame() const
{
    SectionFrame frame = m_frame;
    frame.title = fromQt(m_title->text().trimmed());
    frame.note = fromQt(m_note->toPlainText());
    if (!m_versions.empty()) {
        frame.versions.clear();
        const bool all = std::all_of(m_versions.begin(), m_versions.end(),
                                     [](const QCheckBox* box) { return box->isChecked(); });
        for (const QCheckBox* box : m_versions)
            if (!all && box->isChecked())
                frame.versions.push_back(fromQt(box->text()));
    }
    return frame;
}

} // namespace shawlwright::app
