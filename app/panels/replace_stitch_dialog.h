// Which stitch is replaced, by which, and where.
#pragma once

#include "app/panels/form_dialog.h"
#include "core/stitches/catalogue.h"

class QComboBox;
class QLabel;

namespace shawlwright::app {

class ReplaceStitchDialog : public FormDialog {
    Q_OBJECT
public:
    // `there`: the stitches of the section, `selected` those of the selection; none of the latter where
    // nothing is selected. `to`: the stitch proposed.
    ReplaceStitchDialog(const Catalogue& catalogue, std::vector<StitchId> there,
                        std::optional<std::vector<StitchId>> selected, StitchId to,
                        QWidget* parent = nullptr);

    bool wholeSection() const;
    StitchId from() const;
    StitchId to() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    void fillFrom();
    void fillTo(StitchId wanted);
    void sayCounts(); // where they change

    const Catalogue& m_catalogue;
    std::vector<StitchId> m_there;
    std::optional<std::vector<StitchId>> m_selected;
    QComboBox* m_which;
    QComboBox* m_from;
    QComboBox* m_to;
    QLabel* m_counts = nullptr;
};

} // namespace shawlwright::app
