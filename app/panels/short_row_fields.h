// Rows of fields that the dialogs of short rows have in common: how far they go, and how they turn.
#pragma once

#include "app/panels/shaping_fields.h"
#include "core/derived/laid_row.h"

#include <QCheckBox>
#include <QComboBox>
#include <QSpinBox>

class QLabel;

namespace shawlwright::app {

// A number of rows or turns, or until a number of stitches: the first way is of the first field, the second of the other.
class HowFarFields {
public:
    HowFarFields(QFormLayout* form, const QStringList& ways, bool second, QSpinBox* times, QSpinBox* stitches);

    QComboBox* until() const { return m_until; }
    bool untilStitches() const { return m_until->currentIndex() == 1; }
    void follow(); // shows the field of the way that is chosen

private:
    QComboBox* m_until;
    QSpinBox* m_times;
    QSpinBox* m_stitches;
};

// The method with its explanation, the stitches and the yarn of the rows; then whether the first stitch is slipped.
class TurnFields {
public:
    TurnFields(QFormLayout* form, const std::vector<Yarn>& yarns, TurnMethod method, PlainStitch stitches, YarnId yarn);
    void addSlip(QFormLayout* form, bool slips); // other rows may stand before it

    QList<QComboBox*> choices() const { return {m_method, m_stitches, m_yarn}; }
    QCheckBox* slip() const { return m_slip; }
    YarnId yarn(const std::vector<Yarn>& yarns) const
    {
        const int at = m_yarn->currentIndex();
        return at < 0 ? YarnId{} : yarns[static_cast<std::size_t>(at)].id;
    }
    void follow();

    template <typename Wishes>
    void into(Wishes& wishes, const std::vector<Yarn>& yarns) const
    {
        wishes.method = static_cast<TurnMethod>(m_method->currentIndex());
        wishes.stitches = static_cast<PlainStitch>(m_stitches->currentIndex());
        wishes.slipFirst = m_slip->isEnabled() && m_slip->isChecked();
        if (m_yarn->currentIndex() >= 0)
            wishes.yarns.push_back(yarn(yarns));
    }

private:
    QComboBox* m_method;
    QLabel* m_explained;
    QComboBox* m_stitches;
    QComboBox* m_yarn;
    QCheckBox* m_slip = nullptr;
    bool m_slips = false; // as it was chosen, where the method leaves the choice
};

} // namespace shawlwright::app
