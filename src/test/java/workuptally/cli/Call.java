package workuptally.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * What a call of the program gave.
 *
 * @param code exit code
 * @param out standard output
 * @param err standard error
 */
record Call(int code, String out, String err) {
    static Call of(Object... args) {
        String[] texts = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            texts[i] = args[i].toString();
        }
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = WorkupTally.run(texts, new PrintWriter(out), new PrintWriter(err));
        return new Call(code, out.toString(), err.toString());
    }
}
