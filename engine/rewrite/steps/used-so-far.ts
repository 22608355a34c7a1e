/** What a method has used so far, step by step. */
import type { PlannedItem } from '../../model.ts';
import type { Mention } from '../naming/mentions.ts';

/** What earlier steps have used of an ingredient, share of the whole, and which additions went in. */
export class Ledger {
  private readonly shares = new Map<string, number>();
  private readonly gone = new Set<string>();

  use(mention: Mention, share: number): void {
    const { key } = mention.ingredient;
    this.shares.set(key, (this.shares.get(key) ?? 0) + share);
  }

  /** Share that is left, or null when it cannot be told. */
  left(mention: Mention): number | null {
    const used = this.shares.get(mention.ingredient.key) ?? 0;
    return used > 0 && used < 0.98 ? 1 - used : null;
  }

  /** Additions that have not gone in yet; from now on they have. */
  take(mention: Mention): PlannedItem[] {
    const fresh = mention.along.filter(({ key }) => !this.gone.has(key));
    for (const { key } of fresh) this.gone.add(key);
    return fresh;
  }
}
