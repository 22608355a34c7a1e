/** What the method serves a dish with counts only where it is said of this dish, and not of its own potatoes. */
import { describe, expect, it } from 'vitest';
import { servedByMethod } from '../../../engine/tally/verdict/served-with.ts';

const kindOf = (sentence: string, lines: string[]): string | null | undefined =>
  servedByMethod([sentence], lines, 'method.9')?.kind;

describe('what the method serves a dish with', () => {
  it('is named', () => {
    expect(kindOf('serve it over rice.', ['600 g beef'])).toBe('rice or grain');
  });

  it('is not what one may do instead', () => {
    expect(kindOf('if you are serving it over pasta, boil that now.', ['150 g polenta'])).toBe(
      undefined,
    );
  });

  it('is not the chips that are made of its potatoes', () => {
    expect(kindOf('serve the peas with the fish and chips.', ['4 potatoes in wedges'])).toBe(
      undefined,
    );
  });
});
