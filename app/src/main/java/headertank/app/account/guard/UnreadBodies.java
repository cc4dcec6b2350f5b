package headertank.app.account.guard;

import jakarta.servlet.ServletException;
import java.io.IOException;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.stereotype.Component;

/**
 * Lets the server close the connection of a refused stranger at once: else it waits, with a thread, for the rest of a body that
 * nobody reads.
 */
@Component
class UnreadBodies implements WebServerFactoryCustomizer<TomcatServletWebServerFactory> {

    /** Attribute of a request whose body is not worth waiting for. */
    static final String UNREAD = UnreadBodies.class.getName();

    @Override
    public void customize(TomcatServletWebServerFactory server) {
        server.addContextValves(new ValveBase(true) {
            @Override
            public void invoke(Request request, Response response) throws IOException, ServletException {
                getNext().invoke(request, response);
                if (request.getAttribute(UNREAD) != null) {
                    response.finishResponse();
                    request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
                }
            }
        });
    }
}
