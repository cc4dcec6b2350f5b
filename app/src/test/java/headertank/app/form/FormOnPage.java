package headertank.app.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;

/** A form as a page shows it, with everything in it that a browser would send. */
public record FormOnPage(String action, boolean multipart, Map<String, String> values, Map<String, byte[]> files) {

    /** The first form of a page that leads to an address and holds all of these. */
    public static FormOnPage of(String html, String action, Map<String, String> holds) {
        return Jsoup.parse(html).getElementsByTag("form").stream()
                .filter(f ->
                        f.attr("action").equals(action) && !f.attr("method").equals("get"))
                .map(FormOnPage::read)
                .filter(f -> f.values.entrySet().containsAll(holds.entrySet()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no form at " + action + " with " + holds + " in\n" + html));
    }

    private static FormOnPage read(Element form) {
        Map<String, String> values = new LinkedHashMap<>();
        form.select("input[type=file]").remove();
        ((FormElement) form).formData().forEach(field -> values.merge(field.key(), field.value(), (one, other) -> one));
        return new FormOnPage(form.attr("action"), form.attr("enctype").startsWith("multipart"), values, Map.of());
    }

    public FormOnPage with(Map<String, String> typed) {
        Map<String, String> all = new LinkedHashMap<>(values);
        all.putAll(typed);
        return new FormOnPage(action, multipart, all, files);
    }

    FormOnPage withFile(String field, byte[] content) {
        return new FormOnPage(action, multipart, values, Map.of(field, content));
    }

    /** The key that makes it one form, however often it is sent. */
    FormOnPage requireKey() {
        assertThat(values.keySet()).as("a key in the form at %s", action).containsAnyOf("key");
        return this;
    }

    public AbstractMockHttpServletRequestBuilder<?> request() {
        AbstractMockHttpServletRequestBuilder<?> request;
        if (multipart) {
            var parts = MockMvcRequestBuilders.multipart(action);
            files.forEach((name, bytes) -> parts.file(new MockMultipartFile(name, "file", null, bytes)));
            request = parts;
        } else {
            request = MockMvcRequestBuilders.post(action);
        }
        values.forEach((name, value) -> request.param(name, value));
        return request;
    }
}
