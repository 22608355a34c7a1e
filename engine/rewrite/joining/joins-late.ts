/** What joins a pot late, and where. */
import type { Mention } from '../naming/mention.ts';

export interface LateVegetable {
  mention: Mention;
  /** The ingredient as it is spoken of until then. */
  early: Mention;
  /** Step, and sentence of it, that ends the boiling: the vegetable joins before it where that one looks back or drains, else behind it. */
  at: number;
  sentence: number;
  /** Whether it joins behind that sentence, before it, or where that one drains. */
  joins: 'behind' | 'before' | 'within';
  /** The sentence that puts it in. */
  told: string;
}
