#include "app/panels/number_fields.h"

#include <QCoreApplication>

namespace shawlwright::app {

namespace {

// "2,25" and "2.25" are both understood, whatever the desktop's language.
class EitherPoint : public QDoubleSpinBox {
public:
    using QDoubleSpinBox::QDoubleSpinBox;

    double valueFromText(const QString& text) const override
    {
        return QDoubleSpinBox::valueFromText(ours(text));
    }
    QValidator::State validate(QString& text, int& at) const override
    {
        QString asked = ours(text);
        return QDoubleSpinBox::validate(asked, at);
    }
    QString textFromValue(double value) const override
    {
        // As short as can be: "4", "4.5", "2.25".
        QString text = QString::number(value, 'f', decimals());
        if (text.contains(QLatin1Char('.'))) {
            while (text.endsWith(QLatin1Char('0')))
                text.chop(1);
            if (text.endsWith(QLatin1Char('.')))
                text.chop(1);
        }
        return text.replace(QLatin1Char('.'), locale().decimalPoint());
    }

private:
    QString ours(QString text) const
    {
        const QString point = locale().decimalPoint();
        return text.replace(QLatin1Char('.'), point).replace(QLatin1Char(','), point);
    }
};

} // namespace

QSpinBox* stitchCount(int value, int least, int most, QWidget* parent)
{
    auto* box = new QSpinBox(parent);
    box->setRange(least, most);
    box->setValue(value);
    setUnit(*box, QCoreApplication::translate("NumberFields", " stitch"), QCoreApplication::translate("NumberFields", " stitches"));
    return box;
}

void setUnit(QSpinBox& box, const QString& one, const QString& more)
{
    const bool follows = box.property("unitOfOne").isValid();
    box.setProperty("unitOfOne", one);
    box.setProperty("unitOfMore", more);
    const auto follow = [&box] { box.setSuffix(box.property(box.value() == 1 ? "unitOfOne" : "unitOfMore").toString()); };
    follow();
    if (!follows)
        QObject::connect(&box, &QSpinBox::valueChanged, &box, follow);
}

QDoubleSpinBox* lengthField(double value, double least, double most, const QString& suffix, QWidget* parent)
{
    auto* box = new EitherPoint(parent);
    box->setDecimals(2);
    box->setRange(least, most);
    box->setSingleStep(0.25);
    box->setSuffix(suffix);
    box->setValue(value);
    return box;
}

} // namespace shawlwright::app
