package workuptally.model;

/**
 * A file that was read.
 *
 * @param name file name without folders
 * @param sha256 hash of its bytes, 64 hexadecimal digits
 */
public record InputFile(String name, String sha256) {}
