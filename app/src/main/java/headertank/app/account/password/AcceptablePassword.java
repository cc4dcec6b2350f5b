package headertank.app.account.password;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.nio.charset.StandardCharsets;

/** At least ten characters, and at most the 72 bytes that bcrypt looks at. */
@Target({ElementType.FIELD, ElementType.PARAMETER, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = AcceptablePassword.Check.class)
public @interface AcceptablePassword {
    String message() default "{account.password.size}";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** The rule itself. */
    class Check implements ConstraintValidator<AcceptablePassword, String> {
        public static boolean accepts(String password) {
            return password != null
                    && password.length() >= 10
                    && password.getBytes(StandardCharsets.UTF_8).length <= 72;
        }

        @Override
        public boolean isValid(String password, ConstraintValidatorContext context) {
            return accepts(password);
        }
    }
}
