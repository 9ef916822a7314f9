package workuptally.report.explain;

/** Does what a reader does with pen and paper: works out an equation with its numbers put in. */
final class OnPaper {
    private final String text;
    private int at;

    private OnPaper(String text) {
        this.text = text;
    }

    /** The value of what stands right of the first equals sign, or of the whole line. */
    static double value(String equation) {
        String right = equation.contains(" = ") ? equation.substring(equation.indexOf(" = ") + 3) : equation;
        String bare = right.replaceAll("\\[[^]]*]", "")
                .replaceAll("\\([^()]*[a-z]{3}[^()]*\\)", "")
                .replaceAll("[;,].*", "")
                .replaceAll("(mg/mL|g/mL|g/mol|L/mol|mol/L|mmol|mL|\\bg\\b|\\bL\\b)", "")
                .replaceAll("[%<\\s]", "")
                .replace('×', '*')
                .replace('−', '-');
        OnPaper paper = new OnPaper(bare);
        double value = paper.sum();
        if (paper.at != bare.length()) {
            throw new IllegalArgumentException("stuck at '" + bare.substring(paper.at) + "' of " + equation);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
            boolean plus = text.charAt(at++) == '+';
            double next = product();
            value += plus ? next : -next;
        }
        return value;
    }

    private double product() {
        double value = power();
        while (at < text.length() && (text.charAt(at) == '*' || text.charAt(at) == '/')) {
            boolean times = text.charAt(at++) == '*';
            double next = power();
            value = times ? value * next : value / next;
        }
        return value;
    }

    private double power() {
        double base = atom();
        if (at < text.length() && text.charAt(at) == '^') {
            at++;
            return Math.pow(base, atom());
        }
        return base;
    }

    private double atom() {
        if (text.charAt(at) == '(') {
            at++;
            double value = sum();
            at++;
            return value;
        }
        int from = at;
        if (text.charAt(at) == '-') {
            at++;
        }
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        return Double.parseDouble(text.substring(from, at));
    }
}
