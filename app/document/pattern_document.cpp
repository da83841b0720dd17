#include "app/document/pattern_document.h"

#include "app/document/checked_save.h"
#include "app/document/edit_command.h"
#include "app/document/text.h"
#include "core/edits/sections.h"
#include "core/files/builtin_catalogue.h"
#include "core/files/pattern_file.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLocale>

namespace shawlwright::app {

namespace {

QString inWords(const char* text)
{
    return QCoreApplication::translate("Files", text);
}

constexpr int mostFaultsShown = 12; // a screenful

QByteArray digestOf(const QByteArray& bytes)
{
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
}

QString shown(const QString& path)
{
    return inWords("\u201c%1\u201d").arg(QDir::toNativeSeparators(path));
}

struct ReadBytes {
    QByteArray bytes;
    std::optional<QString> fault;
};

// The size is looked at before the memory is asked for, and again while reading: a pipe has none.
ReadBytes readWhole(const QString& path)
{
    const QFileInfo info(path);
    if (!info.exists())
        return {{}, inWords("%1 was not opened: there is no such file.").arg(shown(path))};
    if (info.isDir())
        return {{}, inWords("%1 was not opened: it is a folder, not a file.").arg(shown(path))};
    const auto tooLarge = [&](qint64 size) {
        return inWords("%1 was not opened: it has %2 bytes, a pattern file has at most %3.")
            .arg(shown(path), QLocale::c().toString(size), QLocale::c().toString(mostFileBytes));
    };
    if (info.size() > mostFileBytes)
        return {{}, tooLarge(info.size())};
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {{}, inWords("%1 was not opened: %2.").arg(shown(path), file.errorString())};
    ReadBytes read{file.read(static_cast<qint64>(mostFileBytes) + 1), {}};
    if (read.bytes.size() > mostFileBytes)
        read.fault = tooLarge(read.bytes.size());
    else if (file.error() != QFileDevice::NoError)
        read.fault = inWords("%1 was not opened: %2.").arg(shown(path), file.errorString());
    return read;
}

QString faultsInWords(const QString& path, const Faults& faults)
{
    QString text = inWords("%1 was not opened; it is left as it is.").arg(shown(path));
    int told = 0;
    for (const Fault& fault : faults) {
        if (told++ == mostFaultsShown) {
            text += QStringLiteral("\n\u2026 and %1 more").arg(faults.size() - mostFaultsShown);
            break;
        }
        text += QLatin1Char('\n') + toQt(toText(fault));
    }
    return text;
}

struct OpenedFile {
    QByteArray bytes;
    Pattern pattern;
    std::optional<QString> fault;
};

OpenedFile openedFile(const QString& path)
{
    ReadBytes file = readWhole(path);
    if (file.fault)
        return {{}, {}, file.fault};
    ReadPattern read = readPattern({file.bytes.constData(), static_cast<std::size_t>(file.bytes.size())},
                                   builtInCatalogue());
    if (!read.pattern)
        return {{}, {}, faultsInWords(path, read.faults)};
    return {std::move(file.bytes), std::move(*read.pattern), {}};
}

Change everything()
{
    Change change;
    change.all = true;
    change.head = true;
    return change;
}

} // namespace

PatternDocument::PatternDocument(QObject* parent) : QObject(parent), m_pattern(newPattern({}))
{
    m_derived = std::make_unique<Derived>(builtInCatalogue(), m_pattern);
    connect(&m_undo, &QUndoStack::cleanChanged, this, &PatternDocument::modifiedChanged);
}

PatternDocument::~PatternDocument()
{
    m_undo.disconnect(this); // its own end must not speak through a half-gone document
}

bool PatternDocument::perform(const Edit& edit, int stroke)
{
    if (m_readOnly) {
        Q_EMIT told(tr("%1 is open to be read only. Save it under another name to change it.").arg(displayName()));
        return false;
    }
    if (edit.empty())
        return true;
    Q_EMIT aboutToPerform(m_undo.index());
    m_undo.push(new EditCommand(*this, edit, stroke));
    return true;
}

bool PatternDocument::performOrTell(const Result<Edit>& edit, int stroke)
{
    if (!edit.ok()) {
        Q_EMIT told(toQt(toText(edit.fault())));
        return false;
    }
    return perform(edit.value(), stroke);
}

int PatternDocument::newStroke()
{
    return ++m_lastStroke;
}

void PatternDocument::takeBackStroke(int stroke)
{
    // Saving in the middle of a stroke leaves it in two steps; both go.
    while (stroke > 0 && m_undo.canUndo()) {
        const auto* last = dynamic_cast<const EditCommand*>(m_undo.command(m_undo.index() - 1));
        if (!last || last->stroke() != stroke)
            return;
        const_cast<EditCommand*>(last)->forgetWhenUndone(); // the stack hands out its commands as const only
        m_undo.undo();
    }
}

void PatternDocument::showChoice(RunChoice choice)
{
    if (choice == m_derived->choice())
        return;
    m_derived->show(m_pattern, choice);
    Q_EMIT choiceChanged();
}

Edit PatternDocument::applyNow(const Edit& edit, Going going)
{
    ++m_changes;
    Applied applied = apply(m_pattern, edit);
    applied.takeBack.name = edit.name;
    const Reworked reworked = m_derived->update(m_pattern);
    Q_EMIT changed(applied.change, reworked);
    if (going != Going::First)
        Q_EMIT revisited(applied.change, applied.takeBack, going);
    return std::move(applied.takeBack);
}

void PatternDocument::replaceAll(Pattern pattern)
{
    ++m_changes;
    m_readOnly = false;
    m_undo.clear(); // first: its commands name rows of the old pattern
    m_pattern = std::move(pattern);
    m_derived = std::make_unique<Derived>(builtInCatalogue(), m_pattern);
    m_undo.setClean();
    Q_EMIT changed(everything(), Reworked{0, static_cast<int>(m_derived->ledger().lines.size()), true});
    Q_EMIT choiceChanged();
    Q_EMIT replaced();
    Q_EMIT pathChanged();
}

void PatternDocument::startNew(Pattern pattern, const QString& name)
{
    m_path.clear();
    m_name = name;
    m_digest.clear();
    replaceAll(std::move(pattern));
}

std::optional<QString> PatternDocument::load(const QString& path)
{
    OpenedFile file = openedFile(path);
    if (file.fault)
        return file.fault;
    m_path = path;
    m_digest = digestOf(file.bytes);
    replaceAll(std::move(file.pattern));
    return std::nullopt;
}

std::optional<QString> PatternDocument::loadCopy(const QString& path, const QString& name)
{
    OpenedFile file = openedFile(path);
    if (file.fault)
        return file.fault;
    startNew(std::move(file.pattern), name);
    return std::nullopt;
}

void PatternDocument::keepMine()
{
    const ReadBytes file = readWhole(m_path);
    m_digest = file.fault ? QByteArray() : digestOf(file.bytes);
    m_undo.resetClean();
}

QByteArray PatternDocument::bytes() const
{
    const std::string text = writePattern(m_pattern, builtInCatalogue());
    return QByteArray(text.data(), static_cast<qsizetype>(text.size()));
}

std::optional<QString> PatternDocument::save(const QString& path)
{
    const QByteArray text = bytes();
    if (auto fault = saveChecked(path, text))
        return fault;
    m_path = path;
    m_digest = digestOf(text);
    m_readOnly = false;
    m_undo.setClean();
    Q_EMIT pathChanged();
    return std::nullopt;
}

OnDisk PatternDocument::onDisk() const
{
    if (m_path.isEmpty())
        return OnDisk::Same;
    const ReadBytes file = readWhole(m_path);
    if (file.fault)
        return QFileInfo::exists(m_path) ? OnDisk::Changed : OnDisk::Gone;
    return digestOf(file.bytes) == m_digest ? OnDisk::Same : OnDisk::Changed;
}

QString PatternDocument::givenName() const
{
    return m_path.isEmpty() ? m_name : QFileInfo(m_path).completeBaseName();
}

QString PatternDocument::displayName() const
{
    if (const QString name = givenName(); !name.isEmpty())
        return name;
    return m_pattern.head.title.empty() ? inWords("New shawl") : toQt(m_pattern.head.title);
}

} // namespace shawlwright::app
