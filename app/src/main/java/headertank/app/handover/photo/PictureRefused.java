package headertank.app.handover.photo;

/** A file that cannot be kept as a picture; the key names the sentence. */
public final class PictureRefused extends Exception {

    private static final long serialVersionUID = 1L;

    private final String messageKey;

    public PictureRefused(String messageKey) {
        super(messageKey);
        this.messageKey = messageKey;
    }

    public String messageKey() {
        return messageKey;
    }
}
