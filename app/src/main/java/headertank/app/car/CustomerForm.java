package headertank.app.car;

import jakarta.validation.constraints.Email;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/**
 * What is typed about a customer.
 *
 * @param version of the record the form was filled from; null for a new one
 */
public record CustomerForm(
        @NotBlank(message = "{customer.name.missing}") @Size(max = 120, message = "{field.long}")
        String name,

        @Size(max = 40, message = "{field.long}") String phone,

        @Email(message = "{customer.email.form}") @Size(max = 120, message = "{field.long}")
        String email,

        @Size(max = 2000, message = "{field.long}") String note,
        Integer version) {

    public CustomerForm {
        name = name == null ? "" : name;
        phone = phone == null ? "" : phone;
        email = email == null ? "" : email;
        note = note == null ? "" : note;
    }

    static CustomerForm empty() {
        return new CustomerForm("", "", "", "", null);
    }

    CustomerForm withVersion(int newVersion) {
        return new CustomerForm(name, phone, email, note, newVersion);
    }
}
