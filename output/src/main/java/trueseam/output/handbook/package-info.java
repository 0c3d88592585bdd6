/** What handbooks answer differently, told with reasons, sources and how to choose: made from the choices in the code. */
package trueseam.output.handbook;
