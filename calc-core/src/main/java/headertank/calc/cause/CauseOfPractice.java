package headertank.calc.cause;

/** A cause of this library's own: nobody has published how often each is behind a hot car. */
interface CauseOfPractice extends Cause {

    @Override
    default String source() {
        return "prior and signs: common practice, no source; severity: modelling choice";
    }
}
