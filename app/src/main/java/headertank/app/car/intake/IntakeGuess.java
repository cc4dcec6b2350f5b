package headertank.app.car.intake;

import headertank.app.car.CarForm;

/** What somebody searched for in vain is most likely the first thing to write into the form for a new car. */
final class IntakeGuess {

    private IntakeGuess() {}

    /** A form with the text where it seems to belong: digits only are a phone, a word without a digit a name, else a plate. */
    static CarForm form(String searched) {
        String text = searched.strip();
        boolean phone = text.matches("[0-9+()/ .-]{6,}");
        boolean name = !phone && !text.isEmpty() && text.chars().noneMatch(Character::isDigit);
        return new CarForm(null, name ? text : "", phone ? text : "", phone || name ? "" : text, "", "", "", "", null);
    }
}
