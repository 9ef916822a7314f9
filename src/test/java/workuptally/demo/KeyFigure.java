package workuptally.demo;

/**
 * One line of the demo week's key.
 *
 * @param run run id
 * @param figure name of the figure
 * @param subject product, lot, partner or layer/substance
 * @param expected number or word
 * @param tolerance allowed difference; empty for a word
 * @param row where in the key it stands
 */
record KeyFigure(String run, String figure, String subject, String expected, String tolerance, String row) {
    boolean isText() {
        return tolerance.isEmpty();
    }
}
