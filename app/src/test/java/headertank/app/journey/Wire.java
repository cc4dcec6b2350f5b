package headertank.app.journey;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The wire between a browser and the server: it can be cut and mended, for the browser and all that works in its background. */
final class Wire implements AutoCloseable {

    private final int server;
    private final int port;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private volatile ServerSocket entry;

    private Wire(int server) throws IOException {
        this.server = server;
        this.entry = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        this.port = entry.getLocalPort();
        start(entry);
    }

    static Wire to(int server) {
        try {
            return new Wire(server);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where a browser connects. */
    int port() {
        return port;
    }

    void cut() throws IOException {
        entry.close();
        for (Socket socket : open) {
            socket.close();
        }
        open.clear();
    }

    void mend() throws IOException {
        entry = new ServerSocket();
        entry.setReuseAddress(true);
        entry.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 50);
        start(entry);
    }

    private void start(ServerSocket from) {
        background(() -> {
            while (!from.isClosed()) {
                Socket browser = from.accept();
                Socket app = new Socket(InetAddress.getLoopbackAddress(), server);
                open.add(browser);
                open.add(app);
                background(() -> pump(browser, app));
                background(() -> pump(app, browser));
            }
        });
    }

    private static void pump(Socket from, Socket to) throws IOException {
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            in.transferTo(out);
        }
    }

    /** What can fail because the wire was cut. */
    private interface Work {
        void run() throws IOException;
    }

    private static void background(Work work) {
        Thread thread = new Thread(() -> {
            try {
                work.run();
            } catch (IOException cut) {
                // that is what it is for
            }
        });
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void close() throws IOException {
        cut();
    }
}
