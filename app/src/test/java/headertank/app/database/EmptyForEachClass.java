package headertank.app.database;

import com.zaxxer.hikari.HikariDataSource;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.context.TestContext;
import org.springframework.test.context.TestExecutionListener;

/** Before each class its context's database is made anew from the migrated one; after each test nobody is signed in. */
class EmptyForEachClass implements TestExecutionListener {

    @Override
    public void beforeTestClass(TestContext test) {
        var context = test.getApplicationContext();
        TestServer.fresh(context.getEnvironment().getRequiredProperty(FreshDatabase.NAME));
        context.getBean(HikariDataSource.class).getHikariPoolMXBean().softEvictConnections();
    }

    @Override
    public void afterTestMethod(TestContext test) {
        SecurityContextHolder.clearContext();
    }
}
