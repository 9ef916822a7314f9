package workuptally.speed;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * The books of a department over a year, made from one workbook of the invented demo week: each with run ids of its own, twenty of them a
 * week, which share the containers of the week, each week seven days before the one before. Ids and dates are changed inside the parts of the
 * workbook, which takes a millisecond a book.
 */
final class ManyBooks {
    private static final int A_WEEK = 20;
    private static final Pattern RUN = Pattern.compile("\\bR(26|\\d{4})-(?=\\d{3}\\b)");
    private static final Pattern CONTAINER = Pattern.compile("(?<=<t>)W-[-A-Z0-9]+(?=</t>)");
    private static final Pattern DAY = Pattern.compile("\\b202\\d-\\d\\d-\\d\\d");
    private static final Pattern DAY_NUMBER = Pattern.compile("(?<=<v>)4[56]\\d{3}(?=\\.0</v>)");

    private final Map<String, String> parts = new LinkedHashMap<>();

    /** Made from that workbook. */
    ManyBooks(Path workbook) throws IOException {
        try (ZipFile zip = new ZipFile(workbook.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                byte[] part = zip.getInputStream(entry).readAllBytes();
                parts.put(entry.getName(), new String(part, StandardCharsets.UTF_8));
            }
        }
    }

    /** Writes that many books into a folder. */
    void write(Path folder, int books) throws IOException {
        Files.createDirectories(folder);
        for (int i = 0; i < books; i++) {
            String number = String.format(Locale.ROOT, "%04d", i);
            try (ZipOutputStream out = new ZipOutputStream(
                    new BufferedOutputStream(Files.newOutputStream(folder.resolve("book-" + number + ".xlsx"))))) {
                out.setLevel(Deflater.BEST_SPEED);
                for (Map.Entry<String, String> part : parts.entrySet()) {
                    out.putNextEntry(new ZipEntry(part.getKey()));
                    out.write(changed(part.getValue(), number, i / A_WEEK).getBytes(StandardCharsets.UTF_8));
                    out.closeEntry();
                }
            }
        }
    }

    private static String changed(String part, String book, int weeksBefore) {
        int days = 7 * weeksBefore;
        String runs = RUN.matcher(part).replaceAll("B" + book + "-$1-");
        String containers = CONTAINER.matcher(runs).replaceAll("$0-" + weeksBefore);
        String texts = DAY.matcher(containers)
                .replaceAll(day -> LocalDate.parse(day.group()).minusDays(days).toString());
        return DAY_NUMBER.matcher(texts).replaceAll(day -> Integer.toString(Integer.parseInt(day.group()) - days));
    }
}
