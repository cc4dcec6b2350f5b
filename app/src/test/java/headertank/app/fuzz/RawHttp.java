package headertank.app.fuzz;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** HTTP/1.1 byte by byte: sends what no client library would let pass. */
final class RawHttp implements AutoCloseable {

    /** @param status 0 when the server closed without an answer */
    record Answer(int status, Map<String, String> headers, String body) {
        String header(String name) {
            return headers.getOrDefault(name.toLowerCase(Locale.ROOT), "");
        }
    }

    private final int port;
    private Socket socket;
    private InputStream in;

    RawHttp(int port) {
        this.port = port;
    }

    /** @param path as it goes over the wire, each character one byte */
    Answer send(String method, String path, Map<String, String> headers, byte[] body) throws IOException {
        try {
            return once(method, path, headers, body);
        } catch (SocketException | EOFException e) {
            close();
        }
        try {
            return once(method, path, headers, body);
        } catch (SocketException | EOFException e) {
            close();
            return new Answer(0, Map.of(), "");
        }
    }

    private Answer once(String method, String path, Map<String, String> headers, byte[] body) throws IOException {
        if (socket == null) {
            socket = new Socket(InetAddress.getLoopbackAddress(), port);
            socket.setSoTimeout(60_000);
            in = new BufferedInputStream(socket.getInputStream());
        }
        Map<String, String> all = new LinkedHashMap<>();
        all.put("Host", "localhost:" + port);
        all.putAll(headers);
        if (body != null) {
            all.put("Content-Length", Integer.toString(body.length));
        }
        StringBuilder head = new StringBuilder(method).append(' ').append(path).append(" HTTP/1.1\r\n");
        all.forEach(
                (name, value) -> head.append(name).append(": ").append(value).append("\r\n"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(head.append("\r\n").toString().getBytes(StandardCharsets.ISO_8859_1));
        if (body != null) {
            out.writeBytes(body);
        }
        socket.getOutputStream().write(out.toByteArray());
        socket.getOutputStream().flush();
        return answer(method);
    }

    private Answer answer(String method) throws IOException {
        String first = line();
        Map<String, String> headers = new TreeMap<>();
        for (String line = line(); !line.isEmpty(); line = line()) {
            int colon = line.indexOf(':');
            headers.put(
                    line.substring(0, colon).toLowerCase(Locale.ROOT),
                    line.substring(colon + 1).strip());
        }
        int status = Integer.parseInt(first.split(" ")[1]);
        byte[] body = method.equals("HEAD") || status == 204 || status == 304 ? new byte[0] : body(headers);
        if ("close".equalsIgnoreCase(headers.get("connection"))) {
            close();
        }
        return new Answer(status, headers, new String(body, StandardCharsets.UTF_8));
    }

    private byte[] body(Map<String, String> headers) throws IOException {
        String length = headers.get("content-length");
        if (length != null) {
            return in.readNBytes(Integer.parseInt(length));
        }
        if (!"chunked".equalsIgnoreCase(headers.get("transfer-encoding"))) {
            return in.readAllBytes();
        }
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (int size = chunk(); size > 0; size = chunk()) {
            body.writeBytes(in.readNBytes(size));
            line();
        }
        line();
        return body.toByteArray();
    }

    private int chunk() throws IOException {
        return Integer.parseInt(line().split(";")[0].strip(), 16);
    }

    private String line() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        for (int b = in.read(); b != '\n'; b = in.read()) {
            if (b < 0) {
                throw new EOFException();
            }
            if (b != '\r') {
                line.write(b);
            }
        }
        return line.toString(StandardCharsets.ISO_8859_1);
    }

    @Override
    public void close() throws IOException {
        if (socket != null) {
            socket.close();
            socket = null;
        }
    }
}
