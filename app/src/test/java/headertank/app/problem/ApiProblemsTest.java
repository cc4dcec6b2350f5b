package headertank.app.problem;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.context.support.StaticMessageSource;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** How failures look to a program, on a controller that fails in every way. */
class ApiProblemsTest {

    private final MockMvc mvc = MockMvcBuilders.standaloneSetup(new Failing())
            .setControllerAdvice(new ApiProblems(new StaticMessageSource()))
            .addFilters(new RequestId())
            .build();

    @Test
    void everyFaultyFieldIsListedWithPointerAndValue() throws Exception {
        mvc.perform(post("/api/x").contentType(MediaType.APPLICATION_JSON).content("{\"inner\":{\"width\":9}}"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.status").value(422))
                .andExpect(jsonPath("$.fields[0].pointer").value("/inner/width"))
                .andExpect(jsonPath("$.fields[0].value").value(9))
                .andExpect(jsonPath("$.requestId").isNotEmpty());
    }

    @Test
    void ownFieldProblemsKeepWhatIsAllowed() throws Exception {
        mvc.perform(get("/api/invalid"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.fields[0].allowed").value("0.1 to 1.5"));
    }

    @Test
    void aMissingRecordIsNotFound() throws Exception {
        mvc.perform(get("/api/missing"))
                .andExpect(status().isNotFound())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.detail").value("no car 7"));
    }

    @Test
    void aClashIsAConflict() throws Exception {
        mvc.perform(get("/api/conflict")).andExpect(status().isConflict());
    }

    @Test
    void ourOwnBugShowsNothingOfTheInside() throws Exception {
        mvc.perform(get("/api/bug"))
                .andExpect(status().isInternalServerError())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(content().string(not(containsString("secret"))))
                .andExpect(jsonPath("$.requestId").isNotEmpty());
    }

    @Test
    void textThatIsNotJsonIsABadRequest() throws Exception {
        mvc.perform(post("/api/x").contentType(MediaType.APPLICATION_JSON).content("{"))
                .andExpect(status().isBadRequest())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON));
    }

    record Inner(@Max(1) int width) {}

    record Input(@Valid Inner inner) {}

    @RestController
    static class Failing {
        @PostMapping("/api/x")
        void take(@Valid @RequestBody Input input) {}

        @GetMapping("/api/invalid")
        void invalid() {
            throw new InvalidInputException(List.of(new FieldProblem("/w", 9, "0.1 to 1.5", "too wide")));
        }

        @GetMapping("/api/missing")
        void missing() {
            throw new NotFoundException("car", 7);
        }

        @GetMapping("/api/conflict")
        void conflict() {
            throw new ConflictException("x.y");
        }

        @GetMapping("/api/bug")
        void bug() {
            throw new IllegalStateException("secret");
        }
    }
}
