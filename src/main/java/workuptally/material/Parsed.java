package workuptally.material;

import java.util.List;
import java.util.Optional;

/**
 * What a text says.
 *
 * @param parts its parts
 * @param strength what it says about a solution, for the solvent behind "in"
 * @param recovered true where it was used before
 */
record Parsed(List<Part> parts, Optional<Strength> strength, boolean recovered) {
    boolean isLiquid() {
        return parts.stream()
                .allMatch(p -> p.substance()
                        .filter(s -> s.solvent().isPresent() || s.liquid().isPresent())
                        .isPresent());
    }

    boolean isListed() {
        return parts.stream().allMatch(p -> p.state() == State.LISTED);
    }
}
