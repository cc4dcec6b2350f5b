package headertank.app.check.figure;

import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.StoredMessage;
import headertank.app.field.FieldText;
import headertank.app.language.Dates;
import headertank.app.language.ModelWords;
import headertank.app.shop.Shops;
import headertank.calc.carspec.BuildField;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Makes the {@link FigureText} of the current shop, and gives stored field keys their words. */
@Component("shopFigures")
public class ShopFigures {

    private final Shops shops;
    private final MessageSource messages;
    private final FieldText fields;
    private final ModelWords words;
    private final Dates dates;

    ShopFigures(Shops shops, MessageSource messages, FieldText fields, ModelWords words, Dates dates) {
        this.shops = shops;
        this.messages = messages;
        this.fields = fields;
        this.words = words;
        this.dates = dates;
    }

    public FigureText current() {
        return new FigureText(
                shops.current().unitSystem(), messages, words, dates::when, LocaleContextHolder.getLocale());
    }

    /** Name of a field, or its key when it no longer exists. */
    public String label(String fieldKey) {
        return BuildField.ofKey(fieldKey).map(fields::label).orElse(fieldKey);
    }

    /** A stored value of a field in words and units. */
    public String value(String fieldKey, double si, String token) {
        return BuildField.ofKey(fieldKey)
                .map(f -> f.isChoice() ? fields.option(f, token) : fields.show(f, si))
                .orElse(token.isEmpty() ? String.valueOf(si) : token);
    }

    /** A finding in words; one that was stored as a sentence has one of its own in the reader's units where there is one. */
    public String finding(FigureText shown, DutyResult duty, DutyResult.FindingLine finding, int samples) {
        if (!finding.text().code().equals(StoredMessage.PLAIN)) {
            return shown.said(finding.text());
        }
        String key = "check.finding." + finding.code();
        String value =
                finding.isChance() ? shown.probability(finding.figure().si(), samples) : shown.figure(finding.figure());
        String sentence = messages.getMessage(
                key, new Object[] {value, shown.margin(duty.coolantMarginK())}, null, LocaleContextHolder.getLocale());
        return sentence == null ? shown.said(finding.text()) : sentence;
    }
}
