/** Small invented books for tests, written row by row. */
package workuptally.examples;
