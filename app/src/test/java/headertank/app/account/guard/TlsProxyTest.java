package headertank.app.account.guard;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.HttpServlet;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServer;

/** Who is believed about who asks, on a server that says what it believes. */
class TlsProxyTest {

    /** Says where a request comes from and whether by https. */
    private static final class Told extends HttpServlet {

        private static final long serialVersionUID = 1L;

        @Override
        protected void doGet(HttpServletRequest request, HttpServletResponse response) throws IOException {
            response.getWriter().print(request.getRemoteAddr() + " " + request.isSecure());
        }
    }

    @Test
    void theNamedProxyIsBelieved() throws Exception {
        assertThat(saidThrough("127.0.0.1")).isEqualTo("203.0.113.9 true");
        assertThat(saidThrough(" 127.0.0.1 ")).isEqualTo("203.0.113.9 true");
    }

    /** Also one whose address the named one only resembles: the dots are dots. */
    @Test
    void nobodyElseIs() throws Exception {
        assertThat(saidThrough("")).isEqualTo("127.0.0.1 false");
        assertThat(saidThrough("192.0.2.1")).isEqualTo("127.0.0.1 false");
        assertThat(saidThrough("127.0.0.")).isEqualTo("127.0.0.1 false");
        assertThat(saidThrough(".*")).isEqualTo("127.0.0.1 false");
    }

    private static String saidThrough(String proxy) throws Exception {
        TomcatServletWebServerFactory factory = new TomcatServletWebServerFactory(0);
        new TlsProxy(proxy).customize(factory);
        WebServer server = factory.getWebServer(
                context -> context.addServlet("told", new Told()).addMapping("/"));
        server.start();
        try {
            return HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.getPort() + "/"))
                                    .header("X-Forwarded-For", "203.0.113.9")
                                    .header("X-Forwarded-Proto", "https")
                                    .build(),
                            HttpResponse.BodyHandlers.ofString())
                    .body();
        } finally {
            server.stop();
            server.destroy();
        }
    }
}
