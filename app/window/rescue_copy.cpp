#include "app/window/rescue_copy.h"

#include "app/document/checked_save.h"
#include "app/document/text.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QStandardPaths>
#include <QUuid>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr int secondsBetween = 3;

// Beside a copy: what its file was called. Nothing in the shawl itself says that.
QString nameBeside(const QString& copy)
{
    return copy + QStringLiteral(".name");
}

void removeCopy(const QString& copy)
{
    QFile::remove(copy);
    QFile::remove(nameBeside(copy));
}

QString givenNameOf(const QString& copy)
{
    QFile beside(nameBeside(copy));
    return beside.open(QIODevice::ReadOnly) ? QString::fromUtf8(beside.read(4096)).trimmed() : QString();
}

QString nameOf(const QString& copy)
{
    if (const QString name = givenNameOf(copy); !name.isEmpty())
        return name;
    QFile file(copy);
    if (!file.open(QIODevice::ReadOnly) || file.size() > mostFileBytes)
        return {};
    const QByteArray bytes = file.readAll();
    const ReadPattern read =
        readPattern({bytes.constData(), static_cast<std::size_t>(bytes.size())}, builtInCatalogue());
    return read.pattern ? toQt(read.pattern->head.title) : QString();
}

} // namespace

QString RescueCopy::standardFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) + QStringLiteral("/rescue");
}

RescueCopy::RescueCopy(PatternDocument& document, const QString& folder, QObject* parent)
    : QObject(parent), m_document(document), m_folder(folder)
{
    QDir().mkpath(m_folder);
    m_path = QDir(m_folder).filePath(QUuid::createUuid().toString(QUuid::WithoutBraces) +
                                     QStringLiteral(".shawl"));
    m_lock = std::make_unique<QLockFile>(m_path + QStringLiteral(".lock"));
    m_lock->setStaleLockTime(0); // alive as long as its process
    m_timer.setSingleShot(true);
    m_timer.setInterval(secondsBetween * 1000);
    connect(&m_timer, &QTimer::timeout, this, &RescueCopy::writeNow);
    connect(&m_document, &PatternDocument::changed, this, [this] {
        // Not restarted by later changes: a copy is never older than the interval.
        if (m_document.modified() && !m_timer.isActive())
            m_timer.start();
    });
    connect(&m_document, &PatternDocument::modifiedChanged, this, [this] {
        if (!m_document.modified())
            letGo();
        else if (!m_timer.isActive())
            m_timer.start();
    });
}

RescueCopy::~RescueCopy()
{
    letGo();
}

void RescueCopy::writeNow()
{
    m_timer.stop();
    if (!m_document.modified())
        return;
    if (!m_lock->isLocked())
        m_lock->tryLock();
    // The name goes first: a copy is never without it. Where it can't be written the title has to do.
    if (const QString name = m_document.givenName(); name.isEmpty())
        QFile::remove(nameBeside(m_path));
    else
        saveChecked(nameBeside(m_path), name.toUtf8());
    const auto wrong = saveChecked(m_path, m_document.bytes());
    if (wrong && !m_toldOnce) {
        m_toldOnce = true;
        Q_EMIT told(tr("No rescue copy can be kept, so save often: %1").arg(*wrong));
    }
}

void RescueCopy::letGo()
{
    m_timer.stop();
    removeCopy(m_path);
    m_lock->unlock();
}

std::vector<LeftBehind> RescueCopy::leftBehind() const
{
    std::vector<LeftBehind> left;
    const QFileInfoList copies =
        QDir(m_folder).entryInfoList({QStringLiteral("*.shawl")}, QDir::Files, QDir::Time);
    for (const QFileInfo& copy : copies) {
        if (copy.absoluteFilePath() == QFileInfo(m_path).absoluteFilePath())
            continue;
        auto lock = std::make_shared<QLockFile>(copy.absoluteFilePath() + QStringLiteral(".lock"));
        lock->setStaleLockTime(0);
        if (!lock->tryLock(0))
            continue; // its window still runs
        // Each one is offered: with no name, no title, or such that opening it has to say what is wrong.
        left.push_back({copy.absoluteFilePath(), nameOf(copy.absoluteFilePath()), copy.lastModified(),
                        std::move(lock)});
    }
    return left;
}

std::optional<QString> RescueCopy::open(const LeftBehind& left)
{
    QFile file(left.copy);
    if (!file.open(QIODevice::ReadOnly))
        return tr("The rescue copy %1 can't be read: %2.").arg(left.copy, file.errorString());
    const QByteArray bytes = file.readAll();
    file.close();
    ReadPattern read =
        readPattern({bytes.constData(), static_cast<std::size_t>(bytes.size())}, builtInCatalogue());
    if (!read.pattern)
        return read.faults.empty() ? tr("The rescue copy is empty.") : toQt(toText(read.faults.front()));
    m_document.startNew(std::move(*read.pattern), givenNameOf(left.copy));
    m_document.undoStack().resetClean(); // what was rescued is not saved yet
    // The old copy goes once this window holds one of its own.
    writeNow();
    if (QFile::exists(m_path))
        throwAway(left);
    return {};
}

void RescueCopy::throwAway(const LeftBehind& left)
{
    removeCopy(left.copy);
    if (left.lock)
        left.lock->unlock();
}

} // namespace shawlwright::app
