import { describe, expect, it } from 'vitest';
import { paperSize } from '../../../extension/ui/recipe/paper-size.ts';
import { adaptedPage } from '../adapted.ts';

describe('the size of print', () => {
  it('is the larger the less there is to print', () => {
    const rolls = adaptedPage('milk-rolls.html');
    expect(paperSize(adaptedPage('rice-pudding.html'))).toBe('large');
    expect(paperSize(rolls)).toBe('middle');
    expect(paperSize({ ...rolls, lines: [...rolls.lines, ...rolls.lines] })).toBe('small');
  });
});
