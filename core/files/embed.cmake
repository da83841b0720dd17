# Writes a C++ source that holds a file as bytes: cmake -DIN=... -DOUT=... -DNAME=... -P embed.cmake
# The source defines shawlwright::NAME(), a std::string_view.
file(READ "${IN}" hex HEX)
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${hex}")
string(REGEX REPLACE "((0x[0-9a-f][0-9a-f],)(0x[0-9a-f][0-9a-f],)(0x[0-9a-f][0-9a-f],)(0x[0-9a-f][0-9a-f],))" "\\1\n" bytes "${bytes}")
file(WRITE "${OUT}" "#include <string_view>
namespace shawlwright {
std::string_view ${NAME}();
namespace {
const unsigned char bytes[] = {
${bytes}};
}
std::string_view ${NAME}()
{
    return {reinterpret_cast<const char*>(bytes), sizeof bytes};
}
}
")
