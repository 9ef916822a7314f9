package workuptally.speed;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.Future;

/**
 * Compares what one more thing costs among many with what it costs among few, in processor time and in memory asked for. Three sizes are
 * measured, so that what is done once, whatever the size, drops out. Counted are the thread that does the work, exactly, and those that it
 * starts, to a few milliseconds; not counted are compiling, collecting garbage and other processes. The least of some rounds counts.
 *
 * @param <T> what is worked on
 */
public final class Growth<T> {
    /** What is done once may be that large that what is done for each thing is lost in its scatter; then nothing is known yet. */
    private static final double LEAST_TIME = 0.2;

    private static final double MOST_MEMORY = 1.25;
    private static final int LEAST_ROUNDS = 2;
    private static final int MOST_ROUNDS = 6;
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private final double mostTime;
    private final Sized<T> base;
    private final Sized<T> few;
    private final Sized<T> many;

    /**
     * With things of three sizes.
     *
     * @param mostTime largest ratio of time; that of memory scatters less and needs no choice
     * @param base of the fewest, from which what is done once is known
     * @param few of some
     * @param many of many more
     */
    public Growth(double mostTime, Sized<T> base, Sized<T> few, Sized<T> many) {
        this.mostTime = mostTime;
        this.base = base;
        this.few = few;
        this.many = many;
    }

    /**
     * Something of a size.
     *
     * @param size number of things in it
     * @param content what it is
     */
    public record Sized<T>(int size, T content) {}

    /** Something to measure. */
    public interface Work<T> {
        /** Does it. */
        void on(T content) throws Exception;
    }

    /** Makes one thing from another. */
    public interface Making<T, R> {
        /** Does it. */
        R of(T content) throws Exception;
    }

    /** The same sizes of what is made from these. */
    public <R> Growth<R> then(Making<T, R> making) throws Exception {
        return new Growth<>(mostTime, made(base, making), made(few, making), made(many, making));
    }

    private static <T, R> Sized<R> made(Sized<T> from, Making<T, R> making) throws Exception {
        return new Sized<>(from.size(), making.of(from.content()));
    }

    /**
     * What it took.
     *
     * @param nanoseconds of the processor, ns
     * @param bytes asked for, whether given back or not
     */
    private record Cost(double nanoseconds, double bytes) {
        static final Cost LARGEST = new Cost(Double.MAX_VALUE, Double.MAX_VALUE);

        Cost least(Cost other) {
            return new Cost(Math.min(nanoseconds, other.nanoseconds), Math.min(bytes, other.bytes));
        }
    }

    /**
     * Fails where one more thing costs more among many. The least of some rounds counts, since what else the machine does only ever adds;
     * rounds end as soon as the bounds are kept.
     */
    public void assertLinear(String what, Work<T> work) throws Exception {
        once(work, many); // compiled before it is measured
        Cost ofBase = Cost.LARGEST;
        Cost ofFew = Cost.LARGEST;
        Cost ofMany = Cost.LARGEST;
        for (int round = 1; ; round++) {
            ofBase = ofBase.least(once(work, base));
            ofFew = ofFew.least(once(work, few));
            ofMany = ofMany.least(once(work, many));
            double time = ratio(ofBase.nanoseconds(), ofFew.nanoseconds(), ofMany.nanoseconds());
            double memory = ratio(ofBase.bytes(), ofFew.bytes(), ofMany.bytes());
            boolean linear = time >= LEAST_TIME && time <= mostTime && memory <= MOST_MEMORY;
            String found = String.format(
                    Locale.ROOT,
                    "%s, one more among %d against among %d: time %.2f (at most %.2f), memory %.2f (at most %.2f)",
                    what,
                    many.size(),
                    few.size(),
                    time,
                    mostTime,
                    memory,
                    MOST_MEMORY);
            if (linear && round >= LEAST_ROUNDS || round == MOST_ROUNDS) {
                if (Boolean.getBoolean("growth.report")) {
                    System.out.println(found);
                }
                assertTrue(linear, found);
                return;
            }
        }
    }

    private double ratio(double ofBase, double ofFew, double ofMany) {
        double among = (ofMany - ofFew) / (many.size() - few.size());
        return among / ((ofFew - ofBase) / (few.size() - base.size()));
    }

    /** What runs in a pool of one thread shares its streams with no other. */
    private static <T> Cost once(Work<T> work, Sized<T> things) throws Exception {
        ForkJoinPool one = new ForkJoinPool(1);
        try {
            one.submit(() -> {}).get();
            StartedThreads others = new StartedThreads();
            Future<Cost> own = one.submit(() -> {
                long start = THREADS.getCurrentThreadCpuTime();
                long bytes = THREADS.getCurrentThreadAllocatedBytes();
                work.on(things.content());
                return new Cost(
                        THREADS.getCurrentThreadCpuTime() - start, THREADS.getCurrentThreadAllocatedBytes() - bytes);
            });
            while (!own.isDone()) {
                others.look();
                Thread.sleep(1);
            }
            return others.plus(own.get());
        } finally {
            one.shutdown();
        }
    }

    /** Threads that were not there at first, with what each had taken when it was last looked at. */
    private static final class StartedThreads {
        private final Set<Long> before = new HashSet<>();
        private final Map<Long, Cost> started = new HashMap<>();

        StartedThreads() {
            for (long id : THREADS.getAllThreadIds()) {
                before.add(id);
            }
        }

        void look() {
            for (long id : THREADS.getAllThreadIds()) {
                if (!before.contains(id)) {
                    double nanoseconds = THREADS.getThreadCpuTime(id);
                    double bytes = THREADS.getThreadAllocatedBytes(id);
                    if (nanoseconds >= 0 && bytes >= 0) { // still alive
                        started.put(id, new Cost(nanoseconds, bytes));
                    }
                }
            }
        }

        Cost plus(Cost own) {
            double nanoseconds = own.nanoseconds();
            double bytes = own.bytes();
            for (Cost cost : started.values()) {
                nanoseconds += cost.nanoseconds();
                bytes += cost.bytes();
            }
            return new Cost(nanoseconds, bytes);
        }
    }
}
