/** The language that a recipe's lines speak, where its page states another by default. */
import { lineLanguage } from './index.ts';

/** Own choices: of 399 pages no English one had two such lines. */
const LEAST_LINES = 3;
const LEAST_SHARE = 0.5;

const isDefault = (stated: string | null): boolean =>
  stated === null || stated.slice(0, 2).toLowerCase() === 'en';

/**
 * What the page states; but where that is English or nothing and at least half of the lines, three or
 * more, are in one other language, that one.
 */
export function languageOfLines(lines: readonly string[], stated: string | null): string | null {
  if (!isDefault(stated)) return stated;
  const counts = new Map<string, number>();
  for (const line of lines) {
    const tag = lineLanguage(line);
    if (tag !== 'en') counts.set(tag, (counts.get(tag) ?? 0) + 1);
  }
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  if (most === undefined || most[1] < LEAST_LINES) return stated;
  return most[1] >= lines.length * LEAST_SHARE ? most[0] : stated;
}
