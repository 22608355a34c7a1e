/** Longest duration believed: 30 days, in minutes (common practice, no source). */
const MAX_MINUTES = 30 * 24 * 60;

const PROSE: [RegExp, number][] = [
  [/(\d+(?:[.,]\d+)?|½)\s*(?:d|days?|tage?n?|jours?|dagen|dagar|días?|dias?|giorn[oi])\b/giu, 1440],
  [
    /(\d+(?:[.,]\d+)?|½)\s*(?:h|hrs?|hours?|std|stunden?|heures?|uur|uren|horas?|or[ae]|tim(?:mar|er|e)?)\b/giu,
    60,
  ],
  [/(\d+(?:[.,]\d+)?|½)\s*(?:m|mins?|minutes?|minuten?|minut[oia]s?|minuter|minutter)\b/giu, 1],
];

function number(text: string): number {
  return text === '½' ? 0.5 : Number(text.replace(',', '.'));
}

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
      minutes += number(part[1] ?? '0') * factor;
    }
    return believed(minutes);
  }
  if (/^\d+$/.test(value)) return believed(Number(value));
  let minutes = 0;
  for (const [pattern, factor] of PROSE) {
    for (const part of value.matchAll(pattern)) minutes += number(part[1] ?? '0') * factor;
  }
  return believed(minutes);
}
