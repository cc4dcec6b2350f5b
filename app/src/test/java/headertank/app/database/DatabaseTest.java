package headertank.app.database;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.TestExecutionListeners;
import org.springframework.test.context.TestExecutionListeners.MergeMode;

/**
 * The whole app, with MockMvc, on a real PostgreSQL. Each class starts on a migrated and otherwise empty database; the
 * application context is shared by all classes that ask for the same one. Name such a class {@code SomethingIT}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(webEnvironment = WebEnvironment.RANDOM_PORT)
@AutoConfigureMockMvc
@ContextConfiguration(initializers = FreshDatabase.class)
@TestExecutionListeners(listeners = EmptyForEachClass.class, mergeMode = MergeMode.MERGE_WITH_DEFAULTS)
public @interface DatabaseTest {}
