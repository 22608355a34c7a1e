/** The time that a sentence states, and a multiple of it as a cook would read it off a clock. */
import { FRACTION_SIGNS, numberValue } from '../../numerals.ts';

const NUMBER = `\\d+\\s?[${FRACTION_SIGNS}]|\\d+\\s\\d/\\d|\\d/\\d|\\d+(?:[.,]\\d+)?|[${FRACTION_SIGNS}]`;
const UNIT =
  '(?<hours>hours?|hrs?|h|stunden?|std(?:\\.(?=\\s+\\p{Ll}))?|heures?|uur|uren|horas?|ore|ora|timmar|timme|timer|time)|(?<minutes>min(?:ute[ns]?|uten|utes|uti|utos?|uter|utter|utt)?)';
/** '1 h 30', '1 hour and 15 minutes': the minutes behind the hours. */
const REST =
  '(?:(?<=\\dh|\\sh)\\s?(?<bare>[0-5]\\d)(?!\\d|\\s?(?:°|º|g\\b|ml|cm))|\\s+(?:and |und |et |y |e |en |og |och )?(?<more>\\d{1,2})\\s*min(?:ute[ns]?|uten|utes|uti|utos?|uter|utter)?(?!\\p{L}))?';
const TIME = new RegExp(
  `(?<low>${NUMBER})\\s*(?:(?:-|–|—|to|bis|à|tot|a|till|til)\\s*(?<high>${NUMBER})\\s*)?(?:${UNIT})(?![\\p{L}])${REST}`,
  'iu',
);

export interface Minutes {
  low: number;
  high: number;
}

/** Minutes of the first time that a sentence states; null when it states none. */
export function statedTime(sentence: string): Minutes | null {
  const { low, high, hours, bare, more } = TIME.exec(sentence)?.groups ?? {};
  if (low === undefined) return null;
  const each = hours === undefined ? 1 : 60;
  const from = numberValue(low);
  const to = numberValue(high ?? low);
  const rest = hours === undefined ? 0 : Number(bare ?? more ?? 0);
  return from === null || to === null ? null : { low: from * each + rest, high: to * each + rest };
}

export interface StatedTime {
  /** As it is written, its unit, and whether that is hours. */
  text: string;
  unit: string;
  inHours: boolean;
  minutes: Minutes;
}

/** The first time that a sentence states, as it is written there; null when it states none. */
export function statedIn(sentence: string): StatedTime | null {
  const found = TIME.exec(sentence);
  const minutes = statedTime(sentence);
  if (found === null || minutes === null) return null;
  const { hours, minutes: unit = '' } = found.groups ?? {};
  return { text: found[0], unit: hours ?? unit, inHours: hours !== undefined, minutes };
}

/** Longer times are told in hours. */
const HOURS_FROM = 120;
/** Minutes are told in fives, hours in quarters. */
const STEP = { minutes: 5, hours: 15 };
const QUARTERS = ['', '¼', '½', '¾'];

function hoursText(minutes: number): string {
  const quarters = Math.round(minutes / STEP.hours);
  const whole = Math.floor(quarters / QUARTERS.length);
  return `${whole === 0 ? '' : whole}${QUARTERS[quarters % QUARTERS.length] ?? ''}`;
}

/** '75-115 min', '1¼-2¼ h': a time multiplied. */
export function timesAsLong({ low, high }: Minutes, factor: number): string {
  const inHours = high * factor >= HOURS_FROM;
  const text = (minutes: number): string =>
    inHours
      ? hoursText(minutes * factor)
      : String(Math.round((minutes * factor) / STEP.minutes) * STEP.minutes);
  const range = [...new Set([text(low), text(high)])].join('-');
  return `${range} ${inHours ? 'h' : 'min'}`;
}
