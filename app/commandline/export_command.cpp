#include "app/commandline/commands.h"
#include "app/commandline/opened_pattern.h"

#include "app/document/text.h"
#include "app/exports/export_file.h"
#include "core/base/text.h"

#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>

#include <algorithm>
#include <cstdio>
#include <memory>

namespace shawlwright::app {

namespace {

Result<ExportKind> kindOf(const Arguments& arguments)
{
    if (arguments.as) {
        if (const auto kind = exportKind(*arguments.as))
            return *kind;
        return Fault{{}, {}, "--as takes svg, pdf, png or txt, not \"" + *arguments.as + "\"."};
    }
    if (arguments.out == "-")
        return Fault{{}, {}, "Standard output has no ending: say --as svg, pdf, png or txt."};
    const std::string ending = fromQt(QFileInfo(QFile::decodeName(arguments.out.c_str())).suffix());
    if (const auto kind = exportKind(ending))
        return *kind;
    return Fault{{},
                 {},
                 (ending.empty() ? "\"" + arguments.out + "\" has no ending"
                                 : "Nothing can be exported as ." + ending) +
                     "; the endings that work are " + exportEndings() + "."};
}

// Qt's remarks on its surroundings (no folder for sockets, a locale it would rather have) are no news to a
// knitter.
void seriousOnly(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    if (type == QtCriticalMsg || type == QtFatalMsg)
        std::fprintf(stderr, "shawlwright: %s\n", qPrintable(message));
}

// Fonts come with a GUI application; the platform without a screen is chosen here, whatever the environment
// says.
std::unique_ptr<QGuiApplication> offscreenApplication()
{
    static int argc = 1;
    static char name[] = "shawlwright";
    static char* argv[] = {name, nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(seriousOnly);
    return std::make_unique<QGuiApplication>(argc, argv);
}

std::string errorsInWords(const OpenedPattern& opened)
{
    const Ledger ledger = run(opened.pattern, opened.catalogue, opened.choice);
    const auto errors = static_cast<int>(std::ranges::count_if(ledger.findings, [](const Finding& finding) {
        return finding.severity == Severity::Error && finding.followsFrom < 0;
    }));
    if (errors == 0)
        return {};
    return "shawlwright: note: this pattern has " + counted(errors, "error") +
           "; \"shawlwright check\" lists them.\n";
}

} // namespace

Answer exportCommand(const Arguments& arguments)
{
    const auto kind = kindOf(arguments);
    if (!kind.ok())
        return refusal(kind.fault().message);
    const auto opened = openPattern(arguments);
    if (!opened.ok())
        return refusal(opened.fault().message);
    const OpenedPattern& it = opened.value();

    ExportOptions options;
    options.choice = it.choice;
    options.everyVersion = !arguments.version;
    options.everySize = !arguments.size;
    options.cellMm = arguments.cellMm.value_or(options.cellMm);
    options.dpi = arguments.dpi.value_or(options.dpi);
    options.paper = arguments.paper == "letter" ? Paper::Letter : Paper::A4;
    options.plainWsRows = !arguments.withoutPlainWs;
    options.lettering = arguments.outlines ? Lettering::Outlines : Lettering::Text;
    if (arguments.section) {
        const auto sections = chosenSections(it, arguments.section);
        if (!sections.ok())
            return refusal(sections.fault().message);
        if (sections.value().size() > 1)
            return refusal("There are " + toText(static_cast<int>(sections.value().size())) + " sections \"" +
                           *arguments.section + "\"; give them different titles to export one of them.");
        options.section = it.pattern.sections[static_cast<std::size_t>(sections.value().front())].id;
    }

    const bool toStream = arguments.out == "-";
    const QString path = QFile::decodeName(arguments.out.c_str());
    const QString source = arguments.file == "-" ? QString() : QFile::decodeName(arguments.file.c_str());
    if (!toStream)
        if (const auto refused = refusedTarget(path, source))
            return refusal(fromQt(*refused));

    std::unique_ptr<QGuiApplication> application;
    if (needsFonts(kind.value(), options))
        application = offscreenApplication();
    const auto bytes = exported(it.pattern, it.catalogue, kind.value(), options);
    if (!bytes.ok())
        return refusal(bytes.fault().message);
    const std::string note = errorsInWords(it);
    if (toStream)
        return {0, bytes.value().toStdString(), note};
    if (const auto fault = writeExported(path, bytes.value()))
        return refusal(fromQt(*fault));
    return {0, {}, note};
}

} // namespace shawlwright::app
