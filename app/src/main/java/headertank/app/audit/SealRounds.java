package headertank.app.audit;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.annotation.Configuration;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/** Seals by the hour what has settled, and looks once a day whether all is as it was sealed. */
@Component
class SealRounds {

    private static final Logger LOG = LoggerFactory.getLogger("headertank");

    /** Lets the rounds go. */
    @Configuration(proxyBeanMethods = false)
    @EnableScheduling
    static class Clock {}

    private final Seals seals;

    SealRounds(Seals seals) {
        this.seals = seals;
    }

    @Scheduled(initialDelayString = "PT15M", fixedDelayString = "PT1H")
    void seal() {
        seals.shops().forEach(shop -> seals.seal(shop, Seals.SETTLED));
    }

    @Scheduled(initialDelayString = "PT20M", fixedDelayString = "P1D")
    void verify() {
        for (long shop : seals.shops()) {
            int faults = seals.verify(shop).faults().size();
            if (faults > 0) {
                LOG.error(
                        "Shop {}: {} records are not as they were sealed. Its owner sees which on the page /audit/seals.",
                        shop,
                        faults);
            }
        }
    }
}
