package headertank.app.duty.log;

import headertank.app.duty.DutyFault;
import headertank.app.duty.DutyForm;
import headertank.app.duty.DutyText;
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
import java.nio.charset.CharacterCodingException;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
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
    static final int LARGEST = 20_000_000;

    /** Longest text that a page carries back [characters]. */
    private static final int LONGEST_BACK = 1_000_000;

    private static final Range RATED_RAD_PER_S = Range.of(1000 * Math.PI / 30, 20_000 * Math.PI / 30);
    private static final Range START_K = Range.of(233.15, 403.15);
    private static final double USUAL_START_K = 353.15;

    private final DutyText words;
    private final Shops shops;

    LogPages(DutyText words, Shops shops) {
        this.words = words;
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
            Model model,
            HttpServletResponse response)
            throws IOException {
        UnitSystem system = shops.current().unitSystem();
        LogForm form = withFile(sent == null ? LogForm.blank("") : sent, file, faults);
        double rated = quantity("ratedSpeed", form.ratedSpeed(), Dimension.ROTATION, RATED_RAD_PER_S, system, faults);
        double start = quantity("startCoolant", form.startCoolant(), Dimension.TEMPERATURE, START_K, system, faults);
        if (!form.id().matches("[A-Za-z0-9_-]{1,60}")) {
            faults.rejectValue("id", "duties.id.form");
        }
        if (form.label().length() > 100 || !DutyForm.storable(form.label())) {
            faults.rejectValue("label", "account.name.long");
        }
        if (form.log().isBlank() && !faults.hasFieldErrors("log")) {
            faults.rejectValue("log", "duties.log.missing");
        }
        if (faults.hasErrors()) {
            return refused(form, List.of(), model, response);
        }
        LogText text = new LogText(form, rated, words);
        List<Sample> samples = text.read();
        if (!text.faults().isEmpty()) {
            return refused(form, text.faults(), model, response);
        }
        try {
            String name = form.label().isEmpty() ? form.id() : form.label();
            String source = words.say("duties.log.source." + form.meaning().name(), samples.size());
            Duty duty = LoggedLap.reduce(form.id(), name, (d, v) -> name(d, v, system), source, start, samples);
            model.addAttribute("form", new DutyForm(ScheduleCsv.write(duty), "", 0));
            model.addAttribute("faults", List.of());
            model.addAttribute("fromLog", samples.size());
            return "duty/form";
        } catch (InputException e) {
            return refused(form, DutyFault.of(e, words), model, response);
        }
    }

    private String name(LoggedLap.Doing doing, double meanSpeedMPerS, UnitSystem system) {
        return words.say(
                "duties.log.point." + doing.name(),
                Units.show(Math.rint(3.6 * meanSpeedMPerS) / 3.6, Dimension.SPEED, system));
    }

    private static LogForm withFile(LogForm sent, MultipartFile file, BindingResult faults) throws IOException {
        if (file == null || file.isEmpty()) {
            return sent;
        }
        if (file.getSize() > LARGEST) {
            faults.rejectValue("log", "duties.log.large", new Object[] {LARGEST / 1_000_000}, "");
            return sent;
        }
        try {
            return sent.with(DutyForm.decoded(file.getBytes()));
        } catch (CharacterCodingException e) {
            faults.rejectValue("log", "duties.not-text");
            return sent;
        }
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

    private String refused(LogForm form, List<DutyFault> faults, Model model, HttpServletResponse response) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        boolean back = form.log().length() <= LONGEST_BACK;
        model.addAttribute("tooLongBack", !back);
        return form(back ? form : form.with(""), faults, model);
    }

    private static String form(LogForm form, List<DutyFault> faults, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("lineFaults", faults);
        model.addAttribute("meanings", LogForm.Meaning.values());
        return "duty/log";
    }
}
