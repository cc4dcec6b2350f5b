/**
 * One field of a car or of a part, wherever it stands: read from what somebody typed, shown in words and in the shop's units,
 * and stored. Specs and the catalogue use the same, so that a value copied from one to the other reads alike on both.
 */
package headertank.app.field;
