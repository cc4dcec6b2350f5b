package headertank.app.handover;

/** A file that cannot be kept as a picture; the key names the sentence. */
final class PictureRefused extends Exception {

    private final String messageKey;

    PictureRefused(String messageKey) {
        super(messageKey);
        this.messageKey = messageKey;
    }

    String messageKey() {
        return messageKey;
    }
}
