#include "app/window/earlier_saves_dialog.h"

#include "app/document/text.h"
#include "app/window/save_changes.h"

#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"

#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

namespace {

std::optional<Pattern> patternIn(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return std::nullopt;
    const QByteArray bytes = file.readAll();
    return readPattern({bytes.constData(), static_cast<std::size_t>(bytes.size())}, builtInCatalogue())
        .pattern;
}

// "3 sections, 8 rows, 212 stitches charted"
QString contentInWords(const Pattern& pattern)
{
    std::size_t rows = 0, stitches = 0;
    for (const Section& section : pattern.sections) {
        rows += section.rows.size();
        for (const RowRef& row : section.rows)
            for (const Cell& cell : row->cells)
                stitches += cell.stitch != noStitch && cell.part == 0;
    }
    return oneOrMany(pattern.sections.size(), EarlierSavesDialog::tr("1 section"),
                   EarlierSavesDialog::tr("%1 sections")) +
           QStringLiteral(", ") +
           oneOrMany(rows, EarlierSavesDialog::tr("1 row"), EarlierSavesDialog::tr("%1 rows")) +
           QStringLiteral(", ") +
           oneOrMany(stitches, EarlierSavesDialog::tr("1 stitch charted"),
                   EarlierSavesDialog::tr("%1 stitches charted"));
}

} // namespace

EarlierSavesDialog::EarlierSavesDialog(std::vector<ShawlSaves> shawls, const QString& open, QWidget* parent)
    : FormDialog(tr("Earlier saves"), tr("Open as a copy"), parent), m_shawls(std::move(shawls))
{
    addNote(
        m_shawls.empty()
            ? tr("No earlier save is kept yet. From the next save on, the last %1 saves of each shawl are "
                 "kept here.")
                  .arg(mostEarlierSaves)
            : tr("The last %1 saves of each shawl, and what had changed since the save before. Opened, one "
                 "is a shawl of its own without a file; your "
                 "saved file stays as it is.")
                  .arg(mostEarlierSaves));
    auto* form = addForm();
    m_shawl = new QComboBox(this);
    m_shawl->setObjectName(QStringLiteral("shawl"));
    m_shawl->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    const QString canonical = QFileInfo(open).canonicalFilePath();
    const auto isOpen = [&](const ShawlSaves& one) { return one.path == open || one.path == canonical; };
    if (!open.isEmpty() &&
        std::none_of(m_shawls.begin(), m_shawls.end(), isOpen)) // no save of it, rather than another's
        m_shawls.insert(m_shawls.begin(), ShawlSaves{canonical.isEmpty() ? open : canonical, {}});
    for (const ShawlSaves& one : m_shawls) {
        m_shawl->addItem(QFileInfo(one.path).completeBaseName());
        m_shawl->setItemData(m_shawl->count() - 1, QDir::toNativeSeparators(one.path), Qt::ToolTipRole);
        if (isOpen(one))
            m_shawl->setCurrentIndex(m_shawl->count() - 1);
    }
    form->addRow(tr("&Shawl"), m_shawl);
    m_saves = new QListWidget(this);
    m_saves->setObjectName(QStringLiteral("saves"));
    m_saves->setAccessibleName(tr("Saves, the latest first"));
    auto* label = new QLabel(tr("Sa&ves, the latest first"), this);
    label->setBuddy(m_saves);
    body()->addWidget(label);
    body()->addWidget(m_saves);
    connect(m_shawl, &QComboBox::currentIndexChanged, this, [this] { fillSaves(); });
    connect(m_saves, &QListWidget::itemActivated, this, [this] { accept(); });
    m_shawl->setEnabled(!m_shawls.empty());
    fillSaves();
    m_saves->ensurePolished(); // its padding counts
    m_saves->setFixedHeight(mostEarlierSaves * std::max(22, m_saves->sizeHintForRow(0)) +
                            2 * m_saves->frameWidth() + 10);
    setMinimumWidth(640);
}

void EarlierSavesDialog::fillSaves()
{
    m_saves->clear();
    const bool some = m_shawl->currentIndex() >= 0 &&
                      !m_shawls[static_cast<std::size_t>(m_shawl->currentIndex())].saves.empty();
    m_saves->setEnabled(some);
    doItButton()->setEnabled(some);
    if (m_shawl->currentIndex() < 0)
        return;
    if (!some)
        m_saves->addItem(tr("no earlier save is kept; the next save keeps one"));
    const std::vector<EarlierSave>& saves = m_shawls[static_cast<std::size_t>(m_shawl->currentIndex())].saves;
    std::vector<std::optional<Pattern>> patterns;
    for (const EarlierSave& save : saves)
        patterns.push_back(patternIn(save.copy));
    for (std::size_t at = 0; at < saves.size(); ++at) {
        QStringList words{
            QLocale().toString(saves[at].saved.toLocalTime(), QStringLiteral("d MMMM yyyy, HH:mm:ss")),
            patterns[at] ? contentInWords(*patterns[at]) : tr("can't be read")};
        if (at + 1 < saves.size() && patterns[at] && patterns[at + 1])
            words << changesInWords(*patterns[at + 1], *patterns[at]);
        m_saves->addItem(words.join(QStringLiteral(" \u00b7 ")));
    }
    m_saves->setCurrentRow(some ? 0 : -1);
}

QString EarlierSavesDialog::shawl() const
{
    return m_shawls[static_cast<std::size_t>(m_shawl->currentIndex())].path;
}

EarlierSave EarlierSavesDialog::chosen() const
{
    return m_shawls[static_cast<std::size_t>(m_shawl->currentIndex())]
        .saves[static_cast<std::size_t>(m_saves->currentRow())];
}

std::optional<QString> EarlierSavesDialog::whatWrong() const
{
    if (m_saves->currentRow() < 0)
        return tr("Choose one of the saves.");
    return std::nullopt;
}

} // namespace shawlwright::app
