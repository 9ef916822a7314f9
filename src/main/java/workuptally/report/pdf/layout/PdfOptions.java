package workuptally.report.pdf.layout;

import java.util.Objects;
import java.util.Optional;

/**
 * How a report is set.
 *
 * @param paper paper
 * @param decimalMark decimal mark of every number
 * @param attachment the machine-readable results, attached to the report if given
 */
public record PdfOptions(Paper paper, DecimalMark decimalMark, Optional<PdfAttachment> attachment) {
    /** Checks that no part is missing. */
    public PdfOptions {
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(decimalMark, "decimalMark");
        Objects.requireNonNull(attachment, "attachment");
    }

    /** A4, decimal point, nothing attached. */
    public static PdfOptions standard() {
        return new PdfOptions(Paper.A4, DecimalMark.POINT, Optional.empty());
    }

    /** Paper sizes. */
    public enum Paper {
        /** 210 mm × 297 mm (ISO 216). */
        A4(595.276f, 841.89f),
        /** 8.5 in × 11 in. */
        LETTER(612, 792);

        private final float widthPoints;
        private final float heightPoints;

        Paper(float widthPoints, float heightPoints) {
            this.widthPoints = widthPoints;
            this.heightPoints = heightPoints;
        }

        public float widthPoints() {
            return widthPoints;
        }

        public float heightPoints() {
            return heightPoints;
        }
    }

    /** Decimal marks. */
    public enum DecimalMark {
        POINT('.'),
        COMMA(',');

        private final char mark;

        DecimalMark(char mark) {
            this.mark = mark;
        }

        /** The mark. */
        public char mark() {
            return mark;
        }
    }
}
