package workuptally.book.sources;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import workuptally.book.files.FileBytes;
import workuptally.book.files.FileKind;
import workuptally.book.files.FindingLog;
import workuptally.book.files.NumberFormats;
import workuptally.book.files.RawTable;
import workuptally.book.files.ReadingOptions;
import workuptally.book.files.SharedStrings;
import workuptally.book.files.SheetPart;
import workuptally.book.files.UnreadableBookException;
import workuptally.book.files.WorkbookPackage;
import workuptally.book.files.XmlPart;
import workuptally.book.schema.HeadingAliases;
import workuptally.book.schema.Table;
import workuptally.book.words.BookWords;
import workuptally.model.FindingCode;
import workuptally.model.InputFile;
import workuptally.model.Place;
import workuptally.model.Severity;

/** A book that is a workbook of the Office Open XML form (ISO/IEC 29500), transitional or strict. */
public final class WorkbookFile implements TableSource, Closeable {
    private static final String SAVE_AS = ": open it in a spreadsheet program and save it as .xlsx.";

    private final InputFile file;
    private final WorkbookPackage book;
    private final Map<String, String> sheetNames = new LinkedHashMap<>();
    private final Map<String, String> partsBySheet = new LinkedHashMap<>();
    private final Set<String> hiddenSheets = new HashSet<>();
    private final SharedStrings strings;
    private final NumberFormats formats;

    /** True where the workbook carries a digital signature (ISO/IEC 29500-2, 13), until that is said. */
    private final AtomicBoolean signedUnsaid;

    /** True where the program that wrote the book left its formulas to be calculated on opening. */
    private boolean formulasAreStale;

    private WorkbookFile(InputFile file, WorkbookPackage book, HeadingAliases aliases)
            throws UnreadableBookException, IOException {
        this.file = file;
        this.book = book;
        String workbook = workbookPart();
        this.signedUnsaid = new AtomicBoolean(
                WorkbookPackage.target(book.relationshipsOf(""), "origin").isPresent());
        Map<String, WorkbookPackage.Relationship> relationships = book.relationshipsOf(workbook);
        boolean from1904 = readSheets(workbook, relationships);
        for (String sheet : partsBySheet.keySet()) {
            Optional<Table> table = aliases.table(sheet);
            if (table.isPresent()) {
                String earlier = sheetNames.putIfAbsent(table.get().name(), sheet);
                if (earlier != null) {
                    throw new UnreadableBookException("The sheets " + earlier + " and " + sheet + " of " + file.name()
                            + " both hold the table " + table.get().name() + ": rename one of them.");
                }
            }
        }
        this.strings = SharedStrings.read(book, WorkbookPackage.target(relationships, "sharedStrings"));
        this.formats = NumberFormats.read(book, WorkbookPackage.target(relationships, "styles"), from1904);
    }

    /**
     * Opens a workbook.
     *
     * @throws UnreadableBookException if it is none, or is damaged
     * @throws IOException if it cannot be accessed
     */
    public static WorkbookFile open(Path path, HeadingAliases aliases, ReadingOptions.SizeCaps caps)
            throws UnreadableBookException, IOException {
        FileKind.requireWorkbook(path, caps.fileBytes());
        InputFile file = FileBytes.hash(path);
        WorkbookPackage book = new WorkbookPackage(path, caps);
        boolean opened = false;
        try {
            WorkbookFile workbook = new WorkbookFile(file, book, aliases);
            opened = true;
            return workbook;
        } finally {
            if (!opened) {
                book.close();
            }
        }
    }

    private String workbookPart() throws UnreadableBookException, IOException {
        if (book.has("mimetype") && book.has("content.xml")) {
            throw new UnreadableBookException(file.name() + " is an OpenDocument spreadsheet" + SAVE_AS);
        }
        Optional<String> part = WorkbookPackage.target(book.relationshipsOf(""), "officeDocument");
        if (part.isEmpty()) {
            throw new UnreadableBookException(file.name()
                    + " is a zip archive but no workbook: take the workbook out of it, or save it as .xlsx.");
        }
        if (part.get().toLowerCase(Locale.ROOT).endsWith(".bin")) {
            throw new UnreadableBookException(file.name() + " is a binary workbook (.xlsb)" + SAVE_AS);
        }
        return part.get();
    }

