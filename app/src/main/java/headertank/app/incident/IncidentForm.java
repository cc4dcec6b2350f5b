package headertank.app.incident;

import headertank.calc.choice.SensorPlacement;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;

/**
 * What is typed about a car that ran hot; texts stay as typed.
 *
 * @param when as a form sends it, {@code 2026-07-01T15:30}
 * @param revision number of the revision that was on the car
 */
public record IncidentForm(
        @NotBlank(message = "{incident.when.missing}") String when,

        @NotBlank(message = "{incident.doing.missing}") @Size(max = 500, message = "{field.long}")
        String doing,

        String duty,
        @Size(max = 40, message = "{field.long}") String ambient,
        @Size(max = 40, message = "{field.long}") String reading,
        @NotNull(message = "{incident.place.missing}") SensorPlacement place,
        @NotNull(message = "{incident.revision.missing}") Integer revision,
        @Size(max = 2000, message = "{field.long}") String note) {

    public IncidentForm {
        when = when == null ? "" : when.strip();
        doing = doing == null ? "" : doing.strip();
        duty = duty == null ? "" : duty;
        ambient = ambient == null ? "" : ambient.strip();
        reading = reading == null ? "" : reading.strip();
        note = note == null ? "" : note.strip();
    }
}
