package workuptally.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import workuptally.model.InputFile;
import workuptally.report.json.Manifest;

/**
 * Moves a staged set of files into its folder, the manifest last. What stands there under one of the names is replaced only where the
 * manifest of an earlier set knows it and it is unchanged; anything else is somebody's own and is kept aside under another name. A staged
 * manifest says that the whole set had been written: when a program dies while placing, the next one places the rest of that set.
 */
final class Placement {
    /** Ending of the names of manifests. */
    static final String ENDING = ".manifest.json";

    private final Path target;
    private final Path staging;
    private final String manifestName;
    private final Map<String, Path> replaced = new LinkedHashMap<>();
    private final Map<String, Path> aside = new LinkedHashMap<>();
    private final List<String> moved = new ArrayList<>();
    private final Map<Path, Hashed> hashed = new HashMap<>();

    Placement(Path target, Path staging, String manifestName) {
        this.target = target;
        this.staging = staging;
        this.manifestName = manifestName;
    }

    /**
     * Writes the manifest of the staged files beside them.
     *
     * @param tool version of the program
     * @param inputs what was read
     * @param files the staged files
     */
    void seal(String tool, List<InputFile> inputs, List<InputFile> files) throws IOException {
        List<InputFile> still = new ArrayList<>();
        for (InputFile file :
                Manifest.read(target.resolve(manifestName)).map(Manifest::files).orElse(List.of())) {
            Path standing = target.resolve(file.name());
            if (Files.isRegularFile(standing, LinkOption.NOFOLLOW_LINKS)
                    && hashOfStanding(standing).equals(file.sha256())) {
                still.add(file);
            }
        }
        new Manifest(tool, inputs, files).andStill(still).write(staging.resolve(manifestName));
    }

    /**
     * Moves all files of the sealed set that are still staged, then the manifest.
     *
     * @return where files of somebody's own stand now
     * @throws IOException if one cannot be moved; then the folder is as it was
     */
    List<Path> place() throws IOException {
        Manifest set = Manifest.read(staging.resolve(manifestName))
                .orElseThrow(() -> new IOException("the set of files is not whole."));
        Optional<Manifest> earlier = Manifest.read(target.resolve(manifestName));
        Files.createDirectories(staging.resolve("replaced"));
        try {
            for (InputFile file : set.files()) {
                if (Files.exists(staging.resolve(file.name()), LinkOption.NOFOLLOW_LINKS)) {
                    boolean ours = isOurs(file, earlier);
                    move(file.name(), ours);
                }
            }
            move(manifestName, earlier.isPresent());
        } catch (IOException e) {
            takeBack();
            throw e;
        }
        return List.copyOf(aside.values());
    }

    /** True where nothing stands under the name, or the same bytes, or what an earlier set left there. */
    private boolean isOurs(InputFile file, Optional<Manifest> earlier) throws IOException {
        Path standing = target.resolve(file.name());
        if (!Files.isRegularFile(standing, LinkOption.NOFOLLOW_LINKS)) {
            return !Files.exists(standing, LinkOption.NOFOLLOW_LINKS);
        }
        String hash = hashOfStanding(standing);
        return hash.equals(file.sha256())
                || earlier.flatMap(e -> e.hashOf(file.name()))
                        .filter(hash::equals)
                        .isPresent();
    }

    private void move(String name, boolean ours) throws IOException {
        Path standing = target.resolve(name);
        if (Files.isDirectory(standing, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException(standing + " is a folder.");
        }
        if (Files.exists(standing, LinkOption.NOFOLLOW_LINKS)) {
            if (ours) {
                keepOld(name, standing);
            } else {
                Path kept = freeName(name);
                Files.move(standing, kept, StandardCopyOption.ATOMIC_MOVE);
                aside.put(name, kept);
            }
        }
        Files.move(staging.resolve(name), standing, StandardCopyOption.ATOMIC_MOVE);
        moved.add(name);
    }

    private void keepOld(String name, Path old) throws IOException {
        Path kept = staging.resolve("replaced").resolve(name);
        try {
            Files.deleteIfExists(kept);
            Files.createLink(kept, old);
        } catch (UnsupportedOperationException | IOException noLinks) {
            Files.copy(old, kept, LinkOption.NOFOLLOW_LINKS, StandardCopyOption.REPLACE_EXISTING);
        }
        replaced.put(name, kept);
    }

    /** {@code week-waste.kept.csv} for {@code week-waste.csv}, with a number where that is taken. */
    private Path freeName(String name) {
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String ending = dot > 0 ? name.substring(dot) : "";
        Path free = target.resolve(stem + ".kept" + ending);
        for (int i = 2; Files.exists(free, LinkOption.NOFOLLOW_LINKS); i++) {
            free = target.resolve(stem + ".kept-" + i + ending);
        }
        return free;
    }

    private void takeBack() {
        for (String name : moved) {
            try {
                if (replaced.containsKey(name)) {
                    Files.move(replaced.get(name), target.resolve(name), StandardCopyOption.ATOMIC_MOVE);
                } else {
                    Files.deleteIfExists(target.resolve(name));
                }
            } catch (IOException stuck) {
                // The others can still be taken back; the failure of the placing itself is what is reported.
                continue;
            }
        }
        aside.forEach((name, kept) -> {
            try {
                Files.move(kept, target.resolve(name), StandardCopyOption.ATOMIC_MOVE);
            } catch (IOException stuck) {
                // It stays under its other name, whole.
                return;
            }
        });
    }

    /** A file is hashed again only where it was written to since. */
    private String hashOfStanding(Path file) throws IOException {
        Hashed known = hashed.get(file);
        FileTime modified = Files.getLastModifiedTime(file);
        if (known == null || !known.modified().equals(modified) || known.bytes() != Files.size(file)) {
            known = new Hashed(modified, Files.size(file), sha256(file));
            hashed.put(file, known);
        }
        return known.sha256();
    }

    private record Hashed(FileTime modified, long bytes, String sha256) {}

    static String sha256(Path file) throws IOException {
        MessageDigest digest;
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java runtime has SHA-256", missing);
        }
        byte[] buffer = new byte[1 << 16];
        try (InputStream in = Files.newInputStream(file)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
