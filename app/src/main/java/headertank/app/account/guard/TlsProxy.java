package headertank.app.account.guard;

import org.apache.catalina.valves.RemoteIpValve;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.stereotype.Component;

/**
 * Believes what a proxy says about who asks and whether by https; that of the named proxy alone, for anybody else could say it
 * too.
 */
@Component
class TlsProxy implements WebServerFactoryCustomizer<TomcatServletWebServerFactory> {

    private final String proxy;

    /** @param proxy address of the proxy, {@code headertank.proxy}; empty for none */
    TlsProxy(@Value("${headertank.proxy:}") String proxy) {
        this.proxy = proxy.strip();
    }

    @Override
    public void customize(TomcatServletWebServerFactory server) {
        if (!proxy.isEmpty()) {
            RemoteIpValve valve = new RemoteIpValve();
            valve.setInternalProxies(java.util.regex.Pattern.quote(proxy));
            valve.setRemoteIpHeader("X-Forwarded-For");
            valve.setProtocolHeader("X-Forwarded-Proto");
            server.addEngineValves(valve);
        }
    }
}
