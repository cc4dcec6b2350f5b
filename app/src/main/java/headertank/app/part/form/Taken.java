package headertank.app.part.form;

import headertank.app.part.Catalogue;
import headertank.app.part.PartKind;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** A name belongs to one part of its kind, so that a line of a file names one part. */
@Component
class Taken {

    private final Catalogue catalogue;
    private final MessageSource messages;

    Taken(Catalogue catalogue, MessageSource messages) {
        this.catalogue = catalogue;
        this.messages = messages;
    }

    /** @param id of the part that is being changed, null for a new one */
    Optional<String> fault(PartForm form, Long id) {
        Optional<PartKind> kind = id == null
                ? PartKind.of(form.kind())
                : Optional.of(catalogue.part(id).kind());
        return kind.filter(k -> !form.name().isEmpty() && form.name().indexOf('\0') < 0)
                .flatMap(k -> catalogue.named(k, form.name()))
                .filter(other -> id == null || other.id() != id)
                .map(other -> sentence());
    }

    String sentence() {
        return messages.getMessage("part.fault.taken", null, LocaleContextHolder.getLocale());
    }
}
