/** Times that a step names, so that a timer can be started for each. */
import { numberValue } from '../../../engine/numerals.ts';
import { locale } from '../words/say.ts';

export interface StepTime {
  /** As the step says it: '5 minutes', '1 hour 30 minutes'. */
  text: string;
  /** Of a range the shorter end: one looks before it is too late. */
  seconds: number;
}

const FIGURE = String.raw`\d+(?:[.,]\d+)?(?:\s?[½¼¾])?|[½¼¾]`;
/** Units of time in the languages the method may be in, with their seconds; longer forms first. */
const UNITS: readonly (readonly [forms: string, seconds: number])[] = [
  ['hours?|hrs?|stunden?|std|heures?|uren|uur|horas?|ore|ora|timmar|timme|timer|time|h', 3600],
  ['minutes?|minuten|minutos?|minuti|minuto|minuter|minutter|minut|mins?|mn', 60],
  ['seconds?|sekunden?|secondes?|seconden|segundos?|secondi|sekunder|secs?|sek', 1],
];
const FORMS = UNITS.map(([forms]) => forms).join('|');
const ONE = `(${FIGURE})(?:\\s?(?:-|–|to|bis|à|tot|a|till|til)\\s?(?:${FIGURE}))?[\\s-]?(${FORMS})(?![\\p{L}\\p{N}])`;
const TIME = new RegExp(
  `(?<![\\p{L}\\p{N}.,])${ONE}(?:\\s?(?:and|und|et|en|y|e|och|og|,)?\\s?${ONE})?`,
  'giu',
);
const SECONDS = UNITS.map(([forms, each]) => [new RegExp(`^(?:${forms})$`, 'iu'), each] as const);

/** Shorter is over before the button is pressed; longer is no kitchen timer's work. Own choice. */
const SHORTEST_S = 10;
const LONGEST_S = 24 * 3600;
/** Longest text of a step that is looked through (characters). Own choice. */
const MOST_TEXT = 4000;

function secondsOf(figure: string, form: string): number {
  const each = SECONDS.find(([unit]) => unit.test(form))?.[1] ?? 0;
  return (numberValue(figure) ?? 0) * each;
}

const unit = (count: number, of: 'hour' | 'minute' | 'second'): string =>
  new Intl.NumberFormat(locale(), { style: 'unit', unit: of, unitDisplay: 'long' }).format(count);

/** '1 hour 30 minutes', in the words of the screen whatever the method's language. */
export function lengthText(seconds: number): string {
  const [hours, minutes, rest] = [
    Math.floor(seconds / 3600),
    Math.floor((seconds % 3600) / 60),
    Math.round(seconds % 60),
  ];
  return [
    ...(hours > 0 ? [unit(hours, 'hour')] : []),
    ...(minutes > 0 ? [unit(minutes, 'minute')] : []),
    ...(rest > 0 ? [unit(rest, 'second')] : []),
  ].join(' ');
}

/** In the order of the text, each length of time once. */
export function stepTimes(step: string): StepTime[] {
  const times: StepTime[] = [];
  for (const [text, figure = '', form = '', more = '', moreForm = ''] of step
    .slice(0, MOST_TEXT)
    .matchAll(TIME)) {
    const seconds = Math.round(
      secondsOf(figure, form) + (more === '' ? 0 : secondsOf(more, moreForm)),
    );
    if (seconds < SHORTEST_S || seconds > LONGEST_S) continue;
    if (!times.some((one) => one.seconds === seconds)) times.push({ text, seconds });
  }
  return times;
}
