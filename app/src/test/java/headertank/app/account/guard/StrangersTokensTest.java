package headertank.app.account.guard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;

/** Tokens of forms. Tests that send forms without a browser bring a store of tokens of their own, so this one is asked itself. */
class StrangersTokensTest {

    private final StrangersTokens tokens = new StrangersTokens();
    private final MockHttpServletRequest request = new MockHttpServletRequest("POST", "/cars/1/spec/preview");
    private final MockHttpServletResponse response = new MockHttpServletResponse();

    @Test
    void aStrangerHasTheTokenInACookieAndNoSession() {
        save();
        assertThat(response.getCookie("headertank-form")).isNotNull();
        assertThat(request.getSession(false)).isNull();
    }

    /** Else it takes the place of the one that the page for signing in has set at the same time. */
    @Test
    void aStrangersPreviewSetsNoCookie() {
        request.addHeader("HX-Request", "true");
        save();
        assertThat(response.getCookies()).isEmpty();
        request.addHeader("HX-Boosted", "true");
        save();
        assertThat(response.getCookie("headertank-form")).isNotNull();
    }

    @Test
    void whoHasASessionHasTheTokenInIt() {
        request.addHeader("HX-Request", "true");
        request.getSession(true);
        save();
        assertThat(response.getCookies()).isEmpty();
        assertThat(tokens.loadToken(request)).isNotNull();
    }

    private void save() {
        tokens.saveToken(tokens.generateToken(request), request, response);
    }
}
