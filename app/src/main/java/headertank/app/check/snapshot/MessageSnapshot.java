package headertank.app.check.snapshot;

import headertank.app.check.stored.StoredMessage;
import headertank.app.check.stored.StoredMessage.Amount;
import headertank.app.check.stored.StoredMessage.AmountKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.SiFigure;

/** Turns what calc-core says into what is stored of it. */
final class MessageSnapshot {

    private MessageSnapshot() {}

    static StoredMessage of(Message message) {
        return new StoredMessage(
                message.code(),
                message.arguments().stream().map(MessageSnapshot::argument).toList());
    }

    static Amount of(SiFigure figure) {
        return new Amount(figure.si(), AmountKind.valueOf(figure.kind().name()));
    }

    private static StoredMessage.Argument argument(MessageArgument argument) {
        if (argument instanceof Message m) {
            return new StoredMessage.Nested(of(m));
        }
        if (argument instanceof SiFigure f) {
            return of(f);
        }
        if (argument instanceof MessageArgument.FieldName f) {
            return new StoredMessage.FieldName(f.field());
        }
        if (argument instanceof MessageArgument.FieldValue v) {
            return new StoredMessage.Text(v.toString());
        }
        if (argument instanceof MessageArgument.OptionName o) {
            return new StoredMessage.OptionName(o.field(), o.token());
        }
        if (argument instanceof MessageArgument.DutyName d) {
            return new StoredMessage.DutyName(d.duty(), d.label());
        }
        if (argument instanceof MessageArgument.PointName p) {
            return new StoredMessage.PointName(p.duty(), p.point(), p.label());
        }
        return new StoredMessage.Text(((MessageArgument.Text) argument).text());
    }
}