    /** Reads the list of sheets; true if dates count from 1904. */
    private boolean readSheets(String workbook, Map<String, WorkbookPackage.Relationship> relationships)
            throws UnreadableBookException, IOException {
        boolean from1904 = false;
        boolean root = true;
        try (XmlPart xml = book.open(workbook)) {
            while (xml.next()) {
                if (root && xml.isStart()) {
                    root = false;
                    if (!xml.name().equals("workbook")) {
                        throw new UnreadableBookException(
                                file.name() + " is another kind of document, no workbook: save the tables as .xlsx.");
                    }
                }
                if (xml.isStart("workbookPr")) {
                    from1904 = xml.attribute("date1904")
                            .filter(WorkbookFile::isTrue)
                            .isPresent();
                } else if (xml.isStart("calcPr")) {
                    formulasAreStale = xml.attribute("fullCalcOnLoad")
                                    .filter(WorkbookFile::isTrue)
                                    .isPresent()
                            || xml.attribute("calcCompleted")
                                    .filter(done -> !isTrue(done))
                                    .isPresent();
                } else if (xml.isStart("sheet")) {
                    addSheet(xml, relationships);
                }
            }
            book.finished(xml);
        }
        return from1904;
    }

    private static boolean isTrue(String text) {
        return text.equals("1") || text.equals("true");
    }

    private void addSheet(XmlPart xml, Map<String, WorkbookPackage.Relationship> relationships) {
        Optional<WorkbookPackage.Relationship> part = xml.foreignAttribute("id")
                .map(relationships::get)
                .filter(r -> r.type().equals("worksheet"));
        String name = SharedStrings.unescape(xml.attribute("name").orElse(""));
        part.ifPresent(found -> partsBySheet.put(name, found.target()));
        if (xml.attribute("state").filter(state -> !state.equals("visible")).isPresent()) {
            hiddenSheets.add(name);
        }
    }

    @Override
    public String bookName() {
        int dot = file.name().lastIndexOf('.');
        return dot > 0 ? file.name().substring(0, dot) : file.name();
    }

    @Override
    public List<String> names() {
        return new ArrayList<>(partsBySheet.keySet());
    }

    @Override
    public Optional<String> sheetName(Table table) {
        return Optional.ofNullable(sheetNames.get(table.name()));
    }

    @Override
    public Optional<RawTable> table(Table table, FindingLog log) throws UnreadableBookException, IOException {
        String sheet = sheetNames.get(table.name());
        return sheet == null ? Optional.empty() : Optional.of(read(sheet, log));
    }

    @Override
    public Optional<RawTable> sheet(String name, FindingLog log) throws UnreadableBookException, IOException {
        Optional<String> sheet = partsBySheet.keySet().stream()
                .filter(own -> BookWords.loose(own).equals(BookWords.loose(name)))
                .findFirst();
        return sheet.isEmpty() ? Optional.empty() : Optional.of(read(sheet.get(), log));
    }

    private RawTable read(String sheet, FindingLog log) throws UnreadableBookException, IOException {
        if (signedUnsaid.compareAndSet(true, false)) {
            log.add(
                    FindingCode.WORKBOOK_SIGNED,
                    Severity.NOTE,
                    "",
                    Place.ofFile(file.name()),
                    "a digital signature",
                    "nothing; it holds for this file as it stands, never for an annotated copy",
                    "Keep the signed file; the copy is changed, and a spreadsheet program calls its signature invalid.");
        }
        if (hiddenSheets.contains(sheet)) {
            log.add(
                    FindingCode.SHEET_HIDDEN,
                    Severity.NOTE,
                    "",
                    new Place(file.name(), sheet, 0, -1, ""),
                    "a hidden sheet",
                    "nothing; hidden sheets count like others",
                    "Look at it if you did not expect it.");
        }
        try (XmlPart xml = book.open(partsBySheet.get(sheet))) {
            SheetPart part = new SheetPart(file.name(), sheet, xml, strings, formats);
            RawTable read = part.read(formulasAreStale);
            book.finished(xml);
            if (!part.conditionalCells().isEmpty()) {
                log.add(
                        FindingCode.SHOWN_BY_CONDITION,
                        Severity.CHECK,
                        "",
                        new Place(file.name(), sheet, 0, -1, ""),
                        "a conditional format that strikes out cells or shows numbers otherwise, in "
                                + String.join(", ", part.conditionalCells()),
                        "cells that show what they store; conditions are not worked out, what is stored was read",
                        "Look at these cells: strike out by hand what does not count, and run again.");
            }
            if (part.hasStaleFormulas()) {
                log.add(
                        FindingLog.STALE,
                        Severity.CHECK,
                        "",
                        Place.ofFile(file.name()),
                        "formulas that are left to be calculated when the book is opened",
                        "formulas with their results",
                        "Open the book in a spreadsheet program, let it calculate, save and run again; until then no"
                                + " result of a formula counts.");
            }
            return read;
        }
    }

    @Override
    public List<InputFile> files() {
        return List.of(file);
    }

    @Override
    public void close() throws IOException {
        book.close();
    }
}
