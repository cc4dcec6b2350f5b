/** Lines and letters of a drawing, in its own pixels, without knowledge of what they stand for. */
package headertank.app.drawing.ink;
