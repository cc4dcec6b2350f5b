package headertank.app.incident.cause;

import headertank.app.audit.AuditTrail;
import headertank.app.form.FormKeys;
import headertank.app.incident.Incident;
import headertank.app.incident.Incidents;
import headertank.app.incident.ReportedDuty;
import headertank.app.problem.NotFoundException;
import headertank.app.shop.CurrentUser;
import headertank.calc.cause.Inquiry;
import headertank.calc.cause.Observation;
import headertank.calc.duty.Duty;
import headertank.calc.duty.OperatingPoint;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what was seen of a car that came back hot, and what tests have shown since. */
@Service
@Transactional(readOnly = true)
class IncidentAnswers {

    private final IncidentAnswerStore store;
    private final Incidents incidents;
    private final ReportedDuty reportedDuty;
    private final CurrentUser user;
    private final AuditTrail audit;
    private final FormKeys forms;

    IncidentAnswers(
            IncidentAnswerStore store,
            Incidents incidents,
            ReportedDuty reportedDuty,
            CurrentUser user,
            AuditTrail audit,
            FormKeys forms) {
        this.store = store;
        this.incidents = incidents;
        this.reportedDuty = reportedDuty;
        this.user = user;
        this.audit = audit;
        this.forms = forms;
    }

    /** Every answer that was given, newest first. */
    List<IncidentAnswer> all(long incidentId) {
        return store.all(user.shopId(), incidentId);
    }

    /** What counts now, by question. */
    static Map<String, IncidentAnswer> now(List<IncidentAnswer> newestFirst) {
        Map<String, IncidentAnswer> now = new LinkedHashMap<>();
        newestFirst.forEach(a -> now.putIfAbsent(a.question(), a));
        now.values().removeIf(a -> a.answer().isEmpty());
        return now;
    }

    /** What a car may have been doing at a duty when it ran hot. */
    static List<OperatingPoint> doings(Duty duty) {
        return duty.points().stream().filter(p -> !p.engineOff()).toList();
    }

    /**
     * Adds an answer; one that says what holds already adds nothing.
     *
     * @throws NotFoundException when there is no such report, question or answer
     */
    @Transactional
    public void add(long incidentId, IncidentAnswerForm form) {
        Incident incident = incidents.byId(incidentId);
        requireKnown(incident, form);
        forms.once(user.shopId(), form.key(), "incident_answer", incidentId + " " + form, () -> {
            forms.oneAtATime("answers of incident " + incidentId);
            IncidentAnswer holds = now(all(incidentId)).get(form.question());
            if ((holds == null ? "" : holds.answer()).equals(form.answer())) {
                return incidentId;
            }
            long id = store.insert(user.shopId(), user.accountId(), incidentId, form);
            audit.record("incident.answered", "incident", incidentId, form.question() + " " + form.answer());
            return id;
        });
    }

    private void requireKnown(Incident incident, IncidentAnswerForm form) {
        boolean doing = form.question().equals(IncidentAnswer.DOING);
        if (!doing && Arrays.stream(Inquiry.values()).noneMatch(q -> q.name().equals(form.question()))) {
            throw new NotFoundException("question", form.question());
        }
        boolean known = form.answer().isEmpty()
                || (doing
                        ? doings(reportedDuty.of(incident)).stream().anyMatch(p -> p.id().equals(form.answer()))
                        : Observation.of(Inquiry.valueOf(form.question())).stream()
                                .anyMatch(o -> o.name().equals(form.answer())));
        if (!known) {
            throw new NotFoundException("answer", form.answer());
        }
    }
}
