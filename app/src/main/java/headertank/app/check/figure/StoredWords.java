package headertank.app.check.figure;

import headertank.app.check.stored.StoredMessage;
import headertank.app.check.stored.StoredMessage.Amount;
import headertank.calc.quantity.FigureKind;
import headertank.calc.quantity.Message;
import headertank.calc.quantity.MessageArgument;
import headertank.calc.quantity.SiFigure;

/** Turns what was stored back into what calc-core said, so that it can be put into words. */
final class StoredWords {

    private StoredWords() {}

    static Message message(StoredMessage stored) {
        return new Message(
                OldCodes.now(stored.code()),
                stored.arguments().stream().map(StoredWords::argument).toList());
    }

    static SiFigure figure(Amount amount) {
        return new SiFigure(amount.si(), FigureKind.valueOf(amount.kind().name()));
    }

    private static MessageArgument argument(StoredMessage.Argument argument) {
        if (argument instanceof StoredMessage.Nested n) {
            return message(n.message());
        }
        if (argument instanceof Amount a) {
            return figure(a);
        }
        if (argument instanceof StoredMessage.FieldName f) {
            return new MessageArgument.FieldName(f.field());
        }
        if (argument instanceof StoredMessage.OptionName o) {
            return new MessageArgument.OptionName(o.field(), o.token());
        }
        if (argument instanceof StoredMessage.DutyName d) {
            return new MessageArgument.DutyName(d.duty(), d.label());
        }
        if (argument instanceof StoredMessage.PointName p) {
            return new MessageArgument.PointName(p.duty(), p.point(), p.label());
        }
        return new MessageArgument.Text(((StoredMessage.Text) argument).text());
    }
}
