package headertank.app.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import headertank.app.account.People;
import headertank.app.carspec.OvertakenException;
import headertank.app.check.Specs;
import headertank.app.database.DatabaseTest;
import headertank.app.handover.Handovers;
import headertank.app.handover.Lists;
import headertank.app.shop.Role;
import headertank.calc.carspec.BuildField;
import headertank.calc.quantity.Stated;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/**
 * Walks through the pages' own routes on the real database, some steps at the same time, held against the state machine: what it
 * refuses is refused, what it lets through is done, and the car stands where it says. {@code -Dheadertank.walks=400} takes more
 * of them, {@code -Dheadertank.seed} the same again.
 */
@DatabaseTest
class WalksIT {

    private static final int WALKS = Integer.getInteger("headertank.walks", 10);
    private static final int SHORTEST = 18;

    /** The item whose readings the walks take. */
    private static final String READ = "cap-test";

    /** The item at which they find something wrong; the owner leaves it out at times, and asks it again. */
    private static final String LOOKED_AT = "duct";

    private static final int LONGEST = 30;

    @Autowired
    MockMvc mvc;

    @Autowired
    People people;

    @Autowired
    Specs specs;

    @Autowired
    Lists lists;

    @Autowired
    Handovers handovers;

    @Autowired
    Gate gate;

    @Autowired
    JdbcClient jdbc;

    private final ExecutorService hands = Executors.newFixedThreadPool(3);
    private final Map<Role, String> logins = new EnumMap<>(Role.class);
    private final Map<Role, RequestPostProcessor> who = new EnumMap<>(Role.class);
    private long car;
    private int saved;
    private int refused;
    private int together;

    @AfterEach
    void nobody() {
        People.nobody();
        hands.shutdownNow();
    }

    @Test
    void noWalkEndsWithACarHandedOverAgainstAnOpenFault() throws Exception {
        long seed = Long.getLong("headertank.seed", System.nanoTime());
        Random random = new Random(seed);
        long shop = people.aShop();
        for (Role role : Role.values()) {
            logins.put(role, people.anAccount(shop, role));
            who.put(role, people.in(shop, role));
        }
        int steps = 0;
        for (int walk = 0; walk < WALKS; walk++) {
            steps += walk(random, "headertank.seed=" + seed + ", walk " + walk);
        }
        int left = jdbc.sql("select count(*) from job_event where kind = 'HANDED_OVER'")
                .query(Integer.class)
                .single();
        System.out.printf(
                "%d walks, %d steps (%d refused, %d at the same time as others), %d hand-overs, headertank.seed=%d%n",
                WALKS, steps, refused, together, left, seed);
        assertThat(left).as("hand-overs, headertank.seed=%d", seed).isPositive();
        assertThat(refused).as("refused steps, headertank.seed=%d", seed).isPositive();
    }

    private int walk(Random random, String name) throws Exception {
        act(Role.TECHNICIAN);
        car = specs.aCar();
        Standing at = Standing.NEW;
        List<Deed> taken = new ArrayList<>();
        int length = SHORTEST + random.nextInt(LONGEST - SHORTEST + 1);
        while (taken.size() < length) {
            List<Deed> deeds = possibleToSend(Deed.together(random, at));
            taken.addAll(deeds);
            at = deeds.size() == 1 ? one(deeds.get(0), at, name + taken) : several(deeds, at, name + taken);
            nothingIsOpenThatLeft(name + taken);
        }
        return taken.size();
    }

    /** What is made of several requests is not done at the same time as others; what has no address yet is not sent. */
    private List<Deed> possibleToSend(List<Deed> deeds) {
        List<Deed> sent = deeds.stream()
                .filter(d -> deeds.size() == 1
                        || d.step() != Step.ANSWER_ALL
                                && d.step() != Step.LEAVE_OUT
                                && d.step() != Step.CLEAR_BY_REASON
                                && d.step() != Step.CLEAR_BY_REVISION)
                .filter(d -> isAddressed(d.step()))
                .toList();
        return sent.isEmpty() ? List.of(new Deed(Role.FRONT_DESK, Step.SAVE_REVISION)) : sent;
    }

    private boolean isAddressed(Step step) {
        return switch (step) {
            case OPEN_JOB, SAVE_REVISION, RATE, CHANGE_LIST -> true;
            case PAUSE, RESUME, CALL_OFF, HAND_OVER, TAKE_BACK -> job().isPresent();
            case ANSWER_ALL -> check().isPresent() && !isWaitingForAReading();
            default -> check().isPresent();
        };
    }

    private Standing one(Deed deed, Standing before, String way) throws Exception {
        boolean done = send(deed);
        assertThat(done).as("%s after %s", deed, way).isEqualTo(deed.isPossible(before));
        refused += done ? 0 : 1;
        return agrees(deed.from(before), way);
    }

