#include "tests/commandline/program.h"

#include <algorithm>
#include <cstdlib>
#include <fcntl.h>
#include <fstream>
#include <iterator>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

namespace shawlwright::tests {

namespace {

std::vector<char*> pointers(const std::vector<std::string>& words)
{
    std::vector<char*> list;
    for (const std::string& word : words)
        list.push_back(const_cast<char*>(word.c_str()));
    list.push_back(nullptr);
    return list;
}

} // namespace

Ran run(const std::vector<std::string>& words, const std::string& input, const Environment& environment)
{
    const Folder folder;
    const std::string in = folder.write("in", input), out = folder.at("out"), err = folder.at("err");
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addopen(&actions, 0, in.c_str(), O_RDONLY, 0);
    posix_spawn_file_actions_addopen(&actions, 1, out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    posix_spawn_file_actions_addopen(&actions, 2, err.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    pid_t child = 0;
    auto argv = pointers(words);
    auto envp = pointers(environment);
    const int failed =
        posix_spawn(&child, words.front().c_str(), &actions, nullptr, argv.data(), envp.data());
    posix_spawn_file_actions_destroy(&actions);
    Ran ran;
    if (failed != 0) {
        ran.err = "could not be started: " + words.front();
        return ran;
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ran.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    ran.out = bytesOf(out);
    ran.err = bytesOf(err);
    return ran;
}

Ran shawlwright(std::vector<std::string> words, const std::string& input, const Environment& environment)
{
    words.insert(words.begin(), SHAWLWRIGHT_BUILD "/app/shawlwright");
    return run(words, input, environment);
}

Ran tool(std::vector<std::string> words)
{
    const char* path = std::getenv("PATH");
    words.insert(words.begin(), "/usr/bin/env");
    return run(words, {},
               {std::string("PATH=") + (path ? path : "/usr/bin:/bin"), "LC_ALL=C.UTF-8", "HOME=/tmp"});
}

Folder::Folder()
{
    std::string path = (std::filesystem::temp_directory_path() / ("shawlwright-test-" + std::string(6, 'X')))
                           .string(); // mkdtemp fills in the last six
    if (::mkdtemp(path.data()))
        m_path = path;
}

Folder::~Folder()
{
    std::error_code ignored;
    if (!m_path.empty())
        std::filesystem::remove_all(m_path, ignored);
}

std::string Folder::write(const std::string& name, const std::string& bytes) const
{
    std::ofstream(m_path / name, std::ios::binary) << bytes;
    return at(name);
}

std::vector<std::string> Folder::names() const
{
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(m_path))
        names.push_back(entry.path().filename().string());
    std::sort(names.begin(), names.end());
    return names;
}

std::string bytesOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

} // namespace shawlwright::tests
