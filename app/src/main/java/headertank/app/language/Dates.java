package headertank.app.language;

import headertank.app.shop.ShopTime;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Days and times as the reader of the page writes them. In templates: {@code ${@dates.when(r.savedAt())}}. */
@Component("dates")
public final class Dates {

    private final MessageSource messages;
    private final ShopTime time;

    Dates(MessageSource messages, ShopTime time) {
        this.messages = messages;
        this.time = time;
    }

    /** A day with its time, an instant in the zone of the shop. */
    public String when(TemporalAccessor moment) {
        return show("date.when", moment);
    }

    /** A day. */
    public String day(TemporalAccessor moment) {
        return show("date.day", moment);
    }

    /** With the day of the week, which is what people at a counter agree on. */
    public String weekday(LocalDate day) {
        return show("date.weekday", day);
    }

    private String show(String key, TemporalAccessor moment) {
        Locale locale = LocaleContextHolder.getLocale();
        return DateTimeFormatter.ofPattern(messages.getMessage(key, null, locale), locale)
                .format(moment instanceof Instant i ? time.at(i) : moment);
    }
}
