package headertank.app.demo;

import java.util.List;

/** Invented people and their invented cars. Mail addresses end in a name that can never exist. */
final class DemoCars {

    record DemoCar(String plate, String make, String model, int year, String note) {}

    record Owner(String name, String phone, String email, List<DemoCar> cars) {}

    static final List<Owner> ALL = List.of(
            new Owner(
                    "Alva Example",
                    "000 555 0101",
                    "alva@shop.invalid",
                    List.of(new DemoCar(
                            "DEMO 01",
                            "Veldorra",
                            "Coupe 2.0",
                            1998,
                            "Street and track days. Engine swapped, 350 hp."))),
            new Owner(
                    "Bo Sample",
                    "000 555 0102",
                    "bo@shop.invalid",
                    List.of(
                            new DemoCar(
                                    "DEMO 02",
                                    "Oskelle",
                                    "K6 saloon",
                                    2003,
                                    "Drift car. Radiator tilted to breathe through the hood."),
                            new DemoCar("DEMO 03", "Oskelle", "K6 wagon", 2005, "Tow car. Runs hot uphill."))),
            new Owner(
                    "Cleo Placeholder",
                    "000 555 0103",
                    "cleo@shop.invalid",
                    List.of(new DemoCar("DEMO 04", "Nimbrax", "Roadster", 1991, "Weekend car, street only."))),
            new Owner(
                    "Dee Fictive",
                    "000 555 0104",
                    "dee@shop.invalid",
                    List.of(new DemoCar(
                            "DEMO 05",
                            "Tavrek",
                            "Hatch Turbo",
                            2012,
                            "Came from an alcohol-fuelled setup, now on petrol."))),
            new Owner(
                    "Eli Madeup",
                    "000 555 0105",
                    "",
                    List.of(new DemoCar(
                            "DEMO 06",
                            "Veldorra",
                            "Pickup V8",
                            1987,
                            "Clutch fan. Thermostat was taken out by a previous owner."))));

    private DemoCars() {}
}
