#include "app/window/earlier_saves_dialog.h"

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

QString contentInWords(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return EarlierSavesDialog::tr("can't be read");
    const QByteArray bytes = file.readAll();
    const ReadPattern read =
        readPattern({bytes.constData(), static_cast<std::size_t>(bytes.size())}, builtInCatalogue());
    if (!read.pattern)
        return EarlierSavesDialog::tr("can't be read");
    std::size_t rows = 0;
    for (const Section& section : read.pattern->sections)
        rows += section.rows.size();
    const std::size_t sections = read.pattern->sections.size();
    return (sections == 1 ? EarlierSavesDialog::tr("1 section")
                          : EarlierSavesDialog::tr("%1 sections").arg(sections)) +
           (rows == 1 ? EarlierSavesDialog::tr(", 1 row") : EarlierSavesDialog::tr(", %1 rows").arg(rows));
}

} // namespace

EarlierSavesDialog::EarlierSavesDialog(std::vector<ShawlSaves> shawls, const QString& open, QWidget* parent)
    : FormDialog(tr("Earlier saves"), tr("Open as a copy"), parent), m_shawls(std::move(shawls))
{
    addNote(m_shawls.empty()
                ? tr("No earlier save is kept yet. From the next save on, the last %1 saves of each shawl are "
                     "kept here.")
                      .arg(mostEarlierSaves)
                : tr("The last %1 saves of each shawl. Opened, one is a shawl of its own without a file; your "
                     "saved file stays as it is.")
                      .arg(mostEarlierSaves));
    auto* form = addForm();
    m_shawl = new QComboBox(this);
    m_shawl->setObjectName(QStringLiteral("shawl"));
    m_shawl->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    const QString canonical = QFileInfo(open).canonicalFilePath();
    const auto isOpen = [&](const ShawlSaves& one) { return one.path == open || one.path == canonical; };
    if (!open.isEmpty() && std::none_of(m_shawls.begin(), m_shawls.end(), isOpen)) // no save of it, rather than another's
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
    body()->addWidget(m_saves, 1);
    connect(m_shawl, &QComboBox::currentIndexChanged, this, [this] { fillSaves(); });
    connect(m_saves, &QListWidget::itemActivated, this, [this] { accept(); });
    m_shawl->setEnabled(!m_shawls.empty());
    fillSaves();
    setMinimumWidth(460);
}

void EarlierSavesDialog::fillSaves()
{
    m_saves->clear();
    const bool some = m_shawl->currentIndex() >= 0 && !m_shawls[static_cast<std::size_t>(m_shawl->currentIndex())].saves.empty();
    m_saves->setEnabled(some);
    doItButton()->setEnabled(some);
    if (m_shawl->currentIndex() < 0)
        return;
    if (!some)
        m_saves->addItem(tr("no earlier save is kept; the next save keeps one"));
    for (const EarlierSave& save : m_shawls[static_cast<std::size_t>(m_shawl->currentIndex())].saves)
        m_saves->addItem(tr("%1 \u00b7 %2").arg(
            QLocale().toString(save.saved.toLocalTime(), QStringLiteral("d MMMM yyyy, HH:mm:ss")),
            contentInWords(save.copy)));
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
