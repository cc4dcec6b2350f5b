package headertank.app.car;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;

/**
 * What is typed about a car. Everything typed by hand is text, so that what cannot be read is shown again as it was typed.
 *
 * @param customerId whose car it is; null when a new customer is named
 * @param newCustomerName name of a customer to be added together with the car; empty when there is one already
 * @param version of the record the form was filled from; null for a new one
 */
public record CarForm(
        Long customerId,
        @Size(max = 120, message = "{field.long}") String newCustomerName,
        @Size(max = 40, message = "{field.long}") String newCustomerPhone,

        @NotBlank(message = "{car.plate.missing}") @Size(max = 20, message = "{field.long}")
        String plate,

        @Size(max = 60, message = "{field.long}") String make,
        @Size(max = 60, message = "{field.long}") String model,

        @Pattern(regexp = "\\s*((19|20)\\d\\d)?\\s*", message = "{car.year.range}")
        String modelYear,

        @Size(max = 2000, message = "{field.long}") String note,
        Integer version) {

    public CarForm {
        newCustomerName = newCustomerName == null ? "" : newCustomerName;
        newCustomerPhone = newCustomerPhone == null ? "" : newCustomerPhone;
        plate = plate == null ? "" : plate;
        make = make == null ? "" : make;
        model = model == null ? "" : model;
        modelYear = modelYear == null ? "" : modelYear;
        note = note == null ? "" : note;
    }

    public static CarForm emptyFor(Long customerId) {
        return new CarForm(customerId, "", "", "", "", "", "", "", null);
    }

    CarForm withVersion(int newVersion) {
        return new CarForm(
                customerId, newCustomerName, newCustomerPhone, plate, make, model, modelYear, note, newVersion);
    }

    public CarForm withCustomer(long id) {
        return new CarForm(id, "", "", plate, make, model, modelYear, note, version);
    }

    Integer year() {
        return modelYear.isBlank() ? null : Integer.valueOf(modelYear.strip());
    }

    public boolean namesACustomer() {
        return customerId != null || !newCustomerName.isBlank();
    }
}
