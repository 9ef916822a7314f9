package workuptally.published;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import workuptally.chemistry.Reconciliation;

/**
 * Data reconciliation against a textbook's flow network (Narasimhan and Jordache, Data Reconciliation and Gross Error Detection, Gulf 2000,
 * chapter 1: heat exchanger with a bypass, all flows measured with standard deviation 1; the figures from memory, the reconciled flows
 * confirmed by solving the normal equations by hand) and against the constrained least-squares solution of Hipparchus.
 */
class ReconciliationTest {
    /** Splitter, exchanger, bypass valve, mixer. */
    private static final double[][] NETWORK = {
        {1, -1, -1, 0, 0, 0}, {0, 1, 0, -1, 0, 0}, {0, 0, 1, 0, -1, 0}, {0, 0, 0, 1, 1, -1}
    };

    private static final double[] UNIT = {1, 1, 1, 1, 1, 1};
    private static final double[] FLOWS = {101.91, 64.45, 34.65, 64.20, 36.44, 98.88};
    private static final double[] RECONCILED = {100.22, 64.50, 35.72, 64.50, 35.72, 100.22};

    private static double[] imbalance(double[][] balances, double[] values) {
        return Arrays.stream(balances)
                .mapToDouble(row -> {
                    double sum = 0;
                    for (int i = 0; i < row.length; i++) {
                        sum += row[i] * values[i];
                    }
                    return sum;
                })
                .toArray();
    }

    private static double[] plus(double[] one, double[] other) {
        double[] sum = one.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += other[i];
        }
        return sum;
    }

    @Test
    void flowsOfTheExchangerWithBypassComeOutAsPublished() {
        Reconciliation reconciliation = new Reconciliation(UNIT, NETWORK, imbalance(NETWORK, FLOWS));
        assertArrayEquals(RECONCILED, plus(FLOWS, reconciliation.adjustments()), 0.005);
        assertEquals(4, reconciliation.degreesOfFreedom());
    }

    @Test
    void aFlowThatIsFourOffFailsTheGlobalTestAndHasTheLargestAdjustment() {
        // the same book, chapter 7: the second flow carries a bias of 4
        double[] biased = FLOWS.clone();
        biased[1] += 4;
        Reconciliation reconciliation = new Reconciliation(UNIT, NETWORK, imbalance(NETWORK, biased));
        assertEquals(16.674, reconciliation.chiSquare(), 0.001);
        double[] tests = reconciliation.standardisedAdjustments();
        double largest = Arrays.stream(tests).max().orElseThrow();
        assertEquals(largest, tests[1], 0);
        // two-sided 5 % over six measurements, 1 - (1 - 0.05)^(1/6): critical value 2.63
        assertTrue(largest > 2.63, "" + largest);
    }

    @Test
    void adjustedValuesAreThoseOfTheConstrainedLeastSquaresOfAnotherLibrary() {
        Random random = new Random(20);
        for (int trial = 0; trial < 50; trial++) {
            int measurements = 4 + random.nextInt(6);
            int count = 1 + random.nextInt(3);
            double[][] balances = new double[count][measurements];
            double[] u = new double[measurements];
            double[] values = new double[measurements];
            for (int i = 0; i < measurements; i++) {
                u[i] = 0.1 + random.nextDouble();
                values[i] = 10 * random.nextDouble();
                for (double[] row : balances) {
                    row[i] = random.nextGaussian();
                }
            }
            double[] imbalance = imbalance(balances, values);
            double[] adjustments = new Reconciliation(u, balances, imbalance).adjustments();
            assertArrayEquals(lagrange(u, balances, imbalance), adjustments, 1e-9, "trial " + trial);
        }
    }

    /** The stationary point of Σ(a/u)² + 2λᵀ(A·a + r), by QR. */
    private static double[] lagrange(double[] u, double[][] balances, double[] imbalance) {
        int n = u.length;
        int size = n + balances.length;
        double[][] system = new double[size][size];
        double[] right = new double[size];
        for (int i = 0; i < n; i++) {
            system[i][i] = 1 / (u[i] * u[i]);
        }
        for (int k = 0; k < balances.length; k++) {
            right[n + k] = -imbalance[k];
            for (int i = 0; i < n; i++) {
                system[i][n + k] = balances[k][i];
                system[n + k][i] = balances[k][i];
            }
        }
        RealVector solved = new QRDecomposition(new Array2DRowRealMatrix(system))
                .getSolver()
                .solve(new ArrayRealVector(right));
        return solved.getSubVector(0, n).toArray();
    }

    @Test
    void adjustedValuesScatterAsTheirUncertaintySays() {
        Random random = new Random(3);
        double[] truth = {100, 64, 36, 64, 36, 100};
        double[] squares = new double[6];
        int trials = 4000;
        for (int trial = 0; trial < trials; trial++) {
            double[] read =
                    Arrays.stream(truth).map(t -> t + random.nextGaussian()).toArray();
            double[] adjusted = plus(read, new Reconciliation(UNIT, NETWORK, imbalance(NETWORK, read)).adjustments());
            for (int i = 0; i < 6; i++) {
                squares[i] += (adjusted[i] - truth[i]) * (adjusted[i] - truth[i]) / trials;
            }
        }
        double[] u = new Reconciliation(UNIT, NETWORK, new double[4]).adjustedStandardUncertainties();
        for (int i = 0; i < 6; i++) {
            assertEquals(u[i], Math.sqrt(squares[i]), 0.05 * u[i]);
            assertTrue(u[i] < 1);
        }
    }

    @Test
    void aBalanceThatTheOthersImplyChangesNothing() {
        double[][] twice = Arrays.copyOf(NETWORK, 5);
        twice[4] = new double[] {1, 0, 0, 0, 0, -1};
        Reconciliation reconciliation = new Reconciliation(UNIT, twice, imbalance(twice, FLOWS));
        assertArrayEquals(RECONCILED, plus(FLOWS, reconciliation.adjustments()), 0.005);
        assertEquals(4, reconciliation.degreesOfFreedom());
    }

    @Test
    void whatDoesNotFitIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Reconciliation(UNIT, NETWORK, new double[1]));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Reconciliation(new double[] {0}, new double[][] {{1}}, new double[] {1}));
    }
}
