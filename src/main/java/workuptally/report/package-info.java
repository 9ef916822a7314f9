/**
 * The reports: workbook, PDF, JSON, CSV, each a thin renderer in a package of its own over a finished review.
 *
 * <p>No arithmetic beyond layout happens here, and no renderer knows another.
 */
package workuptally.report;
