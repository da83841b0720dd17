// The one pair of functions between Qt's text and core's UTF-8.
#pragma once

#include <QString>

#include <string>
#include <string_view>

namespace shawlwright::app {

inline QString toQt(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

inline std::string fromQt(const QString& text)
{
    const QByteArray bytes = text.toUtf8();
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

// "11 sts" with a blank at which no line ends.
inline QString numbersKept(QString text)
{
    for (qsizetype at = 1; at + 1 < text.size(); ++at)
        if (text.at(at) == QLatin1Char(' ') && text.at(at - 1).isDigit() && text.at(at + 1).isLetter())
            text[at] = QChar::Nbsp;
    return text;
}

// "1 row" or "5 rows"; `many` has %1.
template <typename Number>
QString oneOrMany(Number number, const QString& one, const QString& many)
{
    return number == 1 ? one : many.arg(number);
}

// Where a place counted in code points lies in Qt's text; at most its end.
inline int positionOf(const QString& text, int codePoints)
{
    int at = 0;
    const int size = static_cast<int>(text.size());
    for (; codePoints > 0 && at < size; --codePoints)
        at += text.at(at).isHighSurrogate() ? 2 : 1;
    return at < size ? at : size;
}

} // namespace shawlwright::app
