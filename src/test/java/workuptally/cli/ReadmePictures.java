package workuptally.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The two pictures of README.md, drawn from the review of the demo week by an independent renderer. */
final class ReadmePictures {
    /** Page one of the review. */
    static final String PAGE_ONE = "demo-week-page-1.png";
    /** The layer map of one of its runs. */
    static final String LAYER_MAP = "demo-week-layer-map.png";

    private static final String RUN = "R26-042  ";
    /** Page one has a heading that begins with the same word. */
    private static final Pattern TITLE_OF_A_MAP = Pattern.compile("^Where .+ went: line width");

    private static final int DOTS_PER_INCH = 96;
    private static final float POINTS_PER_INCH = 72;
    private static final int SAMPLE = 8;

    private ReadmePictures() {}

    /** Draws both into a folder. */
    static void draw(Path review, Path folder) throws IOException {
        try (PDDocument document = Loader.loadPDF(review.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            write(renderer.renderImageWithDPI(0, DOTS_PER_INCH, ImageType.RGB), folder.resolve(PAGE_ONE));
            for (int page = 2; page <= document.getNumberOfPages(); page++) {
                List<Line> lines = lines(document, page);
                for (int i = 0; i < lines.size(); i++) {
                    if (lines.get(i).text().startsWith(RUN.strip())
                            && lines.get(i).text().contains(" ")
                            && lines.subList(i, Math.min(i + 4, lines.size())).stream()
                                    .anyMatch(l ->
                                            TITLE_OF_A_MAP.matcher(l.text()).find())) {
                        BufferedImage whole = renderer.renderImageWithDPI(page - 1, DOTS_PER_INCH, ImageType.RGB);
                        write(crop(whole, lines, i), folder.resolve(LAYER_MAP));
                        return;
                    }
                }
            }
            throw new IOException("the review shows no layer map of " + RUN);
        }
    }

    /** From the heading of the run to the table below its map. */
    private static BufferedImage crop(BufferedImage page, List<Line> lines, int heading) {
        float scale = DOTS_PER_INCH / POINTS_PER_INCH;
        int top = Math.round((lines.get(heading).baseline() - 14) * scale);
        float end = lines.stream()
                .skip(heading)
                .filter(l -> l.text().startsWith("State") || l.text().startsWith("Product"))
                .findFirst()
                .map(Line::baseline)
                .orElse(lines.get(heading).baseline() + 180);
        return page.getSubimage(0, top, page.getWidth(), Math.round((end - 12) * scale) - top);
    }

    private static List<Line> lines(PDDocument document, int page) throws IOException {
        List<Line> lines = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                lines.add(new Line(text, positions.get(0).getYDirAdj()));
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return lines;
    }

    private static void write(BufferedImage image, Path file) throws IOException {
        ImageIO.write(image, "png", file.toFile());
    }

    /**
     * How far two pictures are apart: mean difference of their brightness in blocks, in parts of the whole range. Renderers differ in the
     * edges of letters and not in where the words stand.
     */
    static double difference(Path one, Path two) throws IOException {
        BufferedImage a = ImageIO.read(one.toFile());
        BufferedImage b = ImageIO.read(two.toFile());
        if (Math.abs(a.getWidth() - b.getWidth()) > SAMPLE || Math.abs(a.getHeight() - b.getHeight()) > SAMPLE) {
            return 1;
        }
        double sum = 0;
        int blocks = 0;
        for (int y = 0; y + SAMPLE <= Math.min(a.getHeight(), b.getHeight()); y += SAMPLE) {
            for (int x = 0; x + SAMPLE <= Math.min(a.getWidth(), b.getWidth()); x += SAMPLE) {
                sum += Math.abs(brightness(a, x, y) - brightness(b, x, y));
                blocks++;
            }
        }
        return sum / blocks;
    }

    private static double brightness(BufferedImage image, int left, int top) {
        long sum = 0;
        for (int y = top; y < top + SAMPLE; y++) {
            for (int x = left; x < left + SAMPLE; x++) {
                int rgb = image.getRGB(x, y);
                sum += (rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255);
            }
        }
        return sum / (3.0 * 255 * SAMPLE * SAMPLE);
    }

    private record Line(String text, float baseline) {}
}
