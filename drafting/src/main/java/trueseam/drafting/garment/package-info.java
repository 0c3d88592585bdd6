/** The garments that can be drafted, by the words that a user knows, and the small pieces that go with them. */
package trueseam.drafting.garment;
