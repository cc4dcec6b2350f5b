package headertank.app.carlog;

import headertank.app.car.CarSearch;
import headertank.app.carspec.Revision;
import headertank.app.carspec.Revisions;
import headertank.app.log.file.LogSource;
import headertank.app.log.read.LogMapping;
import headertank.app.log.read.LogQuantity;
import headertank.app.log.read.LogSummary;
import headertank.app.log.view.LogWords;
import headertank.app.log.view.MappingForm;
import headertank.app.shop.Shops;
import headertank.app.unit.Dimension;
import headertank.app.unit.UnitException;
import headertank.app.unit.UnitSystem;
import headertank.app.unit.Units;
import headertank.calc.quantity.Range;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A car's logs: what is kept, one more to keep, and one of them driven again. */
@Controller
class CarLogPages {

    /** Largest file [bytes]. */
    static final int LARGEST = 30_000_000;

    /** Longest text that a page carries back [characters]. */
    private static final int LONGEST_BACK = 1_000_000;

    private static final Range AMBIENT_K = Range.of(233.15, 328.15);

    /** What driving a log again takes. */
    private static final List<LogQuantity> SHOWN = List.of(
            LogQuantity.COOLANT,
            LogQuantity.ENGINE_SPEED,
            LogQuantity.MANIFOLD_PRESSURE,
            LogQuantity.BOOST,
            LogQuantity.BAROMETER,
            LogQuantity.ROAD_SPEED,
            LogQuantity.INTAKE_AIR,
            LogQuantity.AMBIENT);

    private final CarSearch cars;
    private final Revisions revisions;
    private final CarLogs logs;
    private final LogReplays replays;
    private final LogWords logWords;
    private final CarLogWords words;
    private final Shops shops;

    CarLogPages(
            CarSearch cars,
            Revisions revisions,
            CarLogs logs,
            LogReplays replays,
            LogWords logWords,
            CarLogWords words,
            Shops shops) {
        this.cars = cars;
        this.revisions = revisions;
        this.logs = logs;
        this.replays = replays;
        this.logWords = logWords;
        this.words = words;
        this.shops = shops;
    }

    @GetMapping("/cars/{id}/logs")
    String list(@PathVariable long id, Model model) {
        return page(id, CarLogForm.blank(), model);
    }

    /** Keeps a log, or shows what its columns are taken for. */
    @PostMapping("/cars/{id}/logs")
    String keep(
            @PathVariable long id,
            @ModelAttribute("form") CarLogForm sent,
            BindingResult faults,
            @RequestParam(required = false) MultipartFile file,
            @RequestParam(required = false) String look,
            @RequestParam(required = false) UUID key,
            @RequestParam Map<String, String> parameters,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect)
            throws IOException {
        cars.car(id);
        boolean isFile = file != null && !file.isEmpty();
        LogSource log = isFile ? file::getInputStream : LogSource.of(sent.log());
        CarLogForm form = carriedBack(sent, isFile ? fileName(file) : "", isFile, log, model);
        if (isFile && file.getSize() > LARGEST) {
            faults.rejectValue("log", "duties.log.large", new Object[] {size(file.getSize()), size(LARGEST)}, "");
        } else if (!isFile && sent.log().isBlank()) {
            faults.rejectValue("log", "duties.log.missing");
        }
        MappingForm said = MappingForm.of(parameters);
        Optional<LogSummary> summary = faults.hasErrors() ? Optional.empty() : logWords.survey(log, said, faults);
        summary.ifPresent(s -> {
            model.addAttribute("view", logWords.view(s, said.mapping(s), SHOWN));
            model.addAttribute(
                    "places",
                    s.positions().stream()
                            .map(i -> s.head().headings().get(i).text())
                            .toList());
        });
        OptionalDouble ambient = ambient(form.ambient(), faults);
        if (form.name().length() > CarLogForm.LONGEST_NAME || !form.name().matches("[^\\p{Cntrl}]*")) {
            faults.rejectValue("name", "account.name.long");
        }
        if (look != null && summary.isPresent()) {
            return page(id, form, model, faults);
        }
        Optional<LogToKeep> ready =
                faults.hasErrors() ? Optional.empty() : ready(log, summary.orElseThrow(), said, form, ambient, faults);
        if (ready.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(id, form, model, faults);
        }
        long kept = logs.keep(id, ready.get(), key);
        redirect.addFlashAttribute("done", "carlog.kept");
        return "redirect:/cars/" + id + "/logs/" + kept;
    }

