package workuptally.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** A command run in processes of its own, under GNU time, which tells what each took. */
final class FreshProcess {
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

    /** The same process, with what it took so far, under another name. */
    FreshProcess named(String other) {
        return new FreshProcess(other, environment, command, costs);
    }

    /**
     * What one process took.
     *
     * @param seconds from start to end, s
     * @param processorSeconds of all threads, s
     * @param peakMegabytes largest resident size, MB
     */
    record Cost(double seconds, double processorSeconds, double peakMegabytes) {}

    /**
     * Runs it once more.
     *
     * @throws IOException if it ends with a code above 1, which {@code check} gives for a book with findings
     */
    void run(Path folder) throws IOException, InterruptedException {
        Path cost = folder.resolve("cost");
        Path log = folder.resolve("log");
        List<String> timed =
                new ArrayList<>(List.of("/usr/bin/time", "-q", "-o", cost.toString(), "-f", "%e %U %S %M"));
        timed.addAll(command);
        ProcessBuilder builder =
                new ProcessBuilder(timed).redirectErrorStream(true).redirectOutput(log.toFile());
        builder.environment().putAll(environment);
        int code = builder.start().waitFor();
        if (code > 1) {
            throw new IOException(name + " ended with code " + code + ":\n" + Files.readString(log));
        }
        String[] figures = Files.readString(cost).strip().split(" ");
        costs.add(new Cost(
                Double.parseDouble(figures[0]),
                Double.parseDouble(figures[1]) + Double.parseDouble(figures[2]),
                Double.parseDouble(figures[3]) / 1024));
    }

    String name() {
        return name;
    }

    /** The medians of all runs so far. */
    Cost median() {
        return new Cost(
                median(costs.stream().map(Cost::seconds).toList()),
                median(costs.stream().map(Cost::processorSeconds).toList()),
                median(costs.stream().map(Cost::peakMegabytes).toList()));
    }

    private static double median(List<Double> values) {
        return values.stream().sorted(Comparator.naturalOrder()).toList().get(values.size() / 2);
    }
}
