package workuptally.faults;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.concurrent.CyclicBarrier;
import workuptally.cli.WorkupTally;

/**
 * Reviews a book again and again, on two days in turn, in several threads with a folder each, until it is killed, or the test that
 * started it is gone. Says "begun", "placed" when each folder has its first review, and "again" for each
 * later one. Arguments: book, the two days, output folders.
 */
final class ReviewLoop {
    private ReviewLoop() {}

    public static void main(String[] args) throws IOException {
        System.out.println("begun");
        CyclicBarrier allPlaced = new CyclicBarrier(args.length - 3, () -> System.out.println("placed"));
        for (int i = 3; i < args.length; i++) {
            String out = args[i];
            // Most write no pages and no workbook, and so come to the placing far more often.
            String reports = i % 3 == 0 ? "workbook,pdf,json,csv" : "json,csv";
            new Thread(() -> review(args, out, reports, allPlaced)).start();
        }
        if (System.in.read() < 0) {
            System.exit(0);
        }
    }

    private static void review(String[] args, String out, String reports, CyclicBarrier allPlaced) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        for (int turn = 0; turn < Integer.MAX_VALUE; turn++) {
            String day = args[1 + turn % 2];
            String[] command = {"review", args[0], "--out", out, "--quiet", "--as-of", day, "--reports", reports};
            WorkupTally.run(command, nowhere, nowhere);
            if (turn == 0) {
                await(allPlaced);
            } else {
                System.out.println("again");
            }
        }
    }

    private static void await(CyclicBarrier barrier) {
        try {
            barrier.await();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
