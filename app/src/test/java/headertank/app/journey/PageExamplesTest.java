package headertank.app.journey;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The list of pages to look at against the routes there are. */
class PageExamplesTest {

    @Test
    void everyPageHasAnExampleOrAReason() {
        assertThat(PageExamples.gaps()).isEmpty();
    }

    @Test
    void everyPictureHasItsOwnName() {
        var names = PageExamples.byPerson().values().stream()
                .flatMap(e -> e.stream().map(PageExamples.Example::name))
                .toList();
        assertThat(names).hasSizeGreaterThan(20).doesNotHaveDuplicates();
        assertThat(PageExamples.name("/")).isEqualTo("start");
        assertThat(PageExamples.name("/cars/{id}/edit")).isEqualTo("cars-one-edit");
    }
}
