package workuptally.faults;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import workuptally.cli.WorkupTally;

/**
 * Reviews a book again and again, on two days in turn, in several threads with a folder each, until it is killed. Tells when each folder has
 * its first review. Arguments: book, the two days, output folders.
 */
final class ReviewLoop {
    private ReviewLoop() {}

    public static void main(String[] args) {
        System.out.println("begun");
        for (int i = 3; i < args.length; i++) {
            String out = args[i];
            // Every other one writes no pages and no workbook, and so comes to the placing far more often.
            String reports = i % 2 == 0 ? "json,csv" : "workbook,pdf,json,csv";
            new Thread(() -> review(args, out, reports)).start();
        }
    }

    private static void review(String[] args, String out, String reports) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        for (int turn = 0; turn < Integer.MAX_VALUE; turn++) {
            String day = args[1 + turn % 2];
            String[] command = {"review", args[0], "--out", out, "--quiet", "--as-of", day, "--reports", reports};
            WorkupTally.run(command, nowhere, nowhere);
            if (turn == 0) {
                System.out.println("placed " + Path.of(out).getFileName());
            }
        }
    }
}
