package headertank.app.part.file;

import headertank.app.csv.CsvDownload;
import headertank.app.part.PartKind;
import headertank.app.problem.ConflictException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Files of parts: out, in after a look at what they would do, and the list for a recall. */
@Controller
class PartFilePages {

    private final PartFiles files;
    private final MessageSource messages;

    PartFilePages(PartFiles files, MessageSource messages) {
        this.files = files;
        this.messages = messages;
    }

    @GetMapping("/parts/export.csv")
    ResponseEntity<byte[]> export() {
        return CsvDownload.of(files.export(), "parts.csv");
    }

    @GetMapping("/parts/{id}/cars.csv")
    ResponseEntity<byte[]> recallList(@PathVariable long id) {
        return CsvDownload.of(files.recallList(id), "part-" + id + "-cars.csv");
    }

    @GetMapping("/parts/import")
    String form(Model model) {
        return page(model);
    }

    /** Shows what the file would do, and changes nothing. */
    @PostMapping("/parts/import")
    String preview(@RequestParam(required = false) MultipartFile file, Model model, HttpServletResponse response)
            throws IOException {
        if (file == null || file.isEmpty()) {
            return refuse(model, response, "part.file.none");
        }
        if (file.getSize() > ImportReader.MOST_BYTES) {
            return refuse(model, response, "part.file.large", ImportReader.MOST_BYTES / 1024);
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(file.getBytes()))
                    .toString();
        } catch (CharacterCodingException e) {
            return refuse(model, response, "part.file.utf8");
        }
        return show(model, response, text);
    }

    private String show(Model model, HttpServletResponse response, String text) {
        ImportPlan plan = files.plan(text);
        if (!plan.faults().isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        model.addAttribute("plan", plan);
        model.addAttribute("text", text);
        return page(model);
    }

    @PostMapping("/parts/import/confirm")
    String take(
            @RequestParam(defaultValue = "") String text,
            @RequestParam(defaultValue = "") String fingerprint,
            @RequestParam(required = false) UUID key,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (text.isEmpty() || text.length() > ImportReader.MOST_BYTES) {
            return refuse(model, response, "part.file.none");
        }
        try {
            files.take(text, fingerprint, key);
        } catch (ConflictException | ObjectOptimisticLockingFailureException | DataIntegrityViolationException e) {
            model.addAttribute("moved", true);
            String page = show(model, response, text);
            response.setStatus(HttpStatus.CONFLICT.value());
            return page;
        }
        redirect.addFlashAttribute("done", "part.file.taken");
        return "redirect:/parts";
    }

    private String refuse(Model model, HttpServletResponse response, String key, Object... arguments) {
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        model.addAttribute("fault", messages.getMessage(key, arguments, LocaleContextHolder.getLocale()));
        return page(model);
    }

    private static String page(Model model) {
        model.addAttribute("columns", PartFile.COLUMNS);
        model.addAttribute("kinds", List.of(PartKind.values()));
        return "part/import";
    }
}
