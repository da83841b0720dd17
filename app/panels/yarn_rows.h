// The yarns of a pattern as rows of fields: colour, code, name, weight, length and weight of a ball.
//
// Shape:   a yarn keeps its id; a new one gets the smallest that is free.
// Errors:  whatWrong(): a code that is empty, doubled, or holds a blank; fewer than one yarn.
#pragma once

#include "core/pattern/pattern.h"

#include <QWidget>

#include <optional>
#include <vector>

class QGridLayout;
class QLabel;
class QPushButton;

namespace shawlwright::app {

class YarnRows : public QWidget {
    Q_OBJECT
public:
    explicit YarnRows(std::vector<Yarn> yarns, QWidget* parent = nullptr);

    std::vector<Yarn> yarns() const;
    std::optional<QString> whatWrong() const;
    QString whatIsAlike() const; // yarns that can't be told apart by their colours; a line each, empty: none

Q_SIGNALS:
    void yarnsChanged(); // one came or went, or a code was typed

private:
    void takeFields();
    void tellAlike();
    void build();
    void addYarn();
    void removeYarn(std::size_t at);

    struct Fields;
    std::vector<Yarn> m_yarns;
    std::vector<Fields> m_fields;
    QWidget* m_rows = nullptr;
    QPushButton* m_add = nullptr;
    QLabel* m_alike = nullptr;

public:
    ~YarnRows() override;
};

// The standard yarn weight categories, 0 to 7. Source: Craft Yarn Council, Standard Yarn Weight System.
QStringList yarnWeightNames();

} // namespace shawlwright::app
