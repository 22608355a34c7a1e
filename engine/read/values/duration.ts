/** Minutes that a text states. */
import { numberValue } from '../../numerals.ts';
import type { Times } from '../draft.ts';

/** Longest duration believed: 30 days, in minutes (common practice, no source). */
const MAX_MINUTES = 30 * 24 * 60;

const FIGURE = String.raw`(\d+(?:[.,]\d+)?(?:\s?[½¼¾])?|[½¼¾])\s*`;
const unit = (words: string) => new RegExp(`${FIGURE}(?:${words})(?![a-zà-ÿ])`, 'gi');

/** Units of time in the languages read, with the minutes of one. */
const PROSE: [RegExp, number][] = [
  [unit('d|days?|tage?n?|jours?|dagen|dagar|dag|dage|døgn|dygn|días?|dias?|giorn[oi]'), 1440],
  [unit('h|hrs?|hours?|std|stunden?|heures?|uur|uren|horas?|or[ae]|tim(?:mar|mer|me|er|e)?'), 60],
  [unit("m|mins?|minutes?|minuten?|minut[oia]s?|minuter|minutter|mn|'"), 1],
];
/** '1h30': the minutes carry no unit. */
const CLOCK = /(\d{1,2})\s?h\s?(\d{2})(?!\d|\s?[a-z])/i;

function believed(minutes: number): number | null {
  if (!Number.isFinite(minutes) || minutes <= 0 || minutes > MAX_MINUTES) return null;
  return Math.round(minutes * 100) / 100;
}

/**
 * Minutes from an ISO 8601 duration, also a malformed one ('PT2HMS', 'P30M' meant as minutes), from
 * prose ('1 hour 20 minutes') or from bare minutes. Null when empty, zero, negative or above 30 days.
 */
export function readMinutes(text: string): number | null {
  const value = text.trim();
  if (value === '' || value.length > 200) return null;
  const iso = /^(-?)P(.*)$/i.exec(value);
  if (iso) {
    if (iso[1] === '-' || (iso[2] ?? '').includes('-')) return null;
    let minutes = 0;
    for (const part of (iso[2] ?? '').matchAll(/(\d+(?:[.,]\d+)?)\s*([DHMS])/gi)) {
      const unit = (part[2] ?? '').toUpperCase();
      const factor = unit === 'D' ? 1440 : unit === 'H' ? 60 : unit === 'M' ? 1 : 1 / 60;
      minutes += (numberValue(part[1] ?? '') ?? 0) * factor;
    }
    return believed(minutes);
  }
  if (/^\d+$/.test(value)) return believed(Number(value));
  const clock = CLOCK.exec(value);
  if (clock) return believed(Number(clock[1]) * 60 + Number(clock[2]));
  let minutes = 0;
  for (const [pattern, factor] of PROSE) {
    for (const part of value.matchAll(pattern))
      minutes += (numberValue(part[1] ?? '') ?? 0) * factor;
  }
  return believed(minutes);
}

/** The first time that can be read of each kind, in minutes; null when none can. */
export function minutesOf(times: Times): Record<keyof Times, number | null> {
  const first = (texts: readonly string[]) =>
    texts.reduce<number | null>((minutes, text) => minutes ?? readMinutes(text), null);
  return { prep: first(times.prep), cook: first(times.cook), total: first(times.total) };
}
