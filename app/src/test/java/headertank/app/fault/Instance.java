package headertank.app.fault;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program as people start it: a process of its own on a folder of its own, with its own database server. */
final class Instance implements AutoCloseable {

    private static final Pattern ADDRESS = Pattern.compile("http://localhost:(\\d+)/");
    private static final Pattern CODE = Pattern.compile("owner's code +(\\S+)");
    private static final long NEVER_S = 600;

    private final Path data;
    private final Process process;
    private final List<String> said = Collections.synchronizedList(new ArrayList<>());
    private final CountDownLatch ended = new CountDownLatch(1);
    private final CountDownLatch ready = new CountDownLatch(1);

    private Instance(Path data, Process process) {
        this.data = data;
        this.process = process;
        Thread reader = new Thread(this::read, "what an instance says");
        reader.setDaemon(true);
        reader.start();
    }

    /** Begins to start; {@link #port} waits for it. */
    static Instance on(Path data, String... more) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                "headertank.app.HeaderTankApp",
                "--headertank.data=" + data,
                "--headertank.samples=32",
                "--server.address=127.0.0.1",
                "--server.port=0"));
        command.addAll(List.of(more));
        return new Instance(
                data,
                new ProcessBuilder(command)
                        .directory(new File("."))
                        .redirectErrorStream(true)
                        .start());
    }

    private void read() {
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                said.add(line);
                if (ADDRESS.matcher(line).find()) {
                    ready.countDown();
                }
            }
        } catch (IOException e) {
            said.add(e.toString());
        } finally {
            ended.countDown();
            ready.countDown();
        }
    }

    /** Where it answers, once it does. */
    int port() throws InterruptedException {
        if (!ready.await(NEVER_S, TimeUnit.SECONDS)) {
            throw new AssertionError("never ready: " + said());
        }
        return Integer.parseInt(found(ADDRESS));
    }

    /** What the first page asks for; printed in the line behind the address. */
    String ownersCode() throws InterruptedException {
        port();
        for (int i = 0; !CODE.matcher(said()).find() && i < 100; i++) {
            Thread.sleep(50);
        }
        return found(CODE);
    }

    private String found(Pattern pattern) {
        Matcher found = pattern.matcher(said());
        if (!found.find()) {
            throw new AssertionError("no " + pattern + " in " + said());
        }
        return found.group(1);
    }

    String said() {
        synchronized (said) {
            return String.join("\n", said);
        }
    }

    /** What it said, once it has ended by itself. */
    String end() throws InterruptedException {
        if (!ended.await(NEVER_S, TimeUnit.SECONDS)) {
            throw new AssertionError("does not end: " + said());
        }
        return said();
    }

    /** As a power cut does to it; its database server goes on. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** As a power cut does to its database server. */
    void killServer() throws IOException {
        Path noted = data.resolve("postgresql-17").resolve("postmaster.pid");
        long number = Long.parseLong(Files.readAllLines(noted).get(0).strip());
        ProcessHandle.of(number).ifPresent(ProcessHandle::destroyForcibly);
    }

    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
