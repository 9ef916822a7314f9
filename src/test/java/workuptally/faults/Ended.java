package workuptally.faults;

import java.io.PrintWriter;
import java.io.StringWriter;
import workuptally.cli.WorkupTally;

/**
 * How a call of the program ended.
 *
 * @param code exit code
 * @param out standard output
 * @param err standard error
 */
record Ended(int code, String out, String err) {
    static Ended run(Object... args) {
        String[] texts = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            texts[i] = args[i].toString();
        }
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = WorkupTally.run(texts, new PrintWriter(out), new PrintWriter(err));
        return new Ended(code, out.toString(), err.toString());
    }
}
