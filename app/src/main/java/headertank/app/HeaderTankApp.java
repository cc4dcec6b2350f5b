package headertank.app;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service. */
@SpringBootApplication
public class HeaderTankApp {

    public static void main(String[] args) {
        SpringApplication.run(HeaderTankApp.class, args);
    }
}
