package headertank.app.account.password;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.List;
import java.util.Optional;

/** A password after {@link PasswordRules}; words of person and shop are looked at where they are known. */
@Target({ElementType.FIELD, ElementType.PARAMETER, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = AcceptablePassword.Check.class)
public @interface AcceptablePassword {
    String message() default "{account.password.short}";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** The rule itself. */
    class Check implements ConstraintValidator<AcceptablePassword, String> {

        @Override
        public boolean isValid(String password, ConstraintValidatorContext context) {
            Optional<String> fault = PasswordRules.fault(password, List.of());
            fault.ifPresent(key -> {
                context.disableDefaultConstraintViolation();
                context.buildConstraintViolationWithTemplate("{" + key + "}").addConstraintViolation();
            });
            return fault.isEmpty();
        }
    }
}
