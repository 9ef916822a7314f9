/**
 * What a written name means: a name is understood here once, and everything after sees a {@link workuptally.material.Material}.
 *
 * <p>Start with {@link workuptally.material.MaterialReader}. {@code NameReading} takes a text apart with the words of {@code Qualifiers};
 * {@code SubstanceIndex} knows the names of all tables and which of them mean more than one thing. The package rests on {@code reference}
 * and {@code chemistry}; it knows no run, no step and no report.
 */
package workuptally.material;
