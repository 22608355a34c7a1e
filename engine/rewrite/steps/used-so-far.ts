/** What a method has used so far, step by step. */
import type { PlannedItem } from '../../model.ts';
import type { Mention } from '../naming/mention.ts';

/** Nearly all of an ingredient: what rounding of halves and thirds leaves is no rest. Own choice. */
const ALL = 0.98;

/** What earlier steps have used of each ingredient, share of the whole, and which additions went in. */
export class UsedSoFar {
  private readonly shares = new Map<string, number>();
  private readonly added = new Set<string>();
  private readonly named = new Set<string>();
  private readonly steps = new Map<string, number>();
  private step = 0;
  private readonly whole = new Set<string>();
  private readonly poured = new Set<string>();

  use(mention: Mention, share: number): void {
    const { key } = mention.ingredient;
    this.shares.set(key, (this.shares.get(key) ?? 0) + share);
  }

  /** Share that is left, or null when it cannot be told. */
  left(mention: Mention): number | null {
    const used = this.shares.get(mention.ingredient.key) ?? 0;
    return used > 0 && used < ALL ? 1 - used : null;
  }

  /** From now on the next step is told. */
  nextStep(): void {
    this.step += 1;
  }

  /** Remembers that a step names the ingredient. */
  name({ ingredient }: Mention): void {
    if (!this.steps.has(ingredient.key)) this.steps.set(ingredient.key, this.step);
  }

  /** Whether an earlier step named the ingredient. */
  isNamedBefore = ({ ingredient }: Mention): boolean =>
    (this.steps.get(ingredient.key) ?? this.step) < this.step;

  /** Whether the ingredient was named in full before; from now on it has been. */
  introduce({ ingredient, newName }: Mention): boolean {
    const name = `${ingredient.key} ${newName}`;
    const before = this.named.has(name);
    this.named.add(name);
    if (!before && !this.shares.has(ingredient.key)) this.whole.add(ingredient.key);
    return before;
  }

  /** Remembers that a step takes all there is of it. */
  pour({ ingredient }: Mention): void {
    this.poured.add(ingredient.key);
  }

  isPoured = ({ ingredient }: Mention): boolean => this.poured.has(ingredient.key);

  /** Whether it was named without an amount before any part of it was: all of it is in. */
  isIn = ({ ingredient }: Mention): boolean => this.whole.has(ingredient.key);

  /** Additions that go in with this ingredient and have not gone in yet; from now on they have. */
  takeAdditions(mention: Mention): PlannedItem[] {
    const fresh = mention.goesInWith.filter(({ key }) => !this.added.has(key));
    for (const { key } of fresh) this.added.add(key);
    return fresh;
  }
}
