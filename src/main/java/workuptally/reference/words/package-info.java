/** How near typed words are to known ones. Start with {@link workuptally.reference.words.WordGuess}. */
package workuptally.reference.words;
