package headertank.app.handover.page;

import headertank.app.check.figure.FigureText;
import headertank.app.check.figure.ShopFigures;
import headertank.app.check.stored.CheckResult.FlagLine;
import headertank.app.gate.CarFault;
import headertank.app.handover.Handover;
import headertank.app.handover.item.CheckItem;
import headertank.app.handover.item.ChecklistLine;
import headertank.app.handover.item.ChecklistTask;
import headertank.app.handover.item.MeasuredQuantity;
import headertank.app.handover.item.ReadingComparison;
import headertank.app.shop.Shops;
import headertank.app.unit.Units;
import headertank.calc.result.IdleExpectation.Band;
import java.util.List;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** How items and readings are put into words, in the shop's units. */
@Component("handoverText")
public class HandoverText {

    private static final String DOTS = "…";

    private final MessageSource messages;
    private final ShopFigures figures;
    private final Shops shops;

    HandoverText(MessageSource messages, ShopFigures figures, Shops shops) {
        this.messages = messages;
        this.figures = figures;
        this.shops = shops;
    }

    public String title(CheckItem item) {
        return item.flag().map(FlagLine::title).map(figures.current()::said).orElseGet(() -> sentence(item, ""));
    }

    public String why(CheckItem item) {
        return item.flag().map(FlagLine::reason).map(figures.current()::said).orElseGet(() -> sentence(item, ".why"));
    }

    public String how(CheckItem item) {
        return item.flag().map(FlagLine::advice).map(figures.current()::said).orElseGet(() -> sentence(item, ".how"));
    }

    private String sentence(CheckItem item, String part) {
        String named = item.field().isEmpty() ? "" : figures.value(item.field(), item.value(), item.token());
        return text(item.textKey() + part, named);
    }

    /** How many items are open, done and left out, and all of them. */
    public String progress(Handover list) {
        return text(
                "handover.progress",
                list.open().size(),
                list.done().size(),
                list.leftOut().size(),
                list.lines().size());
    }

    /** Name of an item of whichever car: where a car has its figure there are dots. */
    public String name(ChecklistTask task) {
        return text("handover.item." + task.key(), DOTS);
    }

    /** Where a fault was found: its item, whether or not the list still has it. */
    public String place(Handover list, CarFault fault) {
        return fault.item().isEmpty()
                ? text("gate.fault.whole")
                : list.line(fault.item())
                        .map(l -> title(l.item()))
                        .orElseGet(() -> messages.getMessage(
                                "handover.item." + fault.item(),
                                new Object[] {DOTS},
                                fault.item(),
                                LocaleContextHolder.getLocale()));
    }

    /** A reading that opened a fault, and what was expected then. */
    public String reading(CarFault fault) {
        CarFault.Reading reading = fault.reading().orElseThrow();
        MeasuredQuantity quantity = ChecklistTask.quantityOf(fault.item()).orElseThrow();
        Band band = new Band(reading.expected(), reading.low(), reading.high());
        return text("gate.fault.reading", value(quantity, reading.value()), expected(quantity, band));
    }

    /** What a picture without words shows. */
    public String photo(CheckItem item) {
        return text("handover.photo.of", title(item));
    }

    /** Name of the field that nobody has stated. */
    public String assumed(CheckItem item) {
        return figures.label(item.field());
    }

    /** What to look out for in these items, each caution once. */
    public List<String> cautions(List<ChecklistLine> lines) {
        return lines.stream()
                .flatMap(line -> line.item().cautions().stream())
                .distinct()
                .map(c -> text("handover.caution." + c.name()))
                .toList();
    }

    /** Which unit a bare number is taken in, or how to write a time. */
    public String hint(CheckItem item) {
        MeasuredQuantity quantity = item.quantity().orElseThrow();
        return quantity.isTime()
                ? text("handover.value.time")
                : text(
                        "handover.value.hint",
                        quantity.dimension().symbol(shops.current().unitSystem()));
    }

    /** A reading. */
    public String value(CheckItem item, double si) {
        return value(item.quantity().orElseThrow(), si);
    }

    private String value(MeasuredQuantity quantity, double si) {
        FigureText shown = figures.current();
        return switch (quantity.dimension()) {
            case DURATION -> shown.duration(si);
            case TEMPERATURE -> shown.temperature(si);
            case CURRENT -> shown.current(si);
            default -> Units.show(si, quantity.dimension(), shops.current().unitSystem());
        };
    }

    /** A difference of two readings, with its sign. */
    public String difference(CheckItem item, double si) {
        MeasuredQuantity quantity = item.quantity().orElseThrow();
        double size = Math.abs(si);
        String number = quantity.isTime()
                ? figures.current().duration(size)
                : Units.show(size, quantity.difference(), shops.current().unitSystem());
        return number.matches("0([.,]0*)? .*") ? number : (si < 0 ? "−" : "+") + number;
    }

    /** What is expected, with the readings that count as expected. */
    public String expected(CheckItem item, Band band) {
        return expected(item.quantity().orElseThrow(), band);
    }

    private String expected(MeasuredQuantity quantity, Band band) {
        return Double.isInfinite(band.high())
                ? text("handover.expected.open", value(quantity, band.expected()), value(quantity, band.low()))
                : text(
                        "handover.expected",
                        value(quantity, band.expected()),
                        value(quantity, Math.max(band.low(), lowest(quantity))),
                        value(quantity, band.high()));
    }

    /** The readings that count as expected. */
    public String range(CheckItem item, Band band) {
        MeasuredQuantity quantity = item.quantity().orElseThrow();
        String low = value(quantity, Math.max(band.low(), lowest(quantity)));
        return Double.isInfinite(band.high())
                ? text("handover.range.open", low)
                : text("handover.range", low, value(quantity, band.high()));
    }

    private static double lowest(MeasuredQuantity quantity) {
        return quantity == MeasuredQuantity.CORE_DROP || quantity == MeasuredQuantity.GAUGE_AT_FAN_START
                ? Double.NEGATIVE_INFINITY
                : 0;
    }

    /** What a reading outside of that may mean. */
    public String means(CheckItem item, ReadingComparison comparison) {
        return text("handover.means." + item.key() + "." + comparison.verdict().name());
    }

    private String text(String key, Object... arguments) {
        return messages.getMessage(key, arguments, LocaleContextHolder.getLocale());
    }
}
