package headertank.app.database;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.TestExecutionListeners;
import org.springframework.test.context.TestExecutionListeners.MergeMode;

/** The whole app on a real port and a real PostgreSQL, for browsers; otherwise like {@link DatabaseTest}. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT)
@ContextConfiguration(initializers = FreshDatabase.class)
@TestExecutionListeners(listeners = EmptyForEachClass.class, mergeMode = MergeMode.MERGE_WITH_DEFAULTS)
public @interface ServedTest {}
