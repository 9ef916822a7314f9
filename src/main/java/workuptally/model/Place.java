package workuptally.model;

import java.util.Objects;

/**
 * Where an entry stands in the book.
 *
 * @param file file name without folders
 * @param sheet sheet (or CSV table) name as in the book; empty for a finding about a whole file
 * @param row row in the sheet, from 1; 0 for a whole sheet or file
 * @param column column, from 0; -1 for a whole row
 * @param cell what a reader looks for: {@code D7} in a workbook, {@code line 7, Gross (g)} in CSV; empty where there is no cell
 */
public record Place(String file, String sheet, int row, int column, String cell) {
    /** Checks that no part is missing. */
    public Place {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(sheet, "sheet");
        cell = !cell.isEmpty() && isCell(row, column) && cell.equals(name(row, column)) ? "" : cell;
    }

    /** A cell of a workbook. */
    static Place ofCell(String file, String sheet, int row, int column) {
        return new Place(file, sheet, row, column, "");
    }

    /** The name of a cell of a workbook is made when it is asked for: a large book has a million of them, and few are ever spoken of. */
    @Override
    public String cell() {
        return cell.isEmpty() && isCell(row, column) ? name(row, column) : cell;
    }

    private static boolean isCell(int row, int column) {
        return row > 0 && column >= 0;
    }

    private static String name(int row, int column) {
        return TablePlace.columnLetters(column) + row;
    }

    /** A place for a statement about a whole file. */
    public static Place ofFile(String file) {
        return new Place(file, "", 0, -1, "");
    }

    /** The place as a person writes it: {@code Layers!D7}, {@code layers.csv line 7, Gross (g)}, or the file name. */
    public String inWords() {
        if (sheet.isEmpty()) {
            return file;
        }
        String name = cell();
        if (name.isEmpty()) {
            return sheet;
        }
        return name.startsWith("line ") ? file + " " + name : sheet + "!" + name;
    }
}
