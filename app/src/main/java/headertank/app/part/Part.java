package headertank.app.part;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;

/** A part of the catalogue. */
@Entity
class Part {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private long shopId;
    private String kind;
    private String name;
    private String reference;
    private String valuesText;
    private Long priceMinor;
    private String currency;
    private String stockNote;
    private boolean retired;
    private Instant changedAt;

    @Version
    private int version;

    protected Part() {}

    Part(long shopId, PartContent content, String valuesText) {
        this.shopId = shopId;
        this.kind = content.kind().name();
        take(content, valuesText);
    }

    /** The kind of a part never changes: revisions name it in the slot of its kind. */
    final void take(PartContent content, String newValuesText) {
        name = content.name();
        reference = content.reference();
        valuesText = newValuesText;
        priceMinor = content.price().map(Price::minor).orElse(null);
        currency = content.price().map(Price::currency).orElse("");
        stockNote = content.stock();
        changedAt = Instant.now();
    }

    void retire(boolean gone) {
        retired = gone;
        changedAt = Instant.now();
    }

    Long id() {
        return id;
    }

    int version() {
        return version;
    }
}
