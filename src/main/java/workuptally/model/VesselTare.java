package workuptally.model;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A clean dry tare in the vessel register.
 *
 * @param vessel vessel id
 * @param date when weighed
 * @param tareGrams clean dry tare, g
 * @param row its row
 */
public record VesselTare(String vessel, Optional<LocalDate> date, Field tareGrams, RowPlace row) {}
