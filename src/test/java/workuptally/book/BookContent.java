package workuptally.book;

import workuptally.model.Book;

/** What a book says, as text without places and file hashes, so that two forms of one book can be compared. */
final class BookContent {
    private BookContent() {}

    static String of(Book book) {
        String all = String.join(
                "\n",
                book.runs().toString(),
                book.containers().toString(),
                book.transfers().toString(),
                book.vesselTares().toString(),
                book.history().toString(),
                book.corrections().toString());
        return all.replaceAll("TablePlace\\[[^\\]]*\\]", "").replaceAll("Place\\[[^\\]]*\\]", "");
    }
}
