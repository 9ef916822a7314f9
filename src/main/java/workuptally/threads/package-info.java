/** Waiting for work on other threads, in one place. A leaf: it knows nothing of what the work is about. */
package workuptally.threads;
