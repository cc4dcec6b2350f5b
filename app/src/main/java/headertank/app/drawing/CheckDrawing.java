package headertank.app.drawing;

import headertank.app.check.stored.DutyResult;
import headertank.app.check.stored.PointResult;
import headertank.app.drawing.ink.DrawingPanel;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The drawings of a check at one of its operating points.
 *
 * @param air the air's way
 * @param coolant the coolant's way
 * @param sentences both in words
 * @param airCurves pressures against air flow; empty without a steady state, or when the check is of another physics
 * @param heatCurves heat against air flow, likewise
 * @param otherPhysics whether the curves are missing because the check was made by another version of the physics
 */
public record CheckDrawing(
        long checkId,
        DutyResult duty,
        PointResult point,
        DrawingPanel air,
        DrawingPanel coolant,
        List<String> sentences,
        Optional<StateCurves> airCurves,
        Optional<StateCurves> heatCurves,
        boolean otherPhysics) {

    public CheckDrawing {
        sentences = List.copyOf(sentences);
    }

    /** Both ways, in the order of reading. */
    public List<DrawingPanel> panels() {
        return List.of(air, coolant);
    }

    /** The curves that there are. */
    public List<StateCurves> curves() {
        return Stream.of(airCurves, heatCurves).flatMap(Optional::stream).toList();
    }
}
