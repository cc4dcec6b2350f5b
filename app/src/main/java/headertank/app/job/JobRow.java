package headertank.app.job;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;

/** What of a job changes; when it was opened is the database's to say. */
@Entity
@Table(name = "job")
class JobRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Column(updatable = false)
    private long shopId;

    @Column(updatable = false)
    private long carId;

    @Column(updatable = false)
    private long openedBy;

    private String asked;
    private LocalDate promisedOn;
    private boolean paused;
    private String closedAs;
    private Instant closedAt;

    @Version
    private int version;

    protected JobRow() {}

    JobRow(long shopId, long carId, long openedBy, String asked, LocalDate promisedOn) {
        this.shopId = shopId;
        this.carId = carId;
        this.openedBy = openedBy;
        change(asked, promisedOn);
    }

    final void change(String newlyAsked, LocalDate newlyPromisedOn) {
        asked = newlyAsked;
        promisedOn = newlyPromisedOn;
    }

    void pause(boolean pauses) {
        paused = pauses;
    }

    /** @param at by the clock of the database, as are the times that the gate compares it with */
    void close(Job.Kind as, Instant at) {
        paused = false;
        closedAs = as.name();
        closedAt = at;
    }

    void open() {
        closedAs = null;
        closedAt = null;
    }

    boolean isClosed() {
        return closedAs != null;
    }

    Long id() {
        return id;
    }

    String asked() {
        return asked;
    }

    LocalDate promisedOn() {
        return promisedOn;
    }

    int version() {
        return version;
    }
}
