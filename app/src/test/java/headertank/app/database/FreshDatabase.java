package headertank.app.database;

import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.MapPropertySource;

/**
 * Gives an application context a database of its own, which it uses as the service does: without owning it. The demo owns its; for tests with another {@code webEnvironment} than the usual.
 */
public class FreshDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    static final String NAME = "headertank.test.database";
    private static final AtomicInteger COUNT = new AtomicInteger();

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        String name = "test_" + COUNT.incrementAndGet();
        TestServer.Access owner = TestServer.fresh(name);
        boolean demo = context.getEnvironment().getProperty("headertank.demo", Boolean.class, false);
        TestServer.Access access = demo ? owner : owner.asService();
        context.getEnvironment()
                .getPropertySources()
                .addFirst(new MapPropertySource(
                        "test database",
                        Map.of(
                                NAME,
                                name,
                                "spring.datasource.url",
                                access.url(),
                                "spring.datasource.username",
                                access.user(),
                                "spring.datasource.password",
                                access.password(),
                                "spring.flyway.user",
                                owner.user(),
                                "spring.flyway.password",
                                owner.password())));
    }
}