    /** What was done must be what the machine lets through in some order, and lead to where the car stands. */
    private Standing several(List<Deed> deeds, Standing before, String way) throws Exception {
        together += deeds.size();
        List<Callable<Boolean>> sendings =
                deeds.stream().<Callable<Boolean>>map(d -> () -> send(d)).toList();
        List<Deed> done = new ArrayList<>();
        List<Future<Boolean>> answers = hands.invokeAll(sendings);
        for (int i = 0; i < deeds.size(); i++) {
            if (answers.get(i).get()) {
                done.add(deeds.get(i));
            } else {
                refused++;
            }
        }
        act(Role.OWNER);
        Standing now = gate.ofCar(car);
        Optional<Standing> machine = orders(done, before).stream()
                .filter(s -> seen(s).equals(seen(now)))
                .findFirst();
        assertThat(machine)
                .as("%s at the same time, %s done, from %s to %s after %s", deeds, done, before, now, way)
                .isPresent();
        return agrees(machine.get(), way);
    }

    private static List<Standing> orders(List<Deed> deeds, Standing from) {
        if (deeds.isEmpty()) {
            return List.of(from);
        }
        List<Standing> ends = new ArrayList<>();
        for (int i = 0; i < deeds.size(); i++) {
            if (deeds.get(i).isPossible(from)) {
                List<Deed> others = new ArrayList<>(deeds);
                Deed first = others.remove(i);
                ends.addAll(orders(others, first.from(from)));
            }
        }
        return ends;
    }

    /** The database says the same, and its view names the same stage. */
    private Standing agrees(Standing machine, String way) {
        act(Role.OWNER);
        assertThat(seen(gate.ofCar(car))).as(way).isEqualTo(seen(machine));
        job().ifPresent(job -> assertThat(jdbc.sql("select stage from job_stage where id = :id")
                        .param("id", job)
                        .query(String.class)
                        .single())
                .as(way)
                .isEqualTo(machine.stage().name()));
        return machine;
    }

    /** What the database knows of it: not whether all items are entered, and not what stood before the customer had the car. */
    private static Standing seen(Standing s) {
        return s.away()
                ? new Standing(s.job(), s.described(), Standing.Check.NONE, false, false, s.faults(), true)
                : s.withList(s.decided());
    }

    private void nothingIsOpenThatLeft(String way) {
        assertThat(jdbc.sql("""
            select count(*) from car_fault f join job j on j.car_id = f.car_id and j.closed_as = 'HANDED_OVER'
            left join fault_clearing z on z.fault_id = f.id
            where f.opened_at < j.closed_at and (z.id is null or z.cleared_at > j.closed_at)\
            """).query(Integer.class).single())
                .as("cars handed over against an open fault, after %s", way)
                .isZero();
    }

    /** Whether it was done; what was not done must have been refused properly, and a revision that is not there is not rated. */
    private boolean send(Deed deed) throws Exception {
        return switch (deed.step()) {
            case SAVE_REVISION -> saveRevision(deed.who());
            case ANSWER_ALL -> answerAll(deed.who());
            case LEAVE_OUT -> leaveOut(deed.who());
            case CLEAR_BY_REASON, CLEAR_BY_REVISION -> clear(deed);
            default -> done(deed.who(), request(deed.step()));
        };
    }

    private boolean done(Role role, MockHttpServletRequestBuilder request) throws Exception {
        var answer = mvc.perform(request.with(csrf()).with(who.get(role))).andReturn();
        int status = answer.getResponse().getStatus();
        assertThat(status)
                .as(
                        "%s by %s with %s",
                        answer.getRequest().getRequestURI(),
                        role,
                        answer.getRequest().getParameterMap().keySet())
                .isIn(
                        302,
                        303,
                        403,
                        409,
                        422,
                        answer.getRequest().getRequestURI().endsWith("/checks") ? 404 : 422);
        return status < 400;
    }

    private MockHttpServletRequestBuilder request(Step step) {
        String list = "/checks/" + check().orElse(0L) + "/handover";
        String job = "/jobs/" + job().orElse(0L);
        return switch (step) {
            case OPEN_JOB ->
                post("/cars/" + car + "/jobs")
                        .param("asked", "look")
                        .param("promised", LocalDate.now().plusDays(1).toString());
            case PAUSE, CALL_OFF -> job(job + "/stop").param("how", step.name()).param("reason", "waits");
            case RESUME -> job(job + "/resume");
            case HAND_OVER -> job(job + "/hand-over").param("sure", "yes");
            case TAKE_BACK -> job(job + "/take-back").param("reason", "wrong car");
            case RATE -> post("/cars/" + car + "/revisions/" + Math.max(1, revision()) + "/checks");
            case SIGN_LEAVES -> sign("DELIVER_WITH_CONDITIONS");
            case SIGN_STAYS -> sign("HOLD_BACK");
            case FIND_FAULT -> entry(list, LOOKED_AT, "FAULT", "");
            case READ_OUTSIDE -> entry(list, READ, "MEASURED", "0.90 bar");
            case READ_WITHIN -> entry(list, READ, "MEASURED", "1.30 bar");
            case CHANGE_LIST ->
                post("/duties/street/list")
                        .param("item", LOOKED_AT)
                        .param("asked", String.valueOf(isLeftOut()))
                        .param("reason", "as the season goes");
            case SEND_BACK -> decision(list, "SEND_BACK");
            case DECIDE_LEAVES -> decision(list, "DELIVER");
            default -> throw new IllegalArgumentException(step.name());
        };
    }

