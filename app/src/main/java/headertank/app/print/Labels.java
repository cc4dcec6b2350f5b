package headertank.app.print;

import static java.util.Map.entry;

import headertank.app.car.CarLine;
import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.check.Checks;
import headertank.app.job.CarJobs;
import headertank.app.language.Dates;
import headertank.app.shop.Shops;
import java.util.List;
import java.util.Map;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Service;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;

/** Labels for the bay a car stands in. They name the car and never its owner. */
@Service
public class Labels {

    private final CarSearch cars;
    private final Revisions revisions;
    private final Checks checks;
    private final Shops shops;
    private final CarJobs jobs;
    private final Dates dates;
    private final PublicAddress address;
    private final SpringTemplateEngine templates;
    private final PdfPaper pdf;

    Labels(
            CarSearch cars,
            Revisions revisions,
            Checks checks,
            Shops shops,
            CarJobs jobs,
            Dates dates,
            PublicAddress address,
            SpringTemplateEngine templates,
            PdfPaper pdf) {
        this.cars = cars;
        this.revisions = revisions;
        this.checks = checks;
        this.shops = shops;
        this.jobs = jobs;
        this.dates = dates;
        this.address = address;
        this.templates = templates;
        this.pdf = pdf;
    }

    /** The label of a car of this shop, with its newest revision and check. */
    public Sheets.Sheet print(long carId) {
        CarLine car = cars.car(carId);
        Context context = new Context(LocaleContextHolder.getLocale());
        context.setVariables(Map.ofEntries(
                entry("carId", car.id()),
                entry("plate", car.plate()),
                entry("title", car.title()),
                entry("revision", revisions.latest(carId).map(Revision::number).orElse(0)),
                entry("checks", checks.ofCar(carId, 1)),
                entry("jobs", openJob(carId)),
                entry("shop", shops.current()),
                entry("qr", QrCode.of(address.ofCar(carId)))));
        return new Sheets.Sheet(
                "label-" + carId + ".pdf", pdf.of(templates.process("print/label", context), PageSize.LABEL));
    }

    /** The job that the car is here for, in words; empty when none is open. */
    private List<Promise> openJob(long carId) {
        return jobs.newest(carId).stream()
                .filter(j -> !j.stage().isClosed())
                .limit(1)
                .map(j -> new Promise(j.id(), dates.weekday(j.promisedOn())))
                .toList();
    }

    /** A job and the day it is promised for. */
    record Promise(long id, String day) {}
}
