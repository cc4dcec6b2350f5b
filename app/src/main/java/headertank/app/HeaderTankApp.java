package headertank.app;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.ConfigurableApplicationContext;

/** Starts the service. */
@SpringBootApplication
public class HeaderTankApp {

    public static void main(String[] args) {
        ConfigurableApplicationContext app = SpringApplication.run(HeaderTankApp.class, args);
        if (app.getEnvironment().containsProperty("headertank.backup.to")) {
            System.exit(SpringApplication.exit(app));
        }
    }
}
