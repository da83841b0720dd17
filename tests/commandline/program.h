// Runs a program and gives what it said: the built one with an empty environment, or a tool of the system.
//
// Errors:  code -1 where it could not be started or was ended by a signal.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace shawlwright::tests {

struct Ran {
    int code = -1;
    std::string out, err;
};

using Environment = std::vector<std::string>; // "NAME=value"

Ran run(const std::vector<std::string>& words, const std::string& input = {},
        const Environment& environment = {});
Ran shawlwright(std::vector<std::string> words, const std::string& input = {},
                const Environment& environment = {});
Ran tool(std::vector<std::string> words); // found by PATH; under a UTF-8 locale without a comma

// A folder of its own for one test, gone afterwards.
class Folder {
public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    std::string at(const std::string& name) const { return (m_path / name).string(); }
    std::string write(const std::string& name, const std::string& bytes) const; // gives its path
    std::vector<std::string> names() const;                                     // what lies in it, sorted

private:
    std::filesystem::path m_path;
};

std::string bytesOf(const std::string& path);

} // namespace shawlwright::tests
