package headertank.app.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ends the program, its database server, or both, while somebody writes. What was said to be kept is there afterwards, once; what
 * was refused may be sent again. Prints its seed.
 */
class KilledIT {

    private static final int KILLS = Integer.getInteger("headertank.fault.kills", 9);
    private static final long SEED = Long.getLong("headertank.fault.seed", 20261127);

    /** Whoever asks while the database is away is answered within this time. */
    private static final double ANSWERED_S = 5;

    private enum Victim {
        SERVER,
        PROGRAM,
        BOTH
    }

    @TempDir
    Path home;

    private final Random random = new Random(SEED);
    private final List<String> kept = new ArrayList<>();
    private int sent;
    private double slowestS;
    private double firstS;

    @Test
    void nothingThatWasSaidToBeKeptIsLostOrThereTwice() throws Exception {
        Instance instance = Instance.on(home);
        try {
            Clerk clerk = new Clerk(instance.port());
            clerk.found(instance.ownersCode());
            Map<Victim, Integer> killed = new HashMap<>();
            for (int i = 0; i < KILLS; i++) {
                Victim victim = i % 3 < 2 ? Victim.SERVER : random.nextBoolean() ? Victim.PROGRAM : Victim.BOTH;
                writeUntilKilled(clerk, instance, victim);
                killed.merge(victim, 1, Integer::sum);
                if (victim != Victim.SERVER) {
                    instance = Instance.on(home);
                    clerk = new Clerk(instance.port());
                    clerk.signIn();
                }
                comesBack(clerk);
                checkWhatIsThere();
            }
            System.out.printf(
                    "kills (seed %d): %s; %d writes sent, %d said to be kept, none lost, none twice; slowest refusal of what was"
                            + " under way %.1f s, of what came later %.1f s%n",
                    SEED, killed, sent, kept.size(), firstS, slowestS);
            assertThat(kept).isNotEmpty();
            assertThat(slowestS).as("slowest answer without a database [s]").isLessThan(ANSWERED_S);
        } finally {
            instance.close();
        }
    }

    private void writeUntilKilled(Clerk clerk, Instance instance, Victim victim) throws Exception {
        AtomicBoolean done = new AtomicBoolean();
        Thread writer = new Thread(() -> {
            while (!done.get()) {
                write(clerk);
            }
        });
        writer.start();
        Thread.sleep(300 + random.nextInt(1200));
        if (victim != Victim.PROGRAM) {
            instance.killServer();
        }
        if (victim != Victim.SERVER) {
            instance.kill();
        }
        Thread.sleep(500);
        done.set(true);
        writer.join();
    }

    private void write(Clerk clerk) {
        String name = "Customer " + sent++;
        try {
            long start = System.nanoTime();
            if (clerk.adds(name)) {
                kept.add(name);
            } else {
                firstS = Math.max(firstS, (System.nanoTime() - start) / 1e9);
            }
        } catch (IOException e) {
            return;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** By itself; until then each answer says so in time. */
    private void comesBack(Clerk clerk) throws Exception {
        for (int i = 0; i < 600; i++) {
            long start = System.nanoTime();
            HttpResponse<String> answer = clerk.get("/customers");
            if (answer.statusCode() == 200) {
                return;
            }
            slowestS = Math.max(slowestS, (System.nanoTime() - start) / 1e9);
            assertThat(answer.statusCode()).isEqualTo(503);
            assertThat(answer.body()).contains("Header Tank");
            Thread.sleep(200);
        }
        throw new AssertionError("the database does not come back");
    }

    private void checkWhatIsThere() throws Exception {
        List<String> there = new ArrayList<>();
        List<String> noted = Files.readAllLines(home.resolve("postgresql-17").resolve("postmaster.pid"));
        String url = "jdbc:postgresql://localhost:" + noted.get(3).strip() + "/postgres";
        String password = Files.readString(home.resolve("password")).strip();
        try (Connection connection = DriverManager.getConnection(url, "postgres", password);
                ResultSet rows = connection.createStatement().executeQuery("select name from headertank.customer")) {
            while (rows.next()) {
                there.add(rows.getString(1));
            }
        }
        assertThat(there).doesNotHaveDuplicates().containsAll(kept);
    }
}
