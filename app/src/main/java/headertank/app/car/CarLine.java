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
        return title(make, model, modelYear);
    }

    /** The same for lists that hold no whole car. */
    public static String title(String make, String model, Integer modelYear) {
        return (make + " " + model + (modelYear == null ? "" : " " + modelYear)).strip();
    }
}
