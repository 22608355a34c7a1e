/** Lines in scripts that set no blanks between words, with blanks where the reader needs them. */
import { LANGUAGES } from './language-data.ts';

const HAN_OR_KANA = /[\u3040-\u30ff\u4e00-\u9fff]/;
const KANA = /[\u3040-\u30ff]/;

/** 'zh' or 'ja' for a line in such a script, else null; kana are Japanese alone. */
export function unspacedLanguage(text: string): 'ja' | 'zh' | null {
  if (!HAN_OR_KANA.test(text)) return null;
  return KANA.test(text) ? 'ja' : 'zh';
}

/** The longest form first, so that none is cut in two. */
const alternatives = (forms: readonly string[]): string =>
  [...new Set(forms)].sort((a, b) => b.length - a.length).join('|');

const formsOf = (code: string): string[] => {
  const { units, scaled } = LANGUAGES[code] ?? { units: {} };
  const written = Object.values(units).flatMap(([, forms = '']) => forms.split(' '));
  return [...written, ...Object.keys(scaled ?? {})];
};

const SHARED = 'kg|mg|g|ml|cc|dl|l|cm';
const NUMBER = String.raw`\d+(?:[./]\d+)?(?: \d\/\d)?(?:\s?[-~〜]\s?\d+(?:[./]\d+)?)?`;

interface Patterns {
  /** A numeral in words before a measure word: '两个'. */
  numeral: RegExp;
  /** A half behind the measure: '一个半'. */
  half: RegExp;
  /** Measure before number: '大さじ1'. */
  unitFirst: RegExp;
  amount: RegExp;
  cuts: RegExp;
  numbers: Readonly<Record<string, number>>;
}

function patternsOf(code: string): Patterns {
  const own = alternatives(formsOf(code));
  const units = `(?:${own}|(?:${SHARED})(?![a-z]))`;
  const { numbers = {}, cuts = '' } = LANGUAGES[code] ?? {};
  return {
    numeral: new RegExp(`([${Object.keys(numbers).join('')}])(?=${units})`, 'gu'),
    half: new RegExp(`(\\d+)(\\s?)(${own})半`, 'u'),
    unitFirst: new RegExp(`(大さじ|小さじ|大匙|小匙|カップ)\\s?(${NUMBER})`, 'gu'),
    amount: new RegExp(`(${NUMBER})\\s?(${units})(弱|強)?`, 'iu'),
    // A lone sign ('強力粉') may be a part of the name.
    cuts: new RegExp(`(${alternatives(cuts.split(' ').filter((word) => word.length > 1))})`, 'gu'),
    numbers,
  };
}

const known = new Map<string, Patterns>();

function patternsFor(code: string): Patterns {
  const found = known.get(code) ?? patternsOf(code);
  known.set(code, found);
  return found;
}

/** Signs that editors set before a line or beside a name to group it. */
const ORNAMENTS = /[♥♡★☆●◎○■□▲△▼◆◇＊*・※]/gu;
const FULL_WIDTH = /[！-～]/g;
const ASCII_BELOW = 0xfee0;

const narrow = (text: string): string =>
  text.replace(FULL_WIDTH, (sign) => String.fromCharCode(sign.charCodeAt(0) - ASCII_BELOW));

/**
 * The line with its amount in front and blanks around it: '玉ねぎ2個' -> '2 個 玉ねぎ', '一个半番茄' ->
 * '1.5 个 番茄'. Lines of other scripts come back as they are.
 */
export function withBlanks(text: string, language: string | null | undefined): string {
  const script = unspacedLanguage(text);
  if (script === null) return text;
  const code = /^ja\b/i.test(language ?? '') ? 'ja' : script;
  const { numeral, half, unitFirst, amount, cuts, numbers } = patternsFor(code);
  const line = narrow(text)
    .replace(ORNAMENTS, ' ')
    .replace(/(?<=\d)と(?=\d\/\d)/g, ' ')
    .replace(numeral, (sign) => String(numbers[sign] ?? sign))
    .replace(half, (_, count: string, blank: string, unit: string) => `${count}.5${blank}${unit}`)
    .replace(unitFirst, '$2 $1 ')
    .replace(cuts, ' $1 ');
  const found = amount.exec(line);
  if (!found) return moved(line.replace(/\s+/g, ' ').trim(), cuts);
  const before = line.slice(0, found.index);
  const after = line.slice(found.index + found[0].length);
  const [, number, unit, rough = ''] = found;
  return `${number} ${unit} ${before} ${after} ${rough}`.replace(/\s+/g, ' ').trim();
}

/** '适量 盐': what stands for an amount goes behind the name. */
function moved(line: string, cuts: RegExp): string {
  const said = line.match(cuts)?.[0];
  return said && line.startsWith(said) ? `${line.slice(said.length).trim()} ${said}` : line;
}
