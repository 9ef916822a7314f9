/**
 * Hard input and faults: damaged books by the thousand, hostile files, killed programs, full disks and odd machines.
 *
 * <p>Start with {@code DamagedBooksTest}. The tests call the program as a user does, or the reader and the review it is made of.
 */
package workuptally.faults;
