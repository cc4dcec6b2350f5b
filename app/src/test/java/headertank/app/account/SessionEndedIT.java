package headertank.app.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.forwardedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import headertank.app.database.DatabaseTest;
import headertank.app.shop.Role;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A form whose session has ended: sign in there and go on. */
@DatabaseTest
class SessionEndedIT {

    @LocalServerPort
    int port;

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Test
    void aFormOfOurOwnPagesIsKeptThroughSigningIn() throws Exception {
        String login = people.anAccount(people.aShop(), Role.FRONT_DESK);
        mvc.perform(form("/customers").header("Sec-Fetch-Site", "same-origin"))
                .andExpect(forwardedUrl("/sign-in-again"));
        mvc.perform(kept(post("/sign-in-again")))
                .andExpect(status().isUnauthorized())
                .andExpect(content().string(containsString("What you typed is still kept")))
                .andExpect(content().string(containsString("name=\"kept:name\" value=\"Pat &lt;Example&gt;\"")))
                .andExpect(content().string(containsString("name=\"kept.path\" value=\"/customers\"")));
        mvc.perform(kept(post("/login")).param("username", login).param("password", "wrong"))
                .andExpect(forwardedUrl("/sign-in-again"));
        mvc.perform(kept(post("/login")).param("username", login).param("password", People.PASSWORD))
                .andExpect(forwardedUrl("/go-on"));
        mvc.perform(kept(post("/go-on")).with(people.in(people.aShop(), Role.FRONT_DESK)))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("action=\"/customers\"")))
                .andExpect(content().string(containsString("name=\"name\" value=\"Pat &lt;Example&gt;\"")));
    }

    @Test
    void everyFormIsKeptUntilSomebodySignsInAgain() throws Exception {
        List<String> forNobody = List.of("/first-owner", "/sign-in-again", "/go-on", "/language");
        List<String> forms = RouteRights.rows().stream()
                .filter(row -> row.method().equals(HttpMethod.POST))
                .map(row -> row.pattern().getPatternString())
                .filter(pattern -> !forNobody.contains(pattern))
                .map(pattern -> pattern.replaceAll("\\{[^}]+}", "1"))
                .toList();
        assertThat(forms).hasSizeGreaterThan(30);
        for (String path : forms) {
            mvc.perform(form(path).header("Sec-Fetch-Site", "same-origin")).andExpect(forwardedUrl("/sign-in-again"));
        }
    }

    @Test
    void whoeverHasSignedInAgainElsewhereGoesOnAtOnce() throws Exception {
        mvc.perform(form("/customers")
                        .header("Origin", "http://localhost")
                        .header("Host", "localhost")
                        .with(people.in(people.aShop(), Role.FRONT_DESK)))
                .andExpect(forwardedUrl("/go-on"));
    }

    @Test
    void aFormOfAnotherSiteIsRefusedAndNoPasswordIsKept() throws Exception {
        for (String site : new String[] {"cross-site", "same-site", "none"}) {
            mvc.perform(form("/customers").header("Sec-Fetch-Site", site)).andExpect(status().isForbidden());
        }
        mvc.perform(form("/customers")
                        .header("Origin", "http://elsewhere.example")
                        .header("Host", "localhost"))
                .andExpect(status().isForbidden());
        mvc.perform(form("/customers")).andExpect(status().isForbidden());
        String page = mvc.perform(post("/sign-in-again")
                        .with(csrf())
                        .param("kept.path", "/account/password")
                        .param("kept:password", "secret-1")
                        .param("kept:old", "secret-2"))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).contains("/account/password").doesNotContain("secret-");
        mvc.perform(post("/go-on")
                        .with(csrf())
                        .with(people.in(people.aShop(), Role.OWNER))
                        .param("kept.path", "//elsewhere.example/customers"))
                .andExpect(status().is3xxRedirection());
    }

    /** Another tab, or a preview on its way, may renew the token of the page for signing in. */
    @Test
    void aTokenThatWasRenewedMeanwhileLosesNothingThatWasTyped() throws Exception {
        String form = "kept.path=%2Fcustomers&kept%3Aname=Pat+Example&username=nobody&password=wrong&_csrf=old";
        HttpResponse<String> answer = sent("/login", form, "Sec-Fetch-Site", "same-origin");
        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.body())
                .contains("name=\"kept:name\" value=\"Pat Example\"", "What you typed is kept")
                .doesNotContain("do not belong together");
        answer = sent("/login", form, "Sec-Fetch-Site", "cross-site");
        assertThat(answer.headers().firstValue("Location").orElseThrow()).endsWith("/login");
    }

    private HttpResponse<String> sent(String path, String form, String header, String value) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + port + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header(header, value)
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build();
        return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static MockHttpServletRequestBuilder form(String path) {
        return post(path).param("name", "Pat <Example>");
    }

    private static MockHttpServletRequestBuilder kept(MockHttpServletRequestBuilder request) {
        return request.with(csrf()).param("kept.path", "/customers").param("kept:name", "Pat <Example>");
    }
}
