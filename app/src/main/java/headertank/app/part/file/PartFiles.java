package headertank.app.part.file;

import headertank.app.audit.AuditTrail;
import headertank.app.csv.Csv;
import headertank.app.form.FormKeys;
import headertank.app.part.CarsWithPart;
import headertank.app.part.Catalogue;
import headertank.app.part.PartLine;
import headertank.app.part.Parts;
import headertank.app.problem.ConflictException;
import headertank.app.shop.CurrentUser;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The catalogue out to files and back in; a file is taken over whole or not at all. */
@Service
@Transactional
class PartFiles {

    private final Catalogue catalogue;
    private final Parts parts;
    private final CarsWithPart cars;
    private final PartFile file;
    private final ImportReader reader;
    private final AuditTrail audit;
    private final FormKeys forms;
    private final CurrentUser user;

    PartFiles(
            Catalogue catalogue,
            Parts parts,
            CarsWithPart cars,
            PartFile file,
            ImportReader reader,
            AuditTrail audit,
            FormKeys forms,
            CurrentUser user) {
        this.forms = forms;
        this.user = user;
        this.catalogue = catalogue;
        this.parts = parts;
        this.cars = cars;
        this.file = file;
        this.reader = reader;
        this.audit = audit;
    }

    @Transactional(readOnly = true)
    String export() {
        return file.write(catalogue.all());
    }

    @Transactional(readOnly = true)
    ImportPlan plan(String text) {
        return reader.plan(text);
    }

    /**
     * Takes a file over.
     *
     * @param fingerprint of the plan that was shown
     * @throws ConflictException when the file would do something else now; nothing is changed then
     */
    void take(String text, String fingerprint, UUID key) {
        forms.once(user.shopId(), key, "parts", fingerprint, () -> take(text, fingerprint));
    }

    private long take(String text, String fingerprint) {
        ImportPlan plan = reader.plan(text);
        if (!plan.ready() || !plan.fingerprint().equals(fingerprint)) {
            throw new ConflictException("part.file.moved");
        }
        for (ImportPlan.Line line : plan.lines()) {
            switch (line.deed()) {
                case ADD -> {
                    long id = parts.add(line.content());
                    if (line.retired()) {
                        parts.retire(id, true, catalogue.part(id).version());
                    }
                }
                case CHANGE -> {
                    parts.change(line.id(), line.content(), line.version());
                    if (line.retired() != line.retiredBefore()) {
                        parts.retire(
                                line.id(),
                                line.retired(),
                                catalogue.part(line.id()).version());
                    }
                }
                case NOTHING -> {}
            }
        }
        audit.record("parts.imported", "part", null, plan.added() + " added, " + plan.changed() + " changed");
        return plan.lines().size();
    }

    /** Cars with the part and whom to phone. Who asked for it is noted: it holds names and numbers of people. */
    String recallList(long partId) {
        PartLine part = catalogue.part(partId);
        List<String> header = List.of(
                "plate",
                "car",
                "customer",
                "phone",
                "mail",
                "part",
                "on_the_car",
                "revision",
                "newest_revision",
                "reached");
        StringBuilder out = new StringBuilder(Csv.write(header));
        for (CarsWithPart.Line c : cars.of(partId)) {
            out.append(Csv.write(new ArrayList<>(List.of(
                    c.plate(),
                    c.title(),
                    c.owner(),
                    c.phone(),
                    c.email(),
                    part.name(),
                    c.now() ? "now" : "before",
                    Integer.toString(c.revision()),
                    Integer.toString(c.newest()),
                    c.reached().map(r -> r.at().toString()).orElse("")))));
        }
        audit.record("part.recall-list", "part", partId, "");
        return out.toString();
    }
}