    @GetMapping("/cars/{id}/logs/{log}")
    String log(@PathVariable long id, @PathVariable long log, Model model) throws IOException {
        model.addAttribute("car", cars.car(id));
        KeptLog kept = logs.byId(id, log);
        model.addAttribute("log", kept);
        Optional<Revision> revision = revisions.latest(id);
        Optional<Taught> taught = revision.isEmpty() ? Optional.empty() : replays.of(kept, revision.get());
        model.addAttribute("taught", taught.map(words::view).orElse(null));
        model.addAttribute("described", revision.isPresent());
        revision.flatMap(r -> replays.drivable(r).stream()
                        .filter(d -> d.id().equals(kept.reading().drove()))
                        .findFirst())
                .ifPresent(d -> model.addAttribute("drove", words.duty(d)));
        return "carlog/log";
    }

    private Optional<LogToKeep> ready(
            LogSource log,
            LogSummary summary,
            MappingForm said,
            CarLogForm form,
            OptionalDouble ambient,
            BindingResult faults)
            throws IOException {
        KeptText kept = KeptText.of(log, summary, form.positions());
        Optional<LogMapping> mapping = said.mapping(summary).flatMap(kept::mapping);
        if (mapping.isEmpty()) {
            faults.rejectValue("log", "carlog.missing.TIME");
            return Optional.empty();
        }
        String name = form.name().isEmpty() ? words.say("carlog.unnamed") : form.name();
        LogToKeep ready = LogToKeep.of(name, kept, mapping.get(), ambient, form.drove());
        for (DriveRows.Missing missing : ready.missing()) {
            faults.rejectValue(
                    missing == DriveRows.Missing.AMBIENT ? "ambient" : "log",
                    "carlog.missing." + missing,
                    new Object[] {words.length(DriveRows.LEAST_S)},
                    "");
        }
        return faults.hasErrors() ? Optional.empty() : Optional.of(ready);
    }

    private OptionalDouble ambient(String typed, BindingResult faults) {
        if (typed.isEmpty()) {
            return OptionalDouble.empty();
        }
        UnitSystem system = shops.current().unitSystem();
        try {
            double k = Units.parse(typed, Dimension.TEMPERATURE, system);
            if (!AMBIENT_K.contains(k)) {
                Object[] bounds = {
                    typed,
                    Units.show(AMBIENT_K.min(), Dimension.TEMPERATURE, system),
                    Units.show(AMBIENT_K.max(), Dimension.TEMPERATURE, system)
                };
                faults.rejectValue("ambient", "duties.range", bounds, "");
            }
            return OptionalDouble.of(k);
        } catch (UnitException e) {
            faults.rejectValue("ambient", e.messageKey(), e.messageArguments(), e.getMessage());
            return OptionalDouble.empty();
        }
    }

    private static String fileName(MultipartFile file) {
        String name = Optional.ofNullable(file.getOriginalFilename()).orElse("").replaceAll("\\p{Cntrl}", " ");
        String bare = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        return bare.substring(0, Math.min(bare.length(), CarLogForm.LONGEST_NAME))
                .strip();
    }

    /** The form with the log as text, so that it need not be sent again, unless it is too long for a page. */
    private static CarLogForm carriedBack(CarLogForm sent, String fileName, boolean isFile, LogSource log, Model model)
            throws IOException {
        Optional<String> text =
                isFile ? log.text(LONGEST_BACK) : Optional.of(sent.log()).filter(t -> t.length() <= LONGEST_BACK);
        model.addAttribute("tooLongBack", text.isEmpty());
        return sent.with(text.orElse(""), fileName);
    }

    private static String size(long bytes) {
        return String.format(Locale.ROOT, "%.1f", bytes / 1e6);
    }

    /** The form comes back with the text of a file that was sent: another object, to which what is wrong is handed on. */
    private String page(long id, CarLogForm form, Model model, BindingResult faults) {
        BindingResult ofForm = new BeanPropertyBindingResult(form, "form");
        ofForm.addAllErrors(faults);
        String page = page(id, form, model);
        model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", ofForm);
        return page;
    }

    private String page(long id, CarLogForm form, Model model) {
        model.addAttribute("car", cars.car(id));
        model.addAttribute("logs", logs.ofCar(id));
        model.addAttribute("form", form);
        model.addAttribute(
                "drivable", revisions.latest(id).map(replays::drivable).orElse(List.of()));
        return "carlog/list";
    }
}
