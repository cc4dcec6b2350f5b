package headertank.app.form;

import headertank.calc.carspec.BuildField;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import org.springframework.validation.FieldError;
import org.springframework.validation.ObjectError;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;

/**
 * Sums up at the top of each page what is wrong with its form: the frame of all pages lists {@code problems}. A form that Spring
 * has filled in, and one whose page has {@code faults} by field, need nothing more; whoever has others adds them as
 * {@code problems}.
 */
@Component
class FormProblems implements HandlerInterceptor {

    /** Name of the list in the model. */
    static final String PROBLEMS = "problems";

    private final MessageSource messages;

    FormProblems(MessageSource messages) {
        this.messages = messages;
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, ModelAndView page) {
        if (page == null || page.getViewName() == null || page.getViewName().startsWith("redirect:")) {
            return;
        }
        Map<String, Object> model = page.getModel();
        List<FormProblem> problems = new ArrayList<>();
        model.forEach((name, value) -> {
            if (value instanceof BindingResult result) {
                result.getAllErrors().forEach(e -> problems.add(problem(e, model)));
            }
        });
        if (model.get("faults") instanceof Map<?, ?> faults) {
            faults.forEach((field, text) -> problems.add(new FormProblem(id(field.toString()), text.toString())));
        }
        if (model.get(PROBLEMS) instanceof List<?> own) {
            own.stream().map(FormProblem.class::cast).forEach(problems::add);
        }
        model.put(PROBLEMS, problems.stream().distinct().toList());
    }

    /** The forms of cars and parts label a field by its name; everything else is called as it is sent. */
    private static String id(String field) {
        return Arrays.stream(BuildField.values())
                .filter(f -> f.key().equals(field))
                .map(BuildField::name)
                .findFirst()
                .orElse(field);
    }

    private FormProblem problem(ObjectError error, Map<String, Object> model) {
        String text = messages.getMessage(error, LocaleContextHolder.getLocale());
        String field = error instanceof FieldError f ? f.getField() : "";
        Object at = model.get("faultyAt");
        return new FormProblem(field.isEmpty() || at == null ? field : field + "-" + at, text);
    }
}
