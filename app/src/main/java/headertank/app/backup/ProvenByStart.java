package headertank.app.backup;

import headertank.app.audit.Seals;
import java.util.ArrayList;
import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.stereotype.Component;

/** After a backup has been brought back: whether it is what it was, by its seals and by what every feature can prove. */
@Component
class ProvenByStart implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    private final Seals seals;
    private final ObjectProvider<Proof> proofs;
    private final boolean restored;

    ProvenByStart(Seals seals, ObjectProvider<Proof> proofs, @Value("${headertank.restore.from:}") String from) {
        this.seals = seals;
        this.proofs = proofs;
        this.restored = !from.isEmpty();
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (!restored) {
            return;
        }
        List<String> faults = new ArrayList<>();
        for (long shop : seals.shops()) {
            Seals.Verified verified = seals.verify(shop);
            LOG.warn("Shop {}: {} rows behind {} seals looked at.", shop, verified.rows(), verified.seals());
            if (!verified.faults().isEmpty()) {
                faults.add(verified.faults().size() + " rows of shop " + shop + " are not as they were sealed");
            }
            proofs.orderedStream().forEach(p -> faults.addAll(p.faults(shop)));
        }
        if (!faults.isEmpty()) {
            throw new BackupException(
                    "What was brought back is not proven: " + String.join("; ", faults) + ".",
                    "The rows are those of the backup. Look at the page /audit/seals after a start without"
                            + " --headertank.restore.from, and take an earlier backup where that is so.");
        }
        LOG.warn("What was brought back is proven. Start without --headertank.restore.from from now on.");
    }
}
