package headertank.app.form;

import headertank.app.problem.Refusal;
import headertank.app.problem.UnboundFormException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.core.ResolvableType;
import org.springframework.validation.AbstractPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.validation.FieldError;
import org.springframework.validation.ObjectError;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.support.ExtendedServletRequestDataBinder;

/**
 * The one place that makes a form's record of what was sent. A value that a field cannot hold is a fault of that field like any
 * other: the page comes again with what was typed, and says which field, what was sent and what is allowed. Forms are made by
 * their constructor alone; nothing is set on them afterwards.
 */
final class FormBinder extends ExtendedServletRequestDataBinder {

    private AbstractPropertyBindingResult ofMadeForm;

    FormBinder(Object target, String name) {
        super(target, name);
        setDeclarativeBinding(true);
    }

    @Override
    protected AbstractPropertyBindingResult getInternalBindingResult() {
        return ofMadeForm == null ? super.getInternalBindingResult() : ofMadeForm;
    }

    @Override
    public void construct(ValueResolver sent) {
        Class<?> form = type();
        refuseNamesOfNoField(form, sent.getNames());
        super.construct(sent);
        BindingResult faults = getBindingResult();
        if (!faults.hasErrors()) {
            return;
        }
        if (getTarget() == null) {
            FieldError first = faults.getFieldErrors().get(0);
            throw new UnboundFormException(refusal(first, form));
        }
        AbstractPropertyBindingResult result = createBeanPropertyBindingResult();
        faults.getAllErrors().stream().map(e -> inWords(e, form)).forEach(result::addError);
        ofMadeForm = result;
    }

    private Class<?> type() {
        ResolvableType type = getTargetType();
        return type == null ? Object.class : type.resolve(Object.class);
    }

    /** {@code asked[0]} is nobody's name unless {@code asked} is a map. */
    private static void refuseNamesOfNoField(Class<?> form, Set<String> names) {
        for (String name : new TreeSet<>(names)) {
            int bracket = name.indexOf('[');
            if (bracket > 0 && !Map.class.isAssignableFrom(typeOf(form, name.substring(0, bracket)))) {
                throw new UnboundFormException(Refusal.of("name", name, "refused.allowed.name"));
            }
        }
    }

    private static Class<?> typeOf(Class<?> form, String field) {
        if (!form.isRecord()) {
            return Object.class;
        }
        return Arrays.stream(form.getRecordComponents())
                .filter(c -> c.getName().equals(field))
                .findFirst()
                .<Class<?>>map(FormBinder::single)
                .orElse(Object.class);
    }

    /** The type of one value; of a collection that of its elements. */
    private static Class<?> single(RecordComponent field) {
        ResolvableType type = ResolvableType.forType(field.getGenericType());
        boolean several = Collection.class.isAssignableFrom(field.getType());
        return several ? type.getGeneric(0).resolve(Object.class) : field.getType();
    }

    private static ObjectError inWords(ObjectError error, Class<?> form) {
        if (!(error instanceof FieldError fault) || !fault.isBindingFailure()) {
            return error;
        }
        Refusal refusal = refusal(fault, form);
        return new FieldError(
                fault.getObjectName(),
                fault.getField(),
                typed(fault.getRejectedValue()),
                true,
                new String[] {"refused.field"},
                new Object[] {refusal.value(), refusal.allowed()},
                "");
    }

    private static Refusal refusal(FieldError fault, Class<?> form) {
        return new Refusal(
                fault.getField(), typed(fault.getRejectedValue()), Refusal.allowed(typeOf(form, fault.getField())));
    }

    private static String typed(Object value) {
        if (value instanceof Object[] several) {
            return String.join(
                    ", ", Arrays.stream(several).map(FormBinder::typed).toList());
        }
        return value instanceof MultipartFile file ? file.getOriginalFilename() : String.valueOf(value);
    }
}
