package workuptally.report.workbook;

import java.io.BufferedWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import workuptally.threads.Awaited;

/** Writes and packs parts of a workbook on all processors; of what is packed and not yet taken only a few parts stay in memory. */
final class PackedParts implements AutoCloseable {
    private final ExecutorService workers;
    private final int mostAhead;
    private final Deque<Part> waiting;
    private final Deque<Future<byte[]>> packed = new ArrayDeque<>();

    /** What writes the text of a part. */
    interface Text {
        void writeTo(Writer writer) throws IOException;
    }

    /** A part and what writes it; parts are written on other threads than the one that asks for them. */
    record Part(String name, Text text) {}

    /**
     * Starts with the first parts.
     *
     * @param parts in the order in which they will be asked for
     */
    PackedParts(Iterable<Part> parts) {
        int threads = Runtime.getRuntime().availableProcessors();
        this.workers = Executors.newFixedThreadPool(threads);
        this.mostAhead = threads + 1;
        this.waiting = new ArrayDeque<>();
        parts.forEach(waiting::add);
        packAhead();
    }

    private void packAhead() {
        while (packed.size() < mostAhead && !waiting.isEmpty()) {
            Part part = waiting.remove();
            packed.add(workers.submit(() -> pack(part)));
        }
    }

    /** A package with one part in it. */
    private static byte[] pack(Part part) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipArchiveOutputStream zip = FixedZip.compressed(bytes)) {
            zip.putArchiveEntry(FixedZip.entry(part.name()));
            Writer writer = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8), 1 << 16);
            part.text().writeTo(writer);
            writer.flush();
            zip.closeArchiveEntry();
        }
        return bytes.toByteArray();
    }

    /** Copies the next part into a package. */
    void copyNext(ZipArchiveOutputStream out) throws IOException {
        Future<byte[]> next = packed.remove();
        byte[] bytes = Awaited.result(next);
        packAhead();
        try (ZipFile zip = ZipFile.builder().setByteArray(bytes).get()) {
            FixedZip.copyRaw(zip, zip.getEntries().nextElement(), out);
        }
    }

    @Override
    public void close() {
        workers.shutdownNow();
    }
}
