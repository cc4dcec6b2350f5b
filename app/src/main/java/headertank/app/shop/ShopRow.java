package headertank.app.shop;

import headertank.app.unit.UnitSystem;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;

/** A shop as it is kept; {@link Shop} is what others see of it. */
@Entity
@Table(name = "shop")
class ShopRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private String name;

    @Enumerated(EnumType.STRING)
    private UnitSystem unitSystem = UnitSystem.METRIC;

    @Column(updatable = false)
    private boolean invented;

    private String language = "en";

    @Enumerated(EnumType.STRING)
    private Paper paper = Paper.A4;

    private String timeZone;
    private int recheckDays = Shop.USUAL_RECHECK_DAYS;
    private String thresholds = "";
    private String figures = "";

    @Version
    private int settingsVersion;

    protected ShopRow() {}

    ShopRow(String name, String timeZone, boolean invented) {
        this.name = name;
        this.timeZone = timeZone;
        this.invented = invented;
    }

    Long id() {
        return id;
    }

    int version() {
        return settingsVersion;
    }

    Shop view() {
        return new Shop(
                id,
                name,
                unitSystem,
                invented,
                language,
                paper,
                timeZone,
                recheckDays,
                thresholds,
                figures,
                settingsVersion);
    }

    void take(Shop then) {
        name = then.name();
        unitSystem = then.unitSystem();
        language = then.language();
        paper = then.paper();
        timeZone = then.timeZone();
        recheckDays = then.recheckDays();
        thresholds = then.thresholdsText();
        figures = then.figuresText();
    }
}
