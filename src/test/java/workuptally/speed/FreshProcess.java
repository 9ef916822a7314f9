package workuptally.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** A command run in processes of its own, under GNU time, which tells what each took. */
final class FreshProcess {
    private static final double FOR_EVER = 24 * 3600;

    private final String name;
    private final List<String> command;
    private final Map<String, String> environment;
    private final List<Cost> costs;

    FreshProcess(String name, Map<String, String> environment, String... command) {
        this(name, environment, List.of(command), new ArrayList<>());
    }

    private FreshProcess(String name, Map<String, String> environment, List<String> command, List<Cost> costs) {
        this.name = name;
        this.environment = environment;
        this.command = command;
        this.costs = costs;
    }

    /** A process of this program; its own main class takes the arguments. */
    static FreshProcess ofTests(String name, Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx10g",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(List.of(arguments));
        return new FreshProcess(name, Map.of(), command, new ArrayList<>());
    }

    /** The same process, with what it took so far, under another name. */
    FreshProcess named(String other) {
        return new FreshProcess(other, environment, command, costs);
    }

    /**
     * What one process took. Of one that was stopped, each is less than what it would have taken.
     *
     * @param seconds from start to end, s
     * @param processorSeconds of all threads, s
     * @param peakMegabytes largest resident size, MB
     * @param stopped true where its time was up before it was done
     */
    record Cost(double seconds, double processorSeconds, double peakMegabytes, boolean stopped) {}

    /**
     * Runs it once more.
     *
     * @throws IOException if it ends with a code other than 0
     */
    FreshProcess run(Path folder) throws IOException, InterruptedException {
        run(folder, FOR_EVER, 0);
        return this;
    }

    /**
     * Runs it once more.
     *
     * @param mostSeconds it is stopped when it has taken that long, s
     * @param worstCode largest code with which it may end
     * @throws IOException if it ends with a code above that
     */
    void run(Path folder, double mostSeconds, int worstCode) throws IOException, InterruptedException {
        Path cost = folder.resolve("cost");
        Path log = folder.resolve("log");
        List<String> timed =
                new ArrayList<>(List.of("/usr/bin/time", "-q", "-o", cost.toString(), "-f", "%e %U %S %M"));
        timed.addAll(command);
        ProcessBuilder builder =
                new ProcessBuilder(timed).redirectErrorStream(true).redirectOutput(log.toFile());
        builder.environment().putAll(environment);
        Process process = builder.start();
        boolean stopped = !process.waitFor((long) (mostSeconds * 1000), TimeUnit.MILLISECONDS);
        if (stopped) {
            stop(process);
        } else if (process.exitValue() > worstCode) {
            throw new IOException(name + " ended with code " + process.exitValue() + ":\n" + Files.readString(log));
        }
        String[] figures = Files.readString(cost).strip().split(" ");
        costs.add(new Cost(
                Double.parseDouble(figures[0]),
                Double.parseDouble(figures[1]) + Double.parseDouble(figures[2]),
                Double.parseDouble(figures[3]) / 1024,
                stopped));
    }

    /** Ends those first that started no other, so that each one's parent can still count what it took; GNU time is the last. */
    private static void stop(Process process) throws InterruptedException {
        while (!process.waitFor(200, TimeUnit.MILLISECONDS)) {
            process.descendants().filter(p -> p.children().findAny().isEmpty()).forEach(ProcessHandle::destroyForcibly);
        }
    }

    String name() {
        return name;
    }

    /** The medians of all runs so far. */
    Cost median() {
        return new Cost(
                median(costs.stream().map(Cost::seconds).toList()),
                median(costs.stream().map(Cost::processorSeconds).toList()),
                median(costs.stream().map(Cost::peakMegabytes).toList()),
                costs.stream().anyMatch(Cost::stopped));
    }

    private static double median(List<Double> values) {
        return values.stream().sorted(Comparator.naturalOrder()).toList().get(values.size() / 2);
    }
}
