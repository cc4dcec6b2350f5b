package headertank.app.car;

/** One car in a list or at the head of a page. */
public record CarLine(
        long id,
        String plate,
        String make,
        String model,
        Integer modelYear,
        String note,
        long customerId,
        String customerName,
        String customerPhone) {

    /** Make, model and year in one piece, as far as known. */
    public String title() {
        return (make + " " + model + (modelYear == null ? "" : " " + modelYear)).strip();
    }
}
