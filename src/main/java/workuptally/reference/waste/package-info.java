/** Waste streams, what decides a stream, and limits of regulations. Start with {@link workuptally.reference.waste.WasteStreams}. */
package workuptally.reference.waste;
