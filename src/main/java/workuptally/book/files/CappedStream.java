package workuptally.book.files;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A stream that ends with an error once it gave more than a number of bytes. */
final class CappedStream extends FilterInputStream {
    private final long mostBytes;
    private long givenBytes;

    CappedStream(InputStream in, long mostBytes) {
        super(in);
        this.mostBytes = mostBytes;
    }

    @Override
    public int read() throws IOException {
        int value = super.read();
        if (value >= 0) {
            count(1);
        }
        return value;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int read = super.read(buffer, offset, length);
        if (read > 0) {
            count(read);
        }
        return read;
    }

    private void count(int bytes) throws IOException {
        givenBytes += bytes;
        if (isExceeded()) {
            throw new IOException("more than " + mostBytes + " bytes");
        }
    }

    /** True once the cap was passed. */
    boolean isExceeded() {
        return givenBytes > mostBytes;
    }

    long givenBytes() {
        return givenBytes;
    }
}
