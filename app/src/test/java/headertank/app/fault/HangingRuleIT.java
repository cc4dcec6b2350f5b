package headertank.app.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.given.Given;
import headertank.app.shop.Role;
import headertank.calc.Rater;
import headertank.calc.coreclass.CoreClassSource;
import headertank.calc.duty.DutySource;
import headertank.calc.risk.Flag;
import headertank.calc.risk.RiskContext;
import headertank.calc.risk.RiskRule;
import headertank.calc.verdict.VerdictPolicy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;
import org.springframework.test.context.TestPropertySource;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A plug-in that never comes back, on a service with one connection to its database. */
@DatabaseTest
@Import(HangingRuleIT.Hanging.class)
@TestPropertySource(properties = {"spring.datasource.hikari.maximum-pool-size=1", "headertank.longest-rating=15s"})
class HangingRuleIT {

    /** Enough to take every place where ratings are computed. */
    private static final int HANGING = 2 * Runtime.getRuntime().availableProcessors() + 1;

    private static final AtomicBoolean HANGS = new AtomicBoolean();
    private static final Semaphore MET = new Semaphore(0);

    /** Waits for ever, and does not end when it is told to. */
    private static final class Deaf implements RiskRule {
        @Override
        public String id() {
            return "deaf";
        }

        @Override
        public String version() {
            return "1";
        }

        @Override
        public String source() {
            return "invented for this test";
        }

        @Override
        public Optional<Flag> examine(RiskContext car) {
            while (HANGS.get()) {
                MET.release();
                try {
                    new CountDownLatch(1).await();
                } catch (InterruptedException e) {
                    continue;
                }
            }
            return Optional.empty();
        }
    }

    @TestConfiguration(proxyBeanMethods = false)
    static class Hanging {
        @Bean
        @Primary
        Rater raterWithARuleThatHangs() {
            List<RiskRule> rules = new ArrayList<>(all(RiskRule.class));
            rules.add(new Deaf());
            return Rater.with(rules, all(VerdictPolicy.class), all(DutySource.class), all(CoreClassSource.class))
                    .sampling(16);
        }

        private static <T> List<T> all(Class<T> type) {
            return ServiceLoader.load(type, Rater.class.getClassLoader()).stream()
                    .map(ServiceLoader.Provider::get)
                    .toList();
        }
    }

    @Autowired
    Given given;

    @Autowired
    MockMvc mvc;

    private final ExecutorService people = Executors.newFixedThreadPool(HANGING);

    @AfterEach
    void listensAgain() {
        HANGS.set(false);
        people.shutdownNow();
    }

    @Test
    void aRuleThatHangsCostsItsOwnRatingAndNobodyElseAConnection() throws Exception {
        Given.Workshop shop = given.aWorkshop(Role.TECHNICIAN, Role.FRONT_DESK);
        long car = shop.aCar(Specs.easy(), "street");
        RequestPostProcessor technician = shop.with(Role.TECHNICIAN);
        HANGS.set(true);
        List<Future<MvcResult>> hanging = new ArrayList<>();
        for (int i = 0; i < HANGING; i++) {
            hanging.add(people.submit(() -> rate(car, technician)));
        }
        MET.acquire(HANGING - 1);
        mvc.perform(get("/cars/" + car).with(technician)).andExpect(status().isOk());
        assertThat(hanging).as("ratings that still hang").noneMatch(Future::isDone);
        for (Future<MvcResult> one : hanging) {
            assertThat(one.get().getResponse().getStatus()).isEqualTo(409);
        }
        assertThat(shop.rows("check_run")).isZero();
        HANGS.set(false);
        assertThat(rate(car, technician).getResponse().getStatus()).isEqualTo(302);
        assertThat(shop.rows("check_run")).isOne();
    }

    private MvcResult rate(long car, RequestPostProcessor technician) throws Exception {
        return mvc.perform(post("/cars/" + car + "/revisions/1/checks")
                        .param("key", UUID.randomUUID().toString())
                        .with(technician)
                        .with(csrf()))
                .andReturn();
    }
}
