package headertank.app.handover.photo;

/**
 * A picture as it is kept: drawn anew as JPEG, so that nothing but what it shows is left of it.
 *
 * @param width of the larger version, pixels
 * @param height likewise
 * @param jpeg at most {@link PictureReader#LONGEST_SIDE} pixels a side
 * @param smallJpeg at most {@link PictureReader#SMALL_SIDE} pixels a side
 */
public record StoredPicture(int width, int height, byte[] jpeg, byte[] smallJpeg) {}
