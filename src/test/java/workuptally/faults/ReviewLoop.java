package workuptally.faults;

import java.io.PrintWriter;
import java.io.Writer;
import workuptally.cli.WorkupTally;

/** Reviews a book again and again, on two days in turn, until it is killed. Arguments: book, output folder, the two days. */
final class ReviewLoop {
    private ReviewLoop() {}

    public static void main(String[] args) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        System.out.println("begun");
        for (int turn = 0; turn < Integer.MAX_VALUE; turn++) {
            String day = args[2 + turn % 2];
            WorkupTally.run(
                    new String[] {"review", args[0], "--out", args[1], "--quiet", "--as-of", day}, nowhere, nowhere);
            System.out.println("placed");
        }
    }
}