    private MockHttpServletRequestBuilder job(String path) {
        return post(path)
                .param(
                        "version",
                        jdbc.sql("select version from job where id = :id")
                                .param("id", job().orElseThrow())
                                .query(String.class)
                                .single());
    }

    private MockHttpServletRequestBuilder sign(String decision) {
        return post("/checks/" + check().orElseThrow() + "/sign-off")
                .param("decision", decision)
                .param("remark", "Signed with Street in mind.");
    }

    private static MockHttpServletRequestBuilder entry(String list, String item, String outcome, String value) {
        return post(list + "/entries")
                .param("key", UUID.randomUUID().toString())
                .param("item", item)
                .param("outcome", outcome)
                .param("value", value)
                .param("note", "as seen");
    }

    private static MockHttpServletRequestBuilder decision(String list, String outcome) {
        return post(list + "/decision")
                .param("key", UUID.randomUUID().toString())
                .param("outcome", outcome)
                .param("reason", "hose rubs");
    }

    /** Whether the shop leaves out now what the walks look at. */
    private boolean isLeftOut() {
        return jdbc.sql("""
                        select coalesce((select not asked from asked_item where shop_id = (select shop_id from car where id = :car)
                                         order by id desc limit 1), false)""").param("car", car).query(Boolean.class).single();
    }

    private boolean saveRevision(Role role) throws Exception {
        if (!Step.SAVE_REVISION.roles().contains(role)) {
            return done(role, post("/cars/" + car + "/spec"));
        }
        act(role);
        try {
            specs.save(
                    car,
                    Specs.easy()
                            .set(BuildField.FAN_CURRENT, Stated.measured(10 + 0.01 * ++saved))
                            .build(),
                    "street");
            return true;
        } catch (OvertakenException e) {
            return false;
        } finally {
            SecurityContextHolder.clearContext();
        }
    }

    private boolean answerAll(Role role) throws Exception {
        long check = check().orElseThrow();
        act(Role.TECHNICIAN);
        boolean inWork = handovers.of(check).isInWork();
        if (!Step.ANSWER_ALL.roles().contains(role) || !inWork) {
            String list = "/checks/" + check + "/handover";
            return done(role, entry(list, "leaks-hot", "DONE", ""));
        }
        lists.answerAll(check);
        return true;
    }

    /** A good reading would clear what an earlier one has opened, which is a step of its own. */
    private boolean isWaitingForAReading() {
        act(Role.TECHNICIAN);
        return gate.ofCar(car).open(FaultKind.READING) != Standing.Open.NONE
                && handovers.of(check().orElseThrow()).missing().stream()
                        .anyMatch(line -> line.item().key().equals(READ));
    }

    /** First where faults are found, which must refuse it while one is open, then all that is missing. */
    private boolean leaveOut(Role role) throws Exception {
        String list = "/checks/" + check().orElseThrow() + "/handover";
        boolean first = done(role, entry(list, READ, "NOT_APPLICABLE", ""));
        if (!done(role, entry(list, LOOKED_AT, "NOT_APPLICABLE", "")) || !first) {
            return false;
        }
        act(Role.TECHNICIAN);
        for (var line : handovers.of(check().orElseThrow()).missing()) {
            assertThat(done(role, entry(list, line.item().key(), "NOT_APPLICABLE", "")))
                    .isTrue();
        }
        return true;
    }

    private boolean clear(Deed deed) throws Exception {
        act(Role.OWNER);
        boolean byRevision = deed.step() == Step.CLEAR_BY_REVISION;
        List<Long> open = jdbc.sql("select id from car_fault where car_id = :car order by id")
                .param("car", car)
                .query(Long.class)
                .list();
        boolean any = false;
        for (long fault : open) {
            any |= done(
                    deed.who(),
                    post("/checks/" + check().orElseThrow() + "/handover/faults/" + fault)
                            .param("key", UUID.randomUUID().toString())
                            .param("how", byRevision ? "REVISION" : "REASON")
                            .param("reason", byRevision ? "" : "put right"));
        }
        return any;
    }

    private void act(Role role) {
        people.actAs(logins.get(role));
    }

    private Optional<Long> job() {
        return jdbc.sql("select id from job where car_id = :car order by id desc limit 1")
                .param("car", car)
                .query(Long.class)
                .optional();
    }

    private int revision() {
        return jdbc.sql("select coalesce(max(number), 0) from revision where car_id = :car")
                .param("car", car)
                .query(Integer.class)
                .single();
    }

    /** The newest check of the newest revision, else the newest there is. */
    private Optional<Long> check() {
        return jdbc.sql("""
            select k.id from check_run k join revision r on r.id = k.revision_id where r.car_id = :car
            order by r.number desc, k.created_at desc, k.id desc limit 1\
            """).param("car", car).query(Long.class).optional();
    }
}
