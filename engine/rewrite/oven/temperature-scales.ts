/** Temperatures in both scales. */

const OVEN_FROM_C = 100;
/** Up to boiling water a thermometer is read to the degree. */
const BOILING_C = 101;

const toF = (celsius: number): number => {
  const f = celsius * 1.8 + 32;
  return celsius >= OVEN_FROM_C ? Math.round(f / 5) * 5 : Math.round(f);
};

/** Ovens are set in steps of 25 °F; below this, °C, a syrup or jam has degrees between. */
const SYRUP_C = 130;
const OVEN_STEP_F = 25;

const toC = (fahrenheit: number): number => {
  const c = (fahrenheit - 32) / 1.8;
  const isSyrup = c < SYRUP_C && fahrenheit % OVEN_STEP_F !== 0;
  return c > BOILING_C && !isSyrup ? Math.round(c / 5) * 5 : Math.round(c);
};

/** '35-38 °C (95-100 °F)'. Ovens to the nearest 5 degrees, the rest to whole degrees. */
export function celsius(low: number, high: number = low): string {
  return low === high
    ? `${low} °C (${toF(low)} °F)`
    : `${low}-${high} °C (${toF(low)}-${toF(high)} °F)`;
}

const TEMPERATURE =
  /(\d{2,3})(?:\s*(?:-|–|to)\s*(\d{2,3})|(?<=\d{3})\s*(?:and|or)\s*(\d{3}))?\s*(?:°|º|˚|deg\.?|degrees?)?\s*((?:celsius|centigrade|fahrenheit|C|F)\b|[℃℉])/gi;
/** Ovens in degrees without a scale: from 300 up it can only be Fahrenheit. */
const BARE = /(\d{3})(?:\s*°|\s+degrees?\b)(?!\s*(?:[CF]\b|celsius|centigrade|fahrenheit))/gi;
/** How far to look for the same temperature in the other scale. */
const NEAR = 28;

const isCelsius = (scale: string): boolean => /^[c℃]/i.test(scale);

function hasPartner(text: string, start: number, end: number, celsiusGiven: boolean): boolean {
  const around = `${text.slice(Math.max(0, start - NEAR), start)} ${text.slice(end, end + NEAR)}`;
  const other = celsiusGiven
    ? /\d{2,3}\s*(?:°|º|˚|deg\.?|degrees?)?\s*(?:F\b|℉|fahrenheit)/i
    : /\d{2,3}\s*(?:°|º|˚|deg\.?|degrees?)?\s*(?:C\b|℃|celsius|centigrade)/i;
  return other.test(around);
}

function converted(low: string, high: string | undefined, celsiusGiven: boolean): string {
  const turn = celsiusGiven ? toF : toC;
  const unit = celsiusGiven ? '°F' : '°C';
  const first = turn(Number(low));
  return high === undefined ? `${first} ${unit}` : `${first}-${turn(Number(high))} ${unit}`;
}

/** An oven's fan setting is one of two temperatures already. */
const FAN = /^\s*(?:\/|\()?\s*fan\b(?![\s:]*\d)/i;
const FAN_BEFORE = /\bfan(?: oven)?[\s:]*$/i;

const GAS_MARK = /\bgas(?:\s+mark)?\s+(\d{1,2}|½|¼|1\/2|1\/4)(?![\d°])/i;
const ALL_GAS = new RegExp(GAS_MARK, 'gi');

/** Ovens of each gas mark, °C: British usage, common practice, no source. */
const GAS: readonly (readonly [mark: string, celsius: number])[] = [
  ['¼', 110],
  ['½', 120],
  ['1', 140],
  ['2', 150],
  ['3', 170],
  ['4', 180],
  ['5', 190],
  ['6', 200],
  ['7', 220],
  ['8', 230],
  ['9', 240],
];

/** Whether a method speaks of gas marks. */
export const usesGas = (text: string): boolean => GAS_MARK.test(text);

/** The gas mark nearest to an oven's °C, or null outside their range. */
function gasMark(degrees: number): string | null {
  if (degrees < 105 || degrees > 250) return null;
  const nearest = GAS.reduce((a, b) =>
    Math.abs(b[1] - degrees) < Math.abs(a[1] - degrees) ? b : a,
  );
  return nearest[0];
}

const celsiusOfMark = (mark: string): number | null => {
  const plain = mark === '1/2' ? '½' : mark === '1/4' ? '¼' : mark;
  return GAS.find(([name]) => name === plain)?.[1] ?? null;
};

/** A gas mark that stands alone, with the degrees it means. */
const withDegrees = (text: string): string =>
  text.replace(ALL_GAS, (...found) => {
    const [whole, mark, at] = found as [string, string, number];
    const degrees = celsiusOfMark(mark);
    const near = `${text.slice(Math.max(0, at - NEAR), at)} ${text.slice(at + whole.length, at + whole.length + NEAR)}`;
    if (degrees === null || /\d{3}\s*(?:°|º|˚|℃|℉|deg|C\b|F\b)/i.test(near)) return whole;
    return `${whole} (${degrees} °C, ${toF(degrees)} °F)`;
  });

/** Whether a place stands in brackets, where others would be brackets in brackets. */
const isBracketed = (text: string, at: number): boolean =>
  text.lastIndexOf('(', at - 1) > text.lastIndexOf(')', at - 1) && text.indexOf(')', at) > 0;

/** Whether a gas mark stands beside a temperature. */
const hasGas = (text: string, start: number, end: number): boolean =>
  GAS_MARK.test(text.slice(Math.max(0, start - NEAR), end + NEAR));

/**
 * The text with the other scale put in brackets behind each temperature that has one scale only; with
 * `gas`, ovens get their gas mark too, and a gas mark alone its degrees.
 */
export function withAllScales(text: string, gas = false): string {
  const marked = gas ? withDegrees(text) : text;
  const named = marked.replace(TEMPERATURE, (...found) => {
    const [whole, low, to, and, scale, at] = found as [
      string,
      string,
      string | undefined,
      string | undefined,
      string,
      number,
    ];
    const high = to ?? and;
    // A lower-case 'c' or 'f' is a unit only right behind the number or a degree sign.
    if (/^[cf]$/.test(scale) && !/[\d°º˚]\s?[cf]$/.test(whole)) return whole;
    // '12 C' is twelve cups.
    if (/^\d{1,2}\s*C$/.test(whole)) return whole;
    const end = at + whole.length;
    const isFan = FAN.test(marked.slice(end)) || FAN_BEFORE.test(marked.slice(0, at));
    if (isFan || hasPartner(marked, at, end, isCelsius(scale))) return whole;
    const degrees = isCelsius(scale) ? Number(low) : toC(Number(low));
    const mark = gas && !hasGas(marked, at, end) ? gasMark(degrees) : null;
    const beside = converted(low, high, isCelsius(scale));
    const both = `${beside}${mark === null ? '' : `, gas mark ${mark}`}`;
    return isBracketed(marked, at) ? `${whole} / ${both}` : `${whole} (${both})`;
  });
  return named.replace(BARE, (...found) => {
    const [whole, degrees, at] = found as [string, string, number];
    if (Number(degrees) < 300 || Number(degrees) > 550) return whole;
    if (hasPartner(named, at, at + whole.length, false)) return whole;
    const beside = `${toC(Number(degrees))} °C`;
    return isBracketed(named, at) ? `${whole} F / ${beside}` : `${whole} F (${beside})`;
  });
}
