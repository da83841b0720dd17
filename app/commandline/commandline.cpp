#include "app/commandline/commandline.h"

#include "app/commandline/commands.h"

#include <cerrno>
#include <cstdio>
#include <cstring>

namespace shawlwright::app {

namespace {

Answer answerTo(const Arguments& arguments)
{
    switch (arguments.command) {
    case Command::Help:
        return {0, helpText(), {}};
    case Command::ProgramVersion:
        return {0, std::string("shawlwright ") + SHAWLWRIGHT_VERSION + "\n", {}};
    case Command::Check:
        return checkCommand(arguments);
    case Command::Counts:
        return countsCommand(arguments);
    case Command::Rows:
        return rowsCommand(arguments);
    case Command::Read:
        return readCommand(arguments);
    case Command::Export:
        return exportCommand(arguments);
    case Command::Editor:
        break;
    }
    return {};
}

// A result that did not get out in full is no result: a full disk or a closed pipe gives 2.
int deliver(const Answer& answer)
{
    std::fwrite(answer.err.data(), 1, answer.err.size(), stderr);
    const bool whole = std::fwrite(answer.out.data(), 1, answer.out.size(), stdout) == answer.out.size();
    if (!whole || std::fflush(stdout) != 0) {
        std::fprintf(stderr, "shawlwright: the result could not be written to standard output (%s).\n",
                     std::strerror(errno));
        return 2;
    }
    return answer.code;
}

} // namespace

std::optional<int> runCommandLine(int argc, char** argv)
{
    const auto arguments = readArguments(std::vector<std::string>(argv + (argc > 0 ? 1 : 0), argv + argc));
    if (!arguments.ok())
        return deliver(refusal(arguments.fault().message));
    if (arguments.value().command == Command::Editor)
        return std::nullopt;
    return deliver(answerTo(arguments.value()));
}

} // namespace shawlwright::app
