import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StoveTimer } from '../../../extension/store/working/stove.ts';
import {
  clockText,
  justEnded,
  secondsLeft,
  withoutTimer,
  withTimer,
} from '../../../extension/ui/stove/timers.ts';

const timer = (id: string, endsAt: number): StoveTimer => ({ id, name: id, seconds: 60, endsAt });

describe('timers', () => {
  it('count down to nothing and stay there', () => {
    expect(secondsLeft(timer('rise', 10_000), 4_500)).toBe(6);
    expect(secondsLeft(timer('rise', 10_000), 10_000)).toBe(0);
    expect(secondsLeft(timer('rise', 10_000), 99_000)).toBe(0);
  });

  it('ring once, between the look before and the look after', () => {
    const both = [timer('rise', 5_000), timer('oven', 9_000)];
    expect(justEnded(both, 4_000, 5_000).map(({ id }) => id)).toEqual(['rise']);
    expect(justEnded(both, 5_000, 6_000)).toEqual([]);
    expect(justEnded(both, 4_000, 60_000)).toHaveLength(2);
  });

  it('make room when one has rung, and say so when none has', () => {
    const eight = Array.from({ length: 8 }, (_, n) => timer(`${n}`, 1_000 * (n + 1)));
    expect(withTimer(eight, timer('new', 90_000), 500)).toBeNull();
    expect(withTimer(eight, timer('new', 90_000), 1_000)?.map(({ id }) => id)).toEqual([
      '1',
      '2',
      '3',
      '4',
      '5',
      '6',
      '7',
      'new',
    ]);
    expect(withoutTimer(eight, '3').map(({ id }) => id)).not.toContain('3');
  });

  it.each([
    [0, '0:00'],
    [59, '0:59'],
    [700, '11:40'],
    [3_900, '1:05:00'],
  ])('%i seconds read %s', (seconds, text) => {
    expect(clockText(seconds)).toBe(text);
  });

  it('tell the same time as their text, whatever it is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 86_400 }), (seconds) => {
        const total = clockText(seconds)
          .split(':')
          .reduce((sum, part) => sum * 60 + Number(part), 0);
        expect(total).toBe(seconds);
      }),
    );
  });
});
