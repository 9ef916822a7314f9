package workuptally.architecture;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

/**
 * Fails a class of tests that takes long and does not say so: {@code -DexcludedGroups=slow} is the loop while one works. Whatever takes more
 * than some 3 s of processor time has the tag; a class fails only far above that ({@code -Dslow.seconds=}), since the first one of a process loads the program, and a busy
 * machine takes more for the same.
 */
public final class SlowClassesAreTagged implements BeforeAllCallback, AfterAllCallback {
    private static final int MOST_SECONDS = Integer.getInteger("slow.seconds", 10);
    private static final Namespace OWN = Namespace.create(SlowClassesAreTagged.class);
    private static final OperatingSystemMXBean MACHINE =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    @Override
    public void beforeAll(ExtensionContext tests) {
        tests.getStore(OWN).put(tests.getUniqueId(), MACHINE.getProcessCpuTime());
    }

    @Override
    public void afterAll(ExtensionContext tests) {
        long before = tests.getStore(OWN).get(tests.getUniqueId(), Long.class);
        double seconds = (MACHINE.getProcessCpuTime() - before) / 1e9;
        if (seconds > MOST_SECONDS && !tests.getTags().contains("slow")) {
            throw new AssertionError(String.format(
                    Locale.ROOT,
                    "%s took %.1f s of the processor: make it quicker, or give it @Tag(\"slow\")",
                    tests.getDisplayName(),
                    seconds));
        }
    }
}
