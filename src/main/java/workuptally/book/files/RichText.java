package workuptally.book.files;

/**
 * The text of a cell, of which runs may be struck out, raised or lowered. What is struck out is no part of what counts; raised digits and
 * single letters a to e stay raised, and lowered ones right behind digits stay lowered, as marks of a footnote: none is a digit of the number before it. Behind a letter a
 * lowered digit is one of a formula or name and is read as usual.
 *
 * @param whole all of it, struck out or not
 * @param kept what is not struck out, in a cell whose font is not
 * @param keptInStruckCell what is not struck out in a cell whose font is: runs that say so themselves
 */
record RichText(String whole, String kept, String keptInStruckCell) {
    /** Reads an element that holds text or runs of it, without the phonetic guide that some programs store beside them. */
    static RichText read(XmlPart xml, String element) throws UnreadableBookException {
        StringBuilder whole = new StringBuilder();
        StringBuilder kept = new StringBuilder();
        StringBuilder keptInStruckCell = new StringBuilder();
        boolean struck = false;
        boolean saysNot = false;
        String height = "";
        while (xml.next() && !xml.isEnd(element)) {
            if (xml.isStart("rPh")) {
                xml.skip();
            } else if (xml.isStart("r")) {
                struck = false;
                saysNot = false;
                height = "";
            } else if (xml.isStart("strike")) {
                struck = StruckFonts.isOn(xml);
                saysNot = !struck;
            } else if (xml.isStart("vertAlign")) {
                height = xml.attribute("val").orElse("");
            } else if (xml.isStart("t")) {
                String run = atHeight(height, xml.ownText(), whole);
                whole.append(run);
                kept.append(struck ? "" : run);
                keptInStruckCell.append(saysNot ? run : "");
            }
        }
        String all = SharedStrings.unescape(whole.toString());
        if (keptInStruckCell.isEmpty() && kept.length() == whole.length()) {
            return new RichText(all, all, "");
        }
        return new RichText(
                all, SharedStrings.unescape(kept.toString()), SharedStrings.unescape(keptInStruckCell.toString()));
    }

    private static String atHeight(String height, String run, CharSequence before) {
        boolean behindDigit = !before.isEmpty() && Character.isDigit(before.charAt(before.length() - 1));
        if (height.equals("superscript") && run.strip().matches("[a-e]")) {
            return run.replace(
                    run.strip(), "ᵃᵇᶜᵈᵉ".substring(run.strip().charAt(0) - 'a').substring(0, 1));
        }
        if (height.equals("superscript")) {
            return in(run, "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁻");
        }
        return height.equals("subscript") && behindDigit ? in(run, "₀₁₂₃₄₅₆₇₈₉₋₋") : run;
    }

    private static String in(String run, String digits) {
        StringBuilder out = new StringBuilder(run.length());
        for (int i = 0; i < run.length(); i++) {
            int at = "0123456789-−".indexOf(run.charAt(i));
            out.append(at < 0 ? run.charAt(i) : digits.charAt(at));
        }
        return out.toString();
    }

    /** True where no run says anything of a strike. */
    boolean isUnmarked() {
        return keptInStruckCell.isEmpty() && kept.equals(whole);
    }

    /** The cell that holds it: what is kept of it, or all of it as struck out where nothing is. */
    RawCell cell(int column, boolean fontIsStruck) {
        String left = fontIsStruck ? keptInStruckCell : kept;
        return left.isBlank() ? RawCell.text(column, whole).struck() : RawCell.text(column, left);
    }
}
