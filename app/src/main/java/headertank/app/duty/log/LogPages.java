package headertank.app.duty.log;

import headertank.app.duty.DutyFault;
import headertank.app.duty.DutyForm;
import headertank.app.duty.DutyText;
import headertank.app.log.file.LogSource;
import headertank.app.log.read.LogQuantity;
import headertank.app.log.read.LogSummary;
import headertank.app.log.view.LogWords;
import headertank.app.log.view.MappingForm;
import headertank.app.shop.Shops;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.duty.Duty;
import headertank.calc.duty.LoggedLap;
import headertank.calc.duty.LoggedLap.Sample;
import headertank.calc.duty.ScheduleCsv;
import headertank.calc.quantity.InputException;
import headertank.calc.quantity.Range;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** From a log to a duty that its owner looks over before it is kept. Nothing is kept here. */
@Controller
class LogPages {

    /** Largest file [bytes]. */
    static final int LARGEST = 30_000_000;

    /** Longest text that a page carries back [characters]. */
    private static final int LONGEST_BACK = 1_000_000;

    private static final Range RATED_RAD_PER_S = Range.of(1000 * Math.PI / 30, 20_000 * Math.PI / 30);
    private static final Range START_K = Range.of(233.15, 403.15);
    private static final double USUAL_START_K = 353.15;

    /** What a duty is made of. */
    private static final List<LogQuantity> SHOWN = List.of(
            LogQuantity.ROAD_SPEED,
            LogQuantity.ENGINE_SPEED,
            LogQuantity.LOAD,
            LogQuantity.THROTTLE,
            LogQuantity.PEDAL,
            LogQuantity.POWER);

    private final DutyText words;
    private final LogWords logWords;
    private final Shops shops;

    LogPages(DutyText words, LogWords logWords, Shops shops) {
        this.words = words;
        this.logWords = logWords;
        this.shops = shops;
    }

    @GetMapping("/duties/from-log")
    String blank(Model model) {
        UnitSystem system = shops.current().unitSystem();
        return form(LogForm.blank(Units.show(USUAL_START_K, Dimension.TEMPERATURE, system)), List.of(), model);
    }

    @PostMapping("/duties/from-log")
    String reduce(
            @ModelAttribute("form") LogForm sent,
            BindingResult faults,
            @RequestParam(required = false) MultipartFile file,
            @RequestParam(required = false) String look,
            @RequestParam Map<String, String> parameters,
            Model model,
            HttpServletResponse response)
            throws IOException {
        boolean isFile = file != null && !file.isEmpty();
        LogSource log = isFile ? file::getInputStream : LogSource.of(sent.log());
        LogForm form = carriedBack(sent, isFile, log, model);
        MappingForm said = MappingForm.of(parameters);
        if (isFile && file.getSize() > LARGEST) {
            faults.rejectValue("log", "duties.log.large", new Object[] {size(file.getSize()), size(LARGEST)}, "");
        } else if (!isFile && sent.log().isBlank()) {
            faults.rejectValue("log", "duties.log.missing");
        }
        Optional<LogSummary> summary = faults.hasErrors() ? Optional.empty() : logWords.survey(log, said, faults);
        summary.ifPresent(s -> model.addAttribute("view", logWords.view(s, said.mapping(s), SHOWN)));
        if (look != null && summary.isPresent()) {
            return form(form, List.of(), model, faults);
        }
        UnitSystem system = shops.current().unitSystem();
        double rated = quantity("ratedSpeed", form.ratedSpeed(), Dimension.ROTATION, RATED_RAD_PER_S, system, faults);
        double start = quantity("startCoolant", form.startCoolant(), Dimension.TEMPERATURE, START_K, system, faults);
        if (!form.id().matches("[A-Za-z0-9_-]{1,60}")) {
            faults.rejectValue("id", "duties.id.form");
        }
        if (form.label().length() > 100 || !DutyForm.storable(form.label())) {
            faults.rejectValue("label", "account.name.long");
        }
        if (faults.hasErrors()) {
            return refused(form, List.of(), model, faults, response);
        }
        LapReading reading = new LapReading(words);
        reading.read(log, summary.orElseThrow(), said, form.meaning(), rated);
        if (!reading.faults().isEmpty()) {
            return refused(form, reading.faults(), model, faults, response);
        }
        List<Sample> samples = reading.samples();
        try {
            String name = form.label().isEmpty() ? form.id() : form.label();
            String source = words.say("duties.log.source." + form.meaning().name(), samples.size());
            Duty duty = LoggedLap.reduce(form.id(), name, (d, v) -> name(d, v, system), source, start, samples);
            model.addAttribute("form", new DutyForm(ScheduleCsv.write(duty), "", 0));
            model.addAttribute("faults", List.of());
            model.addAttribute("fromLog", samples.size());
            model.addAttribute("leftOut", reading.leftOut());
            return "duty/form";
        } catch (InputException e) {
            return refused(form, DutyFault.of(e, words), model, faults, response);
        }
    }

    /** The form with the log as text, so that it need not be sent again, unless it is too long for a page. */
    private static LogForm carriedBack(LogForm sent, boolean isFile, LogSource log, Model model) throws IOException {
        Optional<String> text =
                isFile ? log.text(LONGEST_BACK) : Optional.of(sent.log()).filter(t -> t.length() <= LONGEST_BACK);
        model.addAttribute("tooLongBack", text.isEmpty());
        return sent.with(text.orElse(""));
    }

    private static String size(long bytes) {
        return String.format(Locale.ROOT, "%.1f", bytes / 1e6);
    }

    private String name(LoggedLap.Doing doing, double meanSpeedMPerS, UnitSystem system) {
        return words.say(
                "duties.log.point." + doing.name(),
                Units.show(Math.rint(3.6 * meanSpeedMPerS) / 3.6, Dimension.SPEED, system));
    }

    private static double quantity(
            String field, String text, Dimension dimension, Range allowed, UnitSystem system, BindingResult faults) {
        try {
            double si = Units.parse(text, dimension, system);
            if (!allowed.contains(si)) {
                Object[] bounds = {
                    text, Units.show(allowed.min(), dimension, system), Units.show(allowed.max(), dimension, system)
                };
                faults.rejectValue(field, "duties.range", bounds, "");
            }
            return si;
        } catch (UnitException e) {
            faults.rejectValue(field, e.messageKey(), e.messageArguments(), e.getMessage());
            return Double.NaN;
        }
    }

    private static String refused(
            LogForm form, List<DutyFault> lineFaults, Model model, BindingResult faults, HttpServletResponse response) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return form(form, lineFaults, model, faults);
    }

    /** The form comes back with the text of a file that was sent: another object, to which what is wrong is handed on. */
    private static String form(LogForm form, List<DutyFault> lineFaults, Model model, BindingResult faults) {
        BindingResult ofForm = new BeanPropertyBindingResult(form, "form");
        ofForm.addAllErrors(faults);
        String page = form(form, lineFaults, model);
        model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", ofForm);
        return page;
    }

    private static String form(LogForm form, List<DutyFault> lineFaults, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("lineFaults", lineFaults);
        model.addAttribute("meanings", LogForm.Meaning.values());
        return "duty/log";
    }
}
